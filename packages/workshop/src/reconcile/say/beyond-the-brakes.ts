import { mean, standardDeviation, tQuantile } from '@standstill/numerics';
import { speaker } from '../../words/speaker.ts';
import type { Explained } from '../explained.ts';
import { tiresChanged } from './tires-changed.ts';

/** °C between the starts of two sets that pads and tires can feel (assumed). */
const feltWarmth = 20;

/**
 * What may be behind the part of a change that the brakes can't explain: first what is known to have differed, then what
 * nobody wrote down.
 *
 * @param about - what was found
 * @returns one text each; none where nothing was driven after
 */
export function beyondTheBrakes(about: Explained): string[] {
  const { compared, confounders, after, brakesAlone } = about;
  if (compared === null) return [];
  const tires =
    brakesAlone === after || after === null
      ? []
      : [
          `tires: "${after.title}" has others than the set-up before; what they make is not in the brakes' share`,
        ];
  const known = [...tires, ...confounders, ...byFoot(about), ...byWarmth(about), ...byOrder(about)];
  const said = (kind: RegExp): boolean => known.some((text) => kind.test(text));
  const open = [
    ...(tiresChanged(about)
      ? []
      : ['tires: not said to be others, but wear, age, pressure and warmth count']),
    ...(said(/^surface/i) ? [] : ['surface: temperature and dust, also in the same place']),
    ...(said(/^driver/i) ? [] : ['driver: how hard, how fast and how near to locking']),
    ...(said(/^warm-up/i) ? [] : ['warm-up of tires and pads over the runs']),
  ];
  return [...known, ...open, 'what the model lacks: it is quasi-static, and its spreads may be too narrow'];
}

/** A driver who pushed otherwise. */
function byFoot({ measured, units }: Explained): string[] {
  const [a, b] = [measured.before.pedalForces, measured.after?.pedalForces ?? []];
  if (a.length < 2 || b.length < 2) return [];
  const error = Math.hypot(
    standardDeviation(a) / Math.sqrt(a.length),
    standardDeviation(b) / Math.sqrt(b.length),
  );
  const more = mean(b) - mean(a);
  if (Math.abs(more) <= tQuantile(0.975, Math.min(a.length, b.length) - 1) * error) return [];
  const say = speaker(units);
  return [
    `driver: the pedal was pushed with ${say.plain(mean(a), 'force')} before and ${say.plain(mean(b), 'force')} after`,
  ];
}

function byWarmth({ measured, units }: Explained): string[] {
  const [a, b] = [measured.before.startTemperature, measured.after?.startTemperature ?? null];
  if (a === null || b === null || Math.abs(b.value - a.value) < feltWarmth) return [];
  const say = speaker(units);
  return [
    `warm-up: the stops began at ${say.plain(a.value, 'temperature')} before and ${say.plain(b.value, 'temperature')} after`,
  ];
}

/** A trend within a set. */
function byOrder({ compared }: Explained): string[] {
  if (compared === null) return [];
  const trends = [compared.before, compared.after].filter(
    ({ trend }) => trend !== null && (trend.low > 0 || trend.high < 0),
  );
  return trends.length === 0
    ? []
    : ['warm-up: the stops of a set became longer or shorter one by one, so run order and change are mixed'];
}
