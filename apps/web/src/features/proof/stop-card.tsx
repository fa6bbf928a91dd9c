import type { StopResult } from '@standstill/workshop';
import { useMemo } from 'react';
import { TracePicture } from '../../shared/picture/trace-picture.tsx';
import { useUnits } from '../../shared/units/unit-choice.tsx';
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
  const { distance, speed, time, deceleration } = useUnits();
  const points = useMemo(() => tracePoints(stop), [stop]);
  const spread = stop.distanceStandardError_m * 2;
  return (
    <article className="stop-card" aria-label={`Stop ${stop.number}`}>
      <p className="stop-head">
        <strong>Stop {stop.number}</strong>
        {stop.clock && <span className="soft"> at {stop.clock}</span>}
        <span className={stop.counted ? 'counted' : 'left-out'}>{stop.counted ? 'counts' : 'left out'}</span>
      </p>
      <dl className="stop-figures">
        <Pair name="From" text={speed.text(stop.entrySpeed_m_s)} />
        <Pair
          name={`Applied to rest (by ${starts[stop.startBy]})`}
          text={distance.text(stop.applicationDistance_m, spread)}
        />
        <Pair name="… at nominal speed" text={corrected(stop, (meters) => distance.text(meters, spread))} />
        <Pair
          name="Gate to rest"
          text={
            stop.gateDistance_m === null ? 'gate not crossed' : distance.text(stop.gateDistance_m, spread)
          }
        />
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

/** A stop from far off the nominal speed is not talked up or down to it. */
function corrected({ correctedDistance_m, flags }: StopResult, text: (meters: number) => string): string {
  if (flags.some(({ code }) => code === 'speed-off-nominal')) return 'speed too far off';
  return correctedDistance_m === null ? '–' : text(correctedDistance_m);
}

function Pair({ name, text }: { readonly name: string; readonly text: string }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{text}</dd>
    </div>
  );
}
