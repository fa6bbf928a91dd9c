import { quantile } from '@standstill/numerics';
import type { ChannelTable } from '../../channels/channel-table.ts';
import { placedRows } from './placed-rows.ts';
import { sparsestPositions, usualStep } from './usual-step.ts';
import { speedFromPositions } from './speed-from-positions.ts';

/** m/s; slower, positions say little about a speed. */
const slowest = 3;
/** Moments that must speak for a ratio to be told. */
const fewest = 5;

/**
 * How many times as fast as its positions a log says that it moves: 1 where its unit is right.
 *
 * @param table - the log
 * @param speed - m/s, one a row
 * @returns the median ratio; null where there are too few moments to tell
 */
export function speedOverPositions(table: ChannelTable, speed: Float64Array): number | null {
  const places = placedRows(table);
  if (places === null) return null;
  const step = usualStep(places);
  if (!(step <= sparsestPositions)) return null;
  const derived = speedFromPositions(table.time.length, places, step, () => undefined);
  const ratios: number[] = [];
  for (let row = 0; row < derived.length; row += 1)
    if (derived[row]! > slowest && !Number.isNaN(speed[row]!)) ratios.push(speed[row]! / derived[row]!);
  return ratios.length < fewest ? null : quantile(ratios, 0.5);
}
