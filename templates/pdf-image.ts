import type { PDFDocument, PDFRef } from '@cantoo/pdf-lib';
import type { DrawText, TextPicture } from './text-picture.ts';

/** The picture as an image with its opacity beside it (ISO 32000-1, 8.9.5 and 11.6.5.3). */
const addImage = ({ context }: PDFDocument, { rgba, width, height }: TextPicture): PDFRef => {
  const colours = new Uint8Array(3 * width * height);
  const opacity = new Uint8Array(width * height);
  for (let n = 0; n < width * height; n++) {
    colours.set(rgba.subarray(4 * n, 4 * n + 3), 3 * n);
    opacity[n] = rgba[4 * n + 3] ?? 0;
  }
  const image = { Type: 'XObject', Subtype: 'Image', Width: width, Height: height, BitsPerComponent: 8 };
  const mask = context.register(context.flateStream(opacity, { ...image, ColorSpace: 'DeviceGray' }));
  return context.register(context.flateStream(colours, { ...image, ColorSpace: 'DeviceRGB', SMask: mask }));
};

/** The pictures of a file's texts, each drawn once, at so many pixels an em; nothing where there is nobody to draw them. */
export const pictures = (file: PDFDocument, draw: DrawText | undefined, perEm: number) => {
  if (!draw) return undefined;
  const known = new Map<string, TextPicture | undefined>();
  const added = new Map<TextPicture, { name: string; ref: PDFRef }>();
  return {
    draw: (text: string, bold: boolean, toLeft: boolean): TextPicture | undefined => {
      const key = `${bold} ${toLeft} ${text}`;
      if (!known.has(key)) known.set(key, draw(text, { bold, toLeft, perEm }));
      return known.get(key);
    },
    nameOf: (picture: TextPicture): string => {
      const before = added.get(picture);
      const image = before ?? { name: `Text${added.size + 1}`, ref: addImage(file, picture) };
      added.set(picture, image);
      return image.name;
    },
    used: (): readonly { readonly name: string; readonly ref: PDFRef }[] => [...added.values()],
  };
};
