import type { LogColumnsDocument } from '../document/log-columns-schema.ts';
import type { Filler } from './filler.ts';

/** The remembered columns, each line of headings once: two words on the same columns can't both hold. */
export function resolveLogColumns(
  filler: Filler,
  stated: readonly LogColumnsDocument[] = [],
): readonly LogColumnsDocument[] {
  stated.forEach(({ headings }, index) => {
    const first = stated.findIndex((other) => other.headings === headings);
    if (first === index) return;
    const path = ['logColumns', index, 'headings'];
    const found = `the same headings as logColumns[${first}]`;
    const accepted = 'one entry for each line of headings';
    const message = `logColumns[${index}].headings are ${found}; accepted is ${accepted}`;
    filler.findings.push({ code: 'contradiction', path, at: 'value', found, accepted, message });
  });
  return stated;
}
