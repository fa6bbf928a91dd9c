import { requireRange } from '@standstill/numerics';
import type { TandemCylinder } from '../set-up/master-cylinder.ts';
import type { Circuit } from './circuit.ts';

/** How far each piston of a tandem cylinder can go, and what they feed. */
export interface TandemStrokes {
  /** m, from rest until the primary piston meets the secondary one. */
  readonly primary: number;
  /** m, from rest until the secondary piston meets the end of the bore. */
  readonly secondary: number;
  /** Axle on the primary piston, the one next to the push rod; of a diagonal split the first diagonal is on it. */
  readonly primaryFeeds: 'front' | 'rear';
}

/** What one lost circuit leaves of the stroke. */
export interface ChamberStrokes {
  /** m that the dead circuit's chamber takes before it bottoms. */
  readonly dead: number;
  /** m that the live circuit's chamber has. */
  readonly live: number;
}

/**
 * Answers how far the dead circuit's chamber lets the rod run, and how much the live circuit's chamber has.
 *
 * Equation: the stroke of the piston that feeds each.
 * Assumes: half of the full stroke each where the single strokes are not known.
 * Valid: single strokes 1 to 100 mm.
 *
 * @param cylinder - tandem cylinder with its full stroke, m
 * @param lost - the lost circuit
 * @param strokes - single strokes, m, and what they feed; absent where not known
 * @returns m, stroke of the dead and of the live chamber
 * @throws OutOfRangeError where a stroke cannot be
 * Source: [textbook-formula]
 * @example
 * chamberStrokes({ kind: 'tandem', bore: 0.02, stroke: 0.034, efficiency: 1 }, 'front').dead // => 0.017
 */
export function chamberStrokes(
  cylinder: TandemCylinder,
  lost: Circuit,
  strokes: TandemStrokes = halfEach(cylinder),
): ChamberStrokes {
  const primary = requireRange('stroke of the primary piston', strokes.primary, 'm', 0.001, 0.1);
  const secondary = requireRange('stroke of the secondary piston', strokes.secondary, 'm', 0.001, 0.1);
  const primaryLost = lost === 'first-diagonal' || lost === strokes.primaryFeeds;
  return primaryLost ? { dead: primary, live: secondary } : { dead: secondary, live: primary };
}

function halfEach({ stroke }: TandemCylinder): TandemStrokes {
  return { primary: stroke / 2, secondary: stroke / 2, primaryFeeds: 'front' };
}
