import type { BalanceResult } from '@standstill/workshop';
import { line } from 'd3-shape';
import { useUnits } from '../units/unit-choice.tsx';
import { DotSample, Key, LineSample } from './key.tsx';
import { Plot, type PlotScales } from './plot.tsx';
import { lockPoint, type ForcePoint } from './lock-point.ts';
import { TextTwin } from './text-twin.tsx';

export interface BalanceOf {
  readonly title: string;
  readonly balance: BalanceResult;
}

const looks = [
  { line: 'ink dashed', dot: 'ink paper-fill' },
  { line: 'accent', dot: 'accent accent-fill' },
] as const;

/** px that '1.2 g' takes. */
const label = 36;

const rates = [0.2, 0.4, 0.6, 0.8, 1, 1.2];

/** Front against rear brake force: what the road would take, and what the brakes give. */
export function BalancePicture({ sets }: { readonly sets: readonly BalanceOf[] }) {
  const first = sets[0];
  if (!first) return null;
  const { front, rear } = extent(sets);
  return (
    <Plot
      title="Balance of front and rear brake force"
      description={sets.map(({ title, balance }) => `${title}: ${lockWords(balance)}`).join(' ')}
      caption={<Key entries={keyEntries(sets)} />}
      across={{ from: 0, to: front, title: 'front brake force over weight' }}
      up={{ from: 0, to: rear, title: 'rear brake force over weight' }}
      upright
      height={380}
      twin={<BalanceTwin sets={sets} />}
    >
      {(scales) => (
        <>
          <DecelerationLines scales={scales} front={front} rear={rear} />
          <path className="ink" d={path(first.balance.ideal, scales, { front, rear })} />
          {sets.map(({ title, balance }, index) => (
            <Installed
              key={title}
              balance={balance}
              look={looks[index] ?? looks[1]}
              scales={scales}
              within={{ front, rear }}
            />
          ))}
        </>
      )}
    </Plot>
  );
}

interface Extent {
  readonly front: number;
  readonly rear: number;
}

/** As much of the picture as the curves up to a good road's grip need. */
function extent(sets: readonly BalanceOf[]): Extent {
  const locks = sets.map(({ balance }) => balance.lockDeceleration_g?.high ?? 0);
  const most = Math.max(1.05, ...locks) + 0.1;
  const points = sets
    .flatMap(({ balance }) => [...balance.ideal, ...balance.installed])
    .filter((point) => point.deceleration_g <= most);
  return {
    front: Math.max(...points.map((point) => point.frontForceOverWeight), 0.1),
    rear: Math.max(...points.map((point) => point.rearForceOverWeight), 0.05) * 1.15,
  };
}

function path(points: readonly ForcePoint[], { x, y }: PlotScales, within: Extent): string {
  const inside = points.filter(
    (point) => point.frontForceOverWeight <= within.front && point.rearForceOverWeight <= within.rear,
  );
  const draw = line<ForcePoint>(
    (point) => x(point.frontForceOverWeight),
    (point) => y(point.rearForceOverWeight),
  );
  return draw([...inside]) ?? '';
}

/** Lines along which the deceleration is the same, however it is shared. */
function DecelerationLines({
  scales: { x, y, width },
  front,
  rear,
}: { readonly scales: PlotScales } & Extent) {
  return (
    <g>
      {rates.map((rate) => {
        const [left, top] = rate <= rear ? [0, rate] : [rate - rear, rear];
        const [right, bottom] = rate <= front ? [rate, 0] : [front, rate - front];
        if (left > front) return null;
        return (
          <g key={rate}>
            <line className="faint" x1={x(left)} y1={y(top)} x2={x(right)} y2={y(bottom)} />
            <text
              className="soft"
              x={x(left) + 4 + label > width ? x(left) - 4 : x(left) + 4}
              y={y(top) + 13}
              textAnchor={x(left) + 4 + label > width ? 'end' : 'start'}
            >
              {rate} g
            </text>
          </g>
        );
      })}
    </g>
  );
}

interface InstalledProps {
  readonly balance: BalanceResult;
  readonly look: (typeof looks)[number];
  readonly scales: PlotScales;
  readonly within: Extent;
}

function Installed({ balance, look, scales, within }: InstalledProps) {
  const lock = lockPoint(balance);
  return (
    <g>
      <path className={look.line} d={path(balance.installed, scales, within)} />
      {lock && <circle className={look.dot} cx={scales.x(lock.front)} cy={scales.y(lock.rear)} r={6} />}
    </g>
  );
}

function keyEntries(sets: readonly BalanceOf[]) {
  return [
    {
      mark: <LineSample className="ink" />,
      text: 'ideal: all tires at their peak at once; above it the rear locks first',
    },
    ...sets.flatMap(({ title }, index) => {
      const look = looks[index] ?? looks[1];
      return [
        { mark: <LineSample className={look.line} />, text: title },
        { mark: <DotSample className={look.dot} />, text: `first axle locks, ${title}` },
      ];
    }),
  ];
}

/** Which axle locks first, in words. */
export function lockWords({ firstToLock, rearFirstShare }: BalanceResult): string {
  if (firstToLock === 'none') return 'the foot can not lock a wheel on this road.';
  if (firstToLock === 'both') return 'front and rear lock at the same time.';
  const share =
    rearFirstShare > 0.005 && firstToLock === 'front'
      ? `, the rear in ${percent(rearFirstShare)} of the draws`
      : '';
  return `the ${firstToLock} wheels lock first${share}.`;
}

function percent(share: number): string {
  return `${Math.round(share * 100)} %`;
}

function BalanceTwin({ sets }: { readonly sets: readonly BalanceOf[] }) {
  const { deceleration, share } = useUnits();
  return (
    <TextTwin
      caption="Balance on this road, with ABS and electronic distribution taken as failed"
      head={['Figure', ...sets.map(({ title }) => title)]}
      rows={[
        ['first to lock', ...sets.map(({ balance }) => balance.firstToLock)],
        [
          'at',
          ...sets.map(({ balance: { lockDeceleration_g: lock } }) =>
            lock === null ? 'not reached' : deceleration.range(inSi(lock)),
          ),
        ],
        [
          'front share of brake force then',
          ...sets.map(({ balance }) => share.text(balance.frontForceShare)),
        ],
        [
          'draws in which the rear locks first',
          ...sets.map(({ balance }) => percent(balance.rearFirstShare)),
        ],
      ]}
    />
  );
}

const g = 9.80665;

function inSi({ value, low, high }: { readonly value: number; readonly low: number; readonly high: number }) {
  return { value: value * g, low: low * g, high: high * g };
}
