/**
 * How the whole car moves in a full stop, beside its wheels: its state, what that gains a second, and the forces where the
 * slopes were last taken. Every field begins as not-a-number, as in `Wheel`.
 */
export class CarMotion {
  /** t, s, of the last node. */
  time = Number.NaN;
  /** h, s, of the step that was last tried; the last node's own, where it has been taken. */
  duration = Number.NaN;
  /** s from the last node to where slopes are taken, and their weight, 1, in the step's sums; to be set before. */
  ahead = Number.NaN;
  weight = Number.NaN;
  /** v, m/s, of the center of gravity. */
  speed = Number.NaN;
  /** At the end of the step that was last tried; what it gains a second, and that summed over a step's stages. */
  triedSpeed = Number.NaN;
  speedRate = Number.NaN;
  speedSum = Number.NaN;
  /** s, m, driven by the wheels. */
  distance = Number.NaN;
  distanceRate = Number.NaN;
  distanceSum = Number.NaN;
  /** x, m/s²: the deceleration whose steady pitch the body has now. */
  pitch = Number.NaN;
  pitchRate = Number.NaN;
  pitchSum = Number.NaN;
  /** dx/dt, m/s³. */
  pitching = Number.NaN;
  triedPitching = Number.NaN;
  pitchingRate = Number.NaN;
  pitchingSum = Number.NaN;
  /** p_m, Pa, front outlet of the master cylinder. */
  master = Number.NaN;
  masterRate = Number.NaN;
  masterSum = Number.NaN;
  /** F_p, N, of a foot that seeks a deceleration. */
  foot = Number.NaN;
  footRate = Number.NaN;
  footSum = Number.NaN;
  /** N against the motion. */
  air = Number.NaN;
  rolling = Number.NaN;
  /** Pa asked of the front outlet of the master cylinder. */
  asked = Number.NaN;
  /** m/s² of the center of gravity, positive while slowing. */
  deceleration = Number.NaN;

  /** Stands at the first touch at a speed, m/s. */
  open(speed: number): void {
    this.time = 0;
    this.duration = 0;
    this.ahead = 0;
    this.speed = speed;
    this.distance = 0;
    this.pitch = 0;
    this.pitching = 0;
    this.master = 0;
    this.foot = 0;
    this.speedRate = 0;
    this.pitchRate = 0;
    this.pitchingRate = 0;
    this.masterRate = 0;
    this.footRate = 0;
  }

  /** Begins a step's sums with the slopes at its start. */
  openStep(): void {
    this.speedSum = this.speedRate;
    this.distanceSum = this.distanceRate;
    this.pitchSum = this.pitchRate;
    this.pitchingSum = this.pitchingRate;
    this.masterSum = this.masterRate;
    this.footSum = this.footRate;
  }

  /** Tries the step whose sums are done. */
  closeStep(): void {
    const sixth = this.duration / 6;
    this.triedSpeed = this.speed + sixth * this.speedSum;
    this.triedPitching = this.pitching + sixth * this.pitchingSum;
  }

  /** Takes the tried step. */
  acceptStep(): void {
    const sixth = this.duration / 6;
    this.time += this.duration;
    this.speed = this.triedSpeed;
    this.pitching = this.triedPitching;
    this.distance += sixth * this.distanceSum;
    this.pitch += sixth * this.pitchSum;
    this.master += sixth * this.masterSum;
    this.foot += sixth * this.footSum;
  }
}
