import { useRoadScale } from './road-scale.tsx';

export interface RunDotsProps {
  /** m, one per run, in run order. */
  readonly distances: readonly number[];
  /** px below the road line. */
  readonly y: number;
  /** Open for before, filled for after: told apart without color. */
  readonly filled: boolean;
}

const radius = 5.5;

/** px that the dots of a set take below their line. */
export function dotsHeight(positions: readonly number[]): number {
  return (Math.max(0, ...stack(positions).map(({ level }) => level)) + 1) * (radius * 2 + 1);
}

/** Every run as a dot on the road where the car came to rest; dots that would cover each other are stacked. */
export function RunDots({ distances, y, filled }: RunDotsProps) {
  const { x } = useRoadScale();
  const places = stack(distances.map(x));
  return (
    <g>
      {places.map(({ at, level }, index) => (
        <circle
          key={index}
          className={filled ? 'accent accent-fill' : 'ink paper-fill'}
          cx={at}
          cy={y + level * (radius * 2 + 1)}
          r={radius}
        />
      ))}
    </g>
  );
}

export interface Place {
  readonly at: number;
  readonly level: number;
}

/** Puts each dot on the first level, counted away from the line, where it covers none before it. */
export function stack(positions: readonly number[], size: number = radius * 2): readonly Place[] {
  const levels: number[][] = [];
  return positions.map((at) => {
    let level = 0;
    while (levels[level]?.some((other) => Math.abs(other - at) < size)) level++;
    (levels[level] ??= []).push(at);
    return { at, level };
  });
}
