import type { Hose } from './hose.ts';
import type { Tube } from './tube.ts';

/** How the two shoes of a drum brake are carried. */
export type ShoeArrangement =
  /** One leading, one trailing shoe; one cylinder with two pistons. */
  | 'simplex'
  /** Two leading shoes; a cylinder for each. */
  | 'duplex'
  /** The first shoe pushes the second through a floating link. */
  | 'duo-servo';

/** One shoe that turns on a pivot, every length over the drum's radius; angles from the pivot in the sense of the lining. */
export interface ShoeGeometry {
  /** a / r, from the center of the drum to the pivot, 1. */
  readonly pivotDistance: number;
  /** c / r, from the pivot to the line of the cylinder's force, 1. */
  readonly leverArm: number;
  /** θ_1, rad, where the lining begins. */
  readonly liningStart: number;
  /** θ_2, rad, where it ends. */
  readonly liningEnd: number;
}

/** The two equal drum brakes of one axle. Every part is given for ONE corner. */
export interface DrumBrake {
  readonly arrangement: ShoeArrangement;
  readonly shoes: ShoeGeometry;
  /** C*, 1, force at the drum over force of one cylinder piston, at a lining friction of 0.38; decides the level. */
  readonly brakeFactor: number;
  /** r, m, inner radius of the drum. */
  readonly radius: number;
  /** m, lining width. */
  readonly width: number;
  /** m, wall of the drum under the lining. */
  readonly wallThickness: number;
  /** kg, whole drum. */
  readonly mass: number;
  /** kg/m³, of the drum. */
  readonly density: number;
  /** J/(kg K) at 20 °C, of the drum. */
  readonly specificHeat: number;
  /** J/(kg K²), rise of the specific heat with temperature. */
  readonly specificHeatSlope: number;
  /** W/(m K), of the drum. */
  readonly conductivity: number;
  /** ε, 1, of the drum's outside. */
  readonly emissivity: number;
  /** m, bore of the wheel cylinder. */
  readonly cylinderBore: number;
  /** p_0, Pa, line pressure that the return springs take. */
  readonly pushOutPressure: number;
  /** η, 1, of the wheel cylinder. */
  readonly efficiency: number;
  /** m³/Pa, stretch of shoes, drum and cylinder of one corner. */
  readonly volumeCompliance: number;
  /** m, gap between lining and drum at the middle of the shoe at rest. */
  readonly shoeClearance: number;
  /** m², lining of ONE shoe. */
  readonly liningArea: number;
  /** m, lining left. */
  readonly liningThickness: number;
  /** °C, ascending interface temperatures of the friction table. */
  readonly frictionTemperatures: readonly number[];
  /** μ of the lining at those temperatures, 1. */
  readonly frictions: readonly number[];
  /** m/Pa, squeeze of the lining per face pressure. */
  readonly compressibility: number;
  /** J/(kg K), of the lining. */
  readonly liningSpecificHeat: number;
  /** W/(m K), of the lining. */
  readonly liningConductivity: number;
  /** kg/m³, of the lining. */
  readonly liningDensity: number;
  readonly hose: Hose;
  readonly tube: Tube;
}
