import type { Warning } from '@standstill/workshop';
import type { Colors } from '../surface/terminal.ts';

const words = { danger: 'DANGER', caution: 'Caution', note: 'Note' } as const;

/** Warnings of the given severities, a line each, the worst first. The word says what the color says; the message names what it is about. */
export function warningLines(
  warnings: readonly Warning[],
  severities: readonly Warning['severity'][],
  colors: Colors,
): string[] {
  const paint = {
    danger: (text: string) => colors.bold(colors.red(text)),
    caution: colors.yellow,
    note: colors.dim,
  };
  return severities.flatMap((severity) =>
    warnings
      .filter((warning) => warning.severity === severity)
      .map(({ message }) => `${paint[severity](`${words[severity]}:`)} ${message}`),
  );
}
