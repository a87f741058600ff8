import { enumerate as and } from '../../geometry/enumerate.ts';

/** What the app says in the first drawing, and around it. */
export const firstWords = {
  name: 'Sagitta',
  documentTitle: (job: string) => `${job === '' ? 'Unnamed job' : job} · Sagitta`,

  wreck: {
    title: 'Sagitta cannot go on',
    why: (why: string) =>
      `A part of the page failed or could not be loaded, through no fault of yours. What the browser says of it: ${why}`,
    job: 'Your job is not lost. Save it as a file, to be safe, then reload the page.',
    save: 'Save job',
    reload: 'Reload',
    demo: 'Reload with the demo; the job stays on the shelf',
  },

  sheet: {
    label: 'The drawing',
    views: 'Views',
    above: 'From above',
    tail: 'From the tail',
    middle: 'Along the middle',
    drawing: 'Working drawing, three views',
    three: 'All three views',
    shown: 'Shown',
    tools: 'Tools',
    toolsLabel: 'Looking closer and measuring',
    keys: (title: string) =>
      `${title}: plus and minus look closer and farther, 0 shows it whole, arrows move it while it is closer`,
    farther: 'Farther',
    fit: 'Fit',
    closer: 'Closer',
    trueSize: 'True size',
    ruler: 'Ruler',
    gauge: 'Gauge',
    heights: ['Heights', ' drawn'],
    times: (n: number) => `${n}×`,
    stale: 'Drawing of the last numbers that could be built',
    none: 'Nothing is drawn yet, as these numbers cannot be built. Put right what is named above.',
    lengths: (unit: 'mm' | 'in' | 'fraction') => `lengths in ${{ mm: 'mm', in: 'inch', fraction: 'inch, 1/64' }[unit]}`,
    problems: (n: number) =>
      n === 1 ? 'One thing keeps this from being built' : `${n} things keep this from being built`,
    show: (field: string) => `Go to ${field}`,
    hands: (drawing: string) => `${drawing}: numbers to type and drag`,
    gaps: (gaps: readonly (readonly [string, string])[]) =>
      `Exposure, the gap between crown and bridge: ${and(gaps.map(([name, gap]) => `${name} ${gap}`))}.`,
    aboveSays: (across: string, deep: string, fromNut: string) =>
      `The bridge is ${across} across and ${deep} deep; the saddle line lies ${fromNut} from the nut on the centre line.`,
    middleSays: (thick: string, light: string, name: string, angle: string) =>
      `The bridge is ${thick} thick at the centre; straightedge clearance ${light}; ${name} breaks by ${angle}.`,
  },
} as const;
