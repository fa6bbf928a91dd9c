import type { Comparison, Estimate } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { IntervalMark } from './interval-mark.tsx';
import { DotSample, Key, LineSample } from './key.tsx';
import { RoadPicture } from './road-picture.tsx';
import { useRoadScale } from './road-scale.tsx';
import { dotsHeight, RunDots } from './run-dots.tsx';
import { TextTwin } from './text-twin.tsx';

/** px from the top of a set to its line, and from its line to its first dot. */
const head = 40;
const toDots = 20;

/** Every run of both sets where it came to rest, with the mean and its interval, and what the model expected. */
export function RunsPicture({ comparison }: { readonly comparison: Comparison }) {
  const { distance } = useUnits();
  const { x } = useRoadScale();
  const { before, after, difference_m, expectation } = comparison;
  const expected = expectation && shifted(before.mean_m.value, expectation.expected_m);
  const heightOf = (set: Comparison['before']) => head + toDots + dotsHeight(set.distances_m.map(x)) + 6;
  const [first, second] = [heightOf(before), heightOf(after)];
  const words = [
    `Before: ${before.count} runs, mean ${distance.range(before.mean_m)}.`,
    `After: ${after.count} runs, mean ${distance.range(after.mean_m)}.`,
    `Difference ${distance.range(difference_m)}.`,
    ...(expected ? [`Expected after: ${distance.range(expected)}.`] : []),
  ].join(' ');
  return (
    <RoadPicture
      title="Every run, before and after"
      description={words}
      caption={<Key entries={keyEntries(expected !== null)} />}
      height={first + second + (expected ? head + 14 : 0)}
      twin={<RunsTwin comparison={comparison} />}
    >
      <SetRow title={`before: ${before.name}`} set={before} y={head} filled={false} />
      <SetRow title={`after: ${after.name}`} set={after} y={first + head} filled />
      {expected && <ExpectedRow expected={expected} y={first + second + head} />}
    </RoadPicture>
  );
}

interface SetRowProps {
  readonly title: string;
  readonly set: Comparison['before'];
  readonly y: number;
  readonly filled: boolean;
}

function SetRow({ title, set, y, filled }: SetRowProps) {
  const { x } = useRoadScale();
  const { distance } = useUnits();
  return (
    <g>
      <line className="faint" x1={x(set.mean_m.value)} x2={x(set.mean_m.value)} y1={0} y2={y} />
      <line className="faint" x1={x(0)} x2={x(set.worst_m)} y1={y} y2={y} />
      <text x={x(0)} y={y - 17}>
        {title}, mean <tspan className="strong">{distance.text(set.mean_m)}</tspan>
      </text>
      <IntervalMark estimate={set.mean_m} y={y} style={filled ? 'solid' : 'dashed'} />
      <RunDots distances={set.distances_m} y={y + toDots} filled={filled} />
    </g>
  );
}

function ExpectedRow({ expected, y }: { readonly expected: Estimate; readonly y: number }) {
  const { x } = useRoadScale();
  return (
    <g>
      <text x={x(0)} y={y - 15}>
        expected after, by the model
      </text>
      <line className="thin dotted" x1={x(expected.low)} x2={x(expected.high)} y1={y} y2={y} />
      <path
        className="ink"
        d={`M${x(expected.low)} ${y - 6}v12M${x(expected.high)} ${y - 6}v12M${x(expected.value)} ${y - 9}v18`}
      />
    </g>
  );
}

function keyEntries(expected: boolean) {
  return [
    { mark: <DotSample className="ink paper-fill" />, text: 'a run before' },
    { mark: <DotSample className="accent accent-fill" />, text: 'a run after' },
    { mark: <LineSample className="ink" />, text: 'mean with its 95 % interval' },
    ...(expected ? [{ mark: <LineSample className="thin dotted" />, text: 'expected by the model' }] : []),
  ];
}

/** m, a change laid onto the mean that it starts from. */
export function shifted(from: number, change: Estimate): Estimate {
  return { value: from + change.value, low: from + change.low, high: from + change.high };
}

function RunsTwin({ comparison: { before, after } }: { readonly comparison: Comparison }) {
  const { distance } = useUnits();
  const count = Math.max(before.distances_m.length, after.distances_m.length);
  const cell = (meters: number | undefined) => (meters === undefined ? '' : distance.text(meters, 0.1));
  return (
    <TextTwin
      caption="Every counted run in run order"
      head={['Run', 'Before', 'After']}
      rows={Array.from({ length: count }, (_, index) => [
        index + 1,
        cell(before.distances_m[index]),
        cell(after.distances_m[index]),
      ])}
      total={['mean', distance.range(before.mean_m), distance.range(after.mean_m)]}
    />
  );
}
