import type { Finding } from '../../../geometry/checks/check.ts';
import type { Primitive } from '../../../geometry/drawing.ts';
import { fieldAt, getAt } from '../../../geometry/fields.ts';
import { figureAt } from '../../../geometry/figures/index.ts';
import type { Job } from '../../../geometry/job.ts';
import { pathData } from '../../../geometry/path-data.ts';
import { lifeLeft } from '../../../geometry/saddle/life.ts';
import type { Grip } from '../../../geometry/views/grips/index.ts';
import type { LaidOver } from '../../../geometry/views/laid-over.ts';
import { litBy } from '../../../geometry/views/lit.ts';
import { othersOf } from '../alternatives.ts';
import { settle } from '../begin.ts';
import { jobAsRead } from '../decimal.ts';
import { type Form, figureSays } from '../figures/figure-text.ts';
import { findingsOf } from '../findings/findings-of.ts';
import { neededText } from '../numbers/needed.ts';
import { settledFrom, settledNumber, settledPaths } from '../numbers/settled.ts';
import { factSays, ownGauge } from '../outcome/fact-says.ts';
import { gaugeText } from '../outcome/gauge-text.ts';
import { neckOf } from '../outcome/neck-of.ts';
import { type Fitted, fitRoom } from '../sheet/fit.ts';
import { alongAxis, gripsOn, linesOf, numberOf, pullsOf, saidOf, standsAt } from '../sheet/grips/on-drawing.ts';
import { type Holding, readBeside } from '../sheet/grips/read-beside.ts';
import { layingOf } from '../sheet/laying.ts';
import { lookAt } from '../sheet/look.ts';
import { classOf, round, turnAbout } from '../sheet/pen.ts';
import type { Built } from '../state.ts';
import { shown as inField } from '../typing.ts';
import { words } from '../words.ts';
import { findingsPart, placeOf, type ShownPage, type ShownPicture } from './page.ts';

/** The strings of a page that follow a hand at once, each by its element and its place there; what is found; and all else that may become another, told apart by `rest` alone. */
export interface Strings {
  readonly at: ReadonlyMap<string, string>;
  readonly findings: readonly Finding[];
  /** The kinds of the strokes and texts that are drawn, in their order. */
  readonly drawn: readonly string[];
  readonly rest: string;
}

type Say = (element: string, at: string, text: string | number) => void;

/** A hatching has as many lines as find room, and a line under words as many pieces: however many there are, it is one hatching, and one line. */
const wholeOf = (id: string): string => id.replace(/(\.\d+)+$/, '');

/** What makes a stroke or text another element than one that only lies elsewhere, or says something else. */
const kindOf = (p: Primitive, isLit: boolean): readonly unknown[] =>
  p.kind === 'stroke'
    ? [wholeOf(p.id), p.alternative, classOf(p, isLit)]
    : [p.id, p.alternative, p.anchor, p.turn === 0, p.bold, round(p.size), isLit];

/** A number in its field; where a word stands for it, the one that the readings give. */
const sayField = (path: string, job: Job, say: Say): void => {
  const field = fieldAt(path);
  const value = settledNumber(job, path) ?? getAt(job, path);
  if (field) say(`[id="field-${path}"]`, 'value', inField(field, value, job.show));
};

/** The grip in hand: what is read beside it, and its fields; gives what is no string of them. */
const sayInHand = (
  grip: Grip,
  readout: string,
  holding: Holding,
  shown: Fitted,
  job: Job,
  say: Say,
): readonly (string | number | boolean)[] => {
  const { frame, rows, isKept } = readBeside(grip, linesOf(grip, job), shown, holding);
  say(readout, 'transform', standsAt(grip.at, shown.scale));
  for (const [at, value] of Object.entries(frame)) say(`${readout} rect`, at, value);
  rows.forEach(({ x, y, text }, k) => {
    const element = `${readout} text:nth-of-type(${k + 1})`;
    say(element, 'x', x);
    say(element, 'y', y);
    say(element, 'text', text);
  });
  const paths = pullsOf(grip).map(({ jobPath }) => jobPath);
  for (const path of paths) sayField(path, job, say);
  // Where it stands from then on is kept beside the hand. Where a word stands for the number, its button is pressed, and no unit is behind it.
  return [rows.length, isKept, ...paths.map((path) => typeof getAt(job, path))];
};

