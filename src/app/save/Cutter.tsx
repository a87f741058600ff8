import { hasFolders } from '../folder.ts';
import { words } from '../words.ts';
import { ShopGroup } from './Settings.tsx';

const says = words.cutter;

interface Props {
  /** How many templates are ticked that can be cut. */
  readonly count: number;
  readonly isBusy: boolean;
  readonly onSave: () => void;
  readonly onFolder: () => void;
}

/** The ticked templates for a router, a laser or a knife, and what that follows. */
export const Cutter = ({ count, isBusy, onSave, onFolder }: Props) => (
  <>
    <p>{says.about}</p>
    <p>{says.colours}</p>
    {count === 0 ? (
      <p>{says.nothing}</p>
    ) : (
      <>
        <div className="acts">
          <button type="button" className="primary" disabled={isBusy} onClick={onSave}>
            {says.save(count)}
          </button>
          {hasFolders() && (
            <button type="button" disabled={isBusy} onClick={onFolder}>
              {says.folder}
            </button>
          )}
        </div>
        <p className="small">{says.downloads}</p>
      </>
    )}
    <h3>{words.shop.groups.cutter}</h3>
    <ShopGroup group="cutter" />
  </>
);
