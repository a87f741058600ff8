type Bag = Readonly<Record<string, unknown>>;
const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);
const list = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
const numberIn = (value: unknown, key: string): number | undefined => {
  const found = isBag(value) ? value[key] : undefined;
  return typeof found === 'number' && Number.isFinite(found) ? found : undefined;
};

/** A group with what a job of its time did not have; what it holds stays as it is, and what is no group, or is gone, is left for the reader to refuse. */
const filled = (value: unknown, added: Bag): unknown => (isBag(value) ? { ...added, ...value } : value);

/**
 * A job of version 1 as one of version 2, meaning the same: its setbacks stay as typed, its slot through the outer strings, and what version 1 could not say is not measured. Numbers in stored
 * units. Nothing in it is judged here.
 */
export const fromVersion1 = (job: Bag): Bag => {
  const strings = job.strings;
  const strung = isBag(strings) ? list(strings.list) : [];
  const setbacks = strung.map((string) => numberIn(string, 'setback') ?? 0);
  const [bass = 0, treble = 0] = [setbacks[0], setbacks.at(-1)];
  const spread = numberIn(strings, 'spread') ?? 0;
  const inRange = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
  return {
    ...job,
    version: 2,
    show: filled(job.show, { sectionAcross: 0, sectionAlong: 'saddle' }),
    work: 'bridge',
    guitar: filled(job.guitar, { measured: [], boardWidth: 'not taken', heelDepth: 90 }),
    strung: {
      thickness: 'not taken',
      exposure: 'not taken',
      actionBass: 'not taken',
      actionTreble: 'not taken',
      firstFretBass: 'not taken',
      firstFretTreble: 'not taken',
      relief: 'not taken',
      light: 'not taken',
    },
    strings: isBag(strings)
      ? {
          courses: 'single',
          pairGap: 2.4,
          setbacks: 'typed',
          finger: 1,
          ...strings,
          list: Array.isArray(strings.list)
            ? strung.map((string) => filled(string, { cents: 'not taken', nutPlace: 0, saddlePlace: 0 }))
            : strings.list,
        }
      : strings,
    bridge: filled(job.bridge, {
      waistDepth: 28,
      waistWidth: 110,
      ends: 'square',
      cornerRadius: 3,
      pyramidWidth: 20,
      pyramidThickness: 7.5,
      points: [],
      mirrored: 'yes',
      tipTreble: 'same',
      scoop: 'level',
      shoulder: 'sharp',
      edge: 'square',
      edgeSize: 1.5,
    }),
    slot: filled(job.slot, {
      ends: 'round',
      floor: 'level',
      line: 'outer',
      fromNut: inRange((numberIn(job.guitar, 'scale') ?? 640) + (bass + treble) / 2, 300, 1020),
      slant: spread > 0 ? inRange((treble - bass) / spread, -0.2, 0.2) : 0,
    }),
    saddle: { crown: 'best', play: 0, proud: 1, under: 0, wireHole: 'none', wireAcross: -32 },
    pins: filled(job.pins, {
      hold: 'pins',
      arcRise: 3,
      secondRow: 10,
      secondAside: 6,
      below: 3,
      taper: 0.05,
      // A pin that seats in the hole as it was drilled, reamed to a depth of 6 mm.
      pinDiameter: inRange((numberIn(job.pins, 'hole') ?? 5) + 0.3, 2, 12),
      ramp: 'none',
      rampDepth: 1.5,
    }),
    plate: { state: 'sound', cap: 'none', length: 85, depth: 24, grain: 'along' },
    top: { radiusAlong: 'flat', holes: [], rises: [], braces: [] },
    stock: { wood: 'rosewoodIndian', allowance: 3 },
    scar: { outline: 'none', fromNut: 633, length: 150, depth: 37, wingDepth: 23, bellyWidth: 138 },
    limits: {},
    setup: { log: [] },
  };
};
