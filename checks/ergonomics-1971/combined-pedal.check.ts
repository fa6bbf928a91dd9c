import { fromUnit } from '@standstill/units';
import { published } from '../published.ts';

for (const [id, pounds, printed] of [
  ['10-07a', 13, 58],
  ['10-07b', 21, 93],
] as const)
  published(
    {
      id,
      source: 'ergonomics-1971',
      quantity: `brake force of ${pounds} lbf that did not slow the reaction`,
      printed,
      unit: 'N',
      tolerance: 0.5,
      basis: 'R',
    },
    () => fromUnit(pounds, 'lbf', 'force'),
  );
