import type { FadeReport, FadeSetResult } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { DotSample, Key } from './key.tsx';
import { Plot, type PlotScales } from './plot.tsx';
import { TextTwin } from './text-twin.tsx';

type FadeStop = FadeSetResult['stops'][number];

const dots = ['ink paper-fill', 'accent accent-fill'] as const;
const lines = ['ink dashed', 'accent'] as const;

interface DrawnSet {
  readonly name: string;
  readonly dot: string;
  readonly line: string;
  readonly set: FadeSetResult;
}

/** Stops in a row as measured: distance, and below it the temperature of the brakes, against the number of the stop. */
export function MeasuredFadePicture({ report }: { readonly report: FadeReport }) {
  const { distance, temperature } = useUnits();
  const sets = drawn(report);
  const all = sets.flatMap(({ set }) => set.stops);
  const last = Math.max(...all.map(({ number }) => number), 2);
  const across = { from: 0.5, to: last + 0.5, title: 'stop', tick: whole };
  const far = all.map(({ distance_m }) => distance_m);
  const warm = all.flatMap(({ temperatures }) => temperatures.map(({ start_C }) => start_C));
  const words = sets.map(({ name, set }) => setWords(name, set, distance.text)).join(' ');
  return (
    <>
      <Plot
        title="Distance of each stop in a row"
        description={words}
        caption={<FadeKey sets={sets} />}
        across={across}
        up={{
          ...rangeOf(far),
          title: `distance, ${distance.symbol}`,
          tick: (value) => bare(distance.text(value, 0.1)),
        }}
        height={230}
      >
        {(scales) => sets.map((drawnSet) => <Distances key={drawnSet.name} {...drawnSet} scales={scales} />)}
      </Plot>
      {warm.length > 0 && (
        <Plot
          title="Brake temperature at the start of each stop"
          description={temperatureWords(sets, temperature.text)}
          across={across}
          up={{
            ...rangeOf(warm),
            title: `at the start, ${temperature.symbol}`,
            tick: (value) => bare(temperature.text(value, 1)),
          }}
          height={190}
        >
          {(scales) =>
            sets.map((drawnSet) => <Temperatures key={drawnSet.name} {...drawnSet} scales={scales} />)
          }
        </Plot>
      )}
      <FadeTwin sets={sets} />
    </>
  );
}

function drawn({ set, against }: FadeReport): readonly DrawnSet[] {
  return [set, ...(against ? [against] : [])].map((one, index) => ({
    name: one.name,
    dot: dots[index] ?? dots[1],
    line: lines[index] ?? lines[1],
    set: one,
  }));
}

function FadeKey({ sets }: { readonly sets: readonly DrawnSet[] }) {
  const out = sets.some(({ set }) => set.stops.some(({ counted }) => !counted));
  return (
    <Key
      entries={[
        ...sets.map(({ name, dot }) => ({ mark: <DotSample className={dot} />, text: name })),
        ...(out ? [{ mark: <path className="ink" d="M12 3l9 9M21 3l-9 9" />, text: 'left out' }] : []),
      ]}
    />
  );
}

interface TrailProps extends DrawnSet {
  readonly scales: PlotScales;
}

function Distances({ set, dot, line, scales: { x, y } }: TrailProps) {
  const counted = set.stops.filter((stop) => stop.counted);
  const fit = lineThrough(counted, set.slope_m_per_stop?.value ?? null);
  return (
    <g>
      {fit && (
        <path
          className={line}
          d={`M${x(fit.from)} ${y(fit.at(fit.from))}L${x(fit.to)} ${y(fit.at(fit.to))}`}
        />
      )}
      {set.stops.map(({ number, distance_m, distanceStandardError_m: error, counted: counts }) => (
        <g key={number} transform={`translate(${x(number)} 0)`}>
          {counts ? (
            <>
              <path
                className="thin"
                d={`M0 ${y(distance_m - 1.96 * error)}V${y(distance_m + 1.96 * error)}`}
              />
              <circle className={dot} cy={y(distance_m)} r={5} />
            </>
          ) : (
            <path className="ink" d={`M-4.5 ${y(distance_m) - 4.5}l9 9M4.5 ${y(distance_m) - 4.5}l-9 9`} />
          )}
        </g>
      ))}
    </g>
  );
}

