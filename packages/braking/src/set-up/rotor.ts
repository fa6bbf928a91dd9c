/**
 * One rotor. The pads sweep the band between the two swept radii on both faces. A drum is written as one whose two faces
 * together are the drum's rubbed wall; its cheek is the wall, cooled on the far side.
 */
export interface Rotor {
  readonly kind: 'solid' | 'vented' | 'drum';
  /** m. */
  readonly outerDiameter: number;
  /** m, overall. */
  readonly thickness: number;
  /** m, one cheek of a vented rotor; half the thickness of a solid one. */
  readonly cheekThickness: number;
  /** m, outer radius of the band that the pads sweep. */
  readonly sweptOuterRadius: number;
  /** kg, whole rotor with hat. */
  readonly mass: number;
  /** kg, the ring swept by the pads: what heats in a single stop. */
  readonly ringMass: number;
  /** kg/m³. */
  readonly density: number;
  /** J/(kg K) at 20 °C. */
  readonly specificHeat: number;
  /** J/(kg K²), rise of the specific heat with temperature. */
  readonly specificHeatSlope: number;
  /** W/(m K). */
  readonly conductivity: number;
  /** ε of the faces, 1. */
  readonly emissivity: number;
}
