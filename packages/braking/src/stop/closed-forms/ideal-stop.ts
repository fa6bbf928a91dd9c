import { requireRange } from '@standstill/numerics';
import { standardGravity } from '../../load/standard-gravity.ts';

export interface IdealStopInput {
  /** v, m/s. */
  readonly speed: number;
  /** μ, 1, of all tires, constant. */
  readonly friction: number;
  /** ½ ρ C_d A / m, 1/m: deceleration by air drag over speed squared; none where left out. */
  readonly dragOverMass?: number;
}

export interface IdealStop {
  /** m. */
  readonly distance: number;
  /** s. */
  readonly time: number;
}

/** Drag over grip at the start, 1, under which drag changes no digit that counts and its formula would lose them. */
const negligibleDrag = 1e-13;

/**
 * Answers how far and how long a car goes that uses all of its tires' friction from the first instant to rest: the
 * floor under every real stop.
 *
 * Equation: without drag d = v² / (2 μ g), t = v / (μ g); with c = ½ ρ C_d A / m: d = ln(1 + c v² / (μ g)) / (2 c),
 * t = atan(v √(c / (μ g))) / √(c μ g).
 * Assumes: level road, constant friction, no lift, no rolling resistance, no load sensitivity.
 * Valid: speed 0 to 150 m/s; friction 0.01 to 5.
 *
 * @param input - v, speed, m/s; μ, friction, 1; c, drag over mass, 1/m
 * @returns distance, m; time, s
 * @throws OutOfRangeError where an input cannot be
 * Source: [geometry]
 * @example
 * idealStop({ speed: 26.8224, friction: 1 }).distance // => 36.6813
 */
export function idealStop({ speed, friction, dragOverMass = 0 }: IdealStopInput): IdealStop {
  requireRange('speed', speed, 'm/s', 0, 150);
  const grip = requireRange('friction', friction, '', 0.01, 5) * standardGravity;
  const drag = requireRange('drag over mass', dragOverMass, '1/m', 0, 1);
  const dragOverGrip = (drag * speed * speed) / grip;
  if (dragOverGrip < negligibleDrag) return { distance: (speed * speed) / (2 * grip), time: speed / grip };
  const root = Math.sqrt(drag / grip);
  const distance = Math.log1p(dragOverGrip) / (2 * drag);
  return { distance, time: Math.atan(speed * root) / (grip * root) };
}
