/*
 * Every sentence that the app itself says; those that the first drawing needs stand in `first-words.ts` beside this, so that another language is two files like these. The words of the
 * fields stand in the schema (geometry/job.ts), those of the drawings in the views.
 */

import { enumerate as and } from '../../geometry/enumerate.ts';
import { type DecimalMark, decimalText } from '../../geometry/units.ts';
import { firstWords } from './first-words.ts';

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

/** A size in the storage, in megabytes. */
const megabytes = (bytes: number, mark: DecimalMark): string => {
  const size = bytes / 1e6;
  return `${size < 10 ? decimalText(size, 1, mark) : Math.round(size)} MB`;
};

export const words = {
  ...firstWords,
  /** Said of the demo, while nobody has changed it. */
  introDemo: 'The guitar shown is an example; “New job…” begins with yours.',
  intro: [
    'Type what you measure on the guitar, in its field or on the drawing, where arrows can be dragged too: Sagitta draws the bridge and its saddle as you type, and says what comes of it.',
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
    /** The button under which they lie where there is little room. */
    jobs: 'Jobs',
    job: 'Job',
    date: 'Date',
    units: 'Units',
    decimal: {
      label: 'Decimals with',
      choices: {
        browser: (mark: DecimalMark) => `browser’s: ${mark}`,
        point: () => 'point',
        comma: () => 'comma',
      },
      says: 'Of this device, on screen and on paper, and no part of the job: the mark of the browser’s language, or the one chosen. Numbers can be typed with either.',
    },
    newJob: 'New job…',
    open: 'Open job…',
    save: 'Save job',
    templates: 'Save templates',
    undo: 'Undo',
    redo: 'Redo',
    /** Follows on Undo and Redo. */
    ofStep: (step: string) => `: ${step}`,
    drop: 'Let go to open the job',
  },

  steps: {
    label: 'Undo and redo',
    button: 'Steps…',
    title: 'Steps of this sitting',
    about: 'Press a step to have everything as it was after it. Those after it stay here until something else is done.',
    first: 'As it stood at first',
    unnamed: 'A change',
    now: 'now',
    none: 'Nothing has been done yet.',
    close: 'Close',
  },

  skips: {
    label: 'Skip to',
    on: (title: string) => `Skip to “${title}”`,
    elsewhere: 'Skip elsewhere',
  },

  drawer: {
    open: 'Numbers',
    close: 'Close',
  },

  newJob: {
    step: 'New job',
    title: 'New job',
    way: 'Begin with',
    ways: { asked: 'What you measured', starter: 'A starter' },
    about: 'Type what you have measured; leave empty what you have not. Everything can be changed later.',
    byFrets: 'I measured frets; work the scale out from them',
    fretLabel: (label: string, n: number) => `${label}, row ${n}`,
    moreFrets: (n: number) => `${n} more ${n === 1 ? 'fret gives' : 'frets give'} the scale.`,
    setHelp: 'A set to start from; each string can be changed later.',
    standIn: (value: string) => `assumed: ${value}`,
    assumedOne: (field: string, value: string) => `${field}: ${value}`,
    assumed: 'The new job stands. These were not measured and are assumed; type them once they are:',
    rest: 'Everything else begins at what is usual, and is assumed until you type it: go through the numbers in bench order.',
    begin: 'Begin the job',
    close: 'Close',
    open: 'Open',
    openOf: (starter: string) => `Open ${starter}`,
  },

  notices: {
    label: 'Messages',
    close: 'Close',
    notOpened: (file: string) => `“${file}” was not opened. Your job stands as it was.`,
    unknown: (file: string) =>
      `“${file}” is open. Sagitta does not know these keys; they are kept in the job as they are:`,
    savedWithout: 'The job is saved without what cannot be used:',
    saveFailed: (what: string) => `${what} could not be written.`,
  },

  keep: {
    none: (why: string) =>
      `This browser does not let Sagitta keep the job (${why}). You can work on; save the job as a file before you leave.`,
    trouble: (why: string) =>
      `The last changes could not be kept in this browser (${why}). They stand here and are tried again; save the job as a file before you leave.`,
    taken:
      'A newer Sagitta was opened in another window, and this one lets it have the jobs. Reload this window to go on; save the job as a file first if its last changes matter.',
    lost: 'The browser took its storage away, as when its data is cleared. The job stands here; save it as a file before you leave.',
    reasons: {
      QuotaExceededError: 'its storage is full',
      SecurityError: 'its storage is switched off for this page',
      InvalidStateError: 'its storage is closed, as in a private window',
      UnknownError: 'its storage failed',
      TimeoutError: 'its storage does not answer: an older window of Sagitta may hold it; close it and reload this one',
    },
    first: 'As it came',
    takenOver: 'From an earlier version',
    unreadable:
      'The job that stood here last cannot be read, so the demo stands here. Nothing of it was thrown away: save it as a file, and open an earlier state of it from the shelf.',
    saveUnreadable: 'Save what is kept of it',
    saveJob: 'Save job',
    elsewhere: (field?: string) => (field === undefined ? 'in another window' : `${field}, in another window`),
  },

  opening: {
    link: 'the link',
    pasted: 'what was pasted',
    same: (name: string) => `It is the same as “${name}” on the shelf, and lies beside it.`,
    beside: (name: string) => `“${name}” lies on the shelf already; this one lies beside it and differs in:`,
    shelf: (file: string, count: number) =>
      `${count === 1 ? 'One job' : `${count} jobs`} of “${file}” now ${count === 1 ? 'lies' : 'lie'} on the shelf, beside those that were there.`,
    noShelf: 'It holds many jobs, and this browser keeps none. Open it in a browser that does.',
    newer: (file: string, version: number) =>
      `“${file}” was written by a newer Sagitta (version ${version} of its format). It can be opened as far as this one understands it; open it with a newer Sagitta to have all of it.`,
    replaced: (path: string) => `${path} is not understood: a new job’s value would stand there.`,
    openNewer: 'Open what is understood',
    tooLarge: (size: number, most: number, mark: DecimalMark) =>
      `The file is ${megabytes(size, mark)}; none of Sagitta’s is larger than ${megabytes(most, mark)}.`,
  },

  share: {
    title: (name: string) => `Share ${name}`,
    says: 'Whoever opens this link gets a copy of the job as it is now. The job is in the link itself, behind the #: nothing is sent to anyone but whom you give it to.',
    link: 'Link',
    copy: 'Copy the link',
    copied: 'The link is copied.',
    notCopied: 'The browser did not allow it: select the link and copy it.',
    qr: 'QR code of the link',
    qrSays: 'Hold another device’s camera to it.',
    noQr: (length: number, most: number) =>
      `The link has ${length} characters, and a QR code holds ${most}: send the link, or the job’s file.`,
    tooLong: (length: number, most: number) =>
      `The job is too large for a link: it would have ${length} characters, and many programs cut links longer than ${most}. Send the job’s file instead.`,
    /** Why a link cannot be read: each goes on from “The link”. */
    broken: {
      none: 'holds no job',
      long: (length: number, most: number) => `has ${length} characters, more than the ${most} that one of Sagitta has`,
      odd: 'holds characters that no link of Sagitta has',
      cut: 'is cut short or was changed on its way',
      large: (most: number) => `unpacks to more than ${most} bytes`,
      noText: 'does not hold a text',
    },
    refused: (why: string) => `The link ${why}. Ask for it again, or for the job’s file.`,
    close: 'Close',
  },

  crash: {
    parts: {
      drawing: 'The drawing',
      numbers: 'The numbers',
      works: 'What stands here',
      results: 'What comes of the numbers',
      dialog: 'What was to open',
    },
    says: (part: string, why: string) =>
      `${part} cannot be shown, through a fault of Sagitta’s, not of yours (${why}). The job stands as it is, and all else works. It is tried again with the next change of the job.`,
    again: 'Try again',
    save: 'Save job',
  },

  offline: {
    ready: 'A new version of Sagitta lies ready. It starts when you say so; your job is kept first.',
    start: 'Start the new version',
    taken:
      'A new version of Sagitta was started in another window. Reload this one to go on with it; your job is kept.',
    missing:
      'A part of the page could not be loaded: there is no network, or a newer version stands in its place. The job is as you left it; reload the page once there is a network.',
    single:
      'This is Sagitta as one file. This browser keeps your jobs in one place with those of all pages opened from files, and may not keep them for long: save each job as a file, and often.',
    reload: 'Reload',
    again: 'Try again',
    refused:
      'The page was not reloaded: what is typed in these fields cannot be used, and would be lost. Put it right or clear it first.',
    unsafe:
      'The page was not reloaded: the last changes are not kept yet. They are tried again; save the job as a file, or wait a moment.',
    unkept: 'The page was not reloaded: this browser does not keep the job. Save it as a file first.',
  },

  shelf: {
    button: 'Jobs…',
    fileSays: 'Jobs of Sagitta, each as in a file of its own. Open this file in Sagitta to put them on the shelf.',
    noShelf: 'It is no file of a shelf. Choose a file that Sagitta saved.',
    newerShelf: (found: string, known: number) =>
      `It was written by a newer Sagitta: version ${found}, and this one reads version ${known}. Open it with a newer Sagitta.`,
    oddShelf: (known: number) =>
      `It does not say of which version it is: its "version" would be ${known}. Choose a file that Sagitta saved.`,
    tooMany: (count: number, most: number) => `It holds ${count} jobs; at most ${most} are read at once. Split it.`,
    noJob: 'no job stands there',
    refused: (number: number, name: string, why: string) => `Job ${number}${name === '' ? '' : `, ${name}`}: ${why}`,
    nothing: 'nothing',
    differs: (path: string) => path,
    differsBy: (field: string, here: string, there: string) => `${field}: ${here}, there ${there}`,
    differsMore: (count: number) => `and ${count} more`,
    share: 'Share',
    shareOf: (name: string) => `Share ${name}`,
    saveAll: 'Save all as one file',
    savedAll: (count: number) => `${count === 1 ? 'One job is' : `${count} jobs are`} saved as one file.`,
    openFiles: 'Open files…',
    folder: 'Save all into a folder…',
    savedInto: (count: number, folder: string) => `${count} files are written into “${folder}”.`,
    title: 'Jobs on this device',
    search: 'Search by name or date',
    where: 'Where',
    places: (place: 'shelf' | 'archive' | 'bin', count: number) =>
      `${{ shelf: 'On the shelf', archive: 'Put away', bin: 'In the bin' }[place]} (${count})`,
    unnamed: 'Unnamed job',
    here: 'at the bench',
    notBuilt: (count: number) =>
      count === 1 ? 'One thing keeps it from being built.' : `${count} things keep it from being built.`,
    dated: (date: string, changed: string) => `${date} · changed ${changed}`,
    open: 'Open',
    openOf: (name: string) => `Open ${name}`,
    rename: 'Rename',
    renameOf: (name: string) => `Rename ${name}`,
    newName: 'New name',
    keepName: 'Keep the name',
    duplicate: 'Duplicate',
    duplicateOf: (name: string) => `Duplicate ${name}`,
    duplicated: (name: string) => `A copy of “${name}” lies on the shelf.`,
    copyOf: (name: string) => `${name} (copy)`,
    copied: 'Copy',
    states: 'Earlier states',
    statesOf: (name: string) => `Earlier states of ${name}`,
    statesSay: 'The last fifty, the newest first. Going back is a step that can be undone.',
    unnamedStep: 'A change',
    asItIs: 'As it is',
    goBack: 'Go back to it',
    backTo: (step: string) => `back to “${step}”`,
    closeStates: 'Close the earlier states',
    archive: 'Put away',
    archiveOf: (name: string) => `Put away: ${name}`,
    putBack: 'Put back',
    backOf: (name: string) => `Put back: ${name}`,
    bin: 'Delete',
    binOf: (name: string) => `Delete ${name}`,
    remove: 'Delete for good',
    removeOf: (name: string) => `Delete for good: ${name}`,
    removed: (name: string) => `“${name}” is gone for good.`,
    moved: {
      shelf: (name: string) => `“${name}” lies on the shelf again.`,
      archive: (name: string) => `“${name}” is put away.`,
      bin: (name: string) => `“${name}” lies in the bin.`,
    },
    binSays: 'What lies in the bin goes for good after 30 days.',
    undo: 'Take that back',
    undone: 'Taken back.',
    gone: 'It is no longer on this device.',
    failed: (why: string) => `That did not work, and nothing was changed: ${why}`,
    empty: 'Nothing lies here yet. A job is kept from its first change on.',
    noneFound: 'None here.',
    more: (count: number) => `Show more (${count})`,
    used: (usage: number, quota: number, mark: DecimalMark) =>
      `The browser’s storage holds ${megabytes(usage, mark)}${quota > 0 ? ` of ${megabytes(quota, mark)} that it may` : ''}.`,
    nearlyFull: 'It is nearly full: save jobs as files, and delete those that are done.',
    firm: 'The browser has promised not to clear it by itself.',
    mayBeCleared: 'When the device runs out of room, the browser may clear it by itself.',
    notFirm:
      'The browser did not promise to keep it: when the device runs out of room it may clear it. Save jobs as files now and then.',
    askFirm: 'Ask it not to',
    close: 'Close',
  },

  compare: {
    present: 'the present design',
    alternative: (letter: string) => `alternative ${letter}`,
    addStep: (letter: string) => `alternative ${letter} kept`,
    removeStep: (letter: string) => `alternative ${letter} removed`,
    presentStep: (letter: string) => `alternative ${letter} made the present design`,
    radiiStep: 'radii kept to compare',
    topRadius: (radius: string) => `top ${radius}`,
    label: 'Alternatives',
    about:
      'Keep the design as it is now as an alternative, then change what you like: both stay on the sheet, over each other. What is measured on the guitar is every alternative’s.',
    add: 'Keep this design as an alternative',
    full: (n: number) => `A job has at most ${n} alternatives. Remove one first.`,
    presentHead: 'present',
    unnamed: 'unnamed',
    nameOfPresent: 'Name of the present design',
    nameOf: (letter: string) => `Name of alternative ${letter}`,
    makePresent: 'Make it the present one',
    makePresentOf: (letter: string) => `Make it the present one: alternative ${letter}`,
    remove: 'Remove',
    removeOf: (letter: string) => `Remove: alternative ${letter}`,
    unbuilt: 'It cannot be built:',
    calledPresent: (name: string) => (name === '' ? 'the present design' : `the present design, ${name}`),
    radii: (unit: string) => `The same bridge at top radii of, ${unit}`,
    addRadii: 'Keep one of each',
    rowEmpty: 'Nothing is typed here. Type radii with semicolons between them, for example 14 in; 16 in; flat.',
    rowPresent: (radius: string) => `${radius} is the present design’s own radius; leave it out.`,
    rowTwice: (radius: string) => `${radius} stands here twice; leave one out.`,
    rowLong: (n: number, room: number) =>
      `There ${n === 1 ? 'is 1 radius' : `are ${n} radii`}, and letters for ${room} more ${room === 1 ? 'alternative' : 'alternatives'}. Leave some out, or remove an alternative first.`,
    beside: 'Beside each other',
    scale: 'All on one scale: across at the saddle, and from above.',
    heights: ['Heights', ' of the designs beside each other'] as const,
    across: (design: string) => `Across at the saddle, ${design}`,
    above: (design: string) => `From above, ${design}`,
    inShort: (exposure: readonly [string, string], angle: readonly [string, string]) =>
      `Exposure ${exposure[0]} to ${exposure[1]}; breaks by ${angle[0]} to ${angle[1]}.`,
    table: 'What differs, and what comes of it',
    tableScroll: 'What differs between the designs, table',
    what: 'What',
    differs: 'What differs',
    nothingDiffers: 'Nothing differs yet: change the present design.',
    comesOfIt: 'What comes of it',
    none: '–',
    point: (n: number) => `point ${n} of the outline`,
    least: { exposure: 'Exposure, least', breakAngle: 'Break angle, least' },
    most: { exposure: 'Exposure, most', breakAngle: 'Break angle, most' },
    at: (value: string, string: string) => `${value} at ${string}`,
    thickness: 'Bridge thickness at the centre',
    load: (string: string) => `Push on the saddle, ${string}`,
    loadAll: 'Push on the saddle, all strings',
    chart: (unit: string) => `Gap between crown and bridge top along the saddle, ${unit}`,
    chartSays: (designs: readonly string[]) =>
      `A line for each of: ${designs.join('; ')}. The numbers at the strings stand in the table below.`,
    chartKey: 'The heavy line is the present design; each alternative has its letter at its right end.',
    bass: 'bass',
    treble: 'treble',
    acrossSaddle: 'across the saddle',
    gaps: 'The gaps in numbers',
    gapsScroll: 'Gap at each string, table',
    over: 'Laid over it',
    called: (letter: string, name: string) => (name === '' ? letter : `${letter}: ${name}`),
    showOver: (letter: string, name: string) =>
      name === '' ? `Alternative ${letter} over the drawing` : `Alternative ${letter}, ${name}, over the drawing`,
  },

  measuring: {
    rulerSays:
      'Press two places, or draw it out from one to the other; or move the cross with the arrow keys (Shift: finely) and press Enter. It is caught by what is near; N takes the next of it, Escape begins anew.',
    rulerTap: 'Tap two places. Each is caught by what is near.',
    second: 'And the second place.',
    other: 'Next place near it',
    anew: 'Begin anew',
    /** What a place is caught by. */
    kinds: {
      end: 'end',
      crossing: 'crossing',
      centre: 'centre',
      middle: 'middle',
      square: 'square to the first',
      edge: 'on the edge',
      free: 'free',
    },
    aimed: (kind: string, reading: string) => `${kind}${reading === '' ? '' : `, ${reading}`}`,
    apart: {
      distance: (d: string) => `Distance ${d}`,
      across: (d: string) => `across ${d}`,
      along: (d: string) => `along ${d}`,
      height: (d: string) => `height ${d}`,
    },
    noneShared: 'These two views have nothing in common that could be measured between them.',

    layOn: 'Lay it on the',
    surfaces: {
      board: 'fingerboard at the last fret',
      deck: 'bridge’s deck',
      crown: 'saddle’s crown',
      top: 'soundboard under the bridge',
    },
    radius: 'Radius of the gauge',
    gauges: 'Gauges of the bench',
    chooseGauge: 'of the bench…',
    tooTight: (radius: string, least: string) =>
      `A gauge of ${radius} is too tight to span it; take one of ${least} at least.`,
    notAbove: (radius: string) => `A radius of ${radius} is none; type one above 0, or “flat” for a straightedge.`,
    rests: {
      one: 'Pressed down in the middle, it rests there alone.',
      two: (left: string, right: string) =>
        `Pressed down in the middle, it rests ${left} off the centre line on the bass side and ${right} on the treble side.`,
    },
    lightTable: 'Light under the gauge, table',
    light: 'Light',
    ends: ['Bass end', 'Treble end'],

    card: 'Measure this screen',
    cardSays: (width: string, height: string) =>
      `Hold a bank card to the glass (${width} × ${height} mm, ISO/IEC 7810, ID-1), its upper left corner on the frame’s, and move the slider until the frame is as large as the card.`,
    cardSlider: 'Size of the frame',
    cardTyped: 'Pixels to 100 mm',
    cardRange: (typed: string, least: number, most: number) =>
      `“${typed}” is no size of a screen’s pixels; type a number from ${least} to ${most}.`,
    cardTrue: 'It holds as long as neither the browser’s zoom nor the screen is changed; then it is measured anew.',
    cardTake: 'It is as large as the card',
    cardClose: 'Close',
    isTrue: (px: string) => `True size: 100 mm take ${px} px on this screen. Heights are drawn as they are.`,
    again: 'Measure the screen anew',
  },

  hands: {
    typeAt: (field: string, value: string) => `${field}, ${value}: type`,
    onDrawing: (field: string) => `${field}, on the drawing`,
    otherSide: (field: string) => `${field}, on the drawing’s other side`,
    point: 'point',
    now: (field: string, value: string) => `${field} ${value}`,
    takenBack: (step: string) => `taken back: ${step}`,
    told: (
      step: string,
      gaps: readonly string[],
      turned: Readonly<Record<'wrong' | 'doubtful' | 'right', readonly string[]>>,
    ) =>
      [
        gaps.length === 0 ? `${step}: the exposure stays.` : `${step}: exposure at ${and(gaps)}.`,
        ...(['wrong', 'doubtful'] as const).map(
          (level) => turned[level].length > 0 && `Now ${level}: ${and(turned[level])}.`,
        ),
        turned.right.length > 0 && `Right again: ${and(turned.right)}.`,
      ]
        .filter(Boolean)
        .join(' '),
    toldNotBuilt: (number: string) => `${number}: cannot be built so; the drawing stays.`,
    atLimit: 'as far as it may go',
    /** Where a number goes no farther: what is in the way of a step more. */
    barred: (why: string) => `No farther can be built. ${why}`,
    notBuilt: (why: string) => `Cannot be built so. ${why}`,
    keys: 'Drag it; with Shift or Alt it goes free of steps. Arrow keys move it a step, with Shift a large one, with Alt a fine one. Enter: type. Escape: put back.',
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
        heads: {
          across: 'Across',
          fromNut: 'From the nut',
          acrossTo: 'Across, other end',
          fromNutTo: 'From the nut, other end',
        },
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
      shift: 'Break point moves',
      life: 'Left to lower at 12',
      limit: 'Limited by',
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
    whatIf: (step: string) => `${step} more here:`,
    whatIfSays: (exposure: string, angle: string) => `exposure ${exposure}, break angle ${angle}.`,
    whatIfNone: 'neither exposure nor break angle moves.',
    toAt: (from: string, fromName: string, to: string, toName: string) =>
      `${from} at ${fromName} to ${to} at ${toName}`,
    at: (value: string, name: string) => `${value} at ${name}`,
    to: (least: string, most: string) => `${least} to ${most}`,
    stays: 'stays',
  },

  outcome: {
    label: 'What comes of it',
    askThem: 'Press a figure to see how it came about.',
    stale: 'These are the last numbers that could be built.',
    none: 'Nothing comes of these numbers yet, as they cannot be built. Put right what is named at the sheet.',
    clearance: (is: 'clears' | 'meets', neck = '') =>
      `${
        is === 'clears'
          ? 'Light under the straightedge at the centre, strings off.'
          : 'A straightedge, strings off, would run that far below the bridge’s top at the centre.'
      } ${neck}`.trim(),
    crownMiss: (miss: string) => `misses the wanted heights by ${miss} at most`,
    ownGauge: { mm: 'Nearest gauge in mm', in: 'Nearest gauge in inches' },
    gaugeMiss: (miss: string) => `misses a string by ${miss} at most`,
    fromNutSays: 'on the centre line, to the middle of the slot',
    slantSays: 'of the way across; negative: the bass end lies nearer the tail',
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
      lifeLimit: 'Limited by',
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
    loadSays: (strength: string) =>
      `An estimate, to compare bridges by: + pulls the glue open, and peel gathers at the edge, so it never says that a joint is safe. For scale: spruce gives way across its grain at about ${strength}, which such means never reach.`,
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
    parts: 'Ways to paper and cutter',
    tabs: { pieces: 'Templates', pages: 'Pages', printer: 'Printer', cutter: 'Cutter', settings: 'Settings' },
    pdf: 'Save PDF',
    pdfSays: (printer?: { readonly name: string; readonly isProved: boolean }) =>
      `The ticked templates at true size, check bars on every sheet. ${
        printer === undefined
          ? 'Not corrected for any printer.'
          : printer.isProved
            ? `Corrected for ${printer.name}.`
            : `${printer.name} is not proved, and nothing is corrected for it.`
      }`,
    typedSize: (paper: string) => `${paper}: its size is typed under “Settings”.`,
    svgViews: 'SVG, three views',
    svgViewsSays: 'The working drawing on one page, at true size.',
    svgPiece: 'SVG',
    svgPieceOf: (title: string) => `SVG, ${title}`,
    cutPiece: 'For the cutter',
    cutPieceOf: (title: string) => `For the cutter, ${title}`,
    stop: 'Stop',
    close: 'Close',
    done: (files: readonly string[]) => `${and(files)} ${files.length === 1 ? 'is' : 'are'} saved.`,
    zipped: (zip: string, files: readonly string[]) =>
      `${zip} is saved. In it are ${files.length} SVG files${files.length > 3 ? `, from ${files[0]} to ${files.at(-1)}` : `: ${and(files)}`}.`,
    lacking: (characters: readonly string[]) =>
      `No font on this device has ${characters.slice(0, 12).join(' ')}${characters.length > 12 ? ' …' : ''}: the PDF has the code${characters.length === 1 ? '' : 's'} in place of ${characters.length === 1 ? 'it' : 'them'}. Install a font that has ${characters.length === 1 ? 'it' : 'them'}, and save again.`,
    stopped: 'Stopped; nothing was saved.',
    failed: (why: string) => `Nothing was saved. ${why}`,
    noWorker: 'The part that draws sheets and writes PDF files could not be started. Reload the page.',
    noFont: (status: number) => `The font could not be fetched (${status}). Check the connection and try again.`,
    noneTicked: 'No template is ticked, so there is nothing to print. Tick one at least.',
    steps: {
      fonts: () => 'Fetching the fonts…',
      solve: () => 'Working out the numbers…',
      draw: (n: number, of: number, title: string) => `Drawing template ${n} of ${of}: ${title}…`,
      lay: () => 'Laying the templates on sheets…',
      write: (n: number, of: number) => `Writing sheet ${n} of ${of}…`,
      cut: (n: number, of: number, title: string) => `Following template ${n} of ${of}: ${title}…`,
    },
    stale:
      'These numbers cannot be built yet, so there is nothing to save. Put right first what the list above the drawing names.',

    set: 'Which are printed',
    usualSet: 'Usual set',
    all: 'All',
    none: 'None',
    ticked: (n: number, of: number) => `${n} of ${of} ticked`,
    faceUp: (face: string) => `Face up: ${face}.`,
    picture: (title: string) => `Drawing of ${title}`,
    copies: (title: string) => `Copies of ${title}`,
    fewer: (title: string) => `One fewer of ${title}`,
    more: (title: string) => `One more of ${title}`,
    notHere: 'Not of this job',

    pagesLabel: 'Pages as they are printed',
    pageKeys: (says: string) => `${says}. Page Up and Page Down turn the pages.`,
    laying: 'Laying out the pages…',
    sheets: (n: number, paper: string) => `${n === 1 ? 'One sheet' : `${n} sheets`} of ${paper}.`,
    parted: (titles: readonly (readonly [title: string, pages: number])[]) =>
      `Larger than the paper, and parted over pages that join: ${and(titles.map(([title, n]) => `${title} over ${n}`))}.`,
    page: 'Page',
    pageSays: (n: number, of: number, titles: string) => `Page ${n} of ${of}: ${titles}`,
    earlier: 'Page before',
    later: 'Next page',
    fitted: 'Whole page',
    trueSize: 'True size',
    isTrue: 'As large as on paper, by the measurement of this screen.',
    nearlyTrue: 'Nearly as large as on paper: this screen was not measured.',
    measure: 'Measure this screen',
    measureAgain: 'Measure it anew',

    cautionsTitle: 'Before you cut',
    cautions: [
      'Measure the check bars on every print first: a template is only as true as its print. Print at 100 %, without “fit to page”.',
      'Dust of bone, ebony and rosewood: use extraction and wear a respirator.',
      'At a bandsaw or belt sander hold small parts in a clamp.',
      'Slacken the strings before you work on the bridge, and protect your eyes.',
      'Follow local rules, and ask a qualified repairer if in doubt.',
    ],
  },

  shop: {
    about: 'Paper, tools and printers belong to the bench, not to the job. They are kept on this device.',
    aboutUnkept:
      'Paper, tools and printers belong to the bench, not to the job. This browser keeps nothing: they last till the page is left. Save them as a file.',
    groups: {
      paper: 'Paper',
      router: 'Router and slot guide',
      mask: 'Finish mask',
      sections: 'Profiles of sections',
      caul: 'Cauls',
      gauges: 'Radius gauges',
      cutter: 'What the cutter follows',
      cut: 'Lines to cut',
      drill: 'Holes to drill',
      fold: 'Lines to fold',
      show: 'Lines only shown',
    } as Readonly<Record<string, string>>,
    lists: {
      'gauges.list': { label: 'Gauges of the bench', one: (n: number) => `gauge ${n}`, toAdd: 'gauge to add' },
      'sections.stations': { label: 'Sections listed', one: (n: number) => `section ${n}`, toAdd: 'section to add' },
    } as Readonly<Record<string, { label: string; one: (n: number) => string; toAdd: string }>>,
    nameIn: (label: string, of: string) => `${label}, ${of}`,
    nothingListed: 'None yet.',
    add: 'Add',
    addTo: (list: string) => `Add to ${list}`,
    remove: 'Remove',
    removeOne: (name: string) => `Remove ${name}`,
    most: (n: number) => `There is room for ${n}.`,
    usual: (range: string) => `Usual: ${range}.`,
    refused: (field: string, value: string) =>
      `${field}: what is typed cannot be used; the templates are drawn with ${value}.`,
    save: 'Save settings',
    open: 'Open settings…',
    file: 'sagitta-shop.json',
    saved: (file: string) => `${file} is saved.`,
    opened: (file: string) => `The settings of “${file}” are in force.`,
    openedKeeping: (file: string, keys: readonly string[]) =>
      `The settings of “${file}” are in force. These keys are not known, and kept as they are: ${and(keys)}.`,
    notOpened: (file: string, problems: readonly string[]) =>
      `“${file}” was not opened, and your settings stand as they were. ${problems.join(' ')}`,
    tooLarge: 'It is larger than any file of settings.',
    back: 'Put the earlier settings back',
    isBack: 'The earlier settings are back.',
    unread: (problems: readonly string[]) =>
      `The settings kept on this device cannot be read, so those of a new bench stand here; the kept ones are overwritten with your first change. ${problems.join(' ')}`,
    saveUnread: 'Save what is kept of them',
    trouble: (why: string) =>
      `The settings could not be kept in this browser (${why}). They last till the page is left: save them as a file.`,
  },

  proof: {
    about:
      'Print a page at 100 %, measure its check bars, and type what they read. What the printer draws too long or too short is then made up for.',
    printer: 'Printer',
    notProved: 'not proved: printed as it is',
    name: 'Name of a printer to add',
    add: 'Add',
    noName: 'Type what the printer is called at the bench.',
    nameTaken: (name: string) => `There is a printer called “${name}” already. Choose it, or type another name.`,
    full: (n: number) => `There is room for ${n} printers. Remove one first.`,
    unnamed: 'unnamed printer',
    remove: 'Remove this printer',
    first: 'Choose a printer, or add one, to prove its print.',
    notYet: 'It is not proved: pages are printed as they are.',
    proved: (date: string, correction: string, lies: string) =>
      `Proved on ${date}. Pages are corrected: ${correction}, on a page ${lies}.`,
    corrected: (correction: string, lies: string) =>
      `It is not known when it was proved. Pages are corrected: ${correction}, on a page ${lies}.`,
    provedTrue: (date: string) => `Proved on ${date}: its print is true, and pages are printed as they are.`,
    measured: (bars: readonly (readonly [along: string, bar: string, reads: string])[], lies: string) =>
      `Measured then, as on a page ${lies}: ${and(bars.map(([along, bar, reads]) => `${bar} ${along} read ${reads}`))}.`,
    page: 'The page that was measured',
    lies: 'It lies',
    lying: { upright: 'upright', lying: 'lying' },
    printed: 'Under “print” its title block says',
    printedAs: { corrected: (name: string) => `corrected for ${name}`, not: 'not corrected' },
    bars: 'What the bars read',
    barsSay: 'One bar each way at least; the longest are the surest. Leave empty what was not measured.',
    bar: (length: string, along: string) => `${length} ${along}`,
    along: { across: 'across', down: 'down' },
    prove: 'Prove the print',
    kinds: { true: 'True.', fitted: 'Fitted to the page.', refused: 'Refused.', corrected: 'Corrected from now on.' },
    wrong: (bars: readonly string[]) => `Put right first: ${and(bars)}.`,
  },

  cutter: {
    about:
      'For a router, a laser or a knife: the tool’s own way beside each line, tabs left uncut, a layer for each purpose, a check square to measure in the cutter’s program.',
    colours:
      'All lines are black unless you set colours below. A program that sorts by colour would cut the dimensions too: give each purpose a colour of its own, or leave out the lines that are only shown.',
    save: (n: number) => (n === 1 ? 'Save the ticked template' : `Save the ${n} ticked templates`),
    folder: 'Save them into a folder…',
    downloads: 'Each is an SVG file of its own; several come together in one ZIP file.',
    savedInto: (n: number, folder: string) => `${n === 1 ? 'One file is' : `${n} files are`} written into “${folder}”.`,
    nothing: 'None of the ticked templates is to be cut: pages of words are only printed.',
    nothingSaved: 'Nothing was saved.',
    lacking: (characters: readonly string[]) =>
      `The font has no ${characters.slice(0, 12).join(' ')}${characters.length > 12 ? ' …' : ''}: codes stand in place. Letters as text keep what was typed.`,
  },
} as const;
