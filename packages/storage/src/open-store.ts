import type { Store } from '@standstill/workshop';
import type { Engine } from './engines/engine.ts';
import { applyMigrations } from './migrations/apply-migrations.ts';
import { migrations } from './migrations/migrations.ts';
import { relationalStore } from './relational-store.ts';

/**
 * Opens the store at an address and brings its tables up to date.
 *
 * @param address - a folder or a `.sqlite` file for the database in this process, or `postgres://…` for a server
 * @returns the store; close it when done
 * @throws StoreError where it can't be opened, or belongs to a newer program
 */
export async function openStore({ address }: { readonly address: string }): Promise<Store> {
  const engine = await openEngine(address);
  try {
    await applyMigrations(engine, migrations);
    return relationalStore(engine);
  } catch (error) {
    await engine.close();
    throw error;
  }
}

/** Loads only the engine that is asked for: each brings a driver of its own. */
async function openEngine(address: string): Promise<Engine> {
  if (/^postgres(ql)?:\/\//i.test(address)) {
    const { postgresEngine } = await import('./engines/postgres-engine.ts');
    return postgresEngine(address);
  }
  const { sqliteEngine } = await import('./engines/sqlite-engine.ts');
  return sqliteEngine(address);
}
