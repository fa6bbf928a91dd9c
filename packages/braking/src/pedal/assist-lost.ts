import type { SetUp } from '../set-up/set-up.ts';

/**
 * Answers the set-up with its power assist gone: engine off and the vacuum used up, or no pressure in a hydraulic one.
 *
 * Equation: greatest assist = 0; the foot goes through one for one.
 * Assumes: the booster's lost motion stays in the pedal's free play; its return spring and seals take no force.
 *
 * @param setUp - the set-up
 * @returns the same set-up, with a booster of no vacuum (Pa) or no assist (N); unchanged where there is none
 * Source: [common-practice]
 * @example
 * linePressures({ setUp: assistLost(exampleSetUp), pedalForce: 250 }).front // => 2232120
 */
export function assistLost(setUp: SetUp): SetUp {
  const { booster } = setUp;
  if (booster.kind === 'vacuum') return { ...setUp, booster: { ...booster, vacuum: 0 } };
  if (booster.kind === 'hydraulic') return { ...setUp, booster: { ...booster, greatestAssist: 0 } };
  return setUp;
}
