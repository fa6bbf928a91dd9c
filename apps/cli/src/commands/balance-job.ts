import type { UnitSystem } from '@standstill/units';
import { balance, conditionsFacts, type LoadState } from '@standstill/workshop';
import { knownOptions } from '../input/known-options.ts';
import { readCountOption } from '../input/read-count-option.ts';
import { readQuantityOption } from '../input/read-quantity-option.ts';
import { requireJob } from '../input/require-job.ts';
import { balanceText } from '../print/balance-text.ts';
import { jsonText } from '../print/json-text.ts';
import { exitCode, type ExitCode } from '../surface/exit-code.ts';
import type { Terminal } from '../surface/terminal.ts';
import { wrapText } from '../surface/wrap-text.ts';
import { requireSetUp } from './predict-job.ts';

export interface BalanceJobOptions {
  readonly speed?: string;
  readonly setUp?: readonly string[];
  readonly laden?: boolean;
  readonly unladen?: boolean;
  readonly draws?: string;
  readonly seed?: string;
  readonly units: UnitSystem;
  readonly assumed?: boolean;
  readonly json?: boolean;
}

/** Says which axle locks first, as tested and laden, and what else the balance decides. */
export async function balanceJob(
  path: string,
  options: BalanceJobOptions,
  terminal: Terminal,
): Promise<ExitCode> {
  const known = knownOptions({
    speed: readQuantityOption('--speed', options.speed, conditionsFacts.speed),
    draws: readCountOption('--draws', options.draws, { low: 20, high: 100_000 }),
    seed: readCountOption('--seed', options.seed, { low: 0, high: 2 ** 31 - 1 }),
    setUps: options.setUp,
    states: statesOf(options),
  });
  const { job } = await requireJob(path);
  for (const id of options.setUp ?? []) requireSetUp(job, id);
  const report = balance(job, { ...known, units: options.units });
  const look = { units: options.units, assumed: options.assumed === true };
  if (options.json === true) terminal.out(jsonText(report));
  else terminal.out(wrapText(balanceText(report, look, terminal), terminal.width));
  return exitCode.ok;
}

/** Both where neither or both are asked for. */
function statesOf({ laden, unladen }: BalanceJobOptions): readonly LoadState[] | undefined {
  if (laden === unladen) return undefined;
  return laden === true ? ['laden'] : ['as-tested'];
}
