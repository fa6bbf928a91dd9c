import type { SensorResult } from '@standstill/workshop';
import { roleWords } from '../read/column-roles.ts';

/** What prints the figures of a sensor in this person's units. */
export interface SensorPrinter {
  readonly speed: (value: number, precision: number) => string;
  readonly acceleration: (value: number, precision: number) => string;
}

const noiseOrigins = {
  estimated: 'as the log itself shows',
  given: 'as given',
  assumed: 'assumed',
} as const;

/** One sensor of a log in plain words: whether it was used, how noisy it is, what was corrected. */
export function sensorWords(sensor: SensorResult, print: SensorPrinter): string {
  const { used, note } = sensor;
  const said = [noiseWords(sensor, print), biasWords(sensor, print), tiltWords(sensor), scaleWords(sensor)]
    .filter((words) => words !== null)
    .join('; ');
  const all = [used ? said : 'not used', note].filter((words) => words !== '').join('. ');
  return all.endsWith('.') ? all : `${all}.`;
}

/** '“GPS speed”, speed of the car'. */
export function sensorTitle({ channel, quantity }: SensorResult): string {
  return `“${channel}”, ${roleWords(quantity)}`;
}

function noiseWords({ quantity, noise, noiseOrigin }: SensorResult, print: SensorPrinter): string | null {
  if (noise === null) return null;
  const origin = noiseOrigin === null ? '' : ` (${noiseOrigins[noiseOrigin]})`;
  return `its readings scatter by ${amount(quantity, noise, print)}${origin}`;
}

function biasWords({ quantity, bias }: SensorResult, print: SensorPrinter): string | null {
  if (bias === null || bias === 0) return null;
  return `it is off by ${amount(quantity, Math.abs(bias), print)}, which is taken out`;
}

function tiltWords({ tilt_rad }: SensorResult): string | null {
  if (tilt_rad === null) return null;
  return `as if tilted by ${Math.abs((tilt_rad * 180) / Math.PI).toFixed(1)}°`;
}

function scaleWords({ scale }: SensorResult): string | null {
  if (scale === null || Math.abs(scale - 1) < 0.0005) return null;
  return `its readings were multiplied by ${scale.toFixed(3)}`;
}

/** An amount to two digits in the person's unit; what has no unit of theirs in SI. */
function amount(quantity: string, value: number, print: SensorPrinter): string {
  const precision = Math.max(value / 10, Number.MIN_VALUE);
  if (quantity.includes('speed')) return print.speed(value, precision);
  if (quantity.startsWith('acceleration')) return print.acceleration(value, precision);
  const unit = siUnits[quantity];
  return `${Number(value.toPrecision(2))}${unit === undefined ? '' : ` ${unit}`}`;
}

const siUnits: Readonly<Record<string, string>> = {
  latitude: 'm',
  longitude: 'm',
  altitude: 'm',
  distance: 'm',
  heading: 'rad',
};
