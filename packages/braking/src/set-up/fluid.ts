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
  /** °C, at 3.7 % water by volume. */
  readonly wetBoilingPoint: number;
  /** s since it was filled in. */
  readonly age: number;
  /** Share of water by volume, 1, that it takes up in a year. */
  readonly waterPerYear: number;
}
