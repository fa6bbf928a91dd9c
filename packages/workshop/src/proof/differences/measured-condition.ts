import { brakeTemperatures } from '@standstill/logs';
import { mean } from '@standstill/numerics';
import type { QuantityKind } from '@standstill/units';
import type { StopResult } from '../../results/log-report.ts';
import { runsOf } from '../sets/run-set.ts';
import type { RunSet } from '../sets/run-set.ts';

/** A condition that is a number. */
export interface MeasuredCondition {
  readonly key: 'headWind' | 'surfaceTemperature' | 'tireTemperature' | 'airTemperature' | 'startTemperature';
  readonly title: string;
  readonly kind: QuantityKind;
  /** SI, difference of two sets from which on they are not driven alike (common practice). */
  readonly far: number;
}

export const measuredConditions: readonly MeasuredCondition[] = [
  { key: 'headWind', title: 'head wind', kind: 'speed', far: 2 },
  { key: 'surfaceTemperature', title: 'road temperature', kind: 'temperature', far: 10 },
  { key: 'tireTemperature', title: 'tire temperature', kind: 'temperature', far: 15 },
  { key: 'airTemperature', title: 'air temperature', kind: 'temperature', far: 10 },
  { key: 'startTemperature', title: 'rotor temperature at the start', kind: 'temperature', far: 40 },
];

/** Mean of a condition over a set, SI (°C for temperatures); null where nobody recorded or wrote it down. */
export function conditionOf(set: RunSet, key: MeasuredCondition['key']): number | null {
  const values = key === 'startTemperature' ? startTemperatures(set) : statedValues(set, key);
  return values.length === 0 ? null : mean(values);
}

function statedValues(set: RunSet, key: MeasuredCondition['key']): readonly number[] {
  return runsOf(set).flatMap((run) => run[key]?.value ?? []);
}

/** As recorded at the stops that count; as a person wrote it down where no log has it. */
function startTemperatures(set: RunSet): readonly number[] {
  const counted = set.reports.flatMap(({ stops }) => stops.filter((stop) => stop.counted));
  const recorded = counted.flatMap((stop) => startTemperatureOf(stop) ?? []);
  return recorded.length > 0 ? recorded : statedValues(set, 'startTemperature');
}

/** °C, the hottest brake at the start of a stop; null where none is recorded. */
export function startTemperatureOf({ temperatures }: StopResult): number | null {
  const brakes = brakeTemperatures({
    temperatures: temperatures.map(({ channel, start_C: start, end_C: end }) => ({ channel, start, end })),
  });
  return brakes.length === 0 ? null : Math.max(...brakes.map(({ start }) => start));
}
