/*
 * Every sentence that the app itself says, in one place, so that another language is another file like this one. The words of the
 * fields stand in the schema (geometry/job.ts), those of the drawings in the views.
 */

const and = (list: readonly string[]): string =>
  list.length < 2 ? (list[0] ?? '') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;

export const words = {
  name: 'Sagitta',
  documentTitle: (job: string) => `${job === '' ? 'Unnamed job' : job} · Sagitta`,
  intro: [
    'Type what you measure on the guitar.',
    'Sagitta draws the bridge and its saddle as you type, and says what comes of it.',
    'Save the templates, print them at 100 %, and measure the check bars before you cut.',
  ],

  outOfRange: (label: string, value: string, from: string, to: string, word?: string) =>
    `${label} is ${value}; it may be from ${from} to ${to}${word === undefined ? '' : `, or “${word}”`}.`,
  refused: (field: string, value: string, isText: boolean) =>
    `${field}: what is typed cannot be used; ${isText ? 'the job keeps' : 'drawn with'} ${value}.`,
  didYouMean: (value: string) => `Did you mean ${value}?`,
  opened: (file: string) => `opening ${file}`,

  bar: {
    label: 'Files',
    job: 'Job',
    date: 'Date',
    lengths: 'Lengths in',
    units: 'Units',
    otherUnits: 'Other units',
    starters: 'Starters',
    chooseStarter: 'choose…',
    starter: (title: string, about: string) => `${title}: ${about}`,
    openStarter: 'Open',
    newJob: 'New job',
    open: 'Open job…',
    save: 'Save job',
    templates: 'Save templates',
    undo: (step?: string) => (step === undefined ? 'Undo' : `Undo: ${step}`),
    redo: (step?: string) => (step === undefined ? 'Redo' : `Redo: ${step}`),
    back: (name: string) => `Back to your job “${name}”`,
    drop: 'Let go to open the job',
  },

  notices: {
    label: 'Messages',
    close: 'Close',
    noStorage:
      'This browser does not let Sagitta keep the job: its storage is full or switched off, as in a private window. You can work on; save the job as a file before you leave.',
    notRestored: (key: string) =>
      `The job kept in this browser could not be read, so the demo stands here. Its text was not thrown away: it is kept in this browser’s storage under “${key}”.`,
    notOpened: (file: string) => `“${file}” was not opened. Your job stands as it was.`,
    unknown: (file: string) =>
      `“${file}” is open. Sagitta does not know these keys; they are kept in the job as they are:`,
    savedWithout: 'The job is saved without what cannot be used:',
    saveFailed: (what: string) => `${what} could not be written.`,
  },

  sheet: {
    label: 'The drawing',
    views: 'Views',
    above: 'From above',
    tail: 'From the tail',
    middle: 'Along the middle',
    drawing: 'Working drawing, three views',
    heights: 'Heights drawn',
    times: (n: number) => `${n}×`,
    stale: 'Drawing of the last numbers that could be built',
    none: 'Nothing is drawn yet, as these numbers cannot be built. Put right what is named above.',
    lengths: (unit: 'mm' | 'in' | 'fraction') => `lengths in ${{ mm: 'mm', in: 'inch', fraction: 'inch, 1/64' }[unit]}`,
    problems: (n: number) =>
      n === 1 ? 'One thing keeps this from being built' : `${n} things keep this from being built`,
    show: (field: string) => `Go to ${field}`,
    gaps: (gaps: readonly (readonly [string, string])[]) =>
      `Exposure, the gap between crown and bridge: ${and(gaps.map(([name, gap]) => `${name} ${gap}`))}.`,
    aboveSays: (across: string, deep: string, fromNut: string) =>
      `The bridge is ${across} across and ${deep} deep; the saddle line lies ${fromNut} from the nut on the centre line.`,
    middleSays: (thick: string, light: string, name: string, angle: string) =>
      `The bridge is ${thick} thick at the centre; straightedge clearance ${light}; ${name} breaks by ${angle}.`,
  },

  numbers: {
    label: 'The numbers',
    usual: (range: string) => `Usual: ${range}.`,
    wordCalled: { pins: 'at the pins' } as Readonly<Record<string, string>>,
    unit: { mm: 'mm', in: 'in', fraction: 'in' },
    kindUnit: {
      angle: '°',
      force: 'N',
      frequency: 'Hz',
      count: '',
      slope: '%',
      cents: 'cents',
      share: '%',
      moment: 'N·mm',
      stress: 'MPa',
    },
  },

  strings: {
    label: 'The strings',
    scroll: 'The strings, table',
    key: 'String',
    remove: 'Remove',
    removeOne: (name: string) => `Remove ${name}`,
    addBass: 'Add one on the bass side',
    addTreble: 'Add one on the treble side',
    addStep: 'a string added',
    removeStep: (name: string) => `${name} removed`,
    noWrap: 'none',
    least: (n: number) => `A job has at least ${n} strings.`,
    most: (n: number) => `A job has at most ${n} strings.`,
    heads: {
      name: 'String',
      pitch: 'Pitch',
      gauge: 'Gauge',
      core: 'Core',
      material: 'Material',
      wrap: 'Wrap',
      setback: 'Setback',
    } as Readonly<Record<string, string>>,
  },

  findings: {
    label: 'What the checks say',
    none: 'Nothing can be checked yet, as these numbers cannot be built.',
    levels: { right: 'right', doubtful: 'doubtful', wrong: 'wrong' },
    counts: (wrong: number, doubtful: number, right: number) => `${wrong} wrong, ${doubtful} doubtful, ${right} right`,
    right: (n: number) => (n === 1 ? 'One check is right' : `${n} checks are right`),
    source: 'The usual ranges are common practice, from memory: change them for this job where you know better.',
    changeRange: 'Change the range',
    changeRangeOf: (check: string) => `Change the range: ${check}`,
    rangeFor: (check: string) => `${check}: range for this job`,
    bounds: { doubtfulFrom: 'doubtful from', from: 'right from', to: 'right to', doubtfulTo: 'doubtful to' },
    backToUsual: 'Back to the usual range',
    usualAgain: (check: string) => `usual range, ${check.toLowerCase()}`,
    looking: 'Looking for what would bring it right…',
    noWay: 'No change of one to three of these numbers alone brings it right.',
    ways: (check: string) => `What would bring it right: ${check}`,
    worsens: (checks: readonly string[]) => `Makes worse: ${and(checks)}.`,
    doIt: (way: string) => `Do it: ${way}`,
    doItShort: 'Do it',
    step: (check: string) => `advice on ${check.toLowerCase()}`,
  },

  figures: {
    how: 'How did this come about?',
    ask: (title: string, of: string, value: string) => `${title}${of === '' ? '' : `, ${of}`}: ${value}. How?`,
    askOf: (title: string) => `${title}: how?`,
    goTo: (field: string) => `Go to ${field}`,
    symbol: 'Sign',
    meaning: 'What it is',
    value: 'Value',
    source: (source: string) => `Source: ${source}`,
    back: 'Back',
    whatIf: (step: string) => `What if ${step} more here?`,
    whatIfSays: (exposure: string, angle: string) => `Exposure ${exposure}; break angle ${angle}.`,
    whatIfNone: 'Neither exposure nor break angle moves.',
    toAt: (from: string, fromName: string, to: string, toName: string) =>
      `${from} at ${fromName} to ${to} at ${toName}`,
    everywhere: (value: string) => `${value} at every string`,
  },

  outcome: {
    label: 'What comes of it',
    stale: 'These are the last numbers that could be built.',
    none: 'Nothing comes of these numbers yet, as they cannot be built. Put right what is named at the sheet.',
    clearance: 'Straightedge clearance',
    clearanceLight: 'light under the straightedge at the centre, strings off',
    clearanceHigh: 'too high at the centre: the straightedge, strings off, meets the bridge',
    woodUnder: 'Wood left under the slot',
    crown: 'Best saddle radius',
    crownMiss: (miss: string) => `misses the wanted heights by ${miss} at most`,
    gauge: 'Nearest gauge',
    ownGauge: { mm: 'Nearest gauge in mm', in: 'Nearest gauge in inches' },
    gaugeMiss: (miss: string) => `misses a string by ${miss} at most`,
    tension: 'Tension, all strings',
    downforce: 'Downforce, all strings',
    fromNut: 'Saddle line from the nut',
    fromNutSays: 'on the centre line, to the middle of the slot',
    perString: 'At each string',
    perStringScroll: 'At each string, table',
    heads: {
      string: 'String',
      exposure: 'Exposure',
      breakAngle: 'Break angle',
      tension: 'Tension',
      downforce: 'Down\u00adforce',
      saddleHeight: 'Saddle height',
    },
    sum: 'Sum',
    notes:
      'Exposure: saddle above the bridge. Saddle height: from the slot’s floor up to the string. Downforce: the string’s push on the saddle.',
    gauges: 'How far each gauge misses, string by string',
    gaugesScroll: 'Gauges, table',
    gaugesSays: 'Crown of that radius less the wanted height, rocked to the best fit; + stands too high.',
    gaugeHead: 'Gauge',
    worst: 'Largest',
  },

  templates: {
    title: 'Save templates',
    paper: 'Paper',
    pieces: 'Templates',
    faceUp: (face: string) => `lies with the ${face}`,
    pdf: 'PDF',
    pdfSays: 'All templates at true size on the paper chosen, with check bars on every sheet.',
    svgViews: 'SVG, three views',
    svgViewsSays: 'The working drawing on one page, at true size.',
    svgPiece: 'SVG',
    svgPieceOf: (title: string) => `SVG, ${title}`,
    stop: 'Stop',
    close: 'Close',
    done: (file: string) => `${file} is saved.`,
    stopped: 'Stopped; nothing was saved.',
    failed: (why: string) => `Nothing was saved. ${why}`,
    steps: {
      fonts: 'Fetching the fonts…',
      solve: 'Working out the numbers…',
      lay: 'Laying the templates on sheets…',
      write: 'Writing the file…',
    },
    stale:
      'These numbers cannot be built yet, so there is nothing to save. Put right first what the list above the drawing names.',
    cautionsTitle: 'Before you cut',
    cautions: [
      'Measure the check bars on every print first: a template is only as true as its print. Print at 100 %, without “fit to page”.',
      'Dust of bone, ebony and rosewood: use extraction and wear a respirator.',
      'At a bandsaw or belt sander hold small parts in a clamp.',
      'Slacken the strings before you work on the bridge, and protect your eyes.',
      'Follow local rules, and ask a qualified repairer if in doubt.',
    ],
  },
} as const;
