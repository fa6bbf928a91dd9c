import { conditionsFacts, type PredictOptions } from '@standstill/workshop';
import { knownOptions } from './known-options.ts';
import { readCountOption } from './read-count-option.ts';
import { readQuantityOption } from './read-quantity-option.ts';

/** What may be asked about the stop that a job asks about, as it is typed. */
export interface StopOptions {
  readonly speed?: string;
  readonly pedalForce?: string;
  readonly setUp?: readonly string[];
  readonly draws?: string;
  readonly seed?: string;
  readonly sampling?: 'latin-hypercube' | 'sobol';
}

/** The same, read; ends the command where a number or unit can't be read. */
export function readStopOptions(options: StopOptions): PredictOptions {
  return knownOptions({
    speed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    pedalForce: readQuantityOption('--pedal-force', options.pedalForce, conditionsFacts.pedalForce),
    draws: readCountOption('--draws', options.draws, { low: 20, high: 100_000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
    sampling: options.sampling,
    setUps: options.setUp === undefined ? undefined : [...new Set(options.setUp)],
  });
}
