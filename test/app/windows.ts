import { type PictureName, viewNames } from '../../src/app/sheet/laying.ts';

/** The windows, the rooms that their sheets have, as measured in Chromium with the demo, what is shown in them, and with what text height; px. */
export const windows: readonly {
  readonly window: number;
  readonly room: { readonly width: number; readonly height: number };
  readonly text: number;
  readonly pictures: readonly PictureName[];
}[] = [
  { window: 1440, room: { width: 722, height: 479 }, text: 13.5, pictures: ['three', ...viewNames] },
  { window: 820, room: { width: 818, height: 661 }, text: 13, pictures: ['three', ...viewNames] },
  { window: 390, room: { width: 388, height: 473 }, text: 13, pictures: viewNames },
];
