import type { UnitSystem } from '@standstill/units';
import type { SetUpSimulation } from '../results/simulation-report.ts';
import { percent } from '../words/percent.ts';
import { speaker } from '../words/speaker.ts';

interface SimulationWords {
  readonly simulated: Omit<SetUpSimulation, 'sentence'>;
  /** m/s. */
  readonly speed: number;
  readonly units: UnitSystem;
}

/** Part of the distance, 1, from which on a slide is worth telling. */
const worthTelling = 0.05;

/**
 * What one simulated stop says, in a sentence that a person can repeat.
 *
 * @param input - the stop, its speed, the units
 * @returns the sentence
 */
export function simulationSentence({ simulated, speed, units }: SimulationWords): string {
  const say = speaker(units);
  const { distance_m, efficiency, title } = simulated;
  const range = say.range(distance_m.low, distance_m.high, 'stopping-distance');
  const from = say.plain(speed, 'speed');
  const used =
    efficiency.value > 0
      ? `at ${percent(efficiency.value)} of the deceleration that its tires alone allow`
      : 'though at that speed its tires float and alone would never stop it';
  return `${title}: from ${from} the car stops in ${range}, ${used}; ${heldBack(simulated)}.`;
}

function heldBack({
  limitedBy,
  frontCycles,
  rearCycles,
  frontSlideShare,
  rearSlideShare,
}: Omit<SetUpSimulation, 'sentence'>): string {
  const slides = [
    ...(frontSlideShare > worthTelling
      ? [`the front wheels slide on ${percent(frontSlideShare)} of the way`]
      : []),
    ...(rearSlideShare > worthTelling
      ? [`the rear wheels slide on ${percent(rearSlideShare)} of the way`]
      : []),
  ];
  if (slides.length > 0) return slides.join(' and ');
  if (limitedBy === 'tire grip')
    return `the control lets pressure off ${frontCycles + rearCycles} times, and the tires are the limit`;
  if (limitedBy === 'brake torque')
    return 'no wheel comes to its limit, and the brakes are what holds it back';
  return `the driver holds the ${limitedBy === 'front lock' ? 'front' : 'rear'} wheels just short of lock`;
}
