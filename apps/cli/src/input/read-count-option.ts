import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

/** Reads a whole number in a range from an option; absent stays absent. */
export function readCountOption(
  option: string,
  text: string | undefined,
  { low, high }: { readonly low: number; readonly high: number },
): number | undefined {
  if (text === undefined) return undefined;
  const value = /^\d+$/.test(text) ? Number(text) : NaN;
  if (value >= low && value <= high) return value;
  throw new CommandError(
    `${option}: "${text}" is not a whole number from ${low} to ${high}.`,
    exitCode.usage,
  );
}
