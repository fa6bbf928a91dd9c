import type { LogRefusal } from '@standstill/workshop';

const hints: Readonly<Record<string, string>> = {
  'log-no-time': ' (--time-column "name")',
  'log-no-speed': ' (--speed-column "name" --speed-unit km/h)',
  'log-speed-without-unit': ' (--speed-column "name" --speed-unit km/h, and --speed-scale)',
  'log-no-column': ' (--column, --time-column, --speed-column; "standstill channels" lists what there is)',
  'log-needs-signals': ' (--signals file.dbc)',
};

/** The sentence names the file already where it needs to; the option that helps comes behind it. */
export function refusalLine(file: string, { code, sentence }: LogRefusal): string {
  return `${sentence.includes(file) ? sentence : `${file}: ${sentence}`}${hints[code] ?? ''}`;
}
