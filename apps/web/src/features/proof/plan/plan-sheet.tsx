import type { TestPlan } from '@standstill/workshop';
import { useUnits, type Units } from '../../../shared/units/unit-choice.tsx';
import { RunGrid } from './run-grid.tsx';

/** The plan of a test day as one sheet for the glove box: cautions first, then what to drive and what to write down. */
export default function PlanSheet({ plan }: { readonly plan: TestPlan }) {
  const units = useUnits();
  return (
    <div className="plan-sheet stack">
      <div className="warning caution plan-cautions">
        <span className="word">Before anybody drives</span>
        <ol>
          {plan.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ol>
      </div>
      <p className="print-only plan-sentence">{plan.sentence}</p>
      <PlanFigures plan={plan} units={units} />
      <h3>In this order</h3>
      <ol className="plan-steps">
        {plan.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      <RunGrid runs={plan.runs} />
      <Conditions conditions={plan.conditions} />
      <h3>What this plan rests on</h3>
      <ul className="small plan-basis">
        {plan.warnings.map((warning) => (
          <li key={warning}>{warning}</li>
        ))}
        <li>{plan.coolDown.reason}</li>
      </ul>
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
      `${temperature.text(coolDown.startTemperature_C.low, 5)} to ${temperature.text(coolDown.startTemperature_C.high, 5)}`,
    ],
    [
      'From one stop to the next',
      `${minutes(coolDown.interval_s.value)} min (${minutes(coolDown.interval_s.low)} to ${minutes(coolDown.interval_s.high)}), ${coolDown.origin === 'assumed' ? 'assumed' : 'by the heat model'}`,
    ],
    [
      'Whole test',
      `${Math.round(plan.duration_min.low)} to ${Math.round(plan.duration_min.high)} min of driving`,
    ],
  ];
  return (
    <dl className="plan-figures">
      {rows.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}

function minutes(seconds: number): number {
  return Math.max(1, Math.round(seconds / 60));
}

function Conditions({ conditions }: Pick<TestPlan, 'conditions'>) {
  return (
    <>
      <h3>Write down on the day</h3>
      <ul className="plan-conditions">
        {conditions.map(({ what, why }) => (
          <li key={what}>
            <strong>{what}</strong>
            <span>: {why}</span>
          </li>
        ))}
      </ul>
    </>
  );
}
