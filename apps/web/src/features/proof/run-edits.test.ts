import type { JobDocument, LogSummary } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { addRun, logOf, removeRun } from './run-edits.ts';

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
    const changed = addRun(document, 'kit', 'b');
    expect(changed.runs).toEqual([
      { id: 'run-2', setUp: 'found', log: 'a' },
      { id: 'run-3', setUp: 'kit', log: 'b' },
    ]);
    expect(addRun({} as JobDocument, 'kit', 'b').runs).toEqual([{ id: 'run-1', setUp: 'kit', log: 'b' }]);
  });

  it('the same log is not added to a set twice', () => {
    expect(addRun(document, 'found', 'a')).toBe(document);
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
