import type { RandomStream } from '@standstill/numerics';
import type { DenseTrace } from './sensor-model.ts';

/** A made stop whose true distances are known. */
export interface MadeStop {
  readonly trace: DenseTrace;
  /** m, from the switch to rest. */
  readonly fromSwitch: number;
  /** m, from where the deceleration begins to rest. */
  readonly fromOnset: number;
  /** s. */
  readonly switchTime: number;
  readonly onsetTime: number;
}

const step = 0.001;

/**
 * Drives a stop: coasting, a dead time after the switch, a ramp, a plateau that drifts and swings a little.
 * All numbers of a stop are drawn; the truth is summed in steps of a millisecond.
 */
export function madeStop(random: RandomStream): MadeStop {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const entry = between(24, 30);
  const drag = between(0.1, 0.6);
  const switchTime = between(3, 4);
  const onsetTime = switchTime + between(0.03, 0.12);
  const ramp = between(0.15, 0.45);
  const plateau = between(5.5, 10);
  const drift = between(-0.04, 0.04);
  const swing = between(0, 0.4);
  const time: number[] = [];
  const speed: number[] = [];
  const applied: number[] = [];
  let [v, fromSwitch, fromOnset] = [entry + drag * switchTime, 0, 0];
  for (let i = 0; i < 20_000; i += 1) {
    const t = i * step;
    time.push(t);
    speed.push(v);
    applied.push(t >= switchTime ? 1 : 0);
    const since = t - onsetTime;
    const full = plateau * (1 + drift * since) + swing * Math.sin(9 * since) * Math.exp(-since);
    const a = drag + (since <= 0 ? 0 : Math.min(1, since / ramp) * (full - drag));
    const next = Math.max(0, v - a * step);
    const covered = ((v + next) / 2) * step;
    if (t >= switchTime) fromSwitch += covered;
    if (t >= onsetTime) fromOnset += covered;
    v = next;
    if (v === 0 && t > onsetTime + 8) break;
  }
  return { trace: { time, speed, brakeApplied: applied }, fromSwitch, fromOnset, switchTime, onsetTime };
}
