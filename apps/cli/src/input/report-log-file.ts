import type { UnitSystem } from '@standstill/units';
import { reportLog, type LogRefusal, type LogReport } from '@standstill/workshop';
import { knownOptions } from './known-options.ts';
import { readFileBytes } from './read-file-bytes.ts';
import { readQuantityOption } from './read-quantity-option.ts';

export interface LogOptions {
  readonly speed?: string;
  readonly units: UnitSystem;
}

/** Reads a log file and finds its stops, with the options that every command with logs has. */
export async function reportLogFile(file: string, options: LogOptions): Promise<LogReport | LogRefusal> {
  const known = knownOptions({ nominalSpeed: readQuantityOption('--speed', options.speed, 'speed') });
  return reportLog({ name: file, content: await readFileBytes(file) }, { ...known, units: options.units });
}
