import type { CarDocument } from '../document/job-document.ts';
import { carClasses } from '../facts/car-classes.ts';
import type { CarClass } from '../facts/car-classes.ts';
import { carFacts } from '../facts/car-facts.ts';
import type { Job } from '../job.ts';
import { classOf } from './class-of.ts';
import { fillFacts } from './fill-facts.ts';
import { practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import { refuseByWire, resolveDrive } from './resolve-drive.ts';
import { resolveLaden } from './resolve-laden.ts';
import { resolveHubs } from './resolve-pedal-details.ts';

/** The car with every fact known. */
export function resolveCar(filler: Filler, car: CarDocument): Job['car'] {
  const because = 'no class is given; the spreads are those of cars in general';
  const path = ['car'];
  const found: CarClass = classOf<CarClass>(filler, {
    classes: carClasses,
    id: car.class,
    path,
    otherwise: 'anyCar',
    because,
  });
  const from = (key: keyof CarClass['facts']) => (): Fallback => ({
    ...found.facts[key],
    reason: `class default: ${found.title}, common practice`,
  });
  const facts = fillFacts(filler, {
    facts: carFacts,
    stated: car,
    path,
    fallbacks: {
      centerOfGravityHeight: from('centerOfGravityHeight'),
      frontLoadShare: from('frontLoadShare'),
      leftLoadShare: from('leftLoadShare'),
      dragArea: from('dragArea'),
      frontLiftArea: from('frontLiftArea'),
      rearLiftArea: from('rearLiftArea'),
      rollingResistance: from('rollingResistance'),
      frontWheelInertia: from('frontWheelInertia'),
      rearWheelInertia: from('rearWheelInertia'),
      frontTrack: from('frontTrack'),
      rearTrack: from('rearTrack'),
      pitchFrequency: from('pitchFrequency'),
      pitchDamping: from('pitchDamping'),
      drivelineInertia: () => practice(0, 0, 'a stop with the clutch out or the box in neutral'),
      engineDrag: () => practice(0, 0, 'a stop with the clutch out or the box in neutral'),
      frontDriveShare: from('frontDriveShare'),
    },
  });
  refuseByWire(filler, car);
  return {
    name: car.name,
    className: car.class ?? null,
    facts,
    hubs: resolveHubs(filler, car.hubs),
    laden: resolveLaden(filler, car.laden, found),
    regeneration: resolveDrive(filler, car, 'regeneration'),
    creep: resolveDrive(filler, car, 'creep'),
  };
}
