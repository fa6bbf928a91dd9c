import type { Estimate } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { IntervalMark } from './interval-mark.tsx';
import { Key, LineSample } from './key.tsx';
import { RoadPicture } from './road-picture.tsx';
import { useRoadScale } from './road-scale.tsx';
import { TextTwin } from './text-twin.tsx';

/** Where a set came to rest, beside where the model put it. */
export interface ExpectedOf {
  readonly title: string;
  /** Null where nothing was measured. */
  readonly measured: Estimate | null;
  readonly byJob: Estimate;
  /** After learning from the stops before. */
  readonly learned: Estimate;
}

const row = 46;
const head = 26;

/** Measured stops and the model's on one road: by the job alone, and after learning from the stops before. */
export function ExpectedPicture({ sets }: { readonly sets: readonly ExpectedOf[] }) {
  const { distance } = useUnits();
  const rows = sets.flatMap((set) => rowsOf(set).map((one) => ({ ...one, set: set.title })));
  const say = (estimate: Estimate) => `${distance.text(estimate)} (${distance.range(estimate)})`;
  const words = rows.map(({ set, name, estimate }) => `${set}, ${name}: ${say(estimate)}.`).join(' ');
  return (
    <RoadPicture
      title="Measured and expected stops"
      description={words}
      caption={
        <Key
          entries={[
            { mark: <LineSample className="accent" />, text: 'measured, with its 95 % interval' },
            { mark: <LineSample className="ink dashed" />, text: 'by the model' },
          ]}
        />
      }
      height={rows.length * row + head}
      twin={
        <TextTwin
          caption="Mean distance to rest with its 95 % interval"
          head={['Stops', 'Distance']}
          rows={rows.map(({ set, name, estimate }) => [`${set}, ${name}`, say(estimate)])}
        />
      }
    >
      {rows.map(({ set, name, estimate, measured }, index) => (
        <ExpectedRow
          key={`${set} ${name}`}
          title={`${set}, ${name}`}
          estimate={estimate}
          measured={measured}
          y={head + row * index + 12}
        />
      ))}
    </RoadPicture>
  );
}

function rowsOf({ measured, byJob, learned }: ExpectedOf) {
  return [
    ...(measured ? [{ name: 'measured', estimate: measured, measured: true }] : []),
    { name: 'by the job alone', estimate: byJob, measured: false },
    { name: 'by the model after learning', estimate: learned, measured: false },
  ];
}

interface ExpectedRowProps {
  readonly title: string;
  readonly estimate: Estimate;
  readonly measured: boolean;
  readonly y: number;
}

function ExpectedRow({ title, estimate, measured, y }: ExpectedRowProps) {
  const { x } = useRoadScale();
  const { distance } = useUnits();
  return (
    <g>
      <line className="faint" x1={x(0)} x2={x(estimate.value)} y1={y} y2={y} />
      <text x={x(0)} y={y - 13}>
        {title} <tspan className="strong">{distance.text(estimate)}</tspan>
      </text>
      <IntervalMark estimate={estimate} y={y} style={measured ? 'solid' : 'dashed'} />
    </g>
  );
}
