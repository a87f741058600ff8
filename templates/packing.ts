import { MaxRectsPacker } from 'maxrects-packer/dist/maxrects-packer.mjs';

/** The size of something to lay down, or of the room to lay it in, mm. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where the `index`th thing lies: its top left corner in the room, and whether it is turned by a quarter. */
export interface Packed {
  readonly index: number;
  readonly x: number;
  readonly y: number;
  readonly turned: boolean;
}

/** Whether a thing fits into a room, turned by a quarter if need be. */
export const fits = ({ width, height }: Size, room: Size): boolean =>
  (width <= room.width && height <= room.height) || (height <= room.width && width <= room.height);

/**
 * Lays things into as few rooms of one size as it finds, `gap` mm apart; turned by a quarter only where that saves a room or the
 * thing would not fit upright. Each room's things are in the order given. All of them must fit (see `fits`).
 */
export const pack = (sizes: readonly Size[], room: Size, gap: number): readonly (readonly Packed[])[] => {
  const turned = packed(sizes, room, gap, true);
  const allFit = sizes.every(({ width, height }) => width <= room.width && height <= room.height);
  if (!allFit) return turned;
  const upright = packed(sizes, room, gap, false);
  return upright.length <= turned.length ? upright : turned;
};

const packed = (sizes: readonly Size[], room: Size, gap: number, allowRotation: boolean) => {
  const packer = new MaxRectsPacker(room.width, room.height, gap, {
    smart: false,
    pot: false,
    square: false,
    allowRotation,
  });
  packer.addArray(
    sizes.map(({ width, height }, index) => ({ width, height, x: 0, y: 0, rot: false, index })) as never[],
  );
  return packer.bins.map((bin) =>
    bin.rects
      .map(({ x, y, rot, index }: { x: number; y: number; rot?: boolean; index?: number }) => ({
        index: index ?? 0,
        x,
        y,
        turned: rot === true,
      }))
      .sort((a, b) => a.index - b.index),
  );
};
