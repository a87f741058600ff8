import { scarProblems } from './bridge/cover.ts';
import { footprints } from './bridge/footprints/index.ts';
import { sayLength } from './bridge/footprints/say-length.ts';
import { rowProblems } from './bridge/row-problems.ts';
import { wallLength } from './bridge/slot.ts';
import { boardRadius } from './instrument/board.ts';
import { stringPlaces } from './instrument/spacing.ts';
import { stringProblems } from './instrument/string-problems.ts';
import { type Found, found, type Problem } from './problem.ts';
import { type Say, sayFor } from './say.ts';
import type { Settled } from './settle.ts';

/** An arc can only span what it reaches: half the width must be less than its radius. */
const tooTight = (
  { mm, radius: say }: Say,
  path: string,
  what: string,
  radius: number | 'flat',
  width: number,
  ofWhat: string,
): Found =>
  radius !== 'flat' &&
  radius <= width / 2 && {
    path,
    value: radius,
    says: `${what} of ${say(radius)} cannot span ${mm(width)}, ${ofWhat}. It must be more than ${say(width / 2)}.`,
  };

/** What a readable job must satisfy before its numbers can be worked out; empty when it does. */
export const unsolvable = (job: Settled): readonly Problem[] => {
  const { guitar, strings, bridge, slot } = job;
  const say = sayFor(job);
  const { mm, radius } = say;
  const limit = sayLength(job.show);
  const { boardRadiusNut: nut, boardRadiusEnd: end } = guitar;
  const places = stringPlaces(job);
  const reach = 2 * Math.max(...places.saddle.map(Math.abs));
  const widest = Math.max(2 * Math.max(...places.nut.map(Math.abs)), reach);
  const farthest = guitar.scale + Math.max(...strings.list.map((string) => string.setback));
  const atSaddle = nut === 'flat' || end === 'flat' ? 'flat' : boardRadius(guitar, farthest);
  // What round ends take of the slot's length.
  const ends = slot.length - wallLength(slot);
  const pitches = strings.list.flatMap((string): readonly Problem[] =>
    found(
      string.core !== 'plain' &&
        string.core >= string.gauge && {
          path: `strings.list.${string.id}.core`,
          value: string.core,
          says: `The core of ${string.name}, ${mm(string.core)}, must be thinner than the string itself, ${mm(string.gauge)}. For a string without a wrap choose “plain”.`,
        },
    ),
  );
  return [
    ...found(
      (nut === 'flat') !== (end === 'flat') && {
        path: nut === 'flat' ? 'guitar.boardRadiusNut' : 'guitar.boardRadiusEnd',
        value: 'flat',
        says: 'A board that is flat at one end and round at the other is no cone. Give a radius at both ends, or “flat” at both.',
      },
      guitar.bodyJoint >= guitar.frets && {
        path: 'guitar.bodyJoint',
        value: guitar.bodyJoint,
        says: `The body joint is at fret ${guitar.bodyJoint}, but the board has ${guitar.frets} frets. Give a fret before the last one.`,
      },
      tooTight(say, 'guitar.boardRadiusNut', 'A board radius', nut, widest, 'the string spread'),
      tooTight(say, 'guitar.boardRadiusEnd', 'A board radius', end, widest, 'the string spread'),
      atSaddle !== 'flat' &&
        atSaddle <= widest / 2 && {
          path: 'guitar.boardRadiusEnd',
          value: end,
          says: `A board that tightens from ${radius(nut)} to ${radius(end)} would have a radius of ${radius(atSaddle)} at the saddle: too tight for a string spread of ${mm(widest)}. Check both radii.`,
        },
      tooTight(
        say,
        'bridge.topRadius',
        'A bridge top radius',
        bridge.topRadius,
        Math.max(bridge.deckWidth, reach, slot.length, job.pins.spread),
        'the deck',
      ),
      tooTight(say, 'guitar.topRadius', 'A dome radius', guitar.topRadius, bridge.length, 'the bridge’s length'),
      reach >= bridge.length && {
        path: 'strings.spread',
        value: strings.spread,
        says: `The strings spread over ${mm(reach)}, the bridge is only ${mm(bridge.length)} across. Make the bridge longer, or the spread less than ${mm(bridge.length)}.`,
      },
      reach >= wallLength(slot) && {
        path: 'slot.length',
        value: slot.length,
        says: `A slot ${mm(slot.length)} long is too short for a string spread of ${mm(reach)}. Make it longer than ${mm(reach + ends)}${reach + ends < bridge.deckWidth ? '' : ', and the deck wider than that'}, or the spread less than ${mm(slot.length - ends)}.`,
      },
      bridge.deckWidth > bridge.length && {
        path: 'bridge.deckWidth',
        value: bridge.deckWidth,
        says: `The deck is ${mm(bridge.deckWidth)} wide, the bridge only ${mm(bridge.length)} across. Make the deck ${mm(bridge.length)} or narrower.`,
      },
      slot.length > bridge.deckWidth && {
        path: 'slot.length',
        value: slot.length,
        says: `The slot is ${limit(slot.length, 'up')} long and would run out of the deck, ${limit(bridge.deckWidth, 'down')} wide, into the wings. Make the slot at most ${limit(bridge.deckWidth, 'down')} long, or the deck at least ${limit(slot.length, 'up')} wide.`,
      },
    ),
    ...stringProblems(job, limit),
    ...rowProblems(job, limit),
    ...guitar.measured.flatMap(({ id, fret }): readonly Problem[] =>
      fret > guitar.frets
        ? [
            {
              path: `guitar.measured.${id}.fret`,
              value: fret,
              says: `Fret ${fret} was measured, but the board has ${guitar.frets} frets. Give a fret up to the last one, or the board more frets.`,
            },
          ]
        : [],
    ),
    ...pitches,
    ...footprints[bridge.footprint].problems(bridge, sayLength(job.show)),
    ...scarProblems(job, mm),
  ];
};
