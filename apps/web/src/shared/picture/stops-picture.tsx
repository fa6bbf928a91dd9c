import type { Estimate } from '@standstill/workshop';
import { useUnits } from '../units/unit-choice.tsx';
import { IntervalMark } from './interval-mark.tsx';
import { RoadPicture } from './road-picture.tsx';
import { useRoadScale } from './road-scale.tsx';

export interface StopOf {
  readonly title: string;
  readonly distance_m: Estimate;
}

const row = 60;

/** Where each set-up comes to rest, with its interval. */
export function StopsPicture({ stops }: { readonly stops: readonly StopOf[] }) {
  const { distance } = useUnits();
  const words = stops
    .map(({ title, distance_m }) => `${title}: ${distance.text(distance_m)}, ${distance.range(distance_m)}.`)
    .join(' ');
  return (
    <RoadPicture
      title="Where each set-up comes to rest"
      description={words}
      height={row * stops.length}
      twin={<p className="unseen">{words}</p>}
    >
      {stops.map(({ title, distance_m }, index) => (
        <StopRow
          key={title}
          title={title}
          estimate={distance_m}
          y={row * index + 40}
          style={index === 0 ? 'dashed' : 'solid'}
        />
      ))}
    </RoadPicture>
  );
}

interface StopRowProps {
  readonly title: string;
  readonly estimate: Estimate;
  readonly y: number;
  readonly style: 'solid' | 'dashed';
}

function StopRow({ title, estimate, y, style }: StopRowProps) {
  const { x } = useRoadScale();
  const { distance } = useUnits();
  return (
    <g>
      <line className="faint" x1={x(estimate.value)} x2={x(estimate.value)} y1={0} y2={y} />
      <line
        className={style === 'solid' ? 'accent' : 'ink dashed'}
        x1={x(0)}
        x2={x(estimate.low)}
        y1={y}
        y2={y}
        strokeOpacity={0.35}
      />
      <text x={x(0)} y={y - 17}>
        {title} <tspan className="strong">{distance.text(estimate)}</tspan> ({distance.range(estimate)})
      </text>
      <IntervalMark estimate={estimate} y={y} style={style} />
    </g>
  );
}
