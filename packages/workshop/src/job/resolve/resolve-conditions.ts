import { surfaceClasses } from '@standstill/braking';
import type { SurfaceClass } from '@standstill/braking';
import type { ConditionsDocument } from '../document/job-document.ts';
import { readQuantity } from '../document/read-quantity.ts';
import { conditionsFacts, repeatedStopsFacts } from '../facts/conditions-facts.ts';
import type { JobConditions } from '../job.ts';
import { fillFacts } from './fill-facts.ts';
import { fromClass, practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';

const path = ['conditions'];

/** The stop that is asked about, with every fact known. */
export function resolveConditions(filler: Filler, conditions: ConditionsDocument = {}): JobConditions {
  const surface = conditions.surface ?? 'dry';
  if (conditions.surface === undefined)
    filler.assumedWord([...path, 'surface'], 'Surface', 'dry', 'no surface is given');
  const surfaceClass = surfaceClasses[surface];
  const facts = fillFacts(filler, {
    facts: conditionsFacts,
    stated: conditions,
    path,
    fallbacks: {
      surfaceFactor: () => factorOf(isOnlyDamp(surface, conditions) ? surfaceClasses.damp : surfaceClass),
      waterDepth: () =>
        conditions.surfaceFactor === undefined
          ? fromClass(surfaceClass.title, surfaceClass.waterDepth)
          : practice(0, 0, 'the surface factor that is stated is taken to hold for the water, too'),
      grade: () => practice(0, 0, 'a level road'),
      altitude: () => practice(0, 0, 'near sea level'),
      airTemperature: () => practice(20, 0, 'a mild day'),
      speed: () => practice(60 * 0.44704, 0, 'stops are compared from 60 mph'),
      pedalForce: () =>
        practice(400, 0, 'a firm push; what a driver gives differs widely, so state or measure it'),
      pedalRamp: () => practice(0.3, 0, 'a quick but not a panic push'),
      startTemperature: () => practice(95, 0, 'warm brakes, between 65 and 100 °C'),
    },
  });
  return { surface, facts, repeatedStops: repeatedStops(filler, conditions.repeatedStops) };
}

function factorOf({ title, factor }: SurfaceClass): Fallback {
  return fromClass(title, factor);
}

/** A wet road on which no water stands: its grip is that of a damp one. */
function isOnlyDamp(surface: JobConditions['surface'], { waterDepth }: ConditionsDocument): boolean {
  if (surface !== 'wet' || waterDepth === undefined) return false;
  const depth = readQuantity(waterDepth, conditionsFacts.waterDepth);
  return depth.ok && depth.value === 0;
}

function repeatedStops(
  filler: Filler,
  stated: ConditionsDocument['repeatedStops'] = {},
): JobConditions['repeatedStops'] {
  const inside = [...path, 'repeatedStops'];
  const count = stated.count ?? 10;
  if (stated.count === undefined)
    filler.assumedWord(
      [...inside, 'count'],
      'Repeated stops',
      String(count),
      'common practice: ten stops show fade',
    );
  const fallbacks = { interval: () => practice(45, 0, 'accelerate again and stop') };
  const { interval } = fillFacts(filler, { facts: repeatedStopsFacts, stated, path: inside, fallbacks });
  return { count, interval };
}
