import { requireRange } from '@standstill/numerics';
import { effusivity, type HeatConductor } from '../effusivity.ts';

export interface SlabInput extends HeatConductor {
  /** L, m. */
  readonly thickness: number;
  /** q, W/m². */
  readonly flux: number;
  /** t, s. */
  readonly time: number;
}

export interface SlabRises {
  /** K, heated face. */
  readonly face: number;
  /** K, insulated back. */
  readonly back: number;
  /** K, mean. */
  readonly mean: number;
}

/**
 * Answers how much warmer face, back and mean of a slab get when one face takes a constant flux and nothing leaves.
 *
 * Equation: face = (q L / k) (Fo + 1/3 − (2/π²) Σ e^(−n² π² Fo) / n²); back = (q L / k) (Fo − 1/6 −
 * (2/π²) Σ (−1)^n e^(−n² π² Fo) / n²); mean = (q L / k) Fo; Fo = α t / L².
 * Assumes: constant properties, back insulated: a solid rotor heated alike on both faces has its back at mid-thickness.
 * Valid: Fo above 1e-4 (below it take the half space).
 *
 * @param input - k, W/(m K); ρ, kg/m³; c, J/(kg K); L, thickness, m; q, flux, W/m²; t, time, s
 * @returns K, rises of the heated face, the insulated back and the mean
 * @throws OutOfRangeError where an input cannot be
 * Source: [carslaw-jaeger]
 * @example
 * slabConstantFlux({ conductivity: 50, density: 7200, specificHeat: 460, thickness: 0.012, flux: 1.5e6, time: 3 }).face // => 229.952
 */
export function slabConstantFlux(input: SlabInput): SlabRises {
  effusivity(input);
  const thickness = requireRange('thickness', input.thickness, 'm', 1e-5, 1);
  const diffusivity = input.conductivity / (input.density * input.specificHeat);
  const time = requireRange('time', input.time, 's', 0, 1e6);
  const fourier = requireRange(
    'Fourier number',
    (diffusivity * time) / (thickness * thickness),
    '',
    1e-4,
    1e9,
  );
  const scale = (requireRange('heat flux', input.flux, 'W/m²', 0, 1e9) * thickness) / input.conductivity;
  const face = fourier + 1 / 3 - decay(fourier, 1);
  const back = fourier - 1 / 6 - decay(fourier, -1);
  return { face: scale * face, back: scale * back, mean: scale * fourier };
}

/** (2/π²) Σ s^n e^(−n² π² Fo) / n², until a term no longer counts. */
function decay(fourier: number, sign: 1 | -1): number {
  let sum = 0;
  for (let n = 1; n < 1000; n += 1) {
    const term = Math.exp(-n * n * Math.PI * Math.PI * fourier) / (n * n);
    sum += sign === -1 && n % 2 === 1 ? -term : term;
    if (term < 1e-18) break;
  }
  return (2 / (Math.PI * Math.PI)) * sum;
}
