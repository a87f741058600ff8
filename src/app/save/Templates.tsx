import { useEffect, useRef, useState } from 'react';
import { fileName } from '../../../geometry/names.ts';
import { isPaperId, type PaperId, papers } from '../../../templates/paper.ts';
import { piecesOf } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import { Refused } from '../sheet/Refused.tsx';
import type { Built } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { saveBlob, saveText } from './files.ts';

const says = words.templates;

/** Paper, the templates and what each is for, and the ways to save them. */
export const Templates = ({ onClose }: { onClose: () => void }) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const built = useBenchState((state) => (state.solved.ok ? state.built : undefined));
  const [paper, setPaper] = useState<PaperId>('a4');
  const [status, setStatus] = useState('');
  const [stop, setStop] = useState<(() => void) | undefined>();

  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  useEffect(() => stop, [stop]);

  /** Saves files, and says what came of it. */
  const run = async (save: () => Promise<string | undefined>) => {
    try {
      setStatus((await save()) ?? says.stopped);
    } catch (error) {
      setStatus(says.failed(error instanceof Error ? error.message : String(error)));
    }
  };

  const savePdf = ({ job }: Built) =>
    run(async () => {
      const { writePdf } = await import('./pdf.ts');
      const work = writePdf(job, paper, (step) => setStatus(says.steps[step]));
      setStop(() => work.stop);
      const file = await work.done.finally(() => setStop(undefined));
      if (file === undefined) return undefined;
      const name = `${fileName(job.name)}-templates-${papers[paper].name.toLowerCase()}.pdf`;
      saveBlob([file.bytes], 'application/pdf', name);
      return says.done(name) + (file.lacking.length > 0 ? ` ${says.lacking(file.lacking)}` : '');
    });

  const saveSvg = (of: Built, piece?: Piece) =>
    run(async () => {
      const { pieceSvgs, viewsSvg } = await import('./svg.ts');
      const files = piece ? pieceSvgs(of, piece) : [{ id: 'three-views', svg: viewsSvg(of) }];
      const names = files.map(({ id, svg }) => {
        const name = `${fileName(of.job.name)}-${id}.svg`;
        saveText(svg, 'image/svg+xml', name);
        return name;
      });
      return says.done(names.join(', '));
    });

  return (
    <dialog className="templates" ref={dialog} aria-labelledby="templates-title" onClose={onClose}>
      <h2 id="templates-title">{says.title}</h2>
      {built === undefined ? (
        <p className="stale">{says.stale}</p>
      ) : (
        <>
          <div className="way">
            <label>
              <span>{says.paper}</span>
              <select value={paper} onChange={({ target }) => isPaperId(target.value) && setPaper(target.value)}>
                {Object.entries(papers).map(([id, { name }]) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
            <button type="button" className="primary" disabled={stop !== undefined} onClick={() => savePdf(built)}>
              {says.pdf}
            </button>
            {stop && (
              <button type="button" onClick={stop}>
                {says.stop}
              </button>
            )}
            <p>{says.pdfSays}</p>
          </div>
          <Refused />
          <p className="status" role="status">
            {status}
          </p>
          <h3>{says.pieces}</h3>
          <ul className="pieces">
            {piecesOf(built.job).map((piece) => (
              <li key={piece.id}>
                <p>
                  <strong>{piece.title}</strong> ({piece.faceUp}). {piece.use}
                </p>
                <button type="button" aria-label={says.svgPieceOf(piece.title)} onClick={() => saveSvg(built, piece)}>
                  {says.svgPiece}
                </button>
              </li>
            ))}
            <li>
              <p>{says.svgViewsSays}</p>
              <button type="button" onClick={() => saveSvg(built)}>
                {says.svgViews}
              </button>
            </li>
          </ul>
        </>
      )}
      <h3>{says.cautionsTitle}</h3>
      <ul className="cautions">
        {says.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <p className="end">
        <button type="button" onClick={() => dialog.current?.close()}>
          {says.close}
        </button>
      </p>
    </dialog>
  );
};
