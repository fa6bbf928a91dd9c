import type { AssumedValue } from '@standstill/workshop';
import { Section } from '../../shared/ui/section.tsx';

/** Everything that nobody measured or stated: what was used instead, and why. */
export function AssumedSection({ assumed }: { readonly assumed: readonly AssumedValue[] }) {
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
      <div className="table-wrap" tabIndex={0} role="region" aria-label="Assumed values">
        <table>
          <thead>
            <tr>
              <th scope="col">Value</th>
              <th scope="col">Used</th>
              <th scope="col">Why</th>
            </tr>
          </thead>
          <tbody>
            {assumed.map(({ path, title, text, reason }) => (
              <tr key={path}>
                <th scope="row">
                  {title}
                  <span className="small soft where"> {path}</span>
                </th>
                <td>
                  <span className="assumed">{text}</span>
                </td>
                <td>{reason}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </Section>
  );
}
