/** The longest that is waited for a painting, ms: none comes while the page lies in the background. */
const patience = 1000;

/** Once there is something to be seen. */
export const firstPainted = () =>
  new Promise<void>((done) => {
    const observer = new PerformanceObserver((list) => {
      if (list.getEntriesByName('first-contentful-paint').length === 0) return;
      observer.disconnect();
      done();
    });
    observer.observe({ type: 'paint', buffered: true });
    setTimeout(done, patience);
  });

/** Once what is on its way to the screen has been painted. */
export const painted = () =>
  new Promise<void>((done) => {
    requestAnimationFrame(() => setTimeout(done));
    setTimeout(done, patience);
  });
