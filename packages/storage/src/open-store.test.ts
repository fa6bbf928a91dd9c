import { afterAll, describe, expect, test } from 'vitest';
import { enginesUnderTest } from './engines-under-test.testing.ts';
import { openStore } from './open-store.ts';
import { storeContract } from './store-contract.testing.ts';

const engines = await enginesUnderTest();
afterAll(() => {
  for (const engine of engines) engine.stop();
});

describe.each(engines)('the store on $name', (engine) => {
  storeContract(() => engine.newAddress());

  test('says which engine it is and which schema it has', async () => {
    const store = await openStore({ address: await engine.newAddress() });
    expect(store.engine).toBe(engine.name);
    expect(await store.schemaVersion()).toBe(1);
    await store.close();
  });
});
