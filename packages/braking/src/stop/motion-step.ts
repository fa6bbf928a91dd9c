/**
 * One step of a car that slows, its deceleration changing in a straight line over the step.
 *
 * Equation: a(x) = a_0 + (a_1 − a_0) x; v(x) = v_0 − Δt (a_0 x + (a_1 − a_0) x²/2); s and ∫ F v dt by integrating these
 * exactly, F too being a straight line in x = t / Δt.
 * Assumes: what is not straight within a step is an error of third order in it.
 * Source: [geometry]
 */
export class MotionStep {
  /** s. */
  duration = 0;
  /** v_0 and v_1, m/s. */
  startSpeed = 0;
  endSpeed = 0;
  /** a_0 and a_1, m/s². */
  startDeceleration = 0;
  endDeceleration = 0;

  /** m, driven in the step; set by `measure`. */
  distance = 0;
  /** m, ∫ v x dt with x = t / Δt; set by `measure`. */
  #lateDistance = 0;

  /** Works out the distances; to be called when speeds, decelerations and duration stand. */
  measure(): void {
    const { duration, startSpeed, startDeceleration, endDeceleration } = this;
    const loss = (duration * (2 * startDeceleration + endDeceleration)) / 6;
    const lateLoss = (duration * (5 * startDeceleration + 3 * endDeceleration)) / 24;
    this.distance = duration * (startSpeed - loss);
    this.#lateDistance = duration * (0.5 * startSpeed - lateLoss);
  }

  /** J, work of a force against the motion that is `startForce`, N, at the start and `endForce`, N, at the end. */
  work(startForce: number, endForce: number): number {
    return startForce * this.distance + (endForce - startForce) * this.#lateDistance;
  }

  /** m from the start of the step to where the speed has fallen to `speed`, m/s; it must lie in the step. */
  distanceTo(speed: number): number {
    const first = this.startDeceleration;
    const jerk = (this.endDeceleration - first) / this.duration;
    const lost = this.startSpeed - speed;
    const time = (2 * lost) / (first + Math.sqrt(Math.max(0, first * first + 2 * jerk * lost)));
    return time * (this.startSpeed - time * (first / 2 + (jerk * time) / 6));
  }
}
