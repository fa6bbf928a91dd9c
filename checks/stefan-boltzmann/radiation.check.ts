import { radiatedFlux, radiationCoefficient } from '@standstill/braking';
import { published } from '../published.ts';

for (const [letters, temperature, coefficient, flux] of [
  ['ab', 200, 7.4, 1.33],
  ['cd', 400, 16.25, 6.17],
  ['ef', 600, 30.86, 17.9],
] as const) {
  const face = { emissivity: 0.55, temperature, surroundings: 20 };
  const shared = { source: 'stefan-boltzmann', basis: 'X', tolerance: 0.005 } as const;
  const inputs = `face at ${temperature} °C, emissivity 0.55, surroundings 20 °C`;
  published(
    {
      ...shared,
      id: `4-25${letters[0]}`,
      quantity: `coefficient of radiation, ${inputs}`,
      printed: coefficient,
      unit: 'W/(m² K)',
    },
    () => radiationCoefficient(face),
  );
  published(
    {
      ...shared,
      id: `4-25${letters[1]}`,
      quantity: `radiated heat, ${inputs}`,
      printed: flux,
      unit: 'kW/m²',
    },
    () => radiatedFlux(face) / 1000,
  );
}
