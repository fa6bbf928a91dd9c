import type { AssumedValue, JobDocument } from '@standstill/workshop';

export interface AssumedGroup {
  readonly title: string;
  readonly values: readonly AssumedValue[];
}

/** What was assumed by the car, the conditions, each part, each set-up: in the order of the document. */
export function assumedGroups(
  document: JobDocument,
  assumed: readonly AssumedValue[],
): readonly AssumedGroup[] {
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
