import { useRoadScale } from './road-scale.tsx';

export interface DimensionLineProps {
  /** m from the first touch of the pedal. */
  readonly from: number;
  readonly to: number;
  /** px below the road line. */
  readonly y: number;
  readonly label: string;
  readonly strong?: boolean;
}

/** px that a letter takes at most; decides on which side of the line its label has room. */
const letter = 7.4;

/** A length as a drawing states it: a line between two ticks with its figure beside it; an arrow where it points back. */
export function DimensionLine({ from, to, y, label, strong = false }: DimensionLineProps) {
  const { x, width } = useRoadScale();
  const [left, right] = [Math.min(x(from), x(to)), Math.max(x(from), x(to))];
  const side = labelSide(left, right, width, label.length * letter);
  return (
    <g>
      <line className={strong ? 'accent' : 'ink'} x1={left} x2={right} y1={y} y2={y} />
      <path className={strong ? 'accent' : 'ink'} d={`M${left} ${y - 5}v10M${right} ${y - 5}v10`} />
      {to < from && <path className="ink" d={`M${left + 6} ${y - 4}L${left} ${y}L${left + 6} ${y + 4}`} />}
      <text className={strong ? 'strong' : undefined} x={side.x} y={y + side.dy} textAnchor={side.anchor}>
        {label}
      </text>
    </g>
  );
}

/** Lines from the road down to the ends of dimension lines; drawn below all of them, so that none crosses a label. */
export function DimensionGuides({
  ends,
}: {
  readonly ends: readonly Pick<DimensionLineProps, 'to' | 'y'>[];
}) {
  const { x } = useRoadScale();
  return (
    <g>
      {ends.map(({ to, y }, index) => (
        <line key={index} className="faint" x1={x(to)} x2={x(to)} y1={0} y2={y} />
      ))}
    </g>
  );
}

interface Side {
  readonly x: number;
  readonly dy: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

/** Above the line where it is long enough, else before it, else after it. */
function labelSide(left: number, right: number, width: number, room: number): Side {
  if (right - left > room) return { x: (left + right) / 2, dy: -5, anchor: 'middle' };
  if (left - 10 > room) return { x: left - 8, dy: 4, anchor: 'end' };
  if (width - right - 10 > room) return { x: right + 8, dy: 4, anchor: 'start' };
  return { x: width, dy: -8, anchor: 'end' };
}
