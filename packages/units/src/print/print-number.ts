/**
 * Prints a number rounded to a decimal place, without an exponent unless it is very large or very small.
 *
 * @param number - any number, 1 or any unit; one that is not finite prints as '–' (NaN) or '∞'
 * @param place - power of ten of the last place: 1 for tens, 0 for ones, -1 for tenths
 * @returns the digits, '-' for minus, '.' for the decimal point, no thousands marks
 * @example
 * printNumber(1234.567, 1) // => '1230'
 */
export function printNumber(number: number, place: number): string {
  if (Number.isNaN(number)) return '–';
  if (!Number.isFinite(number)) return number > 0 ? '∞' : '-∞';
  const size = Math.abs(number);
  const digits = size === 0 ? 1 : Math.floor(Math.log10(size)) - place + 1;
  if (digits < 1) return printRoundedToPlace(number, place);
  const rounded = digits > 17 ? number : Number(number.toPrecision(digits));
  if (rounded !== 0 && (Math.abs(rounded) >= 1e15 || Math.abs(rounded) < 1e-4)) {
    return rounded.toExponential(Math.min(digits - 1, 16));
  }
  return plain(rounded, place);
}

/** For numbers smaller than the last place: they become 0 or one unit of that place. */
function printRoundedToPlace(number: number, place: number): string {
  const unit = 10 ** place;
  return plain(Math.round(number / unit) * unit, place);
}

function plain(rounded: number, place: number): string {
  const text = rounded.toFixed(Math.min(Math.max(-place, 0), 20));
  return /^-[0.]*$/u.test(text) ? text.slice(1) : text;
}
