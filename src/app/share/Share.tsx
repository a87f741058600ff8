import { useEffect, useRef, useState } from 'react';
import type { Job } from '../../../geometry/job.ts';
import { words } from '../words.ts';
import { type Link, linkTo, longestLink } from './link.ts';
import { mostBytes, type QrDrawing, qrOf } from './qr.ts';

const says = words.share;

const QrCode = ({ code }: { code: QrDrawing }) => (
  <svg className="qr" viewBox={`0 0 ${code.side} ${code.side}`} role="img" aria-label={says.qr}>
    <rect width={code.side} height={code.side} />
    <path d={code.d} />
  </svg>
);

const Made = ({ address }: { address: string }) => {
  const [told, setTold] = useState('');
  const code = qrOf(address);
  const copy = () =>
    navigator.clipboard.writeText(address).then(
      () => setTold(says.copied),
      () => setTold(says.notCopied),
    );
  return (
    <>
      <div className="way">
        <label>
          <span>{says.link}</span>
          <input readOnly value={address} onFocus={({ currentTarget }) => currentTarget.select()} />
        </label>
        <button type="button" className="primary" onClick={copy}>
          {says.copy}
        </button>
      </div>
      <p className="status" role="status">
        {told}
      </p>
      {code ? (
        <figure>
          <QrCode code={code} />
          <figcaption>{says.qrSays}</figcaption>
        </figure>
      ) : (
        <p>{says.noQr(address.length, mostBytes)}</p>
      )}
    </>
  );
};

/** A job as a link, and as a QR code where that fits. */
export const Share = ({ job, onClose }: { job: Job; onClose: () => void }) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const [link, setLink] = useState<Link | undefined>();
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  useEffect(() => {
    let isGone = false;
    linkTo(job, window.location.href).then((made) => {
      if (!isGone) setLink(made);
    });
    return () => {
      isGone = true;
    };
  }, [job]);
  return (
    <dialog className="share" ref={dialog} aria-labelledby="share-title" onClose={onClose}>
      <h2 id="share-title">{says.title(job.name)}</h2>
      <p>{says.says}</p>
      {link?.ok === true && <Made address={link.address} />}
      {link?.ok === false && <p>{says.tooLong(link.length, longestLink)}</p>}
      <p className="end">
        <button type="button" onClick={() => dialog.current?.close()}>
          {says.close}
        </button>
      </p>
    </dialog>
  );
};
