import type { FadeSetResult } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { TextTwin } from './text-twin.tsx';

/** Every stop in the order driven, with what the brakes read at its start. */
export function FadeTwin({ sets }: { readonly sets: readonly FadeSetResult[] }) {
  const { distance, temperature } = useUnits();
  const columns = sets.map((set) => ({
    set,
    channels: [
      ...new Set(set.stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel))),
    ],
  }));
  const numbers = [...new Set(sets.flatMap(({ stops }) => stops.map(({ number }) => number)))];
  return (
    <TextTwin
      caption="Each stop in the order driven; temperatures at its start"
      head={[
        'Stop',
        ...columns.flatMap(({ set, channels }) => [
          set.name,
          ...channels.map((one) => `${one}, ${set.name}`),
        ]),
      ]}
      rows={numbers
        .toSorted((a, b) => a - b)
        .map((number) => [
          number,
          ...columns.flatMap(({ set, channels }) => {
            const stop = set.stops.find((one) => one.number === number);
            return [
              stop ? `${distance.text(stop.distance_m, 0.1)}${stop.counted ? '' : ' (left out)'}` : '–',
              ...channels.map((channel) => {
                const read = stop?.temperatures.find((one) => one.channel === channel);
                return read ? temperature.text(read.start_C, 1) : '–';
              }),
            ];
          }),
        ])}
    />
  );
}
