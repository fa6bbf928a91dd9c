import { GPS } from 'gps';
import { longDate, shortDate, utcSeconds } from './nmea-clock.ts';
import { nmeaAngle, nmeaCourse, nmeaNumber, nmeaSize } from './nmea-field.ts';

/** What one sentence says about one moment; NaN where it says nothing. SI. */
export interface FixPart {
  readonly type: 'RMC' | 'VTG' | 'GGA' | 'ZDA';
  /** s since midnight UTC; NaN for VTG, which names no moment. */
  readonly seconds: number;
  /** Days since 1970-01-01. */
  readonly day: number;
  /** Whether the receiver calls its own fix void. */
  readonly isVoid: boolean;
  readonly speed: number;
  readonly heading: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly altitude: number;
  /** GGA's own number. */
  readonly quality: number;
  readonly satellites: number;
  readonly dilution: number;
}

/** The numbers of a sentence; null for one that breaks its format. */
type Numbers = { readonly [key in keyof FixPart]?: FixPart[key] | null };

const nothing = {
  seconds: NaN,
  day: NaN,
  isVoid: false,
  speed: NaN,
  heading: NaN,
  latitude: NaN,
  longitude: NaN,
  altitude: NaN,
  quality: NaN,
  satellites: NaN,
  dilution: NaN,
};
const wanted = /^\$(?!P)[A-Z]{2}(RMC|VTG|GGA|ZDA),/;
/** m/s in a knot, exactly. */
const knot = 1852 / 3600;
/** Mode indicators with which a status has to be void: not valid, dead reckoning, typed in, simulated. */
const voidModes = new Set(['N', 'E', 'M', 'S']);
/** From this number on GGA's quality means typed in or simulated; dead reckoning (6) is left to be warned of. */
const madeUpQuality = 7;

/** Whether a sentence is one that tells speed, position or time. Those that begin with P are makers' own. */
export function isFixSentence(text: string): boolean {
  return wanted.test(text);
}

/**
 * Reads a sentence of any talker whose checksum is good. The library gps says whether it keeps its format; numbers, times
 * and dates are taken from the fields themselves: a sentence without a date must not get today's, a fraction may be finer than a
 * millisecond, and '12x' is no 12.
 *
 * @param text - RMC, VTG, GGA or ZDA
 * @returns what it says; null where it breaks its format
 * Source: [nmea-0183]
 */
export function readFix(text: string): FixPart | null {
  const type = parsedType(text);
  if (type === null) return null;
  const fields = text.slice(0, text.indexOf('*')).split(',');
  const at = (index: number): string => fields[index]?.trim() ?? '';
  const numbers = readers[type](at);
  if (Object.values(numbers).includes(null)) return null;
  return { ...nothing, ...(numbers as Partial<FixPart>), type };
}

const readers: Readonly<Record<FixPart['type'], (at: (index: number) => string) => Numbers>> = {
  RMC: (at) => ({
    seconds: utcSeconds(at(1)),
    day: shortDate(at(9)),
    isVoid: at(2) !== 'A' || voidModes.has(at(12)) || at(13) === 'U',
    latitude: nmeaAngle(at(3), at(4), 'NS'),
    longitude: nmeaAngle(at(5), at(6), 'EW'),
    speed: scaled(nmeaSize(at(7)), knot),
    heading: nmeaCourse(at(8)),
  }),
  VTG: (at) => ({
    isVoid: voidModes.has(at(9)),
    speed: at(5) === '' ? scaled(nmeaSize(at(7)), 1 / 3.6) : scaled(nmeaSize(at(5)), knot),
    heading: nmeaCourse(at(1)),
  }),
  GGA: (at) => ({
    seconds: utcSeconds(at(1)),
    isVoid: at(6) === '' || at(6) === '0' || Number(at(6)) >= madeUpQuality,
    latitude: nmeaAngle(at(2), at(3), 'NS'),
    longitude: nmeaAngle(at(4), at(5), 'EW'),
    quality: nmeaSize(at(6)),
    satellites: nmeaSize(at(7)),
    dilution: nmeaSize(at(8)),
    altitude: nmeaNumber(at(9)),
  }),
  ZDA: (at) => ({ seconds: utcSeconds(at(1)), day: longDate(at(2), at(3), at(4)) }),
};

function scaled(value: number | null, factor: number): number | null {
  return value === null ? null : value * factor;
}

function parsedType(text: string): FixPart['type'] | null {
  try {
    const read = GPS.Parse(text);
    if (read === false || !read.valid) return null;
    const { type } = read;
    return type === 'RMC' || type === 'VTG' || type === 'GGA' || type === 'ZDA' ? type : null;
  } catch {
    return null;
  }
}
