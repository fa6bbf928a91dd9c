import { boilingPoint, fluidClasses } from '@standstill/braking';
import { toUnit } from '@standstill/units';
import { published } from '../published.ts';

/** The standard's two points are the ends of our curve: what is between them is from memory and has no row here. */
for (const [letter, name, water, printed] of [
  ['g', 'dot4', 0, 446],
  ['h', 'dot4', 0.037, 311],
  ['i', 'dot51', 0.037, 356],
] as const) {
  const { title, dryBoilingPoint: dry, wetBoilingPoint: wet } = fluidClasses[name];
  published(
    {
      id: `5-10${letter}`,
      source: 'fmvss-116',
      quantity: `boiling point of ${title} with ${(100 * water).toFixed(1)} % of water, by our curve`,
      printed,
      unit: '°F',
      tolerance: 0.5,
      basis: 'X',
    },
    () =>
      toUnit(
        boilingPoint({ dryBoilingPoint: dry.value, wetBoilingPoint: wet.value, water }),
        '°F',
        'temperature',
      ),
  );
}
