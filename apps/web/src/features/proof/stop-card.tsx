import type { StopResult } from '@standstill/workshop';
import { useMemo } from 'react';
import { TracePicture } from '../../shared/picture/trace-picture.tsx';
import { useUnits } from '../../shared/units/unit-choice.tsx';
import { useStopPrinter } from './stop-printer.ts';
import { tracePoints } from './trace-points.ts';

export interface StopCardProps {
  readonly stop: StopResult;
  readonly fastest: number;
  readonly dashed: boolean;
}

const starts: Readonly<Record<StopResult['startBy'], string>> = {
  'brake-switch': 'brake switch',
  'brake-pressure': 'line pressure',
  pedal: 'pedal',
  'deceleration-onset': 'onset of deceleration',
};

/** One stop with both definitions of its distance, whether it counts and why not, and its trace. */
export function StopCard({ stop, fastest, dashed }: StopCardProps) {
  const { speed, time, deceleration } = useUnits();
  const print = useStopPrinter(stop);
  const points = useMemo(() => tracePoints(stop), [stop]);
  return (
    <article className="stop-card" aria-label={`Stop ${stop.number}`}>
      <p className="stop-head">
        <strong>Stop {stop.number}</strong>
        {stop.clock && <span className="soft"> at {stop.clock}</span>}
        <span className={stop.counted ? 'counted' : 'left-out'}>{stop.counted ? 'counts' : 'left out'}</span>
      </p>
      <dl className="stop-figures">
        <Pair name="From" text={speed.text(stop.entrySpeed_m_s)} />
        <Pair name={`Applied to rest (by ${starts[stop.startBy]})`} text={print.driven} />
        <Pair name="… at nominal speed" text={print.atNominal} />
        <Pair name="Gate to rest" text={print.gate} />
        <Pair name="Time" text={time.text(stop.duration_s)} />
        <Pair
          name="Fully developed"
          text={
            stop.meanFullyDevelopedDeceleration_m_s2 === null
              ? '–'
              : deceleration.text(stop.meanFullyDevelopedDeceleration_m_s2)
          }
        />
      </dl>
      {stop.flags.length > 0 && (
        <ul className="small flags">
          {stop.flags.map(({ code, severity, reason }) => (
            <li key={code}>
              <strong>{severity === 'excludes' ? 'Left out' : 'Note'}:</strong> {reason}
            </li>
          ))}
        </ul>
      )}
      <TracePicture title={`Stop ${stop.number}`} points={points} fastest={fastest} dashed={dashed} />
    </article>
  );
}

function Pair({ name, text }: { readonly name: string; readonly text: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{text}</dd>
    </div>
  );
}
