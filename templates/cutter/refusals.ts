import type { Label } from '../../geometry/drawing.ts';
import { fixedLength } from '../../geometry/marks.ts';
import type { Refusal } from './kerf.ts';

const list = (refusals: readonly Refusal[]): string =>
  refusals.map(({ contour }) => `“${contour.stroke.id}”`).join(', ');

const sentence = (refusals: readonly Refusal[], tool: number, title: string): Label => {
  const [{ contour, narrowest }] = refusals as [Refusal];
  const isHole = contour.stroke.purpose === 'drill';
  const what = `${isHole ? 'hole' : 'cut'}${refusals.length > 1 ? 's' : ''} ${list(refusals)}`;
  const wayOut = isHole ? 'mark holes by crosses or dots (cutter.holes).' : 'let it run on the line (cutter.side).';
  if (narrowest === undefined)
    return [
      `In “${title}” no side of the ${what} is waste, as the line crosses itself. Take a tool of 0 mm (cutter.tool), or ${wayOut}`,
    ];
  return [
    `In “${title}” a tool of `,
    fixedLength(tool),
    ` does not get ${contour.bounds === 'part' ? 'into a bay of' : 'through'} the ${what}, only `,
    fixedLength(narrowest),
    ` wide. Take a narrower tool (cutter.tool), or ${wayOut}`,
  ];
};

/** What keeps a tool (mm wide) from a drawing, in sentences: the contours, their width, the tool and the way out. Contours of one kind and width share one. */
export const refusalsSay = (
  refusals: readonly Refusal[],
  tool: number,
  title: string,
  say: (label: Label) => string,
): readonly string[] => {
  const groups = new Map<string, Refusal[]>();
  for (const refusal of refusals) {
    const { contour, narrowest } = refusal;
    const key = [contour.stroke.purpose, contour.bounds, narrowest?.toFixed(3)].join();
    groups.set(key, [...(groups.get(key) ?? []), refusal]);
  }
  return [...groups.values()].map((group) => say(sentence(group, tool, title)));
};
