import type { Rotor } from '@standstill/braking';

/** What of a rotor's facts its ring follows from: m and kg. */
export interface RotorRingFacts {
  readonly outerDiameter: number;
  readonly sweptOuterDiameter: number;
  readonly thickness: number;
  readonly cheekThickness: number;
  readonly mass: number;
  readonly ringMass: number;
}

/**
 * The ring of a rotor as it can be: no wider and no heavier than the rotor, its cheeks inside its thickness.
 *
 * Equation: a solid rotor's cheek is half its thickness; two cheeks of a vented one leave 5 % of it open
 *
 * @param kind - of rotor
 * @param facts - as drawn, each by itself; m and kg
 * @returns cheek thickness and swept outer radius, m; mass of the ring, kg
 */
export function rotorRing(
  kind: Rotor['kind'],
  facts: RotorRingFacts,
): Pick<Rotor, 'cheekThickness' | 'ringMass' | 'sweptOuterRadius'> {
  const half = facts.thickness / 2;
  return {
    cheekThickness: kind === 'solid' ? half : Math.min(facts.cheekThickness, 0.95 * half),
    ringMass: Math.min(facts.ringMass, facts.mass),
    sweptOuterRadius: Math.min(facts.sweptOuterDiameter, facts.outerDiameter) / 2,
  };
}
