import { useEffect, useState } from 'react';
import { openFiles, openLink, openText } from './shelf/opening.ts';
import { useKeep } from './shelf/use-keep.ts';
import { useBench } from './use-bench.ts';
import { words } from './words.ts';

const holdsFile = ({ dataTransfer }: DragEvent): boolean => dataTransfer?.types.includes('Files') ?? false;

/** The ways into the bench that have no place of their own on the page: keys that undo, and a file that is dropped anywhere. */
export const Keys = () => {
  const bench = useBench();
  const keep = useKeep();
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
    const onDrop = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(false);
      void openFiles(bench, keep, [...(event.dataTransfer?.files ?? [])]);
    };
    // What is pasted into a field is that field's; a job, or a file, that is pasted elsewhere is opened.
    const onPaste = (event: ClipboardEvent) => {
      if (event.target instanceof Element && event.target.closest('input, textarea, select')) return;
      const files = [...(event.clipboardData?.files ?? [])];
      const text = event.clipboardData?.getData('text/plain') ?? '';
      if (files.length > 0) void openFiles(bench, keep, files);
      else if (text.trimStart().startsWith('{')) void openText(bench, keep, text, words.opening.pasted);
    };
    const onHash = () => void openLink(bench, keep);
    window.addEventListener('keydown', onKey);
    window.addEventListener('dragover', onOver);
    window.addEventListener('dragleave', onLeave);
    window.addEventListener('drop', onDrop);
    window.addEventListener('paste', onPaste);
    window.addEventListener('hashchange', onHash);
    onHash();
    return () => {
      window.removeEventListener('keydown', onKey);
      window.removeEventListener('dragover', onOver);
      window.removeEventListener('dragleave', onLeave);
      window.removeEventListener('drop', onDrop);
      window.removeEventListener('paste', onPaste);
      window.removeEventListener('hashchange', onHash);
    };
  }, [bench, keep]);

  return (
    isOver && (
      <p className="drop" role="status">
        {words.bar.drop}
      </p>
    )
  );
};
