import type { Comparison } from '@standstill/workshop';

/** That the difference may be something else than the change, before any figure; and what to drive to find out. */
export function WhatToDrive({ comparison }: { readonly comparison: Comparison }) {
  const { confounded, control, advice } = comparison;
  if (!confounded && advice.length === 0) return null;
  return (
    <div className={confounded ? 'warning caution' : undefined}>
      {confounded && (
        <p>
          <span className="word">Caution</span>
          {control === null
            ? 'More than the set-up was different: this difference may be something else than the change.'
            : 'More than the set-up was different; what the control shows of it is taken out below.'}
        </p>
      )}
      {advice.length > 0 && (
        <>
          <h3>What to drive next</h3>
          <ul>
            {advice.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </div>
  );
}
