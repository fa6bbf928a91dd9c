import { scaleLinear, type ScaleLinear } from 'd3-scale';
import { type ReactNode, useId } from 'react';
import { useWidth } from './use-width.ts';

export interface PlotAxis {
  readonly from: number;
  readonly to: number;
  /** With its unit. */
  readonly title: string;
  readonly tick?: (value: number) => string;
}

export interface PlotProps {
  readonly title: string;
  /** The picture in a sentence, for those who do not see it. */
  readonly description: string;
  readonly caption?: ReactNode;
  readonly across: PlotAxis;
  readonly up: PlotAxis;
  /** True where both axes measure the same: the picture does not grow wider than it is read well. */
  readonly upright?: boolean;
  /** px; fixed, so that nothing jumps when the width becomes known. */
  readonly height: number;
  readonly children: (scales: PlotScales) => ReactNode;
  readonly twin?: ReactNode;
}

export interface PlotScales {
  readonly x: ScaleLinear<number, number>;
  readonly y: ScaleLinear<number, number>;
  readonly width: number;
}

const room = { left: 46, right: 12, top: 26, bottom: 40 };

/** Two axes and whatever is drawn between them. */
export function Plot({
  title,
  description,
  caption,
  across,
  up,
  upright = false,
  height,
  children,
  twin,
}: PlotProps) {
  const [element, width] = useWidth<HTMLDivElement>();
  const id = useId();
  const x = scaleLinear([across.from, across.to], [room.left, Math.max(width - room.right, room.left + 1)]);
  const y = scaleLinear([up.from, up.to], [height - room.bottom, room.top]);
  return (
    <figure className={upright ? 'picture upright' : 'picture'}>
      {caption && <figcaption>{caption}</figcaption>}
      <div ref={element}>
        <svg
          role="img"
          aria-labelledby={`${id}t ${id}d`}
          width={width || '100%'}
          height={height}
          viewBox={`0 0 ${Math.max(width, 1)} ${height}`}
        >
          <title id={`${id}t`}>{title}</title>
          <desc id={`${id}d`}>{description}</desc>
          <AcrossAxis
            axis={across}
            x={x}
            y={height - room.bottom}
            count={Math.max(2, Math.floor(width / 80))}
          />
          <UpAxis axis={up} y={y} right={width - room.right} />
          {children({ x, y, width })}
        </svg>
      </div>
      {twin}
    </figure>
  );
}

interface AcrossAxisProps {
  readonly axis: PlotAxis;
  readonly x: ScaleLinear<number, number>;
  readonly y: number;
  readonly count: number;
}

function AcrossAxis({ axis, x, y, count }: AcrossAxisProps) {
  const format = axis.tick ?? x.tickFormat(count);
  return (
    <g>
      <line className="ink" x1={x(axis.from)} x2={x(axis.to)} y1={y} y2={y} />
      {x.ticks(count).map((value) => (
        <g key={value} transform={`translate(${x(value)} ${y})`}>
          <line className="thin" y2={5} />
          <text className="soft" y={19} textAnchor="middle">
            {format(value)}
          </text>
        </g>
      ))}
      <text className="soft" x={x(axis.to)} y={y + 36} textAnchor="end">
        {axis.title}
      </text>
    </g>
  );
}

function UpAxis({
  axis,
  y,
  right,
}: {
  readonly axis: PlotAxis;
  readonly y: ScaleLinear<number, number>;
  readonly right: number;
}) {
  const format = axis.tick ?? y.tickFormat(5);
  return (
    <g>
      {y.ticks(5).map((value) => (
        <g key={value} transform={`translate(0 ${y(value)})`}>
          <line className="faint" x1={room.left} x2={Math.max(right, room.left)} />
          <text className="soft" x={room.left - 7} y={4} textAnchor="end">
            {format(value)}
          </text>
        </g>
      ))}
      <text className="soft" x={0} y={13}>
        {axis.title}
      </text>
    </g>
  );
}
