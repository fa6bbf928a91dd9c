import { effusivity, halfSpaceConstantFlux, halfSpaceFallingFlux } from '@standstill/braking';
import { published } from '../published.ts';

const iron = { conductivity: 50, density: 7200, specificHeat: 460 };
const startFlux = 3e6;
const stopTime = 3;
const falling = (time: number) => halfSpaceFallingFlux({ ...iron, startFlux, stopTime, time });

/** Greatest rise over the stop, on a grid of a thousandth of it. */
function greatestRise(): number {
  let greatest = 0;
  for (let i = 0; i <= 1000; i += 1) greatest = Math.max(greatest, falling((stopTime * i) / 1000));
  return greatest;
}

const shared = { source: 'carslaw-jaeger', basis: 'X', unit: 'K' } as const;
const material = 'k 50 W/(m K), ρ 7200 kg/m³, c 460 J/(kg K)';

published(
  {
    ...shared,
    id: '4-11',
    quantity: `half space, 1.5 MW/m² for 3 s, rise of the face; ${material}`,
    printed: 227.81,
    tolerance: 0.005,
  },
  () => halfSpaceConstantFlux({ ...iron, flux: 1.5e6, time: 3 }),
);
published(
  {
    ...shared,
    id: '4-13a',
    quantity: 'half space, flux falling from 3 MW/m² to zero in 3 s, greatest rise of the face',
    printed: 214.78,
    tolerance: 0.005,
  },
  greatestRise,
);
published({ ...shared, id: '4-13b', quantity: 'the same at rest', printed: 151.87, tolerance: 0.005 }, () =>
  falling(stopTime),
);
published(
  {
    ...shared,
    id: '4-13c',
    quantity: 'its greatest rise over q0 √ts / e',
    printed: 0.5319,
    unit: '',
    tolerance: 0.00005,
  },
  () => (greatestRise() * effusivity(iron)) / (startFlux * Math.sqrt(stopTime)),
);
