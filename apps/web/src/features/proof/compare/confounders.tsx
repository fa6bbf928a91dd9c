import { Fragment } from 'react';
import type { StatedFact } from './stated-facts.ts';

export interface ConfoundersProps {
  readonly facts: readonly StatedFact[];
  /** What the recordings themselves say differed. */
  readonly recorded: readonly string[];
}

const words = { same: 'the same', differs: 'different', 'not stated': 'not stated' } as const;

/** Notes are free words: that they read otherwise is all that can be told. */
function wordsOf({ key, told }: StatedFact): string {
  return key === 'notes' && told === 'differs' ? 'in other words' : words[told];
}

/** What else was different between the sets, or is not known to have been alike. */
export function Confounders({ facts, recorded }: ConfoundersProps) {
  const clean = recorded.length === 0 && facts.every(({ told }) => told === 'same');
  return (
    <div className="stack expectation">
      <h3>What else was different</h3>
      <p>
        {clean
          ? 'Nothing of what is asked about: all of it was stated, and the same on both days.'
          : 'What differed, and what nobody stated, can not be told from the change of parts.'}{' '}
        {!clean && <span className="ask">State it beside each log below.</span>}
      </p>
      <dl className="both-sides">
        {facts.map((fact) => (
          <Fragment key={fact.key}>
            <dt>
              {fact.title}: <strong>{wordsOf(fact)}</strong>
            </dt>
            <dd>
              <span className="side">before</span> {fact.before}
            </dd>
            <dd>
              <span className="side">after</span> {fact.after}
            </dd>
          </Fragment>
        ))}
      </dl>
      {recorded.length > 0 && (
        <ul>
          {recorded.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
    </div>
  );
}
