import type { Estimate } from '@standstill/workshop';
import type { ReactNode } from 'react';
import type { Measure } from '../units/measure.ts';

/** A handful of figures with their names: read at a glance, printed as a list. */
export function Figures({ children }: { readonly children: ReactNode }) {
  return <dl className="figures">{children}</dl>;
}

export interface FigureProps {
  readonly name: string;
  readonly estimate: Estimate | null;
  readonly measure: Measure;
  /** How it reads where there is no such figure. */
  readonly none?: string;
  readonly note?: string;
}

/** One figure with its interval. */
export function Figure({ name, estimate, measure, none = 'not reached', note }: FigureProps) {
  return (
    <div>
      <dt>{name}</dt>
      {estimate === null ? (
        <dd className="words">{none}</dd>
      ) : (
        <dd>
          {measure.text(estimate)}
          <span className="small soft">{measure.range(estimate)}</span>
          {note && <span className="small soft">{note}</span>}
        </dd>
      )}
    </div>
  );
}

export interface FactFigureProps {
  readonly name: string;
  readonly children: ReactNode;
  readonly note?: string;
}

/** A finding in words or without an interval. */
export function FactFigure({ name, children, note }: FactFigureProps) {
  return (
    <div>
      <dt>{name}</dt>
      <dd className="words">
        {children}
        {note && <span className="small soft">{note}</span>}
      </dd>
    </div>
  );
}
