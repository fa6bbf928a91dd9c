import { requireRange } from '@standstill/numerics';

/** m, torque over clamp load: K d. Throws where either cannot be. */
export function torquePerForce(diameter: number, nutFactor: number): number {
  requireRange('bolt diameter', diameter, 'm', 0.003, 0.04);
  return diameter * requireRange('nut factor', nutFactor, '', 0.05, 0.5);
}
