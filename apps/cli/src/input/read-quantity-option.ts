import { parseQuantity, refusalSentence, type Dimension } from '@standstill/units';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

/** Reads the value of an option such as `--speed "60 mph"` into SI; absent stays absent. */
export function readQuantityOption(
  option: string,
  text: string | undefined,
  dimension: Dimension,
): number | undefined {
  if (text === undefined) return undefined;
  const reading = parseQuantity(text, dimension);
  if (!reading.ok) throw new CommandError(`${option}: ${refusalSentence(reading)}.`, exitCode.usage);
  if (reading.value > 0) return reading.value;
  throw new CommandError(`${option}: "${text}" must be more than 0.`, exitCode.usage);
}
