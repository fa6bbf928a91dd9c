import type { JobDocument, LogSummary } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { addRun, editRun, logOf, removeRun } from './run-edits.ts';

const document = { runs: [{ id: 'run-2', setUp: 'found', log: 'a' }] } as unknown as JobDocument;
const log = (id: string, name: string): LogSummary => ({
  id,
  name,
  jobId: 'j',
  bytes: 1,
  sha256: '',
  addedAt: '',
});
describe('runs', () => {
  it('a new run has an id of its own', () => {
    const changed = addRun(document, { setUp: 'kit', role: 'after', log: 'b' });
    expect(changed.runs).toEqual([
      { id: 'run-2', setUp: 'found', log: 'a' },
      { id: 'run-3', setUp: 'kit', log: 'b' },
    ]);
    expect(addRun({} as JobDocument, { setUp: 'kit', log: 'b' }).runs).toEqual([
      { id: 'run-1', setUp: 'kit', log: 'b' },
    ]);
  });

  it('a repeat keeps its role, and the same log may be both a set and a fade run', () => {
    const changed = addRun(document, { setUp: 'found', role: 'fade', log: 'a' });
    expect(changed.runs?.[1]).toEqual({ id: 'run-3', setUp: 'found', role: 'fade', log: 'a' });
  });

  it('the same log is not added to a set twice', () => {
    expect(addRun(document, { setUp: 'found', log: 'a' })).toBe(document);
  });

  it('one run is changed, the others are left alone', () => {
    const changed = editRun(addRun(document, { setUp: 'kit', log: 'b' }), 'run-3', (run) => ({
      ...run,
      driver: 'R',
    }));
    expect(changed.runs?.map(({ driver }) => driver)).toEqual([undefined, 'R']);
  });

  it('a run is taken out by its id', () => {
    expect(removeRun(document, 'run-2').runs).toEqual([]);
  });

  it('finds the log of a run by id, then by the name of its file', () => {
    const logs = [log('1', 'before.csv'), log('2', 'after.csv')];
    expect(logOf({ id: 'r', setUp: 's', log: '2' }, logs)?.name).toBe('after.csv');
    expect(logOf({ id: 'r', setUp: 's', log: 'logs/before.csv' }, logs)?.id).toBe('1');
    expect(logOf({ id: 'r', setUp: 's', log: 'gone.csv' }, logs)).toBeUndefined();
  });
});
