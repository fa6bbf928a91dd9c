import { createHash } from 'node:crypto';
import type { Engine } from '../engines/engine.ts';
import type { Migration } from './migration.ts';

/**
 * Answers whether a migration still is what it was when a database ran it.
 *
 * @param migration - the migration
 * @param engine - which engine's statements
 * @returns SHA-256 of name and statements, hex
 */
export function migrationChecksum(migration: Migration, engine: Engine['name']): string {
  const content = JSON.stringify([migration.number, migration.name, migration.statements[engine]]);
  return createHash('sha256').update(content).digest('hex');
}
