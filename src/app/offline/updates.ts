/** What the service worker (src/offline) is told when it is to take the place of the version that serves the windows now. */
const takeOver = 'take over';
/** A window that stays open asks for a new version this often, when it is looked at again, ms. */
const often = 3600_000;

export interface UpdatesTold {
  /** A new version lies ready. */
  readonly onReady: () => void;
  /** It was taken, in whichever window: what this one has not loaded yet may be gone. */
  readonly onTaken: () => void;
}

/** Puts the app by, so that it needs no network from now on, and tells of new versions. Rejects where the browser lets nothing be put by: then all works as long as there is a network. */
export const putBy = async ({ onReady, onTaken }: UpdatesTold): Promise<void> => {
  const { serviceWorker } = navigator;
  let isServed = serviceWorker.controller !== null;
  serviceWorker.addEventListener('controllerchange', () => {
    if (isServed) onTaken();
    isServed = true;
  });
  const address = new URL('service-worker.js', document.baseURI);
  const registration = await serviceWorker.register(address, { updateViaCache: 'none' });
  const look = () => {
    // The very first version waits for nobody.
    if (registration.waiting && isServed) onReady();
  };
  look();
  registration.addEventListener('updatefound', () => {
    const coming = registration.installing;
    coming?.addEventListener('statechange', () => {
      if (coming.state === 'installed') look();
    });
  });
  let asked = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState !== 'visible' || performance.now() - asked < often) return;
    asked = performance.now();
    // Without network there is no new version to be had.
    registration.update().catch(() => {});
  });
};

/** Loads the page anew, by the version that lies ready if there is one. */
export const startAnew = async (): Promise<void> => {
  const { serviceWorker } = navigator;
  const waiting = (await serviceWorker?.getRegistration())?.waiting;
  if (!waiting) return location.reload();
  serviceWorker.addEventListener('controllerchange', () => location.reload());
  waiting.postMessage(takeOver);
};
