import type { SlipForceTable } from './slip-force-table.ts';

/**
 * One wheel of the full stop: what it is, what its control has set, and what it did where the slopes were last taken. Every
 * field begins as not-a-number, so that the engine keeps it as a fraction from the start.
 */
export class Wheel {
  /** The tire's curve; both wheels of an axle share one. */
  readonly curve: SlipForceTable;
  /** 1, part of the axle's load. */
  loadShare = Number.NaN;
  /** r, m. */
  radius = Number.NaN;
  /** 1/J, 1/(kg m²). */
  perInertia = Number.NaN;
  /** 1/σ, 1/m. */
  perRelaxation = Number.NaN;
  /** N m per Pa above push-out at pad friction 1. */
  gain = Number.NaN;
  /** p_0, Pa. */
  pushOut = Number.NaN;
  /** N m, engine drag on the wheel while it turns. */
  engineDrag = Number.NaN;
  /** s and e of F_peak = s F_z^e; N^(1 − e) and 1. */
  peakScale = Number.NaN;
  peakExponent = Number.NaN;
  /** One over the load, 1/N, around which that law is carried by its series, and its peak force there, N. */
  perAnchor = Number.NaN;
  anchorPeak = Number.NaN;
  /** μ of the pads, 1, when it was last looked up, and its change, 1/s. */
  friction = Number.NaN;
  frictionRate = Number.NaN;
  /** 1/s, how quickly the caliper follows its line. */
  quickness = Number.NaN;
  /** 1/s and 1/s: dp/dt = a p_line − b p at the caliper, and Pa/s, the most that it may be; see `HydraulicLines`. */
  fromLine = Number.NaN;
  fromOwn = Number.NaN;
  mostRate = Number.NaN;
  /** N that the tire gives; N m of the brake. */
  force = Number.NaN;
  torque = Number.NaN;

  /** @param curve - the tire's curve */
  constructor(curve: SlipForceTable) {
    this.curve = curve;
  }
}
