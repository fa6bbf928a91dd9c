import type { CarDocument } from '../document/job-document.ts';
import type { CarClass } from '../facts/car-classes.ts';
import { ladenFacts, loadFacts } from '../facts/laden-facts.ts';
import type { LadenCar, LadenFigure } from '../job.ts';
import { practice } from './filler.ts';
import type { Filler } from './filler.ts';

/** The laden car: as stated, else the test car with what a car of its class carries besides. */
export function resolveLaden(filler: Filler, stated: CarDocument['laden'], found: CarClass): LadenCar {
  const figure = (key: keyof typeof ladenFacts): LadenFigure => {
    const path = ['car', 'laden', key];
    const input = stated?.[key];
    if (input !== undefined) return { of: 'car', known: filler.stated(ladenFacts[key], input, path) };
    const { value, spread } = found.load[key];
    const note = `the seats beside the driver filled, and luggage, in a ${found.title}`;
    return { of: 'load', known: filler.assumed(loadFacts[key], path, practice(value, spread, note)) };
  };
  return {
    mass: figure('mass'),
    frontLoadShare: figure('frontLoadShare'),
    centerOfGravityHeight: figure('centerOfGravityHeight'),
  };
}
