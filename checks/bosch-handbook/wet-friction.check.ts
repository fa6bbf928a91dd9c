import { wetPeakFactor } from '@standstill/braking';
import { published } from '../published.ts';

/** m; the source gives 1.6 mm for worn and no figure for new. */
const treadDepths = { new: 0.008, worn: 0.0016 };

/** Friction as printed, from the printed dry friction times our factor. */
for (const [id, speed, tread, depth, dry, printed] of [
  ['8-02a', 50, 'new', 0.2, 0.85, 0.65],
  ['8-02b', 90, 'new', 0.2, 0.8, 0.6],
  ['8-02c', 130, 'new', 0.2, 0.75, 0.55],
  ['8-02d', 50, 'worn', 0.2, 1, 0.5],
  ['8-02e', 90, 'worn', 0.2, 0.95, 0.2],
  ['8-02f', 130, 'worn', 0.2, 0.9, 0.2],
  ['8-03a', 50, 'new', 1, 0.85, 0.55],
  ['8-03b', 90, 'new', 1, 0.8, 0.3],
  ['8-03c', 130, 'new', 1, 0.75, 0.2],
  ['8-03d', 50, 'worn', 1, 1, 0.4],
  ['8-03e', 90, 'worn', 1, 0.95, 0.1],
  ['8-03f', 130, 'worn', 1, 0.9, 0.1],
  ['8-03g', 50, 'new', 2, 0.85, 0.5],
  ['8-03h', 90, 'new', 2, 0.8, 0.05],
  ['8-03i', 130, 'new', 2, 0.75, 0],
  ['8-03j', 50, 'worn', 2, 1, 0.25],
  ['8-03k', 90, 'worn', 2, 0.95, 0.05],
  ['8-03l', 130, 'worn', 2, 0.9, 0],
] as const) {
  published(
    {
      id,
      source: 'bosch-handbook',
      quantity: `friction at ${speed} km/h, ${depth} mm of water, ${tread} tread, from the dry friction of row 8-01`,
      printed,
      unit: '',
      tolerance: 0.005,
      basis: 'R',
      evidence: 'transcription',
    },
    () =>
      dry * wetPeakFactor({ speed: speed / 3.6, waterDepth: depth / 1000, treadDepth: treadDepths[tread] }),
  );
}
