import type { AssumedValue } from '@standstill/workshop';
import { assumedGroups, type AssumedGroup } from '../../shared/job/assumed-groups.ts';
import { useJobDocument } from '../../shared/job/job-context.ts';
import { Section } from '../../shared/ui/section.tsx';

/** Everything that nobody measured or stated: what was used instead, and why. */
export function AssumedSection({ assumed }: { readonly assumed: readonly AssumedValue[] }) {
  const document = useJobDocument();
  if (assumed.length === 0) {
    return (
      <Section title="Assumed">
        <p>Nothing: every value of this job was measured or stated.</p>
      </Section>
    );
  }
  return (
    <Section
      title="Assumed"
      intro="Nobody measured or stated these. Each has a spread that goes into every interval; measure the ones that matter."
    >
      {assumedGroups(document, assumed).map(({ title, values }) => (
        <AssumedTable key={title} title={title} values={values} />
      ))}
    </Section>
  );
}

function AssumedTable({ title, values }: AssumedGroup) {
  return (
    <details className="assumed-group">
      <summary>
        {title}: {values.length} {values.length === 1 ? 'value' : 'values'}
      </summary>
      <table>
        <thead>
          <tr>
            <th scope="col">Value</th>
            <th scope="col">Used</th>
            <th scope="col">Why</th>
          </tr>
        </thead>
        <tbody>
          {values.map(({ path, title: name, text, reason }) => (
            <tr key={path}>
              <th scope="row">{name}</th>
              <td>
                <span className="assumed">{text}</span>
              </td>
              <td>{reason}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
