import { preferredUnit, quantityKinds, toUnit, type UnitSystem } from '@standstill/units';
import type { FadeReport } from '@standstill/workshop';
import { scaleLinear } from 'd3-scale';
import { line } from 'd3-shape';
import { ink } from '../look/ink.ts';
import { element } from '../svg/element.ts';
import { straight, stroke } from '../svg/stroke.ts';
import { words } from '../svg/words.ts';

/** One temperature over the stops: °C by the number of the stop, told from others by a letter. */
export interface TemperatureLine {
  readonly title: string;
  /** Stands at the end of its line; null for the line that the model expects. */
  readonly letter: string | null;
  readonly points: readonly { readonly number: number; readonly temperature: number }[];
}

const letters = 'abcdefghijklmnopqrstuvwxyz';

/** The temperature at the start of every stop, a line for each channel: small letters for the set, capitals for the other. */
export function temperatureLines({ set, against, expectation }: FadeReport): readonly TemperatureLine[] {
  const of = (stops: FadeReport['set'], capital: boolean): readonly TemperatureLine[] =>
    [...new Set(stops.stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel)))]
      .slice(0, letters.length)
      .map((channel, index) => ({
        title: against === null ? channel : `${channel}, ${stops.name}`,
        letter: capital ? (letters[index] ?? '').toUpperCase() : (letters[index] ?? ''),
        points: stops.stops.flatMap(({ number, temperatures }) =>
          temperatures
            .filter((each) => each.channel === channel)
            .map(({ start_C }) => ({ number, temperature: start_C })),
        ),
      }));
  const expected =
    expectation === null || expectation.temperatures_C.length === 0
      ? []
      : [
          {
            title: `hottest rotor as the model expects it of ${expectation.setUp}`,
            letter: null,
            points: expectation.temperatures_C.map((temperature, index) => ({
              number: index + 1,
              temperature,
            })),
          },
        ];
  return [...of(set, false), ...(against === null ? [] : of(against, true)), ...expected];
}

/** Temperatures across, the stops down, beside the road and in the same rows. */
export function temperaturePanel(
  lines: readonly TemperatureLine[],
  y: (number: number) => number,
  place: { readonly left: number; readonly right: number; readonly foot: number },
  units: UnitSystem,
): readonly string[] {
  const values = lines.flatMap(({ points }) => points.map(({ temperature }) => temperature));
  const { dimension } = quantityKinds.temperature;
  const unit = preferredUnit('temperature', { system: units });
  const figures = (value: number): number => toUnit(value, unit, dimension);
  const [low, high] = [Math.min(...values, 0), Math.max(...values, 50)];
  const x = scaleLinear([figures(low), figures(high)], [place.left + 8, place.right - 8]);
  const marks = x.ticks(4);
  return [
    straight([place.left, place.foot], [place.right, place.foot], { color: ink.soft, width: 2 }),
    ...marks.flatMap((value, index) => [
      straight([x(value), place.foot], [x(value), place.foot + 7]),
      words(index === marks.length - 1 ? `${value} ${unit}` : String(value), [x(value), place.foot + 21], {
        anchor: index === marks.length - 1 && place.right - x(value) < 24 ? 'end' : 'middle',
        soft: true,
        size: 12,
      }),
    ]),
    ...lines.flatMap(({ letter, points }) =>
      temperatureLine(letter, points, (value) => x(figures(value)), y),
    ),
    ...endLetters(lines, (value) => x(figures(value)), y),
  ];
}

function temperatureLine(
  letter: string | null,
  points: TemperatureLine['points'],
  x: (temperature: number) => number,
  y: (number: number) => number,
): readonly string[] {
  const path = line<(typeof points)[number]>(
    ({ temperature }) => x(temperature),
    ({ number }) => y(number),
  )(points);
  if (letter === null) return [stroke(path ?? '', { color: ink.soft, width: 1.5, dashes: '2 4' })];
  return [
    stroke(path ?? '', { color: ink.line, width: 1.5 }),
    ...points.map(({ number, temperature }) =>
      element('circle', { cx: x(temperature), cy: y(number), r: 2, fill: ink.strong }),
    ),
  ];
}

/** px that a letter at the end of a line needs. */
const letterRoom = 11;

/** The letter of each line below its last stop; letters that would cover each other move apart. */
function endLetters(
  lines: readonly TemperatureLine[],
  x: (temperature: number) => number,
  y: (number: number) => number,
): readonly string[] {
  const ends = lines
    .flatMap(({ letter, points }) => {
      const last = points.at(-1);
      return letter === null || last === undefined
        ? []
        : [{ letter, row: last.number, at: x(last.temperature) }];
    })
    .toSorted((a, b) => a.row - b.row || a.at - b.at);
  let [row, edge] = [0, -Infinity];
  return ends.map(({ letter, row: own, at }) => {
    edge = own === row ? Math.max(at, edge + letterRoom) : at;
    row = own;
    return words(letter, [edge, y(own) + 16], { anchor: 'middle', bold: true, size: 12 });
  });
}
