import { useEffect, useState } from 'react';
import { useBench } from './use-bench.ts';
import { words } from './words.ts';

const holdsFile = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes('Files') ?? false;

/** The ways into the bench that have no place of their own on the page: keys that undo, and a file that is dropped anywhere. */
export const Keys = () => {
  const bench = useBench();
  const [isOver, setOver] = useState(false);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) bench.redo();
      else bench.undo();
    };
    const onOver = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = ({ relatedTarget }: DragEvent) => {
      // From one element of the page to the next it has not left.
      if (relatedTarget === null) setOver(false);
    };
    const onDrop = async (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) bench.open(await file.text(), file.name);
    };
    window.addEventListener('keydown', onKey);
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    return () => {
      window.removeEventListener('keydown', onKey);
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
    };
  }, [bench]);

  return isOver && <p className="drop">{words.bar.drop}</p>;
};
