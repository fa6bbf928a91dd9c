import type { AssumedValue } from '@standstill/workshop';
import type { Colors } from '../surface/terminal.ts';

/** Values that nobody gave and what was used instead: they carry the result as much as the given ones. */
export function assumedLines(assumed: readonly AssumedValue[], colors: Colors): string[] {
  if (assumed.length === 0) return [];
  const title = assumed.length === 1 ? 'One value was assumed:' : `${assumed.length} values were assumed:`;
  return [
    colors.bold(title),
    ...assumed.map(
      ({ path, title: name, text, reason }) => `  ${name}: ~${text}  ${colors.dim(`${path}; ${reason}`)}`,
    ),
  ];
}

/** How many values were assumed of what, where the whole list would bury the answer. */
export function assumedSummary(assumed: readonly AssumedValue[]): string[] {
  if (assumed.length === 0) return [];
  const counts = new Map<string, number>();
  for (const { path } of assumed) counts.set(ownerOf(path), (counts.get(ownerOf(path)) ?? 0) + 1);
  const owners = [...counts].map(([owner, count]) => `${owner} ${count}`).join(', ');
  const start = assumed.length === 1 ? 'One value was assumed' : `${assumed.length} values were assumed`;
  return [`${start} (${owners}); --assumed lists them with their reasons.`];
}

const owners: Readonly<Record<string, string>> = {
  car: 'car',
  parts: 'parts',
  setUps: 'set-ups',
  conditions: 'road and test',
};

function ownerOf(path: string): string {
  return owners[path.split('.')[0] ?? ''] ?? 'driver and other';
}
