import type { TestPlan } from '@standstill/workshop';

type Runs = TestPlan['runs'];

const titles = {
  before: 'Before, the old set-up',
  after: 'After, the new set-up',
  repeat: 'The old set-up once more',
} as const;

/** Every run in the order driven, a box each, to tick and to write the rotor's temperature into. */
export function RunGrid({ runs }: { readonly runs: Runs }) {
  const sets = (['before', 'after', 'repeat'] as const)
    .map((set) => ({ set, own: runs.filter((run) => run.set === set) }))
    .filter(({ own }) => own.length > 0);
  return (
    <>
      <h3>Run by run</h3>
      <p className="small soft">
        A box a stop: write the rotor’s temperature into it. Dashed ones warm up and do not count.
      </p>
      {sets.map(({ set, own }) => (
        <section key={set} className="run-boxes" aria-label={titles[set]}>
          <h4>{titles[set]}</h4>
          <ol>
            {own.map(({ order, purpose, direction }) => (
              <li key={order} className={purpose === 'counted' ? undefined : 'warms-up'}>
                {order} {direction}
                {purpose === 'warm-up' && <span className="unseen">, warm-up, does not count</span>}
              </li>
            ))}
          </ol>
        </section>
      ))}
    </>
  );
}
