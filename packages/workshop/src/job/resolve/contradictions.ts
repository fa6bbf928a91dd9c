import type { Job, JobPart } from '../job.ts';
import type { Finding } from '../reading/finding.ts';
import { ofAxle } from './contradictions/of-axle.ts';
import { ofCar } from './contradictions/of-car.ts';
import { ofDrum } from './contradictions/of-drum.ts';
import { ofFluid, ofHose } from './contradictions/of-hydraulics.ts';
import { ofBooster, ofPedal } from './contradictions/of-pedal-box.ts';
import { ofRotor } from './contradictions/of-rotor.ts';
import { ofTire } from './contradictions/of-tire.ts';

/** What is set against each other. */
type Facts = Pick<Job, 'car' | 'parts' | 'setUps'>;

/**
 * Facts that can each be true but not together: named once each, however many set-ups share the parts.
 *
 * @param facts - car, parts and set-ups
 * @param spoiled - what has a mistake of its own (`car`, `parts.kit-pad`, `setUps.front-kit`): nothing is said of it
 * @returns the contradictions
 */
export function contradictions(facts: Facts, spoiled: ReadonlySet<string> = new Set()): Finding[] {
  const parts = Object.values(facts.parts).filter(({ id }) => !spoiled.has(`parts.${id}`));
  const sound = Object.fromEntries(parts.map((part) => [part.id, part]));
  const setUps = facts.setUps.filter(({ id }) => !spoiled.has(`setUps.${id}`));
  const found = [
    ...(spoiled.has('car') ? [] : ofCar(facts.car)),
    ...parts.flatMap(ofPart),
    ...setUps.flatMap((setUp) => [...ofAxle(sound, setUp, 'front'), ...ofAxle(sound, setUp, 'rear')]),
  ];
  return found.filter((one, index) => found.findIndex((other) => other.message === one.message) === index);
}

function ofPart(part: JobPart): Finding[] {
  if (part.kind === 'rotor') return ofRotor(part);
  if (part.kind === 'drum') return ofDrum(part);
  if (part.kind === 'fluid') return ofFluid(part);
  if (part.kind === 'hose') return ofHose(part);
  if (part.kind === 'pedal') return ofPedal(part);
  if (part.kind === 'booster') return ofBooster(part);
  return part.kind === 'tire' ? ofTire(part) : [];
}
