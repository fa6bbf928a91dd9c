/** One pad (a corner has two). */
export interface Pad {
  /** m², friction face. */
  readonly area: number;
  /** m, radial height of the friction face. */
  readonly radialHeight: number;
  /** m, friction material left. */
  readonly thickness: number;
  /** °C, ascending interface temperatures of the friction table. */
  readonly frictionTemperatures: readonly number[];
  /** μ at those temperatures, 1. */
  readonly frictions: readonly number[];
  /** m/Pa, squeeze of one pad per face pressure. */
  readonly compressibility: number;
  /** kg, one pad with its plate. */
  readonly mass: number;
  /** J/(kg K). */
  readonly specificHeat: number;
  /** W/(m K). */
  readonly conductivity: number;
  /** kg/m³ of the friction material. */
  readonly density: number;
}
