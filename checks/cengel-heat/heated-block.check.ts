import { halfSpaceConstantFlux } from '@standstill/braking';
import { published } from '../published.ts';

/** The source gives wood by k and α = k / (ρ c); only the product ρ c counts. */
const wood = { conductivity: 1.26, density: 100, specificHeat: 1.26 / 1.1e-5 / 100 };
const face = () => 20 + halfSpaceConstantFlux({ ...wood, flux: 1250, time: 20 * 60 });

published(
  {
    id: '4-18a',
    source: 'cengel-heat',
    quantity: 'face of a wooden block after 20 min under 1250 W/m² from 20 °C; k 1.26 W/(m K), α 1.1e-5 m²/s',
    printed: 149,
    unit: '°C',
    tolerance: 0.5,
    basis: 'M',
  },
  face,
);
published(
  {
    id: '4-18b',
    source: 'cengel-heat',
    quantity: 'the same, worked out to one digit more',
    printed: 148.6,
    unit: '°C',
    tolerance: 0.05,
    basis: 'X',
  },
  face,
);
