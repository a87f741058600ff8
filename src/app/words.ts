/*
 * Every sentence that the app itself says, in one place, so that another language is another file like this one. The words of the
 * fields stand in the schema (geometry/job.ts), those of the drawings in the views.
 */

const and = (list: readonly string[]): string =>
  list.length < 2 ? (list[0] ?? '') : `${list.slice(0, -1).join(', ')} and ${list.at(-1)}`;

type Item = Readonly<Record<string, number | string>>;
type ListName = 'guitar.measured' | 'top.holes' | 'top.rises' | 'top.braces' | 'bridge.points';

/** What is said of a list that is typed row by row. */
interface ListWords {
  readonly label?: string;
  readonly table: string;
  /** What a row to be added is called behind a column's name, and where a column there has a name of its own. */
  readonly one: string;
  readonly toAdd: Readonly<Record<string, string>>;
  readonly heads: Readonly<Record<string, string>>;
  /** An item's name, by what it holds and its place from 1. */
  readonly name: (item: Item, n: number) => string;
  readonly add: string;
  readonly addStep: (item: Item) => string;
  readonly removeStep: (name: string) => string;
  readonly most: (n: number) => string;
}

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
    three: 'All three views',
    shown: 'Shown',
    tools: 'Tools',
    toolsLabel: 'Looking closer and measuring',
    keys: (title: string) =>
      `${title}: plus and minus look closer and farther, 0 shows it whole, arrows move it while it is closer`,
    farther: 'Farther',
    fit: 'Fit',
    closer: 'Closer',
    share: (times: string) => `${times} as large as fitted`,
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

  compare: {
    present: 'the present design',
    alternative: (letter: string) => `alternative ${letter}`,
    addStep: (letter: string) => `alternative ${letter} kept`,
    removeStep: (letter: string) => `alternative ${letter} removed`,
    presentStep: (letter: string) => `alternative ${letter} made the present design`,
    radiiStep: 'radius against radius',
    topRadius: (radius: string) => `top ${radius}`,
    over: 'Laid over it',
    called: (letter: string, name: string) => (name === '' ? letter : `${letter}: ${name}`),
    showOver: (letter: string, name: string) =>
      name === '' ? `Alternative ${letter} over the drawing` : `Alternative ${letter}, ${name}, over the drawing`,
  },

  numbers: {
    label: 'The numbers',
    usual: (range: string) => `Usual: ${range}.`,
    wordCalled: {
      pins: 'at the pins',
      saddle: 'at the saddle',
      frets: 'from the frets',
      strung: 'from the strung guitar',
      readings: 'from the readings',
    } as Readonly<Record<string, string>>,
    orClear: (word: string) => `Or leave it empty: “${word}”.`,
    /** Where a number that is not typed comes from, behind the number. */
    from: {
      frets: (n: number, error: string) => `by ${n} frets, ± ${error}`,
      action: 'from the action and the old bridge',
      light: 'from the light over the old bridge',
      both: 'from both readings',
      assumed: 'assumed: not measured',
    },
    folds: {
      strung: 'Read while the old strings still hang at pitch: gives the neck’s height and the rise.',
      scar: 'The old bridge’s outline, which the new one has to cover; holes, belly and braces.',
      sections: 'Where the views cut the bridge.',
      stock: 'The wood, and how much larger its blank is.',
      plate: 'Inside, under the pins: worn, or capped.',
    } as Readonly<Record<string, string>>,
    nothingTaken: 'nothing taken',
    taken: (n: number, all: number) => `${n} of ${all} taken`,
    notMeasured: 'not measured',
    counts: (counts: readonly (readonly [n: number, one: string, many: string])[]) =>
      counts
        .filter(([n]) => n > 0)
        .map(([n, one, many]) => `${n} ${n === 1 ? one : many}`)
        .join(', '),
    countOf: {
      holes: ['hole', 'holes'],
      rises: ['reading of the top', 'readings of the top'],
      braces: ['brace', 'braces'],
    } as Readonly<Record<'holes' | 'rises' | 'braces', readonly [string, string]>>,
    stockState: (wood: string, allowance: string) => `${wood}, + ${allowance}`,
    sectionsState: (across: string, along: string) => `${across}, ${along}`,
    atMiddle: 'centre line',
    atSaddle: 'saddle',
    offMiddle: (far: string) => `${far} off the centre line`,
    behindFront: (far: string) => `${far} behind the front`,
    scarSize: (outline: string, across: string, deep: string) => `${outline}, ${across} × ${deep}`,
    plateState: (state: string, cap?: string) => `${state}, ${cap === undefined ? 'no cap' : `cap ${cap}`}`,
    remove: 'Remove',
    removeOne: (name: string) => `Remove ${name}`,
    frets: {
      label: 'Measured frets',
      about: 'Three or more give the true scale.',
      none: 'none',
      count: (n: number) => (n === 1 ? '1 fret' : `${n} frets`),
      miss: 'Off',
      more: (n: number) => `${n} more, and they give the scale and how sure it is.`,
      fitted: (n: number, scale: string, error: string) => `By ${n} frets: ${scale} ± ${error} (standard error).`,
      take: 'Take the scale from them',
    },
    lists: {
      'guitar.measured': {
        table: 'Measured frets, table',
        one: 'to add',
        toAdd: { fret: 'Fret to add', distance: 'From the nut to the fret to add' },
        heads: {},
        name: (item: Item) => `fret ${item.fret}`,
        add: 'Add a fret',
        addStep: (item: Item) => `fret ${item.fret} added`,
        removeStep: (name: string) => `${name} removed`,
        most: (n: number) => `A job has at most ${n} measured frets.`,
      },
      'top.holes': {
        label: 'Holes',
        table: 'Holes, table',
        one: 'hole to add',
        toAdd: {},
        heads: { what: 'Hole' },
        name: (_: Item, n: number) => `hole ${n}`,
        add: 'Add',
        addStep: () => 'a hole added',
        removeStep: (name: string) => `${name} removed`,
        most: (n: number) => `A job has at most ${n} holes.`,
      },
      'top.rises': {
        label: 'Belly or dip of the top',
        table: 'Belly or dip of the top, table',
        one: 'reading to add',
        toAdd: {},
        heads: {},
        name: (_: Item, n: number) => `top’s reading ${n}`,
        add: 'Add',
        addStep: () => 'a reading of the top added',
        removeStep: (name: string) => `${name} removed`,
        most: (n: number) => `A job has at most ${n} readings of the top.`,
      },
      'top.braces': {
        label: 'Braces',
        table: 'Braces, table',
        one: 'brace to add',
        toAdd: {},
        heads: { across: 'Across', fromNut: 'From the nut', acrossTo: 'to across', fromNutTo: 'to from the nut' },
        name: (item: Item, n: number) => (item.name === '' ? `brace ${n}` : String(item.name)),
        add: 'Add',
        addStep: () => 'a brace added',
        removeStep: (name: string) => `${name} removed`,
        most: (n: number) => `A job has at most ${n} braces.`,
      },
      'bridge.points': {
        label: 'Points of the outline',
        table: 'Points of the outline, table',
        one: 'point to add',
        toAdd: {},
        heads: {},
        name: (_: Item, n: number) => `point ${n}`,
        add: 'Add',
        addStep: () => 'a point added',
        removeStep: (name: string) => `${name} removed`,
        most: (n: number) => `An outline has at most ${n} points.`,
      },
    } satisfies Readonly<Record<string, ListWords>> as Readonly<Record<ListName, ListWords>>,
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
    set: 'Set',
    putIn: 'Put in',
    setStep: (name: string) => `set: ${name}`,
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
    needed: (name: string) => `Setback needed, ${name}`,
    heads: {
      name: 'String',
      pitch: 'Pitch',
      gauge: 'Gauge',
      core: 'Core',
      material: 'Material',
      wrap: 'Wrap',
      nutPlace: 'At the nut',
      saddlePlace: 'At the saddle',
      setback: 'Setback',
      cents: 'Heard at 12',
    } as Readonly<Record<string, string>>,
  },

  setUp: {
    label: 'Set-up',
    about:
      'Once the guitar is strung up at pitch, with relief and nut set: measure the action, and listen at fret 12. What to take off the saddle stands here at once.',
    caution: 'Slacken the strings before you pull the saddle.',
    note: 'Note',
    add: 'New reading',
    addStep: 'a reading added',
    remove: 'Remove this reading',
    removeStep: (n: number) => `reading ${n} removed`,
    title: (n: number) => `Reading ${n}`,
    inTitle: (n: number) => `reading ${n}`,
    scroll: (n: number) => `Reading ${n}, table`,
    most: (n: number) => `A job holds at most ${n} readings. Remove the oldest first.`,
    stale: 'What comes of it is of the last numbers that could be built.',
    none: 'What comes of it stands here once the numbers can be built.',
    missing: (names: readonly string[]) =>
      `Still to measure: the action at ${and(names)}. What to take off hangs on the two outer strings.`,
    isThere: 'Both outer strings are where they are wanted.',
    takeOff: (bass: string, treble: string) =>
      `Take ${bass} off the bottom at the bass end and ${treble} at the treble end.`,
    nothing: 'nothing',
    tooLow: (lows: readonly (readonly [name: string, by: string])[], shim: string) =>
      `The saddle is ${and(lows.map(([name, by]) => `${by} too low at ${name}`))}: make a new saddle, or lay a shim of ${shim} under this one and measure again.`,
    tooHigh: (name: string, by: string) => `At ${name} it is ${by} too high.`,
    unreached: (name: string, to: string, by: string, isBehind: boolean) =>
      `${name}: file to ${to} from the front face, as far as this saddle’s crown carries; ${by} further ${isBehind ? 'back' : 'forward'} is missing.`,
    breaks: (list: readonly (readonly [name: string, fromFront: string])[]) =>
      `File the break points, from the saddle’s front face: ${and(list.map(([name, fromFront]) => `${name} to ${fromFront}`))}.`,
    reckoned: 'In italics: not measured, reckoned from its neighbours.',
    back: (by: string) => `back ${by}`,
    forward: (by: string) => `forward ${by}`,
    missingBy: (by: string) => `${by} missing`,
    filesPeak:
      'A break point that moves forward files away the old peak, and the string comes down: leave height for it.',
    fileLast: 'Break points are best filed once the action is right.',
    enter: 'Enter goes to the next string.',
    heads: {
      string: 'String',
      wanted: 'Wanted action',
      action: 'Action measured',
      now: 'Action now',
      cents: 'Heard at 12',
      takeOff: 'Take off the bottom',
      afterLine: 'Action, cut to that line',
      afterSquare: 'Action, only squared',
      fromFront: 'Break point from front',
      shift: 'it moves',
      life: 'Left to lower at 12',
      limit: 'limit',
    },
  },

  findings: {
    label: 'What the checks say',
    none: 'Nothing can be checked yet, as these numbers cannot be built.',
    levels: { right: 'right', doubtful: 'doubtful', wrong: 'wrong' },
    counts: (wrong: number, doubtful: number, right: number) => `${wrong} wrong, ${doubtful} doubtful, ${right} right`,
    summary: (wrong: number, doubtful: number) =>
      wrong + doubtful === 0
        ? 'All checks are right'
        : `Checks: ${[wrong > 0 ? `${wrong} wrong` : '', doubtful > 0 ? `${doubtful} doubtful` : ''].filter(Boolean).join(', ')}`,
    right: (n: number) => (n === 1 ? 'One check is right' : `${n} checks are right`),
    source: 'The usual ranges are common practice, from memory: change them for this job where you know better.',
    changeRange: 'Change the range',
    changeRangeOf: (check: string) => `Change the range: ${check}`,
    rangeFor: (check: string) => `${check}: range for this job`,
    bounds: { doubtfulFrom: 'doubtful from', from: 'right from', to: 'right to', doubtfulTo: 'doubtful to' },
    backToUsual: 'Back to the usual range',
    usualAgain: (check: string) => `usual range, ${check.toLowerCase()}`,
    looking: 'Looking for what would bring it right…',
    noWay: 'Nothing that may be changed brings it right.',
    waysLater: 'Ways to bring them right come once the numbers can be built.',
    thenMeasure: 'Type it once it is measured.',
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
    askThem: 'Press a figure to see how it came about.',
    stale: 'These are the last numbers that could be built.',
    none: 'Nothing comes of these numbers yet, as they cannot be built. Put right what is named at the sheet.',
    clearanceLight: 'light under the straightedge at the centre, strings off',
    clearanceHigh: 'too high at the centre: the straightedge, strings off, meets the bridge',
    crownMiss: (miss: string) => `misses the wanted heights by ${miss} at most`,
    ownGauge: { mm: 'Nearest gauge in mm', in: 'Nearest gauge in inches' },
    gaugeMiss: (miss: string) => `misses a string by ${miss} at most`,
    fromNutSays: 'on the centre line, to the middle of the slot',
    slantSays: 'over 100 mm across; negative: the bass end lies nearer the tail',
    perString: 'At each string',
    breakPoints: 'Break points',
    pull: 'What the strings pull',
    saddle: 'The saddle’s blank',
    table: (title: string) => `${title}, table`,
    heads: {
      string: 'String',
      exposure: 'Exposure',
      breakAngle: 'Break angle',
      tension: 'Tension',
      downforce: 'Downforce',
      saddleHeight: 'Saddle height',
      lifeLeft: 'Left to lower',
      lifeLimit: 'limit',
      neededSetback: 'Setback wanted',
      setback: 'Setback made',
      fromFront: 'From front face',
      fromBassEnd: 'From bass end',
      fret12ToSaddle: 'From fret 12',
      nutToSaddle: 'From the nut',
    } as Readonly<Record<string, string>>,
    limits: { exposure: 'exposure', breakAngle: 'break angle' },
    pastBy: (by: string) => `past by ${by}`,
    sum: 'Sum',
    load: 'Load on the glue line',
    loadWhat: 'What',
    held: { pins: 'Pins', wornPlate: 'Plate worn', tied: 'Tied' },
    asItIs: 'this job',
    loads: {
      down: 'Down on the top, N',
      moment: 'Tipping moment, N·mm',
      meanStress: 'Mean across, MPa',
      rearStress: 'Rear edge, MPa',
      meanShear: 'Mean shear, MPa',
    },
    loadSays:
      'An estimate, to compare bridges by: + pulls the glue open, and peel gathers at the edge, so it never says that a joint is safe. For scale: spruce gives way across its grain at about 2.6 MPa, which such means never reach.',
    neck: 'Neck or bridge',
    neckSays: {
      bridge: (thick: string) => `A bridge ${thick} thick suits this neck angle.`,
      either: (thick: string) =>
        `Only a bridge ${thick} thick, at the edge of what is usual, suits this neck angle; a neck reset would be the better repair.`,
      reset: () => 'No usual bridge suits this neck angle: reset the neck rather than make a bridge to suit it.',
    },
    thicknesses: (from: string, to: string) => `${from} to ${to}`,
    unread: (labels: readonly string[]) =>
      `Still to read on the strung guitar: ${and(labels.map((label) => `“${label}”`))}.`,
    reset: 'What a neck reset would take instead',
    resetOffHeel: 'at the heel’s end, tapering to nothing at the top’s edge; negative: off the joint’s upper edge',
    resetFor: (thickness: string) => `over the bridge, for one ${thickness} thick: down if negative`,
    readings: 'What was measured',
    stock: 'The stock',
    position: 'The bridge’s position',
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
