import { line } from 'd3-shape';
import { scaleLinear } from 'd3-scale';
import { useId } from 'react';
import { useUnits } from '../units/unit-choice.tsx';
import { useRoadScale } from './road-scale.tsx';

export interface TracePictureProps {
  readonly title: string;
  readonly points: readonly { readonly distance: number; readonly speed: number }[];
  /** m/s, the fastest on the page, so that all traces have one height scale too. */
  readonly fastest: number;
  readonly dashed: boolean;
}

const height = 96;
const base = 76;

/** The speed of one stop along the road, on the page's scale. */
export function TracePicture({ title, points, fastest, dashed }: TracePictureProps) {
  const { x, width, ticks, reach } = useRoadScale();
  const { speed, distance } = useUnits();
  const id = useId();
  const y = scaleLinear([0, Math.max(fastest, 1)], [base, 14]);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last) return <p className="small soft">No trace.</p>;
  const path = line<(typeof points)[number]>(
    (point) => x(point.distance),
    (point) => y(point.speed),
  )(points.filter(({ distance: at }) => at <= reach));
  const offScale = last.distance > reach;
  const words = `From ${speed.text(first.speed)} to ${speed.text(last.speed)} in ${distance.text(last.distance)}${offScale ? ', beyond the scale of this page' : ''}.`;
  return (
    <figure className="picture trace">
      <svg
        role="img"
        aria-labelledby={id}
        width={width || '100%'}
        height={height}
        viewBox={`0 0 ${Math.max(width, 1)} ${height}`}
      >
        <title id={id}>{`${title}: speed along the road. ${words}`}</title>
        <line className="road" x1={0} x2={width} y1={base} y2={base} />
        {ticks.map((tick) => (
          <g key={tick.label} transform={`translate(${x(tick.distance)} ${base})`}>
            <line className="thin" y2={5} />
            <text className="soft" y={18} textAnchor="middle">
              {tick.label}
            </text>
          </g>
        ))}
        <path className={dashed ? 'ink dashed' : 'accent'} d={path ?? ''} />
        {points.length <= 30 &&
          points
            .filter(({ distance: at }) => at <= reach)
            .map((point, index) => (
              <circle
                key={index}
                className={dashed ? 'ink paper-fill' : 'accent accent-fill'}
                cx={x(point.distance)}
                cy={y(point.speed)}
                r={2.5}
              />
            ))}
        {offScale && <OffScale x={x(reach)} label={`off the scale: ${distance.text(last.distance)}`} />}
        <text className="soft" x={x(0) + 6} y={12}>
          {speed.text(first.speed)}
        </text>
      </svg>
    </figure>
  );
}

/** Where a stop goes on past the edge: an arrow with its figure. */
function OffScale({ x, label }: { readonly x: number; readonly label: string }) {
  return (
    <g>
      <path
        className="ink"
        d={`M${x - 22} ${base - 12}H${x}M${x - 7} ${base - 17}L${x} ${base - 12}L${x - 7} ${base - 7}`}
      />
      <text className="strong" x={x - 28} y={base - 8} textAnchor="end">
        {label}
      </text>
    </g>
  );
}
