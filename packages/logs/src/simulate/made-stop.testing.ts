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

/** How a deceleration grows: share of the plateau at a share of the build-up time. */
const buildUps: readonly ((share: number) => number)[] = [
  (x) => Math.min(1, x),
  (x) => (x < 1 ? x * x * (3 - 2 * x) : 1),
  (x) => 1 - Math.exp(-3 * x),
  (x) => (x < 0.4 ? 1.6 * x : Math.min(1, 0.64 + 0.36 * ((x - 0.4) / 0.9))),
];

/**
 * Drives a stop: coasting against rolling and air, a dead time after the switch, a build-up of one of four shapes, a
 * plateau that drifts, swings, ripples as a control does and bites harder as the car slows, and now and then a foot that
 * eases off at the end. All numbers of a stop are drawn; the truth is summed in steps of a millisecond.
 */
export function madeStop(random: RandomStream): MadeStop {
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const oneOf = <T>(choices: readonly T[]): T => choices[Math.floor(random.uniform() * choices.length)]!;
  const entry = between(24, 30);
  const rolling = between(0.1, 0.3);
  const air = between(2e-4, 5e-4);
  const switchTime = between(3, 4);
  const onsetTime = switchTime + between(0.03, 0.12);
  const buildUp = oneOf(buildUps);
  const ramp = between(0.15, 0.45);
  const plateau = between(5.5, 10);
  const drift = between(-0.04, 0.04);
  const bite = between(0, 0.12);
  const swing = between(0, 0.4);
  const ripple = oneOf([0, 0, between(0.2, 0.9)]);
  const rippleRate = 2 * Math.PI * between(4, 9);
  const easing = oneOf([1, 1, between(0.5, 0.9)]);
  const time: number[] = [];
  const speed: number[] = [];
  const applied: number[] = [];
  let [v, fromSwitch, fromOnset] = [entry + (rolling + air * entry * entry) * switchTime, 0, 0];
  for (let i = 0; i < 20_000; i += 1) {
    const t = i * step;
    time.push(t);
    speed.push(v);
    applied.push(t >= switchTime ? 1 : 0);
    const since = t - onsetTime;
    const full =
      plateau * (1 + drift * since + bite * (1 - v / entry)) +
      swing * Math.sin(9 * since) * Math.exp(-since) +
      (since > ramp ? ripple * Math.sin(rippleRate * (since - ramp)) : 0);
    const coasting = v > 0 ? rolling + air * v * v : 0;
    const eased = v < 2 ? easing : 1;
    const a = since <= 0 ? coasting : coasting + buildUp(since / ramp) * (full * eased - coasting);
    const next = Math.max(0, v - a * step);
    const covered = ((v + next) / 2) * step;
    if (t >= switchTime) fromSwitch += covered;
    if (t >= onsetTime) fromOnset += covered;
    v = next;
    if (v === 0 && t > onsetTime + 8) break;
  }
  return { trace: { time, speed, brakeApplied: applied }, fromSwitch, fromOnset, switchTime, onsetTime };
}
