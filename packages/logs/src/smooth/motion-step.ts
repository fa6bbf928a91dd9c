import type { LinearStep } from '@standstill/numerics';

/**
 * Where each unknown of the motion stands in the state; those that no sensor tells are left out (-1).
 * Distance, speed and acceleration come first and are always there.
 */
export interface MotionLayout {
  readonly size: number;
  /** m/s, slowly wandering error of the receiver's speed. */
  readonly wander: number;
  /** s, how late the speed is against the logger's clock. */
  readonly latency: number;
  /** m/s², what the accelerometer reads too much. */
  readonly bias: number;
  /** Share by which it reads too much in proportion to the deceleration: the pitch of the body. */
  readonly pitch: number;
  /** m, position on the line at the start of the distance, with its wandering error. */
  readonly place: number;
}

export const distanceAt = 0;
export const speedAt = 1;
export const accelerationAt = 2;

/**
 * Lays out the unknowns of a stop by the sensors that there are.
 *
 * @param sensors - which of them there are besides a speed
 * @returns the places
 */
export function motionLayout({
  hasAcceleration,
  hasPosition,
}: {
  readonly hasAcceleration: boolean;
  readonly hasPosition: boolean;
}): MotionLayout {
  const withAcceleration = hasAcceleration
    ? { latency: 4, bias: 5, pitch: 6 }
    : { latency: -1, bias: -1, pitch: -1 };
  const size = hasAcceleration ? 7 : 4;
  return {
    ...withAcceleration,
    wander: 3,
    place: hasPosition ? size : -1,
    size: hasPosition ? size + 1 : size,
  };
}

/** How fast the unknowns may change over a step. */
export interface MotionNoise {
  /** (m/s³)² s, density of the jerk. */
  jerk: number;
  /** (m/s²)²/s, density by which the accelerometer's bias wanders. */
  bias: number;
  /** m/s, standard deviation of the receiver's wandering error. */
  wander: number;
}

/** s, over which the receiver's wandering error falls to 1/e. Common practice. */
const wanderTime = 0.5;
/** m²/s, density by which a receiver's position wanders. Common practice. */
const placeDensity = 0.04;

/**
 * Fills a step of the motion: a constant acceleration that white jerk changes, and errors that wander.
 *
 * Equation: s' = s + v h + a h²/2, v' = v + a h, a' = a; Q of white jerk; g' = g exp(-h/T)
 *
 * @param step - overwritten
 * @param layout - the places of the unknowns
 * @param seconds - h, s
 * @param noise - densities over the step
 * @param startsDistance - at the end of the step the distance is set to zero and the place takes it over
 */
export function fillMotionStep(
  { transition, noise: added }: LinearStep,
  layout: MotionLayout,
  seconds: number,
  noise: MotionNoise,
  startsDistance: boolean,
): void {
  const { size, wander, bias, place } = layout;
  const h = seconds;
  transition.fill(0);
  added.fill(0);
  for (let i = 0; i < size; i += 1) transition[i * size + i] = 1;
  transition[speedAt * size + accelerationAt] = h;
  const kept = Math.exp(-h / wanderTime);
  transition[wander * size + wander] = kept;
  const q = noise.jerk;
  added[speedAt * size + speedAt] = (q * h * h * h) / 3;
  added[speedAt * size + accelerationAt] = added[accelerationAt * size + speedAt] = (q * h * h) / 2;
  added[accelerationAt * size + accelerationAt] = q * h;
  added[wander * size + wander] = noise.wander * noise.wander * (1 - kept * kept);
  if (bias >= 0) added[bias * size + bias] = noise.bias * h;
  if (place >= 0) added[place * size + place] = placeDensity * h;
  const into = startsDistance ? place : distanceAt;
  if (startsDistance) transition[distanceAt] = 0;
  if (into < 0) return;
  transition[into * size + distanceAt] = 1;
  transition[into * size + speedAt] = h;
  transition[into * size + accelerationAt] = (h * h) / 2;
  added[into * size + into] = added[into * size + into]! + (q * h ** 5) / 20;
  added[into * size + speedAt] = added[speedAt * size + into] = (q * h ** 4) / 8;
  added[into * size + accelerationAt] = added[accelerationAt * size + into] = (q * h * h * h) / 6;
}
