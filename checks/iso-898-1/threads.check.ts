import { proofLoad, threadStressArea } from '@standstill/braking';
import { published } from '../published.ts';

const source = 'iso-898-1';

/** Nominal diameter and pitch, mm; stress area, mm², and proof load of class 8.8, kN, as printed. */
const coarse = [
  { id: 'a', diameter: 8, pitch: 1.25, area: 36.6, areaTolerance: 0.05, load: 21.2 },
  { id: 'b', diameter: 10, pitch: 1.5, area: 58.0, areaTolerance: 0.05, load: 33.7, follows: 33.63 },
  { id: 'c', diameter: 12, pitch: 1.75, area: 84.3, areaTolerance: 0.05, load: 48.9 },
  { id: 'd', diameter: 14, pitch: 2, area: 115, areaTolerance: 0.5, load: 66.7, follows: 66.95 },
];
const fine = [
  { id: 'a', diameter: 8, pitch: 1, area: 39.2, areaTolerance: 0.05 },
  { id: 'b', diameter: 10, pitch: 1.25, area: 61.2, areaTolerance: 0.05 },
  { id: 'c', diameter: 10, pitch: 1, area: 64.5, areaTolerance: 0.05 },
  { id: 'd', diameter: 12, pitch: 1.5, area: 88.1, areaTolerance: 0.05 },
  { id: 'e', diameter: 12, pitch: 1.25, area: 92.1, areaTolerance: 0.05 },
  { id: 'f', diameter: 14, pitch: 1.5, area: 125, areaTolerance: 0.5 },
];
const threadOf = ({ diameter, pitch }: { readonly diameter: number; readonly pitch: number }) => ({
  diameter: diameter / 1000,
  pitch: pitch / 1000,
});

for (const row of coarse) {
  published(
    {
      id: `6-01${row.id}`,
      source,
      quantity: `stress area of M${row.diameter}, coarse thread`,
      printed: row.area,
      unit: 'mm²',
      tolerance: row.areaTolerance,
      basis: 'R',
    },
    () => 1e6 * threadStressArea(threadOf(row)),
  );
  const reason =
    'The printed load does not follow from the proof stress of 580 MPa and the area by its formula.';
  published(
    {
      id: `6-02${row.id}`,
      source,
      quantity: `proof load of M${row.diameter}, coarse thread, class 8.8`,
      printed: row.load,
      unit: 'kN',
      tolerance: 0.05,
      basis: 'R',
      ...(row.follows === undefined ? {} : { expectedDifference: { follows: row.follows, reason } }),
    },
    () => proofLoad({ thread: threadOf(row), propertyClass: '8.8' }) / 1e3,
  );
}

for (const row of fine) {
  published(
    {
      id: `6-05${row.id}`,
      source,
      quantity: `stress area of M${row.diameter} x ${row.pitch}, fine thread`,
      printed: row.area,
      unit: 'mm²',
      tolerance: row.areaTolerance,
      basis: 'M',
    },
    () => 1e6 * threadStressArea(threadOf(row)),
  );
}
