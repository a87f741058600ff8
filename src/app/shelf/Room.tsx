import { useEffect, useState } from 'react';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

const says = words.shelf;

interface Used {
  readonly usage: number;
  readonly quota: number;
  readonly isFirm: boolean;
}

const look = async (): Promise<Used | undefined> => {
  const { storage } = navigator;
  if (typeof storage?.estimate !== 'function') return undefined;
  const { usage = 0, quota = 0 } = await storage.estimate();
  return { usage, quota, isFirm: await storage.persisted() };
};

/** How full the browser's storage is, and whether the browser may clear it by itself. */
export const Room = () => {
  const { mark } = useBenchState(({ decimals }) => decimals);
  const [used, setUsed] = useState<Used | undefined>();
  const [isRefused, setRefused] = useState(false);
  useEffect(() => {
    look().then(setUsed, () => {});
  }, []);
  if (used === undefined) return null;
  const ask = async () => {
    const isGiven = await navigator.storage.persist();
    setRefused(!isGiven);
    setUsed(await look());
  };
  return (
    <div className="storage">
      <p>
        {says.used(used.usage, used.quota, mark)}
        {used.quota > 0 && used.usage / used.quota > 0.8 && <strong> {says.nearlyFull}</strong>}
      </p>
      {used.isFirm ? (
        <p>{says.firm}</p>
      ) : (
        <p>
          {isRefused ? says.notFirm : says.mayBeCleared}{' '}
          {!isRefused && (
            <button type="button" onClick={ask}>
              {says.askFirm}
            </button>
          )}
        </p>
      )}
    </div>
  );
};
