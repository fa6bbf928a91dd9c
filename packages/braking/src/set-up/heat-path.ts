/**
 * What carries heat away from where pad and rotor rub: through the pad to piston, body and fluid, and from the ring to
 * hat and hub. Only schedules of stops use it; the quick stop is over before this heat has gone anywhere.
 */
export interface HeatPath {
  /** h_c, W/(m² K), between the pad's face and the rotor's while the pad is pressed. */
  readonly contactConductance: number;
  /** W/(m² K) of piston area, from the plate through shim and rim into the piston. */
  readonly plateConductance: number;
  /** W/(m² K) of piston area, along the piston from its rim to its middle or from there to its crown. */
  readonly pistonConductance: number;
  /** J/(m² K) of piston area, heat held by the pistons of one side. */
  readonly pistonHeat: number;
  /** W/(m² K) of piston area, from the skirt across its gap into the bore. */
  readonly boreConductance: number;
  /** W/(m² K) of piston area, from the plate into the body past the piston: abutments, and fingers where it floats. */
  readonly bodyConductance: number;
  /** J/(kg K) of the caliper's body: iron or aluminum. */
  readonly bodySpecificHeat: number;
  /** W/(m² K) of the area that it wets, between the fluid behind the pistons and what surrounds it. */
  readonly fluidConductance: number;
  /** m, depth of the fluid behind the pistons; it grows as pads wear. */
  readonly fluidDepth: number;
  /** m, wall of the hat. */
  readonly hatThickness: number;
  /** m, way that heat goes along that wall, from the ring to the middle of the hat. */
  readonly hatLength: number;
  /** kg, hub and what is bolted to it and warms with it. */
  readonly hubMass: number;
  /** W/(m² K), joint of hat and hub. */
  readonly hubConductance: number;
}

/** What is taken where a set-up has no heat path of its own: steel pistons, iron caliper (from memory, common practice). */
export const usualHeatPath: HeatPath = {
  contactConductance: 10_000,
  plateConductance: 1500,
  pistonConductance: 1200,
  pistonHeat: 65_000,
  boreConductance: 2000,
  bodyConductance: 400,
  bodySpecificHeat: 480,
  fluidConductance: 300,
  fluidDepth: 0.008,
  hatThickness: 0.006,
  hatLength: 0.035,
  hubMass: 3,
  hubConductance: 1500,
};
