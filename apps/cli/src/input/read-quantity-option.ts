import { parseQuantity, quantityKinds, refusalSentence } from '@standstill/units';
import type { Dimension, Quantity } from '@standstill/units';
import { printBound, type Fact } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

/**
 * Reads the value of an option such as `--speed "60 mph"` into SI; absent stays absent.
 *
 * @param option - as it is written
 * @param text - what the person gave
 * @param what - the fact of a job that it stands for, whose range then holds; or only its dimension
 * @returns SI, above zero
 */
export function readQuantityOption(
  option: string,
  text: string | undefined,
  what: Dimension | Fact,
): number | undefined {
  if (text === undefined) return undefined;
  const dimension = typeof what === 'string' ? what : quantityKinds[what.kind].dimension;
  const reading = parseQuantity(text, dimension);
  if (!reading.ok) throw new CommandError(`${option}: ${ended(refusalSentence(reading))}`, exitCode.usage);
  if (typeof what !== 'string' && !(reading.value >= what.low && reading.value <= what.high))
    throw outOfRange(option, reading, dimension, what);
  if (reading.value > 0) return reading.value;
  throw new CommandError(`${option}: "${text}" must be more than 0.`, exitCode.usage);
}

/** With a full stop, unless it asks. */
function ended(sentence: string): string {
  return sentence.endsWith('?') ? sentence : `${sentence}.`;
}

/** In the unit that the person wrote. */
function outOfRange(
  option: string,
  { number, unit }: Quantity,
  dimension: Dimension,
  { low, high }: Fact,
): CommandError {
  const least = printBound(low, unit, dimension, 'low');
  const most = printBound(high, unit, dimension, 'high');
  return new CommandError(`${option}: ${number} ${unit}; accepted is ${least} to ${most}.`, exitCode.usage);
}
