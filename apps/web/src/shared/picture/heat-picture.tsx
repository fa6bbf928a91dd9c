import type { SetUpPrediction } from '@standstill/workshop';
import { toUnit } from '@standstill/units';
import { line } from 'd3-shape';
import { useUnits } from '../units/unit-choice.tsx';
import { Key, LineSample } from './key.tsx';
import { Plot } from './plot.tsx';
import { TextTwin } from './text-twin.tsx';

type Repeated = SetUpPrediction['repeatedStops'][number];

export interface HeatCurve {
  readonly title: string;
  readonly stops: readonly Repeated[];
  readonly peak_C: (stop: Repeated) => number;
}

const looks = ['ink dashed', 'accent'] as const;

/** Hottest rotor face in each of the stops in a row. */
export function HeatPicture({
  title,
  curves,
}: {
  readonly title: string;
  readonly curves: readonly HeatCurve[];
}) {
  const { temperature } = useUnits();
  const degrees = (celsius: number) => toUnit(celsius, temperature.symbol, 'temperature');
  const count = Math.max(...curves.map(({ stops }) => stops.length), 1);
  const hottest = Math.max(...curves.flatMap(({ stops, peak_C }) => stops.map(peak_C)), 100);
  return (
    <Plot
      title={title}
      description={curves.map((curve) => `${curve.title}: ${inWords(curve, temperature.text)}`).join(' ')}
      caption={
        <>
          <strong>{title}</strong>
          <Key
            entries={curves.map((curve, index) => ({
              mark: <LineSample className={looks[index] ?? 'accent'} />,
              text: curve.title,
            }))}
          />
        </>
      }
      across={{
        from: 1,
        to: Math.max(count, 2),
        title: 'stop',
        tick: (value) => (Number.isInteger(value) ? String(value) : ''),
      }}
      up={{ from: 0, to: degrees(hottest) * 1.08, title: `hottest face, ${temperature.symbol}` }}
      height={260}
      twin={<HeatTwin title={title} curves={curves} />}
    >
      {({ x, y }) =>
        curves.map(({ title: name, stops, peak_C }, index) => (
          <g key={name}>
            <path
              className={looks[index] ?? 'accent'}
              d={
                line<Repeated>(
                  ({ stop }) => x(stop),
                  (stop) => y(degrees(peak_C(stop))),
                )([...stops]) ?? ''
              }
            />
            {stops.map((stop) => (
              <circle
                key={stop.stop}
                className={index === 0 ? 'ink paper-fill' : 'accent accent-fill'}
                cx={x(stop.stop)}
                cy={y(degrees(peak_C(stop)))}
                r={3.5}
              />
            ))}
          </g>
        ))
      }
    </Plot>
  );
}

function inWords({ stops, peak_C }: HeatCurve, text: (celsius: number) => string): string {
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last) return 'no stops in a row.';
  return `${text(peak_C(first))} in stop ${first.stop}, ${text(peak_C(last))} in stop ${last.stop}.`;
}

function HeatTwin({ title, curves }: { readonly title: string; readonly curves: readonly HeatCurve[] }) {
  const { temperature } = useUnits();
  const longest = curves.reduce((a, b) => (b.stops.length > a.stops.length ? b : a), curves[0]!);
  return (
    <TextTwin
      caption={title}
      head={['Stop', ...curves.map((curve) => curve.title)]}
      rows={longest.stops.map(({ stop }, row) => [
        stop,
        ...curves.map(({ stops, peak_C }) => (stops[row] ? temperature.text(peak_C(stops[row])) : '–')),
      ])}
    />
  );
}
