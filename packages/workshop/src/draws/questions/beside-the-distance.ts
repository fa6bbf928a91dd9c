import type { Job, JobPart } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';

/**
 * The numbers of a job that no single quick stop follows from: what only repeated stops, the full stop, a laden car or a
 * parked one ask for. Whoever draws distances need not draw them: every number has a stream of its own, so that the
 * others stay what they are. A law test holds that none of these moves a distance, bit by bit.
 *
 * @param job - the job
 * @returns the paths of these numbers
 */
export function besideTheDistance({ car, conditions, parts }: Job): ReadonlySet<string> {
  const { frontTrack, rearTrack, pitchFrequency, pitchDamping } = car.facts;
  const beside = [
    frontTrack,
    rearTrack,
    pitchFrequency,
    pitchDamping,
    ...Object.values(car.laden).map(({ known }) => known),
    conditions.repeatedStops.interval,
    ...Object.values(parts).flatMap(besideOfPart),
  ];
  return new Set(beside.map(({ path }) => path));
}

function besideOfPart(part: JobPart): readonly Known[] {
  switch (part.kind) {
    case 'caliper':
      return [part.facts.mass, ...Object.values(part.heat)];
    case 'pad':
      return [part.facts.mass, part.facts.thickness, ...Object.values(part.heat)];
    case 'rotor':
      return Object.values(part.heat);
    case 'tire':
      return [part.facts.relaxationLength];
    case 'fluid':
      return [part.facts.age, part.facts.waterPerYear];
    case 'parking-brake':
      return Object.values(part.facts);
    default:
      return [];
  }
}
