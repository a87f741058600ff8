import { inRow } from '../../../geometry/enumerate.ts';
import { closeEnough, type PassAdvice, type PassOutcome, type PassString } from '../../../geometry/saddle/setup.ts';
import { formatQuantity, type ShowUnits } from '../../../geometry/units.ts';
import { words } from '../words.ts';

const says = words.setUp;

/** A length to the hundredth of a millimetre, or the thousandth of an inch: what a file takes off. */
export const fine = (value: number, show: ShowUnits, unit = false): string =>
  formatQuantity(value, 'length', show, { unit, digits: show.length === 'mm' ? 2 : 3 });

/** Less than this is nothing to take off, mm: half of the last digit that is said. */
const nothing = 0.005;

const outerOf = ({ strings }: PassAdvice): readonly PassString[] =>
  [strings[0], strings.at(-1)].filter((s) => s !== undefined);

/** The outer strings that lie lower than wanted already: nothing taken off mends that. */
export const tooLow = (advice: PassAdvice): readonly PassString[] =>
  outerOf(advice).filter((s) => s.wanted - s.action > closeEnough);

/** What a reading asks for, in sentences, the most needed first. */
export const passSays = (outcome: PassOutcome, show: ShowUnits): readonly string[] => {
  if (!outcome.ok) return [says.missing(outcome.missing)];
  const { strings, ends, isThere } = outcome.advice;
  const say = (value: number) => fine(value, show, true);
  const low = tooLow(outcome.advice);
  const high = outerOf(outcome.advice).filter((s) => s.action - s.wanted > closeEnough);
  const atEnd = (value: number) => (value < nothing ? says.nothing : say(value));
  const first = (): readonly string[] => {
    if (isThere) return [says.isThere];
    if (low.length === 0) return [says.takeOff(atEnd(ends.bass), atEnd(ends.treble))];
    return [
      says.tooLow(
        low.map(({ name, takeOff }) => [name, say(-takeOff)]),
        say(Math.max(...low.map(({ takeOff }) => -takeOff))),
      ),
      ...high.map(({ name, takeOff }) => says.tooHigh(name, say(takeOff))),
    ];
  };
  const isReached = ({ missed }: PassString) => Math.abs(missed) < nothing;
  const moved = strings.filter((s) => isReached(s) && Math.abs(s.shift) >= nothing);
  return [
    ...first(),
    ...(moved.length === 0 ? [] : [says.breaks(moved.map(({ name, fromFront }) => [name, say(fromFront)]))]),
    ...strings
      .filter((s) => !isReached(s))
      .map(({ name, fromFront, missed }) => says.unreached(name, say(fromFront), say(Math.abs(missed)), missed > 0)),
  ];
};

/** How far a break point moves on the crown, forward or back, and what is missing where the crown does not reach; empty where nothing was heard. */
export const moveText = ({ shift, missed }: PassString, show: ShowUnits): string => {
  if (shift === 0) return '';
  const moves = shift - missed;
  const by = fine(Math.abs(moves), show);
  const parts = [
    Math.abs(moves) < nothing && missed !== 0 ? '' : moves < 0 ? says.forward(by) : says.back(by),
    Math.abs(missed) < nothing ? '' : says.missingBy(fine(Math.abs(missed), show)),
  ];
  return inRow(parts.filter((part) => part !== ''));
};

/** What is to be minded of break points that move. */
export const moveNotes = ({ strings }: PassAdvice): readonly string[] => {
  const moves = strings.map(({ shift, missed }) => (shift === 0 ? 0 : shift - missed));
  return [
    ...(moves.some((by) => by <= -nothing) ? [says.filesPeak] : []),
    ...(moves.some((by) => Math.abs(by) >= nothing) ? [says.fileLast] : []),
  ];
};
