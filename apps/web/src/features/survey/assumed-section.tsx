import type { AssumedValue, JobDocument } from '@standstill/workshop';
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
      {groupsOf(document, assumed).map(({ title, values }) => (
        <AssumedGroup key={title} title={title} values={values} />
      ))}
    </Section>
  );
}

interface Group {
  readonly title: string;
  readonly values: readonly AssumedValue[];
}

function AssumedGroup({ title, values }: Group) {
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

/** By the car, the conditions, each part, each set-up: in the order of the document. */
function groupsOf(document: JobDocument, assumed: readonly AssumedValue[]): readonly Group[] {
  const groups = new Map<string, AssumedValue[]>();
  for (const value of assumed) {
    const title = groupTitle(document, value.path);
    groups.set(title, [...(groups.get(title) ?? []), value]);
  }
  return [...groups].map(([title, values]) => ({ title, values }));
}

function groupTitle(document: JobDocument, path: string): string {
  const [under = '', id = ''] = path.split('.');
  if (under === 'parts') return document.parts[id]?.title ?? id;
  if (under === 'setUps') return `Set-up “${document.setUps[id]?.title ?? id}”`;
  return under === 'car' ? 'Car' : under === 'conditions' ? 'Conditions' : 'Job';
}