function Temperatures({ set, dot, line, scales: { x, y } }: TrailProps) {
  return (
    <g>
      {channelsOf(set).map((channel) => {
        const points = set.stops.flatMap(({ number, temperatures }) =>
          temperatures.filter((one) => one.channel === channel).map(({ start_C }) => ({ number, start_C })),
        );
        const path = points.map(
          ({ number, start_C }, at) => `${at === 0 ? 'M' : 'L'}${x(number)} ${y(start_C)}`,
        );
        const end = points.at(-1);
        return (
          <g key={channel}>
            <path className={line} d={path.join('')} />
            {points.map(({ number, start_C }) => (
              <circle key={number} className={dot} cx={x(number)} cy={y(start_C)} r={4} />
            ))}
            {end && (
              <text x={x(end.number)} y={y(end.start_C) - 9} textAnchor="end">
                {channel}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

function FadeTwin({ sets }: { readonly sets: readonly DrawnSet[] }) {
  const { distance, temperature } = useUnits();
  const heads = sets.flatMap(({ name, set }) => [
    name,
    ...channelsOf(set).map((channel) => `${channel}, ${name}`),
  ]);
  const numbers = [...new Set(sets.flatMap(({ set }) => set.stops.map(({ number }) => number)))].sort(
    (a, b) => a - b,
  );
  const cells = (stop: FadeStop | undefined, set: FadeSetResult): readonly string[] => [
    stop ? `${distance.text(stop.distance_m, 0.1)}${stop.counted ? '' : ' (left out)'}` : '–',
    ...channelsOf(set).map((channel) => {
      const read = stop?.temperatures.find((one) => one.channel === channel);
      return read ? temperature.text(read.start_C, 1) : '–';
    }),
  ];
  return (
    <TextTwin
      caption="Each stop in the order driven; temperatures at its start"
      head={['Stop', ...heads]}
      rows={numbers.map((number) => [
        number,
        ...sets.flatMap(({ set }) =>
          cells(
            set.stops.find((stop) => stop.number === number),
            set,
          ),
        ),
      ])}
    />
  );
}

function channelsOf({ stops }: FadeSetResult): readonly string[] {
  return [...new Set(stops.flatMap(({ temperatures }) => temperatures.map(({ channel }) => channel)))];
}

/** The fitted line, drawn through the middle of the stops that it was fitted to. */
function lineThrough(stops: readonly FadeStop[], slope: number | null) {
  const [first, last] = [stops[0], stops.at(-1)];
  if (slope === null || !first || !last || first === last) return null;
  const middle = mean(stops.map(({ number }) => number));
  const height = mean(stops.map(({ distance_m }) => distance_m));
  return { from: first.number, to: last.number, at: (stop: number) => height + slope * (stop - middle) };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function setWords(name: string, { stops }: FadeSetResult, text: (meters: number) => string): string {
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last) return `${name}: no stop.`;
  return `${name}: ${stops.length} stops, from ${text(first.distance_m)} to ${text(last.distance_m)}.`;
}

function temperatureWords(sets: readonly DrawnSet[], text: (celsius: number) => string): string {
  return sets
    .flatMap(({ name, set }) =>
      set.temperatures.map(
        ({ channel, first_C, highest_C }) =>
          `${name}, ${channel}: ${text(first_C)} at the first stop, ${text(highest_C)} at the hottest.`,
      ),
    )
    .join(' ');
}

/** A little more than what is drawn, so that no dot lies on the frame. */
function rangeOf(values: readonly number[]): { readonly from: number; readonly to: number } {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const edge = Math.max((high - low) * 0.15, Math.abs(high) * 0.02, 0.5);
  return { from: low - edge, to: high + edge };
}

/** Only whole stops have a tick. */
function whole(value: number): string {
  return Number.isInteger(value) ? String(value) : '';
}

/** The figure without its unit, which stands at the axis. */
function bare(text: string): string {
  return text.replace(/\s.*$/, '');
}
