import { GPS } from 'gps';
import { longDate, shortDate, utcSeconds } from './nmea-clock.ts';

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
const radians = Math.PI / 180;

/** Whether a sentence is one that tells speed, position or time. Those that begin with P are makers' own. */
export function isFixSentence(text: string): boolean {
  return wanted.test(text);
}

/**
 * Reads a sentence of any talker whose checksum is good, by the library gps. Times and dates are taken from the fields
 * themselves: a sentence without a date must not get today's, and a fraction may be finer than a millisecond.
 *
 * @param text - RMC, VTG, GGA or ZDA
 * @returns what it says; null where it breaks its format
 */
export function readFix(text: string): FixPart | null {
  const fields = text.slice(0, text.indexOf('*')).split(',');
  const read = parsed(text);
  if (read === null) return null;
  if (read.type === 'RMC') {
    const isVoid = read.status !== 'active' || read.faa === 'not valid' || read.navStatus === 'unsafe';
    const place = { latitude: angle(read.lat), longitude: angle(read.lon) };
    const motion = { speed: (read.speed ?? NaN) / 3.6, heading: angle(read.track) };
    const moment = { seconds: utcSeconds(fields[1] ?? ''), day: shortDate(fields[9] ?? '') };
    return { ...nothing, type: 'RMC', ...moment, isVoid, ...place, ...motion };
  }
  if (read.type === 'VTG') {
    const isVoid = read.faa === 'not valid';
    return { ...nothing, type: 'VTG', isVoid, speed: (read.speed ?? NaN) / 3.6, heading: angle(read.track) };
  }
  if (read.type === 'GGA') {
    const place = { latitude: angle(read.lat), longitude: angle(read.lon), altitude: read.alt ?? NaN };
    const quality = fields[6] === '' ? NaN : Number(fields[6]);
    const trust = { quality, satellites: read.satellites ?? NaN, dilution: read.hdop ?? NaN };
    const isVoid = read.quality === null;
    return { ...nothing, type: 'GGA', seconds: utcSeconds(fields[1] ?? ''), isVoid, ...place, ...trust };
  }
  if (read.type !== 'ZDA') return null;
  const day = longDate(fields[2] ?? '', fields[3] ?? '', fields[4] ?? '');
  return { ...nothing, type: 'ZDA', seconds: utcSeconds(fields[1] ?? ''), day };
}

function parsed(text: string): Exclude<ReturnType<typeof GPS.Parse>, false> | null {
  try {
    const read = GPS.Parse(text);
    return read !== false && read.valid ? read : null;
  } catch {
    return null;
  }
}

function angle(degrees: number | null): number {
  return (degrees ?? NaN) * radians;
}
