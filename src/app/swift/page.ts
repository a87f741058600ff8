import type { Finding } from '../../../geometry/checks/check.ts';
import type { Job } from '../../../geometry/job.ts';
import type { Fit } from '../sheet/fit.ts';
import type { Holding } from '../sheet/grips/read-beside.ts';
import type { PictureName } from '../sheet/laying.ts';
import type { Look } from '../sheet/look.ts';
import type { State } from '../state.ts';
import type { PathValue } from '../store.ts';

/** A drawing as it stands on the page, but for the job that it shows: how it is fitted, and how it is looked at. */
export interface ShownPicture extends Pick<Fit, 'room' | 'seed' | 'text'> {
  readonly name: PictureName;
  readonly heights: number;
  readonly look: Look | undefined;
  readonly high: number;
  readonly exactly: number | undefined;
  /** Px per mm. */
  readonly scale: number;
}

/** What a page shows of a job while a hand holds one of its numbers. */
export interface ShownPage extends Pick<State, 'decimals' | 'folds' | 'focus'> {
  readonly job: Job;
  readonly pictures: readonly ShownPicture[];
  /** The grip in hand, and what holds it. */
  readonly grip: string;
  readonly holding: Holding;
  /** The figures in sight, as they say of themselves which they are and how they are shown. */
  readonly figures: readonly string[];
}

/** Which element of the page by its selector, which of its attributes, or its `text` or `value`; and what stands there. */
export type Put = readonly [element: string, at: string, text: string];

/** Where a string stands: its element's selector and its attribute, or `text` or `value`. */
export const placeOf = (element: string, at: string): string => `${element}\n${at}`;
/** What the selectors of all that is found begin with. */
export const findingsPart = '.findings ';
/** The element and the place of it that such a text stands for. */
export const elementAndPlace = (place: string) => place.split('\n') as [string, string];

/** What is asked of the worker: what these values make of the page; of the one before, where none is sent. */
export interface SwiftAsk {
  readonly turn: number;
  readonly page?: ShownPage;
  readonly values: readonly PathValue[];
}

/** What becomes of the page: the strings that are others than those before; and what is found, where that is more than other strings. */
export interface SwiftChange {
  readonly puts: readonly Put[];
  readonly findings?: readonly Finding[];
}

/** What it answers: what becomes of the page; or nothing, where more becomes another, or the job cannot be built. At first, that it is there. */
export type SwiftWord = 'here' | { readonly turn: number; readonly change: SwiftChange | undefined };
