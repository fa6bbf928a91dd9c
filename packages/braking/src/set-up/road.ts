/** Where the stop happens. */
export interface Road {
  /** Surface friction factor on the tires' peak friction, 1. */
  readonly surfaceFactor: number;
  /** m, depth of standing water: it takes more of the grip the faster the car goes. 0 dry or damp. */
  readonly waterDepth: number;
  /** Rise over run, 1; positive uphill in the direction of travel. */
  readonly grade: number;
  /** ρ, kg/m³. */
  readonly airDensity: number;
  /** °C. */
  readonly airTemperature: number;
}
