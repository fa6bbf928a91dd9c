import { pedalClass } from '@standstill/braking';
import { publishedBand } from '../published.ts';

publishedBand(
  {
    id: '10-10',
    source: 'mil-std-1472',
    quantity: 'travel of a foot control: that of our class of pedals',
    unit: 'mm',
    basis: 'M',
    low: 25,
    high: 180,
  },
  () => 1000 * pedalClass.availableTravel.value,
);
