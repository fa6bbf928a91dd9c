/** Where the energy of motion went, J. */
export interface StopLedger {
  /** Car, turning wheels and driveline at the first touch. */
  kineticIn: number;
  frontRotors: number;
  rearRotors: number;
  /** All pads together. */
  pads: number;
  /** Both axles' tires, by slip or slide. */
  tireSlip: number;
  airDrag: number;
  rolling: number;
  /** What the engine's drag took; the energy of a turning driveline goes where its wheels' goes. */
  driveline: number;
  /** Positive uphill, negative downhill. */
  climb: number;
}

/**
 * Answers a ledger with nothing in it.
 *
 * @returns J, all zero
 * Source: [geometry]
 */
export function emptyLedger(): StopLedger {
  return {
    kineticIn: 0,
    frontRotors: 0,
    rearRotors: 0,
    pads: 0,
    tireSlip: 0,
    airDrag: 0,
    rolling: 0,
    driveline: 0,
    climb: 0,
  };
}

/**
 * Empties a ledger in place.
 *
 * @param ledger - J, set to zero
 * Source: [geometry]
 */
export function clearLedger(ledger: StopLedger): void {
  ledger.kineticIn = 0;
  ledger.frontRotors = 0;
  ledger.rearRotors = 0;
  ledger.pads = 0;
  ledger.tireSlip = 0;
  ledger.airDrag = 0;
  ledger.rolling = 0;
  ledger.driveline = 0;
  ledger.climb = 0;
}
