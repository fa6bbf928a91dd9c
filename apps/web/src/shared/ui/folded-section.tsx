import { type ReactNode, useId } from 'react';

export interface FoldedSectionProps {
  readonly title: string;
  /** What this part answers, in a sentence; stays in sight while the part is folded. */
  readonly answer: ReactNode;
  readonly open: boolean;
  readonly onToggle: (open: boolean) => void;
  readonly className?: string;
  /** Drawn only while it is open, so that nothing is loaded or computed for a folded part. */
  readonly children: ReactNode;
}

/** A part of a page that is opened when it is wanted: the heading is the button, the answer stands below it. */
export function FoldedSection({
  title,
  answer,
  open,
  onToggle,
  className = '',
  children,
}: FoldedSectionProps) {
  const id = useId();
  return (
    <section className={`section folded ${className}`} aria-labelledby={id}>
      <h2 id={id}>
        <button
          type="button"
          className="fold"
          aria-expanded={open}
          aria-controls={`${id}p`}
          onClick={() => onToggle(!open)}
        >
          {title}
        </button>
      </h2>
      <p className="soft" aria-live="polite">
        {answer}
      </p>
      <div id={`${id}p`} className="stack" hidden={!open}>
        {open && children}
      </div>
    </section>
  );
}
