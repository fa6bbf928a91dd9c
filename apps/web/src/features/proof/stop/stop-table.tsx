import type { StopResult } from '@standstill/workshop';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { judgementWords } from './judgement-words.ts';
import { stopWords } from './stop-printer.ts';

/** The stops of a log on paper: one line each, where the screen has a card with a picture. */
export function StopTable({ stops }: { readonly stops: readonly StopResult[] }) {
  const { speed, distance, time, deceleration } = useUnits();
  if (stops.length === 0) return null;
  return (
    <table className="print-only stops">
      <thead>
        <tr>
          {[
            'Stop',
            'From',
            'Applied to rest',
            'At nominal speed',
            'Gate to rest',
            'Time',
            'Developed',
            'Counts',
          ].map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {stops.map((stop) => {
          const words = stopWords(stop, distance);
          const developed = stop.meanFullyDevelopedDeceleration_m_s2;
          const flags = stop.flags.map(({ reason }) => reason);
          const reasons = [...(stop.judgement ? [judgementWords(stop.judgement)] : []), ...flags].join(' ');
          return (
            <tr key={stop.number} className={stop.counted ? undefined : 'not-counted'}>
              <th scope="row">{stop.number}</th>
              <td>{speed.text(stop.entrySpeed_m_s)}</td>
              <td>{words.driven}</td>
              <td>{words.atNominal}</td>
              <td>{words.gate}</td>
              <td>{time.text(stop.duration_s)}</td>
              <td>{developed === null ? '–' : deceleration.text(developed)}</td>
              <td>
                {stop.counted ? 'yes' : 'no'}
                {reasons && `: ${reasons}`}
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
