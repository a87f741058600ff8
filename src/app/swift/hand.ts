import { createStore } from 'zustand/vanilla';
import { once } from '../../../geometry/once.ts';
import type { Point } from '../../../geometry/shape/types.ts';
import { findingsOf } from '../findings/findings-of.ts';
import { type HeldFindings, heldFindings } from '../findings/held-findings.ts';
import type { Bench, PathValue } from '../store.ts';
import { swiftWorker } from '../workers.ts';
import { isInWindow, quickStrings } from './elements.ts';
import { findingsPart, type ShownPage, type ShownPicture, type SwiftAsk, type SwiftWord } from './page.ts';
import { isSlowInSight } from './slow.ts';

/** How each drawing of the page stands there, by its SVG element. */
const pictures = new WeakMap<Element, ShownPicture>();

/** Where what is read beside the grip in hand stands, px from it. */
const standsBeside = (): Point | undefined => {
  const frame = document.querySelector('.sheet .readout rect');
  return frame ? { x: Number(frame.getAttribute('x')), y: Number(frame.getAttribute('y')) } : undefined;
};

/** Tells how a drawing stands on the page. */
export const tellPicture = (svg: Element | null, picture: ShownPicture): void => {
  if (svg !== null) pictures.set(svg, picture);
};

/** A hand rests once it has not moved for so long, ms: then the whole page follows. */
const rest = 200;
/** The whole page follows at least so often while a hand moves, ms, so that little would be lost; and so often where parts are in sight that do not follow at once. */
const longest = 10_000;
const often = 250;
/** So long an answer is waited for, ms. */
const patience = 400;

/** What is known of the number in hand where it is now, while the bench has not followed it there yet. */
interface Ahead {
  readonly found: HeldFindings | undefined;
}

/** One step of a hand: the values that it drags its grip's numbers to. */
interface Step {
  readonly values: readonly PathValue[];
  readonly isFinger: boolean;
  readonly grip: string;
  /** Has the values put in on the bench, and the whole page follow. */
  readonly really: () => void;
  /** They were drawn. */
  readonly onDrawn: () => void;
}

/**
 * Lets the page follow a hand that drags a number, without waiting for all that the page does at a change of the job: a worker works out what becomes of the page, and as long as that is nothing but other
 * strings, these are put into its elements. The bench, and with it all of the page, follows once the hand rests or lets go, when something else than strings becomes another, and else now and then.
 */
const swift = (bench: Bench) => {
  const strings = quickStrings();
  const ahead = createStore<Ahead>(() => ({ found: undefined }));
  let worker: Worker | undefined;
  let isHere = false;
  /** Asks since the last time that the whole page followed are of one turn. */
  let turn = 0;
  let isAsked = false;
  let step: Step | undefined;
  /** What is on its way to the worker and back, since when, ms; and what goes next. */
  let asked: { readonly step: Step; readonly since: number } | undefined;
  let next: Step | undefined;
  /** Whether the bench has followed this hand once, and since when it is behind, ms. */
  let isHeld = false;
  let behind: number | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  /** All as the bench has it. */
  const back = () => {
    clearTimeout(timer);
    strings.takeBack();
    if (ahead.getState().found) ahead.setState({ found: undefined });
    turn += 1;
    isAsked = false;
    asked = undefined;
    next = undefined;
    behind = undefined;
  };
  const followReally = () => {
    const { really } = step ?? {};
    back();
    really?.();
  };

  const shownPage = ({ grip, isFinger }: Step): ShownPage => {
    const { job, decimals, folds, focus, pointed } = bench.getState();
    const drawings = [...document.querySelectorAll('.sheet svg.drawing')].flatMap((svg) => pictures.get(svg) ?? []);
    const figures = [...document.querySelectorAll<HTMLElement>('.outcome [data-figure]')].flatMap((one) =>
      isInWindow(one) ? (one.dataset.figure ?? []) : [],
    );
    return {
      job,
      decimals,
      folds,
      focus: pointed ?? focus,
      pictures: drawings,
      grip,
      holding: { isFinger, kept: standsBeside() },
      figures,
    };
  };
  const ask = (now: Step) => {
    const word: SwiftAsk = { turn, values: now.values, ...(!isAsked && { page: shownPage(now) }) };
    worker?.postMessage(word);
    isAsked = true;
    asked = { step: now, since: performance.now() };
    next = undefined;
  };
  const onWord = ({ data }: MessageEvent<SwiftWord>) => {
    if (data === 'here') {
      isHere = true;
      return;
    }
    if (data.turn !== turn || asked === undefined) return;
    const { change } = data;
    if (change === undefined) return followReally();
    if (change.findings) {
      strings.takeBack(findingsPart);
      const { built } = bench.getState();
      ahead.setState(({ found }) => ({
        found: heldFindings(found, built === undefined ? [] : findingsOf(built), change.findings ?? []),
      }));
    }
    strings.put(change.puts);
    asked.step.onDrawn();
    asked = undefined;
    if (next) ask(next);
  };

  return {
    ahead,

    /** A hand comes near. */
    ready() {
      if (worker !== undefined || typeof Worker === 'undefined') return;
      worker = swiftWorker();
      worker.onmessage = onWord;
      // Then the whole page follows each step.
      worker.onerror = () => {
        isHere = false;
        if (asked) followReally();
      };
    },
    /** Whether the page follows at once; where not, the step is to be gone on the bench. */
    follow(now: Step): boolean {
      step = now;
      clearTimeout(timer);
      const { barred, solved } = bench.getState();
      const time = performance.now();
      const isLate = asked !== undefined && time - asked.since > patience;
      const isFar = behind !== undefined && time - behind > (isSlowInSight() ? often : longest);
      if (!isHere || !isHeld || isLate || isFar || barred !== undefined || !solved.ok) {
        isHeld = true;
        back();
        return false;
      }
      behind ??= time;
      timer = setTimeout(followReally, rest);
      if (asked === undefined) ask(now);
      else next = now;
      return true;
    },
    /** The hand lets go: what it drags is put in on the bench next, or taken back. */
    end() {
      step = undefined;
      isHeld = false;
      back();
    },
  };
};

/** What lets the page of a bench follow a hand. */
export const swiftOf = once(swift);
