import type { Speaker } from '../../words/speaker.ts';

/**
 * What must be safe before and while a test is driven, most urgent first.
 *
 * @param distance - of a stop, m
 * @param say - printer of the unit system
 * @returns one sentence each
 */
export function planCautions(distance: number, say: Speaker): string[] {
  const room = say.plain(3 * distance, 'stopping-distance');
  return [
    'Only on a closed course with nobody else on it, never on a public road.',
    `Leave room to run off: from the braking point at least ${room} of clear, straight road, three times the stop that is expected, with nothing hard beside it.`,
    'Before the first stop: pedal firm and high with the engine running, no leak at any line, hose or caliper, fluid at its mark, wheel nuts at their torque, warning lamps off.',
    'The first stops after any work are slow ones, from walking pace up, before anything is measured.',
    'Stop the test at once when the pedal goes long or soft, when a warning lamp comes on, or when it pulls, smells or smokes; find out why before the next stop.',
    'A helper stands in sight, off the line and behind the braking point, with a radio or phone and a fire extinguisher.',
    'Belts on, everything loose out of the car, no passenger without need.',
    'Cool the brakes by driving without them; never park with the pedal held or the parking brake set while they are hot.',
  ];
}
