import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { leastSquares, linearFit, standardDeviation } from '@standstill/numerics';
import { expect, test } from 'vitest';
import { published } from '../published.ts';

/** Ezekiel 1930: speed and stopping distance of fifty stops, in the folder of logs beside the repository. */
const table = fileURLToPath(new URL('../../../shared/logs/tables/cars.csv', import.meta.url));

const pairs = existsSync(table) ? readPairs(table) : undefined;
if (pairs === undefined)
  console.info(`The table of fifty stops is not here (${table}): its fits are skipped.`);

test.skipIf(pairs === undefined)(
  'the table of fifty stops is beside this repository, so its fits are checked',
  () => {
    expect(pairs?.speeds.length).toBe(50);
  },
);
if (pairs) checkFits(pairs);

function readPairs(path: string): { readonly speeds: number[]; readonly distances: number[] } {
  const rows = readFileSync(path, 'utf8').trim().split(/\r?\n/u);
  const [head = '', ...body] = rows.map((row) => row.replaceAll('"', ''));
  const names = head.split(',');
  const column = (name: string): number[] => body.map((row) => Number(row.split(',')[names.indexOf(name)]));
  return { speeds: column('speed'), distances: column('dist') };
}

function checkFits({ speeds, distances }: { speeds: number[]; distances: number[] }): void {
  const line = linearFit(speeds, distances);
  const curve = leastSquares([speeds.map(() => 1), speeds, speeds.map((speed) => speed ** 2)], distances);
  const shared = { source: 'r-datasets', basis: 'R', unit: '' } as const;
  const feet = { ...shared, unit: 'ft' } as const;

  published(
    {
      ...feet,
      id: '9-16',
      quantity: 'stopping distance over speed, line: intercept',
      printed: -17.5791,
      tolerance: 0.00005,
    },
    () => line.intercept,
  );
  published(
    { ...feet, id: '9-16b', quantity: 'its standard error', printed: 6.7584, tolerance: 0.00005 },
    () => line.interceptStandardError,
  );
  published(
    { ...shared, unit: 'ft/mph', id: '9-16c', quantity: 'slope', printed: 3.9324, tolerance: 0.00005 },
    () => line.slope,
  );
  published(
    {
      ...shared,
      unit: 'ft/mph',
      id: '9-16d',
      quantity: 'its standard error',
      printed: 0.4155,
      tolerance: 0.00005,
    },
    () => line.slopeStandardError,
  );
  published(
    { ...feet, id: '9-16e', quantity: 'residual standard deviation', printed: 15.38, tolerance: 0.005 },
    () => line.residualStandardDeviation,
  );
  published(
    { ...shared, id: '9-16f', quantity: 'R²', printed: 0.6511, tolerance: 0.00005 },
    () => line.rSquared,
  );
  published(
    { ...shared, id: '9-16g', quantity: 'F', printed: 89.57, tolerance: 0.005 },
    () => (line.slope / line.slopeStandardError) ** 2,
  );
  published(
    {
      ...shared,
      unit: 'ft/mph',
      id: '9-16h',
      quantity: 'slope, 95 % interval, low end',
      printed: 3.097,
      tolerance: 0.0005,
    },
    () => line.slopeInterval.low,
  );
  published(
    {
      ...shared,
      unit: 'ft/mph',
      id: '9-16i',
      quantity: 'slope, 95 % interval, high end',
      printed: 4.768,
      tolerance: 0.0005,
    },
    () => line.slopeInterval.high,
  );

  published(
    {
      ...feet,
      id: '9-18',
      quantity: 'the same as a full quadratic: constant',
      printed: 2.47,
      tolerance: 0.0005,
    },
    () => curve.coefficients[0]!,
  );
  published(
    {
      ...shared,
      unit: 'ft/mph',
      id: '9-18b',
      quantity: 'its linear term',
      printed: 0.9133,
      tolerance: 0.00005,
    },
    () => curve.coefficients[1]!,
  );
  published(
    {
      ...shared,
      unit: 'ft/mph²',
      id: '9-18c',
      quantity: 'its square term',
      printed: 0.09996,
      tolerance: 0.000005,
    },
    () => curve.coefficients[2]!,
  );
  published(
    { ...feet, id: '9-18d', quantity: 'residual standard deviation', printed: 15.18, tolerance: 0.005 },
    () => curve.residualStandardDeviation,
  );
  published({ ...shared, id: '9-18e', quantity: 'F', printed: 47.14, tolerance: 0.005 }, () => {
    const about = curve.residualStandardDeviation ** 2;
    const total = (distances.length - 1) * standardDeviation(distances) ** 2;
    return (total - curve.degreesOfFreedom * about) / 2 / about;
  });
}
