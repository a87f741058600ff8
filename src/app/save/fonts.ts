import regular from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';
import bold from 'dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf?url';
import { words } from '../words.ts';

/** Where DejaVu Sans and its bold lie, on this origin. */
export interface FontPlaces {
  readonly regular: string;
  readonly bold: string;
}

const at = (address: string) => new URL(address, document.baseURI).href;

/** Whole addresses, so that a worker finds them too, which has another base. */
export const fontPlaces = (): FontPlaces => ({ regular: at(regular), bold: at(bold) });

const fetchBytes = async (address: string): Promise<Uint8Array> => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(words.templates.noFont(answer.status));
  return new Uint8Array(await answer.arrayBuffer());
};

/** The fonts' files. Rejects with what is to be said to the person. */
export const fetchFonts = async (places: FontPlaces) => {
  const [regularBytes, boldBytes] = await Promise.all([fetchBytes(places.regular), fetchBytes(places.bold)]);
  return { regular: regularBytes, bold: boldBytes };
};
