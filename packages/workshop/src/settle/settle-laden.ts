import type { Car } from '@standstill/braking';
import type { Job, LadenFigure } from '../job/job.ts';
import type { Draw } from './draw.ts';

/**
 * The laden car: as stated, or the test car with a load on top.
 *
 * Equation: M = m + Δ; ψ' = (ψ m + σ Δ) / M; h' = (h m + h_Δ Δ) / M
 * Assumes: the load changes nothing else; springs that sink are in a stated height alone.
 *
 * @param laden - the laden figures of the job
 * @param car - the car as tested, in the same draw
 * @param draw - which of the possible values to take
 * @returns the laden car, never lighter than as tested
 */
export function settleLaden(laden: Job['car']['laden'], car: Car, draw: Draw): Car {
  const stated = draw(laden.mass.known);
  const mass = Math.max(car.mass, laden.mass.of === 'car' ? stated : car.mass + stated);
  const added = mass - car.mass;
  const mixed = (figure: LadenFigure, asTested: number): number => {
    const value = draw(figure.known);
    return figure.of === 'car' ? value : (asTested * car.mass + value * added) / mass;
  };
  const share = mixed(laden.frontLoadShare, car.frontLoadShare);
  return {
    ...car,
    mass,
    frontLoadShare: Math.max(0.02, Math.min(0.98, share)),
    centerOfGravityHeight: mixed(laden.centerOfGravityHeight, car.centerOfGravityHeight),
  };
}
