import type { Estimate } from '@standstill/workshop';
import { useRoadScale } from './road-scale.tsx';

export interface IntervalMarkProps {
  /** m. */
  readonly estimate: Estimate;
  /** px below the road line. */
  readonly y: number;
  /** Line style tells the sets apart without color. */
  readonly style: 'solid' | 'dashed';
}

/** A value with its interval on the road: a bracket from low to high, a tall tick at the value. */
export function IntervalMark({ estimate, y, style }: IntervalMarkProps) {
  const { x } = useRoadScale();
  const look = style === 'solid' ? 'accent' : 'ink dashed';
  const [low, high] = [x(estimate.low), x(estimate.high)];
  return (
    <g>
      <line className={look} x1={low} x2={high} y1={y} y2={y} />
      <path className={style === 'solid' ? 'accent' : 'ink'} d={`M${low} ${y - 6}v12M${high} ${y - 6}v12`} />
      <line
        className={style === 'solid' ? 'accent' : 'ink'}
        x1={x(estimate.value)}
        x2={x(estimate.value)}
        y1={y - 11}
        y2={y + 11}
      />
    </g>
  );
}
