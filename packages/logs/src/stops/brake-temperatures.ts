import type { FoundStop, StopTemperature } from './found-stop.ts';

/** Words in a channel's name by which it is a brake's temperature. */
const brakeWords = /brake|brems|frein|freno|rotor|disc|disk|scheibe|pad|caliper|drum/i;

/**
 * The brake temperatures at the start of a stop: of the channels that are named after a part of the brake; where none
 * is, the only temperature of the log. What else a log may read (coolant, air, oil) says nothing of the brakes.
 *
 * @param stop - the stop, with °C by channel
 * @returns those that count as the brakes'; none where they are not recorded
 */
export function brakeTemperatures({
  temperatures,
}: Pick<FoundStop, 'temperatures'>): readonly StopTemperature[] {
  const named = temperatures.filter(({ channel }) => brakeWords.test(channel));
  if (named.length > 0) return named;
  return temperatures.length === 1 ? temperatures : [];
}
