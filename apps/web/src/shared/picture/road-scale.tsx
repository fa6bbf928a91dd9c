import { scaleLinear } from 'd3-scale';
import { createContext, useContext, useMemo, type ReactNode } from 'react';
import { useUnits } from '../units/unit-choice.tsx';
import { useWidth } from './use-width.ts';

/** The one scale of distance that all pictures of a page share: a foot is as long on each of them. */
export interface RoadScale {
  /** px, drawing width. */
  readonly width: number;
  /** px from the left edge for m from the first touch of the pedal. */
  readonly x: (distance: number) => number;
  /** Round distances for the ruler: m, and how they read. */
  readonly ticks: readonly { readonly distance: number; readonly label: string }[];
  /** m, where the scale ends. */
  readonly reach: number;
  /** 'ft' or 'm'. */
  readonly unit: string;
}

const RoadScaleContext = createContext<RoadScale | null>(null);

export function useRoadScale(): RoadScale {
  const scale = useContext(RoadScaleContext);
  if (!scale) throw new Error('A road picture outside of a RoadSheet');
  return scale;
}

const edge = 14;
/** px that a tick with its figure needs. */
const tickRoom = 62;

export interface RoadSheetProps {
  /** m, the longest distance drawn anywhere on the page. */
  readonly longest: number;
  readonly children: ReactNode;
}

/** Holds the pictures of a page that draw distance. */
export function RoadSheet({ longest, children }: RoadSheetProps) {
  const [element, width] = useWidth<HTMLDivElement>();
  const { distance: unit } = useUnits();
  const scale = useMemo<RoadScale>(() => {
    const x = scaleLinear([0, Math.max(longest, 1)], [edge, Math.max(width - edge, edge + 1)]);
    const inUnits = scaleLinear([0, Math.max(longest, 1) / unit.si], [0, 1]);
    const marks = inUnits.ticks(Math.max(2, Math.floor(width / tickRoom)));
    const ticks = marks.map((mark) => ({ distance: mark * unit.si, label: String(mark) }));
    return { width, x: (distance) => x(distance), ticks, reach: Math.max(longest, 1), unit: unit.symbol };
  }, [longest, width, unit]);
  return (
    <div ref={element}>
      <RoadScaleContext.Provider value={scale}>{children}</RoadScaleContext.Provider>
    </div>
  );
}
