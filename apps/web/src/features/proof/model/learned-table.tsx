import type { Reconciliation } from '@standstill/workshop';
import { useUnits } from '../../../shared/units/unit-choice.tsx';
import { printByUnit } from './print-by-unit.ts';

/** What the job said of each value, what it is after the stops, and how much of its spread they took away. */
export function LearnedTable({ learned }: Pick<Reconciliation, 'learned'>) {
  const { preferences } = useUnits();
  if (learned.length === 0) return <p className="soft">Nothing that the job did not know before.</p>;
  return (
    <div className="table-wrap" tabIndex={0} role="group" aria-label="Learned values">
      <table>
        <caption>Values with their 95 % intervals</caption>
        <thead>
          <tr>
            {['Value', 'By the job', 'After the stops', 'Narrowed by'].map((title, index) => (
              <th key={title} scope="col" className={index > 0 ? 'figure' : undefined}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {learned.map(({ path, title, unit, byJob, learned: after, narrowed }) => (
            <tr key={path}>
              <th scope="row">{title}</th>
              <td className="figure">{printByUnit(byJob, unit, preferences)}</td>
              <td className="figure">{printByUnit(after, unit, preferences)}</td>
              <td className="figure">{Math.round(narrowed * 100)} %</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
