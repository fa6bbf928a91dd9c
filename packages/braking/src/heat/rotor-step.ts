/** What happens to one rotor face over one step; kept by the caller and filled anew for every step. */
export interface RotorStep {
  /** s. */
  duration: number;
  /** W/m² of swept face into the rotor, at the start of the step. */
  fluxAtStart: number;
  /** W/m² of swept face into the rotor, at its end; in between it changes in a straight line. */
  fluxAtEnd: number;
  /** W/(m² K), convection from the outer face. */
  faceCoefficient: number;
  /** W/(m² K), convection in the vent. */
  ventCoefficient: number;
  /** °C. */
  airTemperature: number;
}
