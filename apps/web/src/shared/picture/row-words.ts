import type { SetUpPrediction } from '@standstill/workshop';

type Repeated = SetUpPrediction['repeatedStops'][number];

/** First, best and worst of the stops in a row, each with its number; and where it is no more than a guess. */
export function rowWords(stops: readonly Repeated[], text: (meters: number) => string): string {
  const ended = stops.filter(({ distance_m }) => Number.isFinite(distance_m));
  const first = ended[0];
  if (!first) return 'no stop in a row comes to rest.';
  const best = ended.reduce((a, b) => (b.distance_m < a.distance_m ? b : a));
  const worst = ended.reduce((a, b) => (b.distance_m > a.distance_m ? b : a));
  const say = (name: string, { stop, distance_m }: Repeated) => `${name} ${text(distance_m)} (stop ${stop})`;
  const stuck = stops.find(({ distance_m }) => !Number.isFinite(distance_m));
  const guess = stops.find(({ beyondModel }) => beyondModel);
  return [
    `${named(first, best, worst)
      .map(([name, stop]) => say(name, stop))
      .join(', ')}.`,
    ...(stuck ? [`From stop ${stuck.stop} on the car does not come to rest.`] : []),
    ...(guess
      ? [`From stop ${guess.stop} on that is a guess: hotter than pads or rotors are stated for.`]
      : []),
  ].join(' ');
}

/** A stop that is two of the three is named once. */
function named(first: Repeated, best: Repeated, worst: Repeated): readonly (readonly [string, Repeated])[] {
  if (best === worst) return [['first', first]];
  if (best === first)
    return [
      ['first and best', first],
      ['worst', worst],
    ];
  if (worst === first)
    return [
      ['first and worst', first],
      ['best', best],
    ];
  return [
    ['first', first],
    ['best', best],
    ['worst', worst],
  ];
}
