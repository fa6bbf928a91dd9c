import type { ReactNode } from 'react';

export interface KeyEntry {
  readonly mark: ReactNode;
  readonly text: string;
}

/** What the marks of a picture mean; each mark is told by its shape or line, not by color alone. */
export function Key({ entries }: { readonly entries: readonly KeyEntry[] }) {
  return (
    <ul className="key">
      {entries.map(({ mark, text }) => (
        <li key={text}>
          <svg width="34" height="14" aria-hidden="true">
            {mark}
          </svg>
          {text}
        </li>
      ))}
    </ul>
  );
}

/** A sample of a line for the key. */
export function LineSample({ className }: { readonly className: string }) {
  return <line className={className} x1={1} x2={33} y1={7} y2={7} />;
}

/** A sample of a dot for the key. */
export function DotSample({ className }: { readonly className: string }) {
  return <circle className={className} cx={17} cy={7} r={5} />;
}
