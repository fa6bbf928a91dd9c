import { findStops, recordedTable, type FoundStop } from '@standstill/logs';
import { bracketedRoot } from '@standstill/numerics';
import { published } from '../published.ts';

const foot = 0.3048;
const sixty = 60 * 0.44704;
const gravity = 9.80665;

/** s; the deceleration of the made stops grows evenly over this time. */
const ramp = 0.2;

/** m of a stop from 60 mph whose deceleration grows to `full` over the ramp and stays there. */
function distanceAt(full: number): number {
  return sixty * ramp - (full * ramp ** 2) / 6 + (sixty - (full * ramp) / 2) ** 2 / (2 * full);
}

/** The stop that is found in a made record of one from 60 mph in so many feet. */
function stopIn(feet: number): FoundStop {
  const full = bracketedRoot((value) => distanceAt(value) - feet * foot, {
    low: 2,
    high: 30,
    tolerance: 1e-9,
  });
  const time = Float64Array.from({ length: 9001 }, (_, i) => i / 1000);
  const speed = time.map((t) => {
    const since = Math.max(0, t - 2);
    return Math.max(0, sixty - full * (since < ramp ? since ** 2 / (2 * ramp) : since - ramp / 2));
  });
  const brakeApplied = time.map((t) => (t >= 2 ? 1 : 0));
  const [stop] = findStops(recordedTable({ time, speed, brakeApplied }, 'made'));
  if (stop === undefined) throw new Error(`no stop was found where one of ${feet} ft was made`);
  return stop;
}

for (const [id, feet, printed] of [
  ['best-stop', 111, 1.08],
  ['usual-stop', 139, 0.87],
] as const)
  published(
    {
      id,
      source: 'common-practice',
      quantity: `mean deceleration of a stop from 60 mph in ${feet} ft`,
      printed,
      unit: 'g',
      tolerance: 0.005,
      basis: 'M',
    },
    () => stopIn(feet).meanDecelerationByDistance / gravity,
  );

published(
  {
    id: 'gain',
    source: 'common-practice',
    quantity: 'what 111 ft saves of 139 ft',
    printed: 20,
    unit: '%',
    tolerance: 0.5,
    basis: 'M',
  },
  () => 100 * (1 - stopIn(111).applicationDistance / stopIn(139).applicationDistance),
);
