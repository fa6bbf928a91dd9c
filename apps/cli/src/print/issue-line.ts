import type { LogReport } from '@standstill/workshop';

/** What was skipped, mended or doubted in a log, how often, and where first. */
export function issueLine({ message, line, count }: LogReport['issues'][number]): string {
  const often = count > 1 ? `, ${count} times` : '';
  const place = line === null ? '' : `; first in line ${line}`;
  return `${message.replace(/\.$/u, '')}${often}${place}.`;
}
