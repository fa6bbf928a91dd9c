import { type ReactNode, useId } from 'react';

export interface SectionProps {
  readonly title: string;
  /** One or two sentences: what this part shows. */
  readonly intro?: ReactNode;
  readonly children: ReactNode;
}

export function Section({ title, intro, children }: SectionProps) {
  const id = useId();
  return (
    <section className="section" aria-labelledby={id}>
      <h2 id={id}>{title}</h2>
      {intro && <p className="soft">{intro}</p>}
      {children}
    </section>
  );
}
