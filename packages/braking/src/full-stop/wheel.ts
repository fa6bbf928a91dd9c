import type { SlipForceTable } from './slip-force-table.ts';

/** How far from its anchor the law of peak force is carried by its series, relative: it is then off by less than 2e-8. */
const reach = 0.03;

/**
 * One wheel of the full stop: what it is, what its control has set, how it moves, and what it did where the slopes were
 * last taken. Its state is held in fields, and every field begins as not-a-number, so that the engine keeps it as a
 * fraction from the start: half the time of a stop hangs on that.
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
  /** s and e of F_peak = s F_z^e; N^(1 − e) and 1; see `peakAt`. */
  peakScale = Number.NaN;
  peakExponent = Number.NaN;
  /** 1/N: one over the load around which that law is carried by its series, and N: the terms of that. */
  #perAnchor = Number.NaN;
  #peak0 = Number.NaN;
  #peak1 = Number.NaN;
  #peak2 = Number.NaN;
  #peak3 = Number.NaN;
  /** Part of that force that water leaves, 1, where the slopes were last taken. */
  grip = Number.NaN;
  /** μ of the pads, 1, when it was last looked up, and its change, 1/s. */
  friction = Number.NaN;
  frictionRate = Number.NaN;
  /** 1/s, how quickly the caliper follows its line. */
  quickness = Number.NaN;
  /** 1/s and 1/s: dp/dt = a p_line − b p at the caliper, and Pa/s, the most that it may be; see `HydraulicLines`. */
  fromLine = Number.NaN;
  fromOwn = Number.NaN;
  mostRate = Number.NaN;
  /** ω, rad/s; κ, 1, slip that the tire's force has followed; p, Pa, at the caliper. */
  turning = Number.NaN;
  slip = Number.NaN;
  pressure = Number.NaN;
  /** ω, rad/s, at the end of the step that was last tried. */
  triedTurning = Number.NaN;
  /** What each gains a second, where the slopes were last taken. */
  turningRate = Number.NaN;
  slipRate = Number.NaN;
  pressureRate = Number.NaN;
  /** Those of a step's stages, summed by their weights; see `rungeKuttaStep`. */
  turningSum = Number.NaN;
  slipSum = Number.NaN;
  pressureSum = Number.NaN;
  /** N that the tire gives; N m of the brake. */
  force = Number.NaN;
  torque = Number.NaN;
  /** W that the brake makes at the last node, and J that it has made; see `FullBooks`. */
  wattsOfBrake = Number.NaN;
  brakeWork = Number.NaN;

  /** @param curve - the tire's curve */
  constructor(curve: SlipForceTable) {
    this.curve = curve;
  }

  /** Sets the wheel rolling unbraked at a speed, m/s, with a slip, 1. */
  startRolling(speed: number, slip: number): void {
    this.turning = (speed * (1 - slip)) / this.radius;
    this.slip = slip;
    this.pressure = 0;
    this.turningRate = 0;
    this.slipRate = 0;
    this.pressureRate = 0;
  }

  /** Takes on its tire's law of peak force, F_peak = s F_z^e: s, N^(1 − e), and e, 1. */
  takePeak(scale: number, exponent: number): void {
    this.peakScale = scale;
    this.peakExponent = exponent;
    this.#renew(1);
  }

  /**
   * N, the peak force of the tire on a dry road at a load, N: by a series around a load nearby, which is renewed when the
   * load has moved away from it.
   *
   * Equation: F_peak = s F_z^e = F_a (1 + e d (1 + (e − 1) d / 2 (1 + (e − 2) d / 3))), d = (F_z − F_za) / F_za; in a
   * straight line from nothing under 1 N.
   * Source: [power-law-load]
   */
  peakAt(load: number): number {
    const off = load * this.#perAnchor - 1;
    if (off < reach && off > -reach)
      return this.#peak0 + off * (this.#peak1 + off * (this.#peak2 + off * this.#peak3));
    this.#renew(load);
    return load > 0 ? load * this.#perAnchor * this.#peak0 : 0;
  }

  /**
   * Carries the series around a load, N, from now on. Hands nothing back: a number from a function that is not merged into
   * its caller comes in a box, and then `peakAt` would put each of its own into one.
   */
  #renew(load: number): void {
    const anchor = load < 1 ? 1 : load;
    const e = this.peakExponent;
    this.#perAnchor = 1 / anchor;
    this.#peak0 = this.peakScale * Math.pow(anchor, e);
    this.#peak1 = e * this.#peak0;
    this.#peak2 = 0.5 * (e - 1) * this.#peak1;
    this.#peak3 = ((e - 2) / 3) * this.#peak2;
  }

  /**
   * Takes the slopes at a stage of a step, adds them to the step's sums and answers the force of the tire, N; `ahead` s from
   * the last node to the stage, the stage's `weight`, 1, `speed` of the wheels' carriers, m/s, load of the axle, N, pressure
   * in the line, Pa, `since` the friction of the pads was looked up, s.
   *
   * Equation: F = F_peak(F_z, u) y(κ); T = 2 μ (p − p_0) A r_e η; J ω' = r F − T − T_engine; σ κ' = (u − r ω) − |u| κ.
   *
   * Plain numbers, and no longer than this: so the engine merges it into its one caller, and nothing is put into boxes.
   */
  roll(ahead: number, weight: number, speed: number, axleLoad: number, line: number, since: number): number {
    const slip = this.slip + ahead * this.slipRate;
    const turning = this.turning + ahead * this.turningRate;
    const pressure = this.pressure + ahead * this.pressureRate;
    const { radius, mostRate } = this;
    const force = this.peakAt(axleLoad * this.loadShare) * (this.grip * this.curve.at(slip));
    const above = pressure - this.pushOut;
    const torque = above > 0 ? this.gain * (this.friction + this.frictionRate * since) * above : 0;
    const net = radius * force - (torque + this.engineDrag);
    const turningRate = turning > 0 || net > 0 ? net * this.perInertia : 0;
    const slipRate = (speed - radius * turning - Math.abs(speed) * slip) * this.perRelaxation;
    const follow = line * this.fromLine - pressure * this.fromOwn;
    const pressureRate = follow < mostRate ? follow : mostRate;
    this.turningRate = turningRate;
    this.slipRate = slipRate;
    this.pressureRate = pressureRate;
    this.turningSum += weight * turningRate;
    this.slipSum += weight * slipRate;
    this.pressureSum += weight * pressureRate;
    this.force = force;
    this.torque = torque;
    return force;
  }

  /** Begins a step's sums with the slopes at its start. */
  openStep(): void {
    this.turningSum = this.turningRate;
    this.slipSum = this.slipRate;
    this.pressureSum = this.pressureRate;
  }

  /** Tries the step whose sums are done; `sixth` of its duration, s. */
  closeStep(sixth: number): void {
    this.triedTurning = this.turning + sixth * this.turningSum;
  }

  /** Takes the tried step; a wheel that `stands` does not turn from now on. */
  acceptStep(sixth: number, stands: boolean): void {
    const turning = this.triedTurning;
    this.turning = stands || turning < 0 ? 0 : turning;
    this.slip += sixth * this.slipSum;
    this.pressure += sixth * this.pressureSum;
  }
}
