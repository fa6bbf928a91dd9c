import { guessQuantity, isBareBrake, type ColumnRole } from '../csv/guess-quantity.ts';
import { headingWords } from '../csv/heading-words.ts';
import { roleDimension } from '../csv/role-dimension.ts';
import { unitScale } from '../csv/unit-scale.ts';
import type { SignalSource } from './signal-source.ts';

/** With one of these words a signal of the brakes tells something else than the driver's foot. */
const notTheFoot = new Set(
  'hold error fault fail failure warning lamp park parking hand handbrake epb request requested available enabled'.split(
    ' ',
  ),
);

/** With one of these words a speed is a coarse copy for the driver's eyes, or someone's wish. */
const notTheSpeed = new Set(
  'hud display displayed dash dashboard cluster gauge rough desired requested request'.split(' '),
);

/**
 * Guesses what a named signal measures, from the best of its names that says anything. A lesser name (a message's
 * before the signal's) counts only where the unit fits what it says. A switch must be one: a state of many values may
 * have 'released' above 'pressed'.
 *
 * @param signal - the signal
 * @returns the role; 'unknown' where nothing fits
 */
export function guessRole(signal: SignalSource): ColumnRole {
  for (const [index, name] of signal.guessFrom.entries()) {
    const role = roleByName(name, signal.isSwitch);
    if (role === 'barred') return 'unknown';
    if (role === 'unknown' || role === 'time') continue;
    if (role === 'brake-switch') return signal.isSwitch && index === 0 ? role : 'unknown';
    const dimension = roleDimension[role];
    const fits = dimension !== null && unitScale(signal.unit, dimension) !== null;
    if (index === 0 || fits) return role;
  }
  return 'unknown';
}

function roleByName(name: string, isSwitch: boolean): ColumnRole | 'barred' {
  const role = isBareBrake(name) ? (isSwitch ? 'brake-switch' : 'brake-pressure') : guessQuantity(name);
  const barred = role === 'brake-switch' ? notTheFoot : role === 'speed' ? notTheSpeed : null;
  return barred !== null && headingWords(name).some((word) => barred.has(word)) ? 'barred' : role;
}
