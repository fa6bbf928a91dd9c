import { numberField } from '../csv/number-field.ts';

const radians = Math.PI / 180;

/** A field as a number: NaN where it is empty, null where it holds something else than a number. */
export function nmeaNumber(field: string): number | null {
  if (field === '') return NaN;
  const value = numberField(field, false);
  return Number.isNaN(value) ? null : value;
}

/** A field as a number that can't be negative; null where it is or where it holds no number. */
export function nmeaSize(field: string): number | null {
  const value = nmeaNumber(field);
  return value !== null && value < 0 ? null : value;
}

/** A direction in degrees as rad; NaN where it is empty, null where it is outside 0 to 360. */
export function nmeaCourse(field: string): number | null {
  const value = nmeaSize(field);
  return value !== null && value > 360 ? null : value === null ? null : value * radians;
}

/**
 * A latitude 'ddmm.mmm' or a longitude 'dddmm.mmm' with its hemisphere.
 *
 * @param field - degrees and minutes
 * @param hemisphere - N, S, E or W
 * @param signs - the letters of the positive and the negative side
 * @returns rad; NaN where both are empty, null where there is no such place
 */
export function nmeaAngle(field: string, hemisphere: string, signs: 'NS' | 'EW'): number | null {
  if (field === '' && hemisphere === '') return NaN;
  const digits = signs === 'NS' ? 2 : 3;
  const side = signs.indexOf(hemisphere);
  if (hemisphere.length !== 1 || side < 0 || !/^\d{4,5}(\.\d*)?$/.test(field)) return null;
  const whole = field.replace(/\..*$/, '');
  if (whole.length !== digits + 2) return null;
  const minutes = numberField(field.slice(digits), false);
  const degrees = Number(field.slice(0, digits)) + minutes / 60;
  if (!(minutes < 60) || degrees > (signs === 'NS' ? 90 : 180)) return null;
  return (side === 0 ? degrees : -degrees) * radians;
}