/** One drawing; gives what is no string of it. */
const sayPicture = (
  page: ShownPage,
  picture: ShownPicture,
  built: Built,
  read: Job,
  others: LaidOver,
  say: Say,
): { readonly drawn: readonly string[]; readonly rest: unknown } => {
  const { name, heights, text, room, seed, look, high, exactly } = picture;
  const laying = layingOf(name, built, heights, text, others);
  const fitted = fitRoom({ ...laying, room, seed });
  const shown = lookAt(fitted, look, { say: laying.say, text, high, exactly });
  const svg = `.sheet svg.drawing[data-view="${name}"]`;
  const { left, top, width, height } = shown.view;
  say(svg, 'viewBox', `${left} ${top} ${width} ${height}`);
  say(svg, 'width', shown.width);
  say(svg, 'height', shown.height);
  const isLit = litBy(page.focus, built.job);
  const kinds = shown.primitives.map((p) => {
    const element = `${svg} [data-mark="${p.id}"]`;
    if (p.kind === 'stroke') {
      const d = pathData(p.path);
      say(element, 'd', d);
      if (p.alternative !== undefined) say(`${svg} [data-casing="${p.id}"]`, 'd', d);
    } else {
      const [x, y] = [round(p.at.x), round(p.at.y)];
      say(element, 'x', x);
      say(element, 'y', y);
      if (p.turn !== 0) say(element, 'transform', turnAbout(p.turn, x, y));
      say(element, 'text', p.text);
    }
    return JSON.stringify([name, ...kindOf(p, isLit(p))]);
  });
  const inHand: unknown[] = [];
  const grips = gripsOn(built, shown).map(({ grip }) => {
    const element = `${svg} [data-grip="${grip.id}"]`;
    say(element, 'transform', standsAt(grip.at, shown.scale));
    if (grip.axis) say(`${element} .handle`, 'transform', alongAxis(grip.axis));
    say(element, 'aria-valuenow', numberOf(grip, read) ?? '');
    say(element, 'aria-valuetext', saidOf(grip, read));
    if (grip.id === page.grip) inHand.push(...sayInHand(grip, `${svg} .readout`, page.holding, shown, read, say));
    return [grip.id, grip.jobPath, grip.axis === undefined, grip.also?.jobPath, grip.isTwin];
  });
  return { drawn: [...new Set(kinds)], rest: [shown.scale, grips, inHand] };
};

/** What a page says of a job, as far as it is not hidden; undefined where the job cannot be built. Pure: the page is what it was made from, and what the rest of the page shows is shown by the same functions. */
export const stringsOf = (page: ShownPage, job: Job): Strings | undefined => {
  const { solved, built } = settle(job, undefined, page.decimals);
  if (!solved.ok || built === undefined) return undefined;
  const read = jobAsRead({ job, decimals: page.decimals });
  const others = othersOf(built, read, page.folds);
  const at = new Map<string, string>();
  const say: Say = (element, place, text) => at.set(placeOf(element, place), String(text));
  const pictures = page.pictures.map((picture) => sayPicture(page, picture, built, read, others, say));
  for (const path of settledPaths) sayField(path, read, say);
  for (const key of page.figures) {
    const [id = '', k, form] = key.split(' ');
    const figure = figureAt(id);
    if (figure === undefined) continue;
    const { seen, label } = figureSays(figure, built, Number(k), form as Form);
    const element = `.outcome [data-figure="${key}"]`;
    say(element, 'text', seen);
    say(element, 'aria-label', label);
  }
  for (const { id, neededSetback } of built.design.strings)
    say(`.strings [data-needed="${id}"]`, 'text', neededText(neededSetback, built.job.show));
  for (const [id, saysOf] of Object.entries(factSays)) say(`.outcome [data-of="${id}"]`, 'text', saysOf(built));
  const findings = findingsOf(built);
  for (const { check, says } of findings) say(`${findingsPart}[data-check="${check}"] strong`, 'text', says);
  const own = ownGauge(built);
  if (own) say('.outcome [data-fact="ownGauge"]', 'text', gaugeText(own.radius, built.job.show));
  for (const [k, { limit }] of lifeLeft(built.job, built.design).entries())
    say(`.outcome [data-limit="${k}"]`, 'text', words.outcome.limits[limit]);
  const rest = [
    pictures.map((picture) => picture.rest),
    neckOf(read)?.says,
    own === built.design.nearestGauge,
    settledPaths.map((path) => [settledNumber(read, path) === undefined, settledFrom(read, path)]),
    page.figures.map((key) => figureAt(key.split(' ')[0] ?? '')?.value(built.job, built.design, 0) === undefined),
  ];
  return { at, findings, drawn: pictures.flatMap(({ drawn }) => drawn), rest: JSON.stringify(rest) };
};
