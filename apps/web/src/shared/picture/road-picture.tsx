import { type ReactNode, useId } from 'react';
import { useRoadScale } from './road-scale.tsx';

export interface RoadPictureProps {
  readonly title: string;
  /** The picture in a sentence, for those who do not see it. */
  readonly description: string;
  readonly caption?: ReactNode;
  /** px below the road line. */
  readonly height: number;
  /** m, where on the road something is to be seen at a glance: the stretch from one place to the other is hatched. */
  readonly hatched?: { readonly from: number; readonly to: number } | undefined;
  readonly children: ReactNode;
  /** The text twin. */
  readonly twin?: ReactNode;
}

/** px from the top to the road line. */
export const roadLine = 42;

/** A picture along the road: ruler on top, the road line, and whatever is measured along it below. */
export function RoadPicture({
  title,
  description,
  caption,
  height,
  hatched,
  children,
  twin,
}: RoadPictureProps) {
  const { width } = useRoadScale();
  const id = useId();
  const whole = roadLine + height;
  return (
    <figure className="picture">
      {caption && <figcaption>{caption}</figcaption>}
      <svg
        role="img"
        aria-labelledby={`${id}t ${id}d`}
        width={width || '100%'}
        height={whole}
        viewBox={`0 0 ${Math.max(width, 1)} ${whole}`}
      >
        <title id={`${id}t`}>{title}</title>
        <desc id={`${id}d`}>{description}</desc>
        <RoadRuler />
        {hatched && <Hatched id={id} {...hatched} />}
        <g transform={`translate(0 ${roadLine})`}>{children}</g>
      </svg>
      {twin}
    </figure>
  );
}

/** A stretch of the road that something costs or saves, as a drawing hatches what is cut. */
function Hatched({ id, from, to }: { readonly id: string; readonly from: number; readonly to: number }) {
  const { x } = useRoadScale();
  const [left, right] = [Math.min(x(from), x(to)), Math.max(x(from), x(to))];
  return (
    <g>
      <pattern id={`${id}p`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <line className="accent" x1="0" x2="0" y1="0" y2="7" />
      </pattern>
      <rect x={left} y={roadLine - 12} width={right - left} height={10.5} fill={`url(#${id}p)`} />
      <path
        className="ink"
        d={`M${x(from)} ${roadLine - 14}V${roadLine}M${x(to)} ${roadLine - 14}V${roadLine}`}
      />
    </g>
  );
}

/** The ruler: round distances from the first touch of the pedal, and the road line itself. */
function RoadRuler() {
  const { width, x, ticks, unit } = useRoadScale();
  return (
    <g>
      {ticks.map(({ distance, label }, index) => (
        <g key={label} transform={`translate(${x(distance)} 0)`}>
          <line className="thin" y1={20} y2={27} />
          <text
            className="soft"
            y={13}
            textAnchor={index === 0 ? 'start' : 'middle'}
            dx={index === 0 ? -6 : 0}
          >
            {index === 0 ? `0 ${unit}` : label}
          </text>
        </g>
      ))}
      <line className="road" x1={0} x2={width} y1={roadLine} y2={roadLine} />
    </g>
  );
}
