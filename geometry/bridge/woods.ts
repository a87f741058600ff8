/** A wood by its name and its density at 12 % moisture, kg/m³, with where the number comes from. */
export interface Wood {
  readonly name: string;
  readonly density: number;
  readonly source: string;
}

const handbook =
  'USDA Wood Handbook, FPL-GTR-282, ch. 5, from memory [memory]: specific gravity at 12 % moisture, times 1.12';
const practice = 'common in handbooks, from memory [memory]';

/** Woods that bridges are made of. The Wood Handbook's specific gravities are of oven-dry mass over volume at 12 %: the wood as it lies on the bench is heavier by its water. */
export const woods = {
  rosewoodIndian: { name: 'Indian rosewood', density: 840, source: `${handbook} (0.75)` },
  rosewoodBrazilian: { name: 'Brazilian rosewood', density: 900, source: `${handbook} (0.80)` },
  ebony: { name: 'ebony', density: 1050, source: practice },
  maple: { name: 'hard maple', density: 710, source: `${handbook} (sugar maple, 0.63)` },
  walnut: { name: 'black walnut', density: 620, source: `${handbook} (0.55)` },
  mahogany: { name: 'mahogany', density: 560, source: practice },
  pear: { name: 'pear', density: 700, source: practice },
} as const satisfies Readonly<Record<string, Wood>>;
