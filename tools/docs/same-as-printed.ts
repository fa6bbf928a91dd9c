/**
 * True where a value is what an example prints: numbers to the digits printed and at most six, everything else exactly.
 * A lone number is held to its own printed digits; inside lists and records numbers are held to six digits.
 */
export function sameAsPrinted(actual: unknown, printed: unknown, text: string): boolean {
  if (typeof printed === 'number')
    return typeof actual === 'number' && sameNumber(actual, printed, digitsIn(text));
  if (typeof printed !== 'object' || printed === null) return Object.is(actual, printed);
  if (typeof actual !== 'object' || actual === null) return false;
  const keys = Object.keys(printed);
  if (Object.keys(actual).length !== keys.length) return false;
  return keys.every((key) => sameAsPrinted(Reflect.get(actual, key), Reflect.get(printed, key), ''));
}

/** How many digits count. Four or more with a point say how far they are rounded; anything shorter is meant exactly. */
function digitsIn(text: string): number {
  const digits = /^-?([\d.]+)(?:e[-+]?\d+)?$/.exec(text.trim())?.[1] ?? '';
  const significant = digits.replace('.', '').replace(/^0+/, '').length;
  return digits.includes('.') && significant >= 4 ? Math.min(significant, 6) : 6;
}

function sameNumber(actual: number, printed: number, digits: number): boolean {
  if (Number.isNaN(printed)) return Number.isNaN(actual);
  if (!Number.isFinite(printed) || printed === 0)
    return actual === printed || Math.abs(actual - printed) < 1e-9;
  const step = 10 ** (Math.floor(Math.log10(Math.abs(printed))) + 1 - digits);
  return Math.abs(actual - printed) <= (step / 2) * (1 + 1e-9);
}
