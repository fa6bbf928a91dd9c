import type { Warning } from '@standstill/workshop';

const words = { danger: 'Danger', caution: 'Caution', note: 'Note' } as const;
const rank = { danger: 0, caution: 1, note: 2 } as const;

/** Warnings, the gravest first: danger is boxed and says its word, so that no color is needed to see it. */
export function Warnings({ warnings }: { readonly warnings: readonly Warning[] }) {
  const sorted = [...warnings].sort((a, b) => rank[a.severity] - rank[b.severity]);
  return (
    <>
      {sorted.map((warning) => (
        <WarningBox
          key={`${warning.code} ${warning.about ?? ''} ${warning.message}`}
          severity={warning.severity}
        >
          {warning.message}
        </WarningBox>
      ))}
    </>
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
