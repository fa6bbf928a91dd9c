import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { useJobPart } from '../job/job-context.ts';

/** On paper only, under the claim: when it was printed, from which version, and how far it holds. */
export function PrintCaveat({ words = '' }: { readonly words?: string }) {
  const version = useJobPart((state) => state.kept.version);
  const title = useJobPart((state) => (state.document as { readonly title?: string }).title);
  return (
    <p className="print-only print-caveat small">
      {title}, version {version}, printed {usePrintDate()}. {words} Computed figures are estimates. A figure
      published by the maker of the car or part always overrides them; local inspection and type-approval
      rules stand above both.
    </p>
  );
}

function today(): string {
  return new Date().toLocaleDateString('en-CA');
}

/** The day of the print, not the day on which the page was opened. */
function usePrintDate(): string {
  const [date, setDate] = useState(today);
  useEffect(() => {
    const renew = () => flushSync(() => setDate(today()));
    window.addEventListener('beforeprint', renew);
    return () => window.removeEventListener('beforeprint', renew);
  }, []);
  return date;
}
