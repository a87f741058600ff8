import { useEffect, useState } from 'react';
import { readJob } from '../../../geometry/job-file.ts';
import { type Starter, starters } from '../../jobs/index.ts';
import { pictureOf } from '../keep/picture.ts';
import { words } from '../words.ts';

type Picture = ReturnType<typeof pictureOf>['picture'];

/** Each starter's picture, drawn one after the other, so that the list stands there at once. */
const usePictures = (): Readonly<Record<string, Picture>> => {
  const [pictures, setPictures] = useState<Readonly<Record<string, Picture>>>({});
  const next = starters.find(({ id }) => !Object.hasOwn(pictures, id));
  useEffect(() => {
    if (next === undefined) return;
    const timer = setTimeout(() => {
      const read = readJob(next.text);
      setPictures((now) => ({ ...now, [next.id]: read.ok ? pictureOf(read.job).picture : undefined }));
    });
    return () => clearTimeout(timer);
  }, [next]);
  return pictures;
};

/** Jobs to start from, each with its bridge from above. */
export const Starters = ({ onOpen }: { onOpen: (starter: Starter) => void }) => {
  const pictures = usePictures();
  return (
    <ul className="jobs">
      {starters.map((starter) => {
        const { id, title, about } = starter;
        const picture = pictures[id];
        return (
          <li key={id} className="job-row">
            <svg className="small-bridge" viewBox={picture?.box ?? '0 0 10 3'} aria-hidden="true">
              {picture && <path d={picture.d} />}
            </svg>
            <p>
              <strong>{title}</strong>
              <br />
              {about}
            </p>
            <div className="acts">
              <button type="button" aria-label={words.newJob.openOf(title)} onClick={() => onOpen(starter)}>
                {words.newJob.open}
              </button>
            </div>
          </li>
        );
      })}
    </ul>
  );
};
