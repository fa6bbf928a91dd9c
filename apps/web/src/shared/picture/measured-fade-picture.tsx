import type { FadeReport } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { drawnFade, type DrawnFade, type FadeUnits } from './drawn-fade.ts';
import { FadeDistances, FadeTemperatures } from './fade-marks.tsx';
import { FadeTwin } from './fade-twin.tsx';
import { DotSample, Key } from './key.tsx';
import { Plot, type PlotAxis } from './plot.tsx';

/** Stops in a row as measured: distance, and below it the temperature of the brakes, against the number of the stop. */
export function MeasuredFadePicture({ report }: { readonly report: FadeReport }) {
  const units = useUnits();
  const { distance, temperature } = units;
  const sets = [report.set, ...(report.against ? [report.against] : [])].map((set, index) =>
    drawnFade(set, index, units),
  );
  const far = sets.flatMap(({ stops }) => stops.map((stop) => stop.distance));
  const warm = sets.flatMap(({ channels }) =>
    channels.flatMap(({ points }) => points.map((one) => one.value)),
  );
  const last = Math.max(...sets.flatMap(({ stops }) => stops.map(({ number }) => number)), 2);
  const across: PlotAxis = { from: 0.5, to: last + 0.5, title: 'stop', tick: whole };
  return (
    <>
      <Plot
        title="Distance of each stop in a row"
        description={sets.map((set) => distanceWords(set, units)).join(' ')}
        caption={<FadeKey sets={sets} />}
        across={across}
        up={{ ...rangeOf(far), title: `distance, ${distance.symbol}` }}
        height={230}
      >
        {(scales) => sets.map((set, index) => <FadeDistances key={index} set={set} scales={scales} />)}
      </Plot>
      {warm.length > 0 && (
        <Plot
          title="Brake temperature at the start of each stop"
          description={sets.map((set) => temperatureWords(set, units)).join(' ')}
          across={across}
          up={{ ...rangeOf(warm), title: `at the start, ${temperature.symbol}` }}
          height={190}
        >
          {(scales) => sets.map((set, index) => <FadeTemperatures key={index} set={set} scales={scales} />)}
        </Plot>
      )}
      <FadeTwin sets={sets.map(({ from }) => from)} />
    </>
  );
}

function FadeKey({ sets }: { readonly sets: readonly DrawnFade[] }) {
  const out = sets.some(({ stops }) => stops.some(({ counted }) => !counted));
  return (
    <Key
      entries={[
        ...sets.map(({ from, dot }) => ({ mark: <DotSample className={dot} />, text: from.name })),
        ...(out ? [{ mark: <path className="ink" d="M12 3l9 9M21 3l-9 9" />, text: 'left out' }] : []),
      ]}
    />
  );
}

function distanceWords({ from: { name, stops } }: DrawnFade, { distance }: FadeUnits): string {
  const [first, last] = [stops[0], stops.at(-1)];
  if (!first || !last) return `${name}: no stop.`;
  return `${name}: ${stops.length} stops, from ${distance.text(first.distance_m)} to ${distance.text(last.distance_m)}.`;
}

function temperatureWords({ from }: DrawnFade, { temperature: { text } }: FadeUnits): string {
  return from.temperatures
    .map(
      ({ channel, first_C, highest_C }) =>
        `${from.name}, ${channel}: ${text(first_C)} at the first stop, ${text(highest_C)} at the hottest.`,
    )
    .join(' ');
}

/** A little more than what is drawn, so that no dot lies on the frame. */
function rangeOf(values: readonly number[]): { readonly from: number; readonly to: number } {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const edge = Math.max((high - low) * 0.15, Math.abs(high) * 0.02, 0.5);
  return { from: low - edge, to: high + edge };
}

/** Only whole stops have a figure. */
function whole(value: number): string {
  return Number.isInteger(value) ? String(value) : '';
}
