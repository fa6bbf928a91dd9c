import {
  linearPosterior,
  normalCdf,
  normalQuantile,
  requireRange,
  type LinearPosterior,
} from '@standstill/numerics';
import type { SetUp } from '../../set-up/set-up.ts';
import type { PedalReading } from './pedal-reading.ts';
import { pedalShapes, type PedalShapes } from './pedal-shapes.ts';

export interface FitPedalInput {
  /** In the state of the test. */
  readonly setUp: SetUp;
  /** Four or more, from light to hard, past push-out and short of the floor. */
  readonly readings: readonly PedalReading[];
  /** σ_s, m, one standard deviation of a measured travel. */
  readonly travelSpread: number;
  /** σ_F, one standard deviation of a measured force or pressure, as a share of it, 1. */
  readonly forceSpread: number;
  /** n of the trapped air, 1 slow to 1.4 fast; 1 where not given. */
  readonly airExponent?: number | undefined;
}

/** A fitted figure with its 95 % interval, SI. */
export interface Fitted {
  readonly value: number;
  /** One standard deviation. */
  readonly spread: number;
  readonly low: number;
  readonly high: number;
}

/** What the points alone say; nothing of the parts is put in but the pedal box's flex. */
export interface PedalFit {
  /** m at the pedal pad: free play, clearance and all else that is there before pressure. */
  readonly offset: Fitted;
  /** m³ at atmospheric pressure. */
  readonly air: Fitted;
  /** m³/Pa of the whole system: hoses, pads, calipers, lines and fluid together. */
  readonly compliance: Fitted;
  /** Greatest over least singular value of the three scaled shapes, 1: near 1 they are told apart, past 100 hardly. */
  readonly condition: number;
  /** Scatter of the points about the fit over the stated spreads, 1; past 2 the spreads or the model are wrong. */
  readonly scatter: number;
}

const quantile = normalQuantile(0.975);
/** Rounds in which the points' spreads follow the slope of the fit. */
const rounds = 4;

/**
 * Answers what measured points of a pedal say of offset, trapped air and one linear compliance.
 *
 * Equation: s − c F = s_0 + V_0 a(p) + C b(p), a and b by `pedalShapes`, weighted least squares;
 * σ_i² = σ_s² + (σ_F ds/d ln F)² with the slope of the fit itself. Interval ± 1.96 σ, widened by the scatter where that is
 * above 1; below zero air and compliance cannot be, and are cut as a normal spread that knows it.
 * Assumes: a slow push (n = 1 unless given); nothing dissolves, so the air is an upper bound; compliance in a straight line
 * over pressure (real hoses give less than that at high pressure); the pedal box's flex is the set-up's own.
 * Valid: four to 200 readings.
 *
 * @param input - set-up; readings; σ_s, spread of a travel, m; σ_F, spread of a force as a share, 1; n, exponent, 1
 * @returns offset, m; air, m³; compliance, m³/Pa, each with its interval; condition number and scatter, 1
 * @throws OutOfRangeError with fewer than four readings, or where the readings can't tell the three apart at all
 * Source: [limpert]
 * @example
 * fitPedal({ setUp: exampleSetUp, readings: [20, 60, 120, 200].map((pedalForce) => pedalReading(exampleSetUp, { pedalForce, travel: pedalTravel({ setUp: exampleSetUp, pedalForce }).travel })), travelSpread: 0.001, forceSpread: 0.02 }).scatter < 1 // => true
 */
export function fitPedal(input: FitPedalInput): PedalFit {
  const { setUp, readings, airExponent = 1 } = input;
  const rows = requireRange('measured points of the pedal', readings.length, '', 4, 200);
  requireRange('spread of a measured travel', input.travelSpread, 'm', 1e-9, 0.05);
  requireRange('spread of a measured force', input.forceSpread, '', 0, 0.5);
  const shapes = pedalShapes(setUp, readings, airExponent);
  const values = readings.map(({ travel, pedalForce }) => travel - setUp.pedal.flex * pedalForce);
  let spreads = readings.map(() => input.travelSpread);
  let fit = solved(shapes, values, spreads);
  for (let round = 0; round < rounds; round += 1) {
    spreads = spreadsOf(input, shapes, fit);
    fit = solved(shapes, values, spreads);
  }
  const scatter = Math.sqrt(fit.chiSquared / (rows - 3));
  const widening = Math.max(1, scatter);
  const [offset, air, compliance] = [0, 1, 2].map((index) => ({
    value: fit.means[index] ?? NaN,
    spread: widening * (fit.spreads[index] ?? NaN),
  }));
  return {
    offset: interval(offset ?? unknown),
    air: notBelowZero(air ?? unknown),
    compliance: notBelowZero(compliance ?? unknown),
    condition: fit.condition,
    scatter,
  };
}

const unknown = { value: NaN, spread: NaN };
const open = { mean: 0, spread: Infinity };

function solved(
  { air, compliance }: PedalShapes,
  values: readonly number[],
  spreads: readonly number[],
): LinearPosterior {
  const ones = values.map(() => 1);
  return linearPosterior({ columns: [ones, air, compliance], values, spreads, priors: [open, open, open] });
}

function spreadsOf(
  { setUp, readings, travelSpread, forceSpread }: FitPedalInput,
  { airRise, complianceRise }: PedalShapes,
  { means }: LinearPosterior,
): number[] {
  const [, air = 0, compliance = 0] = means;
  return readings.map(({ pedalForce }, index) => {
    const rise =
      setUp.pedal.flex * pedalForce +
      Math.max(0, air) * (airRise[index] ?? 0) +
      Math.max(0, compliance) * (complianceRise[index] ?? 0);
    return Math.hypot(travelSpread, forceSpread * rise);
  });
}

interface Plain {
  readonly value: number;
  readonly spread: number;
}

function interval({ value, spread }: Plain): Fitted {
  return { value, spread, low: value - quantile * spread, high: value + quantile * spread };
}

/** Where the interval reaches below zero it starts there, and ends where 95 % of what is left above zero ends. */
function notBelowZero({ value, spread }: Plain): Fitted {
  const plain = interval({ value, spread });
  if (plain.low >= 0) return plain;
  const below = normalCdf(-value / spread);
  const high = value + spread * normalQuantile(Math.min(1 - 1e-12, below + 0.95 * (1 - below)));
  return { value: Math.max(0, value), spread, low: 0, high: Math.max(plain.high, high, 0) };
}
