import { useEffect, useRef, useState } from 'react';
import type { Job } from '../../../geometry/job.ts';
import type { Shop } from '../../../templates/shop/index.ts';
import type { PaperWord } from '../paper.worker.ts';
import { words } from '../words.ts';
import { paperWorker } from '../workers.ts';
import type { Laid, LayAsk } from './paper-work.ts';

/** Sheets are laid once job and shop have rested this long, ms. */
const rest = 150;

export interface LaidNow {
  /** The last that was laid; undefined before the first. */
  readonly laid: Laid | undefined;
  /** It is of another job or shop than those that stand here now. */
  readonly isOld: boolean;
}

interface Answer {
  readonly job: Job;
  readonly shop: Shop;
  readonly laid: Laid;
}

const failed = (says: string): Laid => ({ pictures: {}, sheets: [], says });

/** A job's pieces and a shop's sheets of them, as a worker lays them; while it does, the last ones stay. */
export const useLaid = (job: Job | undefined, shop: Shop): LaidNow => {
  const [answer, setAnswer] = useState<Answer | undefined>();
  const worker = useRef<Worker | undefined>(undefined);
  const turn = useRef(0);
  useEffect(
    () => () => {
      worker.current?.terminate();
      worker.current = undefined;
    },
    [],
  );
  useEffect(() => {
    turn.current += 1;
    if (job === undefined) return;
    const ask: LayAsk = { kind: 'lay', turn: turn.current, job, shop };
    const timer = setTimeout(() => {
      worker.current ??= paperWorker();
      worker.current.onmessage = ({ data }: MessageEvent<PaperWord>) => {
        if (data.kind !== 'laid' && data.kind !== 'failed') return;
        if (data.turn !== ask.turn || data.turn !== turn.current) return;
        setAnswer({ job, shop, laid: data.kind === 'laid' ? data.laid : failed(data.why) });
      };
      worker.current.onerror = ({ message }) =>
        setAnswer({ job, shop, laid: failed(message || words.templates.noWorker) });
      worker.current.postMessage(ask);
    }, rest);
    return () => clearTimeout(timer);
  }, [job, shop]);
  return { laid: answer?.laid, isOld: answer?.job !== job || answer?.shop !== shop };
};
