import { createHash } from 'node:crypto';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { NewJob, NewLog, Store } from '@standstill/workshop';
import { openStore } from './open-store.ts';

const at = (minute: number): string => `2026-11-25T08:${String(minute).padStart(2, '0')}:00.000Z`;

const newJob = (over: Partial<NewJob> = {}): NewJob => ({
  id: 'job-1',
  title: 'Long pedal',
  document: { title: 'Long pedal', car: { wheelbase: '2.4 m' } },
  at: at(0),
  ...over,
});

function newLog(content: Uint8Array, over: Partial<NewLog> = {}): NewLog {
  const sha256 = createHash('sha256').update(content).digest('hex');
  return { id: 'log-1', jobId: 'job-1', name: 'before.csv', content, sha256, at: at(1), ...over };
}

/** Bytes of every value in an order that repeats late, so that a swapped or dropped piece shows. */
function someBytes(count: number): Uint8Array {
  const bytes = new Uint8Array(count);
  for (let index = 0; index < count; index += 1)
    bytes[index] = (index * 31 + (index >> 8) * 7 + (index >> 16)) & 0xff;
  return bytes;
}

/**
 * What the port promises, sentence by sentence, held against one engine.
 *
 * @param newAddress - answers the address of an empty database of that engine
 */
export function storeContract(newAddress: () => Promise<string>): void {
  let address: string;
  let store: Store;

  beforeEach(async () => {
    address = await newAddress();
    store = await openStore({ address });
  });
  afterEach(() => store.close());

  describe('jobs', () => {
    test('a new store has no jobs', async () => {
      expect(await store.listJobs()).toEqual([]);
      expect(await store.getJob('job-1')).toBeNull();
      expect(await store.listJobVersions('job-1')).toEqual([]);
    });

    test('a created job is version 1 and comes back as it went in', async () => {
      const created = await store.createJob(newJob());
      const stored = { ...newJob(), version: 1, createdAt: at(0), changedAt: at(0) };
      const { at: _, ...expected } = stored;
      expect(created).toEqual({ kind: 'created', job: expected });
      expect(await store.getJob('job-1')).toEqual(expected);
    });

    test('a document keeps the order of its keys, its numbers and its text', async () => {
      const document = {
        z: 1,
        a: [0.1, 1e-7, 9007199254740991, -0.5],
        text: 'µ ° “brake” 🛞\n\u0000\t',
        b: { y: null, x: true },
      };
      await store.createJob(newJob({ document }));
      const stored = await store.getJob('job-1');
      expect(JSON.stringify(stored?.document)).toBe(JSON.stringify(document));
    });

    test('an id that exists is refused and its job is not touched', async () => {
      await store.createJob(newJob());
      expect(await store.createJob(newJob({ title: 'Other', at: at(5) }))).toEqual({ kind: 'exists' });
      expect((await store.getJob('job-1'))?.title).toBe('Long pedal');
      expect(await store.listJobVersions('job-1')).toHaveLength(1);
    });

    test('jobs are listed with the newest change first', async () => {
      for (const [id, minute] of [
        ['a', 1],
        ['b', 3],
        ['c', 2],
      ] as const)
        await store.createJob(newJob({ id, at: at(minute) }));
      await store.replaceJob('a', 1, {}, 'Changed', at(4));
      expect((await store.listJobs()).map(({ id, version }) => `${id}${version}`)).toEqual([
        'a2',
        'b1',
        'c1',
      ]);
      expect((await store.listJobs())[0]).toEqual({
        id: 'a',
        title: 'Changed',
        version: 2,
        createdAt: at(1),
        changedAt: at(4),
      });
    });

    test('a replaced job counts up and keeps every earlier version', async () => {
      await store.createJob(newJob());
      const second = await store.replaceJob('job-1', 1, { step: 2 }, 'Second', at(2));
      expect(second).toMatchObject({
        kind: 'replaced',
        job: { version: 2, title: 'Second', document: { step: 2 } },
      });
      await store.replaceJob('job-1', 2, { step: 3 }, 'Third', at(3));
      const versions = await store.listJobVersions('job-1');
      expect(versions.map(({ version, title, changedAt }) => [version, title, changedAt])).toEqual([
        [1, 'Long pedal', at(0)],
        [2, 'Second', at(2)],
        [3, 'Third', at(3)],
      ]);
      expect(versions.map(({ createdAt }) => createdAt)).toEqual([at(0), at(0), at(0)]);
      expect(versions[0]?.document).toEqual(newJob().document);
    });

    test('a change to a version that no longer stands is a conflict and says which one does', async () => {
      await store.createJob(newJob());
      await store.replaceJob('job-1', 1, { by: 'first' }, 'First', at(2));
      const late = await store.replaceJob('job-1', 1, { by: 'second' }, 'Second', at(3));
      expect(late).toMatchObject({
        kind: 'conflict',
        job: { version: 2, title: 'First', document: { by: 'first' } },
      });
      expect(await store.replaceJob('job-1', 7, {}, 'Ahead', at(4))).toMatchObject({ kind: 'conflict' });
      expect(await store.listJobVersions('job-1')).toHaveLength(2);
    });

    test('a change to no job is missing', async () => {
      expect(await store.replaceJob('nobody', 1, {}, 'x', at(1))).toEqual({ kind: 'missing' });
      expect(await store.replaceJob('no\0body', 1, {}, 'x', at(1))).toEqual({ kind: 'missing' });
    });

    test('of two connections with the same version exactly one wins, every time', async () => {
      const other = await openStore({ address });
      try {
        await store.createJob(newJob());
        for (let version = 1; version <= 20; version += 1) {
          const racers = [store, other, store, other];
          const ends = await Promise.all(
            racers.map((racer, lane) => racer.replaceJob('job-1', version, { lane }, `lane ${lane}`, at(2))),
          );
          const winner = ends.findIndex((end) => end.kind === 'replaced');
          expect(ends.map((end) => end.kind).sort()).toEqual([
            'conflict',
            'conflict',
            'conflict',
            'replaced',
          ]);
          expect(await store.getJob('job-1')).toMatchObject({
            version: version + 1,
            document: { lane: winner },
          });
        }
        expect(await other.listJobVersions('job-1')).toHaveLength(21);
      } finally {
        await other.close();
      }
    });

    test('of many that create the same id exactly one does', async () => {
      const ends = await Promise.all(
        Array.from({ length: 8 }, (_, lane) => store.createJob(newJob({ title: `lane ${lane}` }))),
      );
      expect(ends.filter(({ kind }) => kind === 'created')).toHaveLength(1);
    });

    test('text that one engine would change is refused by both', async () => {
      for (const title of ['a\0b', 'half \ud83d'])
        await expect(store.createJob(newJob({ title }))).rejects.toMatchObject({
          code: 'store-text-refused',
        });
      expect(await store.getJob('a\0b')).toBeNull();
      expect(await store.listJobVersions('a\ud83d')).toEqual([]);
      expect(await store.listLogs('a\0b')).toEqual([]);
      expect(await store.getLog('job-1', 'a\0b')).toBeNull();
      expect(await store.listJobs()).toEqual([]);
    });

    test('text of other scripts and quotes comes back', async () => {
      const title = `Coupé "läuft" 'schlecht' ; drop table job; -- 制动 🛞`;
      await store.createJob(newJob({ id: title, title }));
      expect(await store.getJob(title)).toMatchObject({ id: title, title });
    });
  });

  describe('logs', () => {
    beforeEach(async () => {
      await store.createJob(newJob());
    });

    test.each([
      ['no bytes', 0],
      ['one zero byte', 1],
      ['every byte value', 256 * 300],
      ['exactly one piece', 1024 * 1024],
      ['one byte more than a piece', 1024 * 1024 + 1],
      ['20 MB', 20 * 1000 * 1000],
    ])('%s come back byte for byte', async (_, count) => {
      const content = someBytes(count);
      const added = await store.addLog(newLog(content));
      expect(added).toMatchObject({ kind: 'added', log: { bytes: count, sha256: newLog(content).sha256 } });
      const kept = await store.getLog('job-1', 'log-1');
      expect(kept?.bytes.length).toBe(count);
      expect(Buffer.compare(Buffer.from(kept?.bytes ?? []), Buffer.from(content))).toBe(0);
    });

    test('bytes that no text encoding knows come back', async () => {
      const content = Uint8Array.from([0x00, 0xff, 0xfe, 0x00, 0x0d, 0x0a, 0x1a, 0x80, 0xc3, 0x28, 0x00]);
      await store.addLog(newLog(content));
      expect([...((await store.getLog('job-1', 'log-1'))?.bytes ?? [])]).toEqual([...content]);
    });

    test('the same bytes are kept once for a job and give the first id back', async () => {
      const content = someBytes(1000);
      await store.addLog(newLog(content));
      const again = await store.addLog(newLog(content, { id: 'log-2', name: 'copy.csv', at: at(9) }));
      expect(again).toMatchObject({
        kind: 'already-there',
        log: { id: 'log-1', name: 'before.csv', addedAt: at(1) },
      });
      expect(await store.listLogs('job-1')).toHaveLength(1);
      expect(await store.getLog('job-1', 'log-2')).toBeNull();
    });

    test('of many that add the same bytes at once one adds and all get its id', async () => {
      const content = someBytes(50_000);
      const other = await openStore({ address });
      try {
        const ends = await Promise.all(
          Array.from({ length: 6 }, (_, lane) =>
            (lane % 2 ? other : store).addLog(newLog(content, { id: `log-${lane}` })),
          ),
        );
        const ids = ends.map((end) => (end.kind === 'missing-job' ? 'missing' : end.log.id));
        expect(ends.filter(({ kind }) => kind === 'added')).toHaveLength(1);
        expect(new Set(ids).size).toBe(1);
      } finally {
        await other.close();
      }
    });

    test('the same bytes of two jobs are two logs', async () => {
      const content = someBytes(1000);
      await store.createJob(newJob({ id: 'job-2' }));
      await store.addLog(newLog(content));
      expect(await store.addLog(newLog(content, { id: 'log-2', jobId: 'job-2' }))).toMatchObject({
        kind: 'added',
      });
      expect(await store.getLog('job-1', 'log-2')).toBeNull();
      expect((await store.getLog('job-2', 'log-2'))?.bytes.length).toBe(1000);
    });

    test('logs are listed in the order they were added', async () => {
      for (const minute of [3, 1, 2])
        await store.addLog(
          newLog(someBytes(minute), { id: `log-${minute}`, at: at(minute), name: `${minute}.csv` }),
        );
      const logs = await store.listLogs('job-1');
      expect(logs.map(({ id }) => id)).toEqual(['log-1', 'log-2', 'log-3']);
      expect(logs[0]).toEqual({
        id: 'log-1',
        jobId: 'job-1',
        name: '1.csv',
        bytes: 1,
        sha256: newLog(someBytes(1)).sha256,
        addedAt: at(1),
      });
    });

    test('a log for no job is refused and leaves nothing', async () => {
      expect(await store.addLog(newLog(someBytes(10), { jobId: 'nobody' }))).toEqual({ kind: 'missing-job' });
      expect(await store.addLog(newLog(someBytes(10), { jobId: 'no\0body' }))).toEqual({
        kind: 'missing-job',
      });
      expect(await store.listLogs('nobody')).toEqual([]);
    });

    test('bytes that are not those of the given hash are refused', async () => {
      const wrong = newLog(someBytes(10), { sha256: '0'.repeat(64) });
      await expect(store.addLog(wrong)).rejects.toMatchObject({ code: 'store-hash-mismatch' });
      expect(await store.listLogs('job-1')).toEqual([]);
    });

    test('an added view of a larger buffer is only the view', async () => {
      const content = someBytes(1000).subarray(100, 200);
      await store.addLog(newLog(content));
      expect([...((await store.getLog('job-1', 'log-1'))?.bytes ?? [])]).toEqual([...content]);
    });
  });

  describe('the store', () => {
    test('everything is there after a restart', async () => {
      const content = someBytes(3_000_000);
      await store.createJob(newJob());
      await store.replaceJob('job-1', 1, { step: 2 }, 'Second', at(2));
      await store.addLog(newLog(content));
      await store.close();
      store = await openStore({ address });
      expect(await store.getJob('job-1')).toMatchObject({ version: 2, document: { step: 2 } });
      expect(await store.listJobVersions('job-1')).toHaveLength(2);
      const kept = await store.getLog('job-1', 'log-1');
      expect(
        createHash('sha256')
          .update(kept?.bytes ?? '')
          .digest('hex'),
      ).toBe(newLog(content).sha256);
    });

    test('two connections see what the other wrote', async () => {
      const other = await openStore({ address });
      try {
        await store.createJob(newJob());
        expect(await other.getJob('job-1')).toMatchObject({ version: 1 });
        await other.replaceJob('job-1', 1, {}, 'Other', at(2));
        expect(await store.getJob('job-1')).toMatchObject({ version: 2, title: 'Other' });
      } finally {
        await other.close();
      }
    });

    test('programs that start at once on an empty database all come up', async () => {
      const empty = await newAddress();
      const stores = await Promise.all(Array.from({ length: 4 }, () => openStore({ address: empty })));
      const versions = await Promise.all(stores.map((each) => each.schemaVersion()));
      expect(new Set(versions)).toEqual(new Set([await store.schemaVersion()]));
      await Promise.all(stores.map((each) => each.close()));
    });
  });
}
