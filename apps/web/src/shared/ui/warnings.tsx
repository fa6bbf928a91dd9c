import type { Warning } from '@standstill/workshop';

const words = { danger: 'Danger', caution: 'Caution', note: 'Note' } as const;
const rank = { danger: 0, caution: 1, note: 2 } as const;

/**
 * Warnings, the gravest first: danger is boxed and says its word, so that no color is needed to see it. Notes are folded
 * on the screen and open on paper.
 */
export function Warnings({ warnings }: { readonly warnings: readonly Warning[] }) {
  const sorted = [...warnings].sort((a, b) => rank[a.severity] - rank[b.severity]);
  const notes = sorted.filter(({ severity }) => severity === 'note');
  return (
    <div className="warnings">
      {sorted.filter(({ severity }) => severity !== 'note').map(boxed)}
      {notes.length > 0 && (
        <details>
          <summary>{notes.length === 1 ? 'One note' : `${notes.length} notes`} on these figures</summary>
          {notes.map(boxed)}
        </details>
      )}
    </div>
  );
}

function boxed({ code, about, severity, message }: Warning) {
  return (
    <WarningBox key={`${code} ${about ?? ''} ${message}`} severity={severity}>
      {message}
    </WarningBox>
  );
}

export interface WarningBoxProps {
  readonly severity: Warning['severity'];
  readonly children: React.ReactNode;
}

export function WarningBox({ severity, children }: WarningBoxProps) {
  return (
    <div className={`warning ${severity}`} role={severity === 'danger' ? 'alert' : undefined}>
      <span className="word">{words[severity]}</span>
      {children}
    </div>
  );
}
