/** Brake fluid and what is in it. */
export interface Fluid {
  /** B, Pa, isothermal bulk modulus at working temperature. */
  readonly bulkModulus: number;
  /** m³ of fluid under pressure in cylinder, lines, hoses and calipers. */
  readonly volume: number;
  /** m³ of trapped air at atmospheric pressure, whole system. */
  readonly trappedAir: number;
  /** °C. */
  readonly dryBoilingPoint: number;
  /** °C. */
  readonly wetBoilingPoint: number;
}
