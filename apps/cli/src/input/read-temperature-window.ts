import { formatQuantity, parseQuantity, refusalSentence } from '@standstill/units';
import { testFacts, type ReportLogOptions } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';

type Window = NonNullable<ReportLogOptions['startTemperature']>;

/** Reads `--start-temperature "65 °C to 100 °C"`; the first unit may be left out. */
export function readTemperatureWindow(text: string | undefined): Window | undefined {
  if (text === undefined) return undefined;
  const [low = '', high = '', more] = text.split(/\s+(?:to|–|-)\s+/u);
  if (high === '' || more !== undefined)
    throw new CommandError(
      `--start-temperature: "${text}" is not two temperatures; e.g. "150 °F to 212 °F".`,
      exitCode.usage,
    );
  const second = readTemperature(high);
  const first = /\d\s*$/u.test(low) ? readTemperature(`${low} ${second.unit}`) : readTemperature(low);
  if (first.value < second.value) return { low: first.value, high: second.value };
  throw new CommandError(
    `--start-temperature: "${text}" ends colder than it begins; give the colder one first.`,
    exitCode.usage,
  );
}

function readTemperature(text: string): { readonly value: number; readonly unit: string } {
  const reading = parseQuantity(text, 'temperature');
  if (!reading.ok)
    throw new CommandError(
      `--start-temperature: ${refusalSentence(reading).replace(/\.$/u, '')}.`,
      exitCode.usage,
    );
  const { low, high } = testFacts.startTemperatureLow;
  if (reading.value >= low && reading.value <= high) return reading;
  const bound = (value: number): string => formatQuantity(value, reading.unit, 'temperature');
  throw new CommandError(
    `--start-temperature: "${text}"; accepted is ${bound(low)} to ${bound(high)}.`,
    exitCode.usage,
  );
}
