import { dimensions, fromUnit, spellingKey, UnknownUnitError, type Dimension } from '@standstill/units';

/** How numbers of a column become SI (°C for temperatures): value = number × factor + shift. */
export interface UnitScale {
  readonly factor: number;
  readonly shift: number;
}

/** Spellings that only headings of logs use, where slashes and raised digits can't be written. */
const headingSpellings: Readonly<Partial<Record<Dimension, Readonly<Record<string, string>>>>> = {
  speed: { km_h: 'km/h', m_s: 'm/s', ms: 'm/s', mps: 'm/s', mi_h: 'mph', ft_s: 'ft/s' },
  acceleration: { ms2: 'm/s²', m_s2: 'm/s²', mps2: 'm/s²', 'm/s2': 'm/s²', 'm/s^2': 'm/s²' },
};

const finerTimes: Readonly<Record<string, number>> = {
  us: 1e-6,
  usec: 1e-6,
  microseconds: 1e-6,
  ns: 1e-9,
  nanoseconds: 1e-9,
};

/** Units that logs write and this program has no use for; they still mark a row of units as one. */
const otherUnits = new Set(
  'rpm 1/min u/min g/s kg/h l/h v mv a ma deg/s °/s rad/s hz bool count counts lambda afr nm n.m kw hp %'.split(
    ' ',
  ),
);

/**
 * How to turn a column's numbers into SI.
 *
 * @param unit - as written in the heading, in the row of units or by a person
 * @param dimension - what the column measures
 * @returns the scale; null where it is no unit of that dimension
 * @example
 * unitScale('kmh', 'speed')?.factor // => 0.277778
 */
export function unitScale(unit: string, dimension: Dimension): UnitScale | null {
  const text = unit.trim();
  if (text === '') return null;
  const finer = dimension === 'time' ? finerTimes[spellingKey(text).toLowerCase()] : undefined;
  if (finer !== undefined) return { factor: finer, shift: 0 };
  const spelled = headingSpellings[dimension]?.[text.toLowerCase()] ?? text;
  return knownScale(spelled, dimension) ?? knownScale(spelled.toLowerCase(), dimension);
}

function knownScale(unit: string, dimension: Dimension): UnitScale | null {
  try {
    const shift = fromUnit(0, unit, dimension);
    return { factor: fromUnit(1, unit, dimension) - shift, shift };
  } catch (error) {
    if (error instanceof UnknownUnitError) return null;
    throw error;
  }
}

/**
 * Whether a text is a unit that a log may carry, of whatever dimension.
 *
 * @param text - a field of a heading or of a row of units
 */
export function isLogUnit(text: string): boolean {
  const key = text.trim();
  if (key === '' || /^[\d.,\s]+$/.test(key)) return false;
  if (otherUnits.has(key.toLowerCase())) return true;
  return dimensions.some((dimension) => unitScale(key, dimension) !== null);
}
