import type { Comparison } from '@standstill/workshop';
import { useUnits } from '../../../shared/units/unit-choice.tsx';

type SetSummary = Comparison['before'];

/** Both sets figure by figure, and in words what was left out of each and who said so. */
export function SetFigures({ comparison: { before, after } }: { readonly comparison: Comparison }) {
  const { distance } = useUnits();
  const rows: readonly (readonly [string, (set: SetSummary) => string])[] = [
    ['Stops that count', ({ count }) => String(count)],
    ['Mean', ({ mean_m }) => `${distance.text(mean_m)} (${distance.range(mean_m)})`],
    [
      'Best to worst',
      ({ best_m, worst_m }) => `${distance.text(best_m, 0.1)} to ${distance.text(worst_m, 0.1)}`,
    ],
    [
      'Spread of single stops',
      ({ standardDeviation_m: spread }) => (spread === null ? '–' : distance.text(spread, spread / 10)),
    ],
    [
      'From one stop to the next',
      ({ trend_m_per_run: trend }) =>
        trend === null ? 'too few stops' : `${distance.signed(trend)} (${distance.range(trend)})`,
    ],
    [
      'First stop over the line of the others',
      ({ warmUp_m: first }) =>
        first === null ? 'too few stops' : `${distance.signed(first)} (${distance.range(first)})`,
    ],
  ];
  return (
    <>
      <div className="table-wrap" tabIndex={0} role="group" aria-label="Both sets in figures">
        <table className="set-figures">
          <caption>Both sets; intervals hold 95 %</caption>
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">Figure</span>
              </th>
              <th scope="col" className="figure">
                Before
              </th>
              <th scope="col" className="figure">
                After
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map(([name, of]) => (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td className="figure">{of(before)}</td>
                <td className="figure">{of(after)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <LeftOut sets={[before, after]} />
    </>
  );
}

function LeftOut({ sets }: { readonly sets: readonly SetSummary[] }) {
  const lines = sets.flatMap(({ name, leftOut, judged }) => [
    ...leftOut.map(({ log, number, reason }) => `${name}, stop ${number} of ${log} left out: ${reason}`),
    ...judged
      .filter(({ verdict }) => verdict === 'restored')
      .map(({ log, number, reason }) => `${name}, stop ${number} of ${log} counted by hand: ${reason}`),
  ]);
  if (lines.length === 0) return null;
  return (
    <details>
      <summary>{lines.length === 1 ? 'One stop' : `${lines.length} stops`} left out or put back</summary>
      <ul className="small">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}
