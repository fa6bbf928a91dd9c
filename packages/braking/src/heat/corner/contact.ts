/**
 * The two rubbing faces, which hold no heat of their own: what the rotor's first layer, the pad's first layer, the air
 * and the friction heat do to each other across them, with the faces worked out of the equations.
 *
 * Equation: at the rotor's face G_r (T_r − T_f) + H (T_air − T_f) + h_c A (T_p − T_f) + σ Q − q_0 = 0, at the pad's face
 * G_p (T_1 − T_p) + h_c A (T_f − T_p) + (1 − σ) Q = 0; σ = k_r / (k_r + k_p), Barber's share of two rough bodies.
 * Assumes: faces at one mean temperature each; the friction heat is set free where the asperities touch.
 *
 * Allocates nothing after it is made.
 * Source: [barber-1967]
 */
export class Contact {
  /** W/K between the first layers of rotor and pad, and from each of them to the air. */
  link = 0;
  rotorLoss = 0;
  padLoss = 0;
  /** W into each of the first layers, besides what the links carry. */
  rotorSource = 0;
  padSource = 0;
  #rotorInside = 0;
  #padInside = 0;
  #share = 1;
  /** Inverse of the two equations, K/W. */
  #rotorRotor = 0;
  #rotorPad = 0;
  #padPad = 0;
  #rotorHeat = 0;
  #padHeat = 0;

  /**
   * Sets what holds through a step.
   *
   * @param rotorInside - G_r, W/K, from the rotor's face to its first layer
   * @param padInside - G_p, W/K, from the pad's face to its first layer
   * @param across - h_c A, W/K, from face to face
   * @param toAir - H, W/K, from the rotor's face to the air
   */
  join(rotorInside: number, padInside: number, across: number, toAir: number): void {
    const rotorSum = rotorInside + toAir + across;
    const padSum = padInside + across;
    const determinant = rotorInside * padSum + toAir * padSum + across * padInside;
    this.#rotorInside = rotorInside;
    this.#padInside = padInside;
    this.#rotorRotor = padSum / determinant;
    this.#rotorPad = across / determinant;
    this.#padPad = rotorSum / determinant;
    this.link = rotorInside * padInside * this.#rotorPad;
    this.rotorLoss = (rotorInside * toAir * padSum) / determinant;
    this.padLoss = (padInside * toAir * across) / determinant;
  }

  /** Takes Barber's share, 1, of the friction heat that is set free on the rotor's side. */
  takeShare(share: number): void {
    this.#share = share;
  }

  /** Sets the friction heat, W, and what the rotor's face loses at an excess of zero, W. */
  heat(friction: number, offset: number): void {
    this.#rotorHeat = this.#share * friction - offset;
    this.#padHeat = (1 - this.#share) * friction;
    this.rotorSource =
      this.#rotorInside * (this.#rotorRotor * this.#rotorHeat + this.#rotorPad * this.#padHeat);
    this.padSource = this.#padInside * (this.#rotorPad * this.#rotorHeat + this.#padPad * this.#padHeat);
  }

  /** W into the rotor's first layer, at excesses of both first layers over the air, K. */
  intoRotor(rotorExcess: number, padExcess: number): number {
    return this.rotorSource - (this.rotorLoss + this.link) * rotorExcess + this.link * padExcess;
  }

  /** W into the pad's first layer. */
  intoPad(rotorExcess: number, padExcess: number): number {
    return this.padSource - (this.padLoss + this.link) * padExcess + this.link * rotorExcess;
  }

  /** W that the faces lose to the air, at those excesses, with the friction heat, W. */
  toAir(rotorExcess: number, padExcess: number, friction: number): number {
    return friction - this.intoRotor(rotorExcess, padExcess) - this.intoPad(rotorExcess, padExcess);
  }

  /** K over the air, of the pad's face. */
  padFace(rotorExcess: number, padExcess: number): number {
    const rotorDrive = this.#rotorInside * rotorExcess + this.#rotorHeat;
    return this.#rotorPad * rotorDrive + this.#padPad * (this.#padInside * padExcess + this.#padHeat);
  }
}
