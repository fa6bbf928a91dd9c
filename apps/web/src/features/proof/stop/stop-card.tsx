import type { StopResult } from '@standstill/workshop';
import { useMemo } from 'react';
import { TracePicture } from '../../../shared/picture/trace-picture.tsx';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { JudgeStop } from './judge-stop.tsx';
import { judgementWords } from './judgement-words.ts';
import { useStopPrinter } from './stop-printer.ts';
import { tracePoints } from './trace-points.ts';

export interface StopCardProps {
  readonly runId: string;
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
export function StopCard({ runId, stop, fastest, dashed }: StopCardProps) {
  const points = useMemo(() => tracePoints(stop), [stop]);
  const { judgement } = stop;
  return (
    <article
      className={stop.counted ? 'stop-card' : 'stop-card not-counted'}
      aria-label={`Stop ${stop.number}`}
    >
      <p className="stop-head">
        <strong className="stop-name">Stop {stop.number}</strong>
        {stop.clock && <span className="soft"> at {stop.clock}</span>}
        <span className={stop.counted ? 'counted' : 'left-out'}>{stop.counted ? 'counts' : 'left out'}</span>
      </p>
      {judgement && <p className="small judged">{judgementWords(judgement)}</p>}
      <StopFigures stop={stop} />
      {stop.flags.length > 0 && (
        <ul className="small flags">
          {stop.flags.map(({ code, severity, reason }) => (
            <li key={code}>
              <strong>{flagWord(stop, severity)}:</strong> {reason}
            </li>
          ))}
        </ul>
      )}
      <TracePicture title={`Stop ${stop.number}`} points={points} fastest={fastest} dashed={dashed} />
      <JudgeStop runId={runId} stop={stop} />
    </article>
  );
}

/** A stop that a person counts all the same keeps its flags; they are no longer why it is left out. */
function flagWord({ counted }: StopResult, severity: StopResult['flags'][number]['severity']): string {
  if (severity === 'warns') return 'Note';
  return counted ? 'Would be left out' : 'Left out';
}

function StopFigures({ stop }: { readonly stop: StopResult }) {
  const { speed, time, deceleration, temperature, pressure, force } = useUnits();
  const print = useStopPrinter(stop);
  const developed = stop.meanFullyDevelopedDeceleration_m_s2;
  return (
    <dl className="stop-figures">
      <Pair name="From" text={speed.text(stop.entrySpeed_m_s)} />
      <Pair name={`Applied to rest (by ${starts[stop.startBy]})`} text={print.driven} />
      <Pair name="… at nominal speed" text={print.atNominal} />
      <Pair name="Gate to rest" text={print.gate} />
      <Pair name="Time" text={time.text(stop.duration_s)} />
      <Pair name="Fully developed" text={developed === null ? '–' : deceleration.text(developed)} />
      {stop.buildUpTime_s !== null && <Pair name="Build-up" text={time.text(stop.buildUpTime_s)} />}
      {stop.temperatures.map(({ channel, start_C, end_C }) => (
        <Pair
          key={channel}
          name={channel}
          text={
            end_C === null
              ? temperature.text(start_C)
              : `${temperature.text(start_C)} to ${temperature.text(end_C)}`
          }
        />
      ))}
      {stop.developedPressure_Pa !== null && (
        <Pair name="Line pressure, developed" text={pressure.text(stop.developedPressure_Pa)} />
      )}
      {stop.developedPedalForce_N !== null && (
        <Pair name="Pedal force, developed" text={force.text(stop.developedPedalForce_N)} />
      )}
    </dl>
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
