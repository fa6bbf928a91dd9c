import type { TestPlan } from '@standstill/workshop';
import { WarningBox } from '../../../shared/ui/warnings.tsx';
import { useUnits, type Units } from '../../../shared/units/unit-choice.tsx';

/** The plan of a test day as one sheet for the glove box: cautions first, then what to drive and what to write down. */
export default function PlanSheet({ plan }: { readonly plan: TestPlan }) {
  const units = useUnits();
  return (
    <div className="plan-sheet stack">
      <div className="plan-cautions">
        {plan.cautions.map((caution) => (
          <WarningBox key={caution} severity="caution">
            {caution}
          </WarningBox>
        ))}
      </div>
      {plan.warnings.map((warning) => (
        <WarningBox key={warning} severity="note">
          {warning}
        </WarningBox>
      ))}
      <PlanFigures plan={plan} units={units} />
      <h3>In this order</h3>
      <ol className="plan-steps">
        {plan.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <RunList plan={plan} />
      <Conditions conditions={plan.conditions} />
    </div>
  );
}

const spreads = {
  measured: 'from the stops before',
  stated: 'as you stated it',
  assumed: 'assumed',
} as const;

function PlanFigures({ plan, units }: { readonly plan: TestPlan; readonly units: Units }) {
  const { distance, speed, temperature } = units;
  const { runsPerSet, runsPerSetRange: range, coolDown } = plan;
  const between =
    range.low === range.high ? '' : ` (${range.low} to ${range.high} by how well the spread is known)`;
  const rows: readonly (readonly [string, string])[] = [
    ['Stops that count, each set', `${runsPerSet}${between}`],
    ['From', speed.exact(plan.nominalSpeed_m_s)],
    [
      'To show',
      `${distance.text(plan.resolution_m, 0.05)}; so many show ${distance.text(plan.shows_m, 0.05)}`,
    ],
    [
      'Spread of single stops',
      `${distance.text(plan.spread_m, plan.spread_m / 10)}, ${spreads[plan.spreadOrigin]}`,
    ],
    [
      'Sure to',
      `${Math.round(plan.power * 100)} of 100 to see it, ${Math.round(plan.level * 100)} of 100 false alarms`,
    ],
    [
      'Rotors at the start',
      `${temperature.text(coolDown.startTemperature_C.low, 1)} to ${temperature.text(coolDown.startTemperature_C.high, 1)}`,
    ],
    [
      'From one stop to the next',
      `${minutes(coolDown.interval_s.value)} min (${minutes(coolDown.interval_s.low)} to ${minutes(coolDown.interval_s.high)})`,
    ],
    [
      'Whole test',
      `${Math.round(plan.duration_min.low)} to ${Math.round(plan.duration_min.high)} min of driving`,
    ],
  ];
  return (
    <>
      <dl className="plan-figures">
        {rows.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <p className="small soft">
        Cool-down {coolDown.origin === 'assumed' ? 'assumed' : 'by the heat model'}: {coolDown.reason}
      </p>
    </>
  );
}

function minutes(seconds: number): number {
  return Math.max(1, Math.round(seconds / 60));
}

const sets = { before: 'before', after: 'after', repeat: 'repeat of the old set-up' } as const;

/** Every run in order, with room to write beside it. */
function RunList({ plan: { runs } }: { readonly plan: TestPlan }) {
  return (
    <div className="table-wrap" tabIndex={0} role="group" aria-label="Runs in order">
      <table className="plan-runs">
        <caption>Every run in order; write beside it what the log can not know</caption>
        <thead>
          <tr>
            {['Run', 'Set', 'Way', 'Counts', 'Rotor', 'Wind', 'Note'].map((title, index) => (
              <th key={title} scope="col" className={index > 3 ? 'to-fill' : undefined}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {runs.map(({ order, set, purpose, direction }) => (
            <tr key={`${order} ${set} ${purpose}`}>
              <th scope="row">{order}</th>
              <td>{sets[set]}</td>
              <td>{direction}</td>
              <td>{purpose === 'counted' ? 'yes' : 'warm-up'}</td>
              <ToFill />
              <ToFill />
              <ToFill wide />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

/** A cell to write in by hand. */
function ToFill({ wide = false }: { readonly wide?: boolean }) {
  return (
    <td className={wide ? 'to-fill wide' : 'to-fill'}>
      <span className="unseen">to fill in</span>
    </td>
  );
}

function Conditions({ conditions }: Pick<TestPlan, 'conditions'>) {
  return (
    <>
      <h3>Write down on the day</h3>
      <ul className="plan-conditions">
        {conditions.map(({ what, why }) => (
          <li key={what}>
            <strong>{what}</strong>: {why}
          </li>
        ))}
      </ul>
    </>
  );
}
