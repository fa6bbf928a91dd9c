import { readFile } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { readJob } from '@standstill/workshop';
import { invalidJob } from '../jobs/read-document.ts';
import type { Demo } from './demo.ts';

/**
 * Reads a job file and the logs that its runs name, each from beside it.
 *
 * @param path - the job file, YAML or JSON
 * @returns the demo to start a server with
 * @throws RequestRefusal where the job has mistakes
 */
export async function readDemo(path: string): Promise<Demo> {
  const reading = readJob(await readFile(path, 'utf8'), { file: path });
  if (!reading.ok) throw invalidJob(reading.problems);
  const names = new Set((reading.document.runs ?? []).map((run) => run.log));
  const logs = [...names].map(async (name) => ({
    name: basename(name),
    bytes: new Uint8Array(await readFile(join(dirname(path), name))),
  }));
  return { document: reading.document, logs: await Promise.all(logs) };
}
