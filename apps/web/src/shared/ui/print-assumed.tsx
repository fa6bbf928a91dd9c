import type { AssumedValue } from '@standstill/workshop';
import { assumedGroups } from '../job/assumed-groups.ts';
import { useJobDocument } from '../job/job-context.ts';

/** On paper only, at the end: what the computed figures stand on that nobody measured or stated, in short. */
export function PrintAssumed({ assumed }: { readonly assumed: readonly AssumedValue[] }) {
  const document = useJobDocument();
  const groups = assumedGroups(document, assumed).map(({ title, values }) => `${title} ${values.length}`);
  if (groups.length === 0) return null;
  return (
    <p className="print-only print-assumed small">
      <strong className="assumed">{assumed.length} values are assumed</strong>, by part: {groups.join('; ')}.
      Each stands in the survey with its value, spread and reason.
    </p>
  );
}
