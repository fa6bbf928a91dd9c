import { type ReactNode, useState } from 'react';
import { Link } from 'wouter';
import { LookDialog } from './look-dialog.tsx';

export interface SheetProps {
  /** Cells of the title block that belong to the job. */
  readonly cells?: ReactNode;
  /** What stands between the title block and the page: stage navigation and bands. */
  readonly above?: ReactNode;
  readonly children: ReactNode;
}

/** The page as a drawing sheet: title block, content, the one sentence that holds everywhere. */
export function Sheet({ cells, above, children }: SheetProps) {
  const [choosing, setChoosing] = useState(false);
  return (
    <div className="sheet">
      <a className="skip" href="#content">
        Skip to the page
      </a>
      <header>
        <div className={cells ? 'title-block with-job' : 'title-block'}>
          <div>
            <Link href="/jobs" className="name">
              Standstill
            </Link>
            <span className="label">all jobs</span>
          </div>
          {cells ?? <div className="job-cell" />}
          <button type="button" className="plain" onClick={() => setChoosing(true)}>
            Units and look
          </button>
        </div>
        {above}
      </header>
      <main id="content" tabIndex={-1}>
        {children}
      </main>
      <footer className="foot">
        Computed figures are estimates. A figure published by the maker of the car or part always overrides
        them; local inspection and type-approval rules stand above both.
      </footer>
      {choosing && <LookDialog onClose={() => setChoosing(false)} />}
    </div>
  );
}
