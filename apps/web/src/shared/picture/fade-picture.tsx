import type { SetUpPrediction } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { DotSample, Key } from './key.tsx';
import { RoadPicture } from './road-picture.tsx';
import { useRoadScale } from './road-scale.tsx';
import { rowWords } from './row-words.ts';
import { TextTwin } from './text-twin.tsx';

type Repeated = SetUpPrediction['repeatedStops'][number];

export interface FadeOf {
  readonly title: string;
  readonly stops: readonly Repeated[];
}

const row = 20;
const dots = ['ink paper-fill', 'accent accent-fill'] as const;
const lines = ['ink dashed', 'accent'] as const;

/** Stops in a row, one below the other on the same road: fade pushes the car down the road. */
export function FadePicture({ sets }: { readonly sets: readonly FadeOf[] }) {
  const count = Math.max(...sets.map(({ stops }) => stops.length), 0);
  const { distance } = useUnits();
  const words = sets.map(({ title, stops }) => `${title}: ${rowWords(stops, distance.text)}`).join(' ');
  return (
    <RoadPicture
      title="Stops in a row"
      description={words}
      caption={
        <>
          {words}
          <Key
            entries={sets.map(({ title }, index) => ({
              mark: <DotSample className={dots[index] ?? dots[1]} />,
              text: title,
            }))}
          />
        </>
      }
      height={row * count + 16}
      twin={<FadeTwin sets={sets} />}
    >
      {sets.map(({ title, stops }, index) => (
        <Trail
          key={title}
          stops={stops}
          line={lines[index] ?? lines[1]}
          dot={dots[index] ?? dots[1]}
          numbered={index === 0}
        />
      ))}
    </RoadPicture>
  );
}

/** px below the road line. */
function at({ stop }: Repeated): number {
  return row * stop;
}

interface TrailProps {
  readonly stops: readonly Repeated[];
  readonly line: string;
  readonly dot: string;
  readonly numbered: boolean;
}

function Trail({ stops, line, dot, numbered }: TrailProps) {
  const { x } = useRoadScale();
  const path = stops
    .map((stop, index) => `${index === 0 ? 'M' : 'L'}${x(stop.distance_m)} ${at(stop)}`)
    .join('');
  return (
    <g>
      <path className={line} d={path} />
      {stops.map((stop) => (
        <g key={stop.stop}>
          {numbered && (
            <text className="soft" x={x(0)} y={at(stop) + 4}>
              {stop.stop === 1 ? 'stop 1' : stop.stop}
            </text>
          )}
          <circle className={dot} cx={x(stop.distance_m)} cy={at(stop)} r={5} />
        </g>
      ))}
    </g>
  );
}

function FadeTwin({ sets }: { readonly sets: readonly FadeOf[] }) {
  const { distance } = useUnits();
  const longest = sets.reduce((a, b) => (b.stops.length > a.stops.length ? b : a), sets[0]!);
  return (
    <TextTwin
      caption="Distance of each stop in a row; central values"
      head={['Stop', ...sets.map(({ title }) => title)]}
      rows={longest.stops.map(({ stop }, index) => [
        stop,
        ...sets.map(({ stops }) => (stops[index] ? distance.text(stops[index].distance_m) : '–')),
      ])}
    />
  );
}
