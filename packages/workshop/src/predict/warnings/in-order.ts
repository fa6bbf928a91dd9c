import type { Warning } from '../../results/warning.ts';

const severities = ['danger', 'caution', 'note'] as const;

/**
 * Warnings as they are shown: dangers first, and a note that holds for every set-up told once.
 *
 * @param warnings - of all set-ups
 * @param setUps - how many set-ups there are
 * @returns the same warnings, fewer
 */
export function inOrder(warnings: readonly Warning[], setUps: number): Warning[] {
  const told = new Set<string>();
  const fewer = warnings.flatMap((warning) => {
    const alike = warnings.filter((other) => sameNote(warning, other));
    if (warning.severity !== 'note' || setUps < 2 || alike.length < setUps) return [warning];
    if (told.has(warning.code)) return [];
    told.add(warning.code);
    const { about: _each, ...shared } = warning;
    return [{ ...shared, message: `All set-ups: ${afterTitle(warning.message)}` }];
  });
  return fewer.toSorted((a, b) => severities.indexOf(a.severity) - severities.indexOf(b.severity));
}

function sameNote(one: Warning, other: Warning): boolean {
  return (
    one.code === other.code &&
    one.about !== undefined &&
    afterTitle(one.message) === afterTitle(other.message)
  );
}

/** Messages about a set-up start with its title and a colon. */
function afterTitle(message: string): string {
  return message.slice(message.indexOf(': ') + 2);
}
