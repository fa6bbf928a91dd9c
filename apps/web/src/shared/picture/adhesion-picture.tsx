import { leastBrakingRate } from '@standstill/braking';
import type { BalanceResult } from '@standstill/workshop';
import { line } from 'd3-shape';
import { Key, LineSample } from './key.tsx';
import { Plot, type PlotScales } from './plot.tsx';
import { TextTwin } from './text-twin.tsx';

export interface AdhesionPictureProps {
  readonly title: string;
  readonly balance: BalanceResult;
}

type Point = BalanceResult['installed'][number];

/** Friction on the road from 0.2 to 0.8: the range of the rule. */
const rule = Array.from({ length: 25 }, (_, index) => 0.2 + 0.025 * index).map((friction) => ({
  friction,
  rate: leastBrakingRate(friction),
}));

const most = 1.1;

/** Friction that each axle needs over deceleration, with the limit of UN Regulation 13-H Annex 5. */
export function AdhesionPicture({ title, balance }: AdhesionPictureProps) {
  const points = balance.installed.filter(
    (point) => point.deceleration_g > 0.05 && point.deceleration_g <= 1,
  );
  return (
    <Plot
      title={`Adhesion used, ${title}`}
      description={`${title}: ${verdict(points)}`}
      caption={
        <>
          <strong>{title}.</strong> {verdict(points)}
          <Key
            entries={[
              { mark: <LineSample className="accent" />, text: 'front' },
              { mark: <LineSample className="ink dashed" />, text: 'rear' },
              { mark: <LineSample className="danger dotted" />, text: 'most that Annex 5 allows' },
            ]}
          />
        </>
      }
      across={{ from: 0, to: 1, title: 'deceleration, g' }}
      up={{ from: 0, to: most, title: 'friction used' }}
      height={300}
      twin={<AdhesionTwin title={title} points={points} />}
    >
      {(scales) => <Curves scales={scales} points={points} />}
    </Plot>
  );
}

function Curves({
  scales: { x, y },
  points,
}: {
  readonly scales: PlotScales;
  readonly points: readonly Point[];
}) {
  const curve = (adhesion: (point: Point) => number) =>
    line<Point>(
      (point) => x(point.deceleration_g),
      (point) => y(adhesion(point)),
    )(points.filter((point) => adhesion(point) <= most)) ?? '';
  const limit = line<(typeof rule)[number]>(
    ({ rate }) => x(rate),
    ({ friction }) => y(friction),
  );
  return (
    <g>
      <line className="faint" x1={x(0)} y1={y(0)} x2={x(1)} y2={y(1)} />
      <path className="danger dotted" d={limit(rule) ?? ''} />
      <path className="accent" d={curve((point) => point.frontAdhesion)} />
      <path className="ink dashed" d={curve((point) => point.rearAdhesion)} />
    </g>
  );
}

/** The two rules of the Annex, for the car as loaded here; a yardstick, not an approval. */
function verdict(points: readonly Point[]): string {
  const examined = points.filter((point) => point.deceleration_g >= 0.15 && point.deceleration_g <= 0.8);
  const rearAbove = examined.find((point) => point.rearAdhesion > point.frontAdhesion);
  if (rearAbove)
    return `The rear needs more friction than the front from ${rearAbove.deceleration_g.toFixed(2)} g: the rear locks first.`;
  return 'The front always needs more friction than the rear between 0.15 and 0.80 g.';
}

function AdhesionTwin({ title, points }: { readonly title: string; readonly points: readonly Point[] }) {
  const rows = [0.2, 0.4, 0.6, 0.8].flatMap((rate) => {
    const point = points.find(({ deceleration_g }) => deceleration_g >= rate - 1e-9);
    if (!point) return [];
    return [
      [`${point.deceleration_g.toFixed(2)} g`, point.frontAdhesion.toFixed(2), point.rearAdhesion.toFixed(2)],
    ];
  });
  return (
    <TextTwin
      caption={`Friction used by each axle, ${title}`}
      head={['Deceleration', 'Front', 'Rear']}
      rows={rows}
    />
  );
}
