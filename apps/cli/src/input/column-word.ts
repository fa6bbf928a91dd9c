import { columnRoles } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

export type ColumnRole = (typeof columnRoles)[number];

/** A person's word on one column, as typed: `brake-pressure=Brk P [bar]`. */
export interface ColumnWord {
  readonly role: ColumnRole;
  /** All behind the equals sign. */
  readonly heading: string;
  /** The same without `[unit]` at its end, and that unit; null where there is none. */
  readonly apart: { readonly name: string; readonly unit: string } | null;
}

/** Reads `--column`; refuses in one line what is no role or has no heading. */
export function readColumnWord(text: string): ColumnWord {
  const at = text.indexOf('=');
  const [role, heading] = [text.slice(0, at).trim(), text.slice(at + 1).trim()];
  if (at < 0 || heading === '')
    throw new CommandError(
      `--column: "${text}" is not role=heading; e.g. --column "brake-pressure=Brk P [bar]".`,
      exitCode.usage,
    );
  if (!isRole(role))
    throw new CommandError(
      `--column: "${role}" is nothing that a column can be; accepted: ${columnRoles.join(', ')}.`,
      exitCode.usage,
    );
  const [, name = '', unit = ''] = /^(.*\S)\s*\[([^[\]]*)\]$/u.exec(heading) ?? [];
  return { role, heading, apart: name === '' ? null : { name, unit: unit.trim() } };
}

function isRole(text: string): text is ColumnRole {
  return (columnRoles as readonly string[]).includes(text);
}
