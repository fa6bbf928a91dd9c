import { type ReactNode, useEffect, useRef } from 'react';

export interface PageHeadProps {
  readonly title: string;
  /** The one question that this page answers. */
  readonly question: string;
  /** The answer, in a sentence. */
  readonly children: ReactNode;
}

let opened = false;

/** Title, question, answer. The title takes the focus when a page is opened from another one. */
export function PageHead({ title, question, children }: PageHeadProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = `${title} – Standstill`;
    if (opened) heading.current?.focus();
    opened = true;
  }, [title]);
  return (
    <div className="page-head">
      <h1 ref={heading} tabIndex={-1}>
        {title}
      </h1>
      <p className="question">{question}</p>
      <div className="answer" aria-live="polite">
        {children}
      </div>
    </div>
  );
}
