import { requireRange } from '@standstill/numerics';
import type { Hose } from '../set-up/hose.ts';

export interface HoseVolume {
  /** m³. */
  readonly volume: number;
  /** True past the last stated pressure: the last slope is carried on, and the surface must say so. */
  readonly beyondTable: boolean;
}

/**
 * Answers how much fluid one hose swallows at a pressure.
 *
 * Equation: V = l e(p), e by straight lines through zero and the stated points; past them the last slope goes on.
 * Valid: length up to 5 m; pressures ascending and expansions not falling.
 *
 * @param hose - hose with l, length, m; stated pressures, Pa; e, expansion, m³ per m
 * @param pressure - p, line pressure, Pa
 * @returns m³, and whether the pressure is past the last stated one
 * @throws OutOfRangeError where an input cannot be
 * Source: [fmvss-106]
 * @example
 * hoseVolume({ length: 0.35, pressures: [6.9e6, 10.3e6], expansions: [2.17e-6, 2.59e-6] }, 10.3e6).volume // => 9.065e-7
 */
export function hoseVolume(hose: Hose, pressure: number): HoseVolume {
  requireHose(hose);
  requireRange('line pressure', pressure, 'Pa', 0, 60e6);
  const { length, pressures, expansions } = hose;
  const last = pressures.length - 1;
  let place = 0;
  while (place < last && at(pressures, place) < pressure) place += 1;
  const pressureBefore = place === 0 ? 0 : at(pressures, place - 1);
  const expansionBefore = place === 0 ? 0 : at(expansions, place - 1);
  const slope = (at(expansions, place) - expansionBefore) / (at(pressures, place) - pressureBefore);
  const expansion = expansionBefore + slope * (pressure - pressureBefore);
  return { volume: length * expansion, beyondTable: pressure > at(pressures, last) };
}

function requireHose(hose: Hose): void {
  requireRange('hose length', hose.length, 'm', 0, 5);
  const count = requireRange('stated pressures of the hose', hose.pressures.length, '', 1, 1000);
  requireRange('stated expansions of the hose', hose.expansions.length, '', count, count);
  for (let index = 0; index < count; index += 1) {
    const pressureBefore = index === 0 ? 0 : at(hose.pressures, index - 1);
    const expansionBefore = index === 0 ? 0 : at(hose.expansions, index - 1);
    requireRange('stated pressure of the hose', at(hose.pressures, index), 'Pa', pressureBefore + 1, 1e9);
    requireRange('stated expansion of the hose', at(hose.expansions, index), 'm³/m', expansionBefore, 1e-3);
  }
}

function at(values: readonly number[], index: number): number {
  return values[index] ?? Number.NaN;
}
