import { jobsAndLogs } from './0001-jobs-and-logs.ts';
import type { Migration } from './migration.ts';

/** Every migration of this program in order; the last one's number is the schema version that it understands. */
export const migrations: readonly Migration[] = [jobsAndLogs];
