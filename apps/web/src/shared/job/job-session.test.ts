import type { StoredJob } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import type { SaveAnswer } from '../api/jobs.ts';
import { ServerDown, ServerRefusal } from '../api/request.ts';
import type { DraftShelf } from './draft.ts';
import { startJobSession, type JobOutside, type JobSession } from './job-session.ts';
import { valueAt } from './set-at.ts';

const kept: StoredJob = {
  id: 'j1',
  title: 'A job',
  version: 3,
  createdAt: '2026-01-01T00:00:00Z',
  changedAt: '2026-01-01T00:00:00Z',
  document: { car: { wheelbase: '96 in' } },
};

function shelfInMemory(): DraftShelf {
  const map = new Map<string, string>();
  return {
    getItem: (key) => map.get(key) ?? null,
    setItem: (key, value) => void map.set(key, value),
    removeItem: (key) => void map.delete(key),
    key: (index) => [...map.keys()][index] ?? null,
    get length() {
      return map.size;
    },
  };
}

/** A server of one job that keeps versions, and a clock that runs when told. */
function world(shelf: DraftShelf = shelfInMemory()) {
  let stands = kept;
  let down = false;
  let refusing = false;
  let now = 0;
  const timers: { at: number; work: () => void; dead: boolean }[] = [];
  const save = async (_id: string, version: number, document: unknown): Promise<SaveAnswer> => {
    if (down) throw new ServerDown();
    if (refusing)
      throw new ServerRefusal({ type: '', title: '', status: 422, detail: 'No wheelbase.', problems: [] });
    if (version !== stands.version) return { kind: 'conflict', theirs: stands };
    stands = { ...stands, version: version + 1, document };
    return { kind: 'saved', job: stands };
  };
  const outside = (pageId: string): JobOutside => ({
    save,
    shelf,
    pageId,
    now: () => now,
    later: (work, milliseconds) => {
      const timer = { at: now + milliseconds, work, dead: false };
      timers.push(timer);
      return timer;
    },
    cancel: (handle) => {
      if (handle) (handle as { dead: boolean }).dead = true;
    },
  });
  return {
    shelf,
    outside,
    stands: () => stands,
    setDown: (value: boolean) => void (down = value),
    setRefusing: (value: boolean) => void (refusing = value),
    changeElsewhere: (document: unknown) =>
      void (stands = { ...stands, version: stands.version + 1, document }),
    async pass(milliseconds: number) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      const end = now + milliseconds;
      for (;;) {
        const due = timers.filter((timer) => !timer.dead && timer.at <= end).sort((a, b) => a.at - b.at)[0];
        if (!due) break;
        now = Math.max(now, due.at);
        due.dead = true;
        due.work();
        await new Promise((resolve) => setTimeout(resolve, 0));
      }
      now = end;
    },
  };
}

const wheelbase = (session: JobSession): unknown => valueAt(session.read().document, 'car.wheelbase');

describe('a job session', () => {
  it('saves an edit by itself and leaves nothing on the shelf', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    session.set('car.wheelbase', '97 in');
    expect(session.read().saving).toBe('waiting');
    expect(w.shelf.length).toBe(1);
    await w.pass(1000);
    expect(session.read().saving).toBe('saved');
    expect(valueAt(w.stands().document, 'car.wheelbase')).toBe('97 in');
    expect(w.shelf.length).toBe(0);
  });

  it('keeps edits and unfinished text over a reload while the server is down, then sends them', async () => {
    const w = world();
    w.setDown(true);
    const before = startJobSession(kept, w.outside('a'));
    before.set('car.wheelbase', '97 in');
    before.setText('car.mass', '26oo lb');
    await w.pass(1000);
    expect(before.read().saving).toBe('server-down');
    const after = startJobSession(kept, w.outside('a'));
    expect(wheelbase(after)).toBe('97 in');
    expect(after.read().texts).toEqual({ 'car.mass': '26oo lb' });
    w.setDown(false);
    await w.pass(5000);
    expect(after.read().saving).toBe('saved');
    expect(valueAt(w.stands().document, 'car.wheelbase')).toBe('97 in');
  });

  it('never writes unfinished text into the document', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    session.setText('car.wheelbase', '97 parsecs');
    session.set('car.mass', '2600 lb');
    await w.pass(2000);
    expect(w.stands().document).toEqual({ car: { wheelbase: '96 in', mass: '2600 lb' } });
    expect(w.shelf.length).toBe(1);
    session.setText('car.wheelbase', null);
    expect(w.shelf.length).toBe(0);
  });

  it('takes up what a page that is gone left behind, and leaves a living page alone', async () => {
    const w = world();
    w.setDown(true);
    const gone = startJobSession(kept, w.outside('gone'));
    gone.set('car.wheelbase', '97 in');
    expect(wheelbase(startJobSession(kept, w.outside('beside')))).toBe('96 in');
    gone.close();
    await w.pass(20_000);
    const next = startJobSession(kept, w.outside('next'));
    expect(wheelbase(next)).toBe('97 in');
    expect(next.read().takenUp).toBe(true);
  });

  it('meets a change made elsewhere as a conflict, writes nothing, and lets a person choose', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    w.changeElsewhere({ car: { wheelbase: '95 in' } });
    session.set('car.wheelbase', '97 in');
    await w.pass(1000);
    expect(session.read().saving).toBe('conflict');
    expect(session.read().theirs?.document).toEqual({ car: { wheelbase: '95 in' } });
    expect(w.stands().document).toEqual({ car: { wheelbase: '95 in' } });
    await session.keep(session.read().document);
    expect(session.read().saving).toBe('saved');
    expect(w.stands().document).toEqual({ car: { wheelbase: '97 in' } });
    expect(w.stands().version).toBe(5);
  });

  it('takes the other version when told, and drops the edits', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    w.changeElsewhere({ car: { wheelbase: '95 in' } });
    session.set('car.wheelbase', '97 in');
    await w.pass(1000);
    session.takeTheirs();
    expect(wheelbase(session)).toBe('95 in');
    expect(session.read().saving).toBe('saved');
    expect(w.shelf.length).toBe(0);
  });

  it('an edit of an old version taken up after the job moved on is a conflict, not an overwrite', async () => {
    const w = world();
    w.setDown(true);
    const session = startJobSession(kept, w.outside('a'));
    session.set('car.wheelbase', '97 in');
    w.changeElsewhere({ car: { wheelbase: '95 in' } });
    w.setDown(false);
    const later = startJobSession(w.stands(), w.outside('a'));
    await w.pass(1000);
    expect(later.read().saving).toBe('conflict');
    expect(w.stands().document).toEqual({ car: { wheelbase: '95 in' } });
  });

  it('says what the server refused and saves again after the next edit', async () => {
    const w = world();
    w.setRefusing(true);
    const session = startJobSession(kept, w.outside('a'));
    session.set('car.wheelbase', undefined);
    await w.pass(1000);
    expect(session.read().saving).toBe('refused');
    expect(session.read().refusal?.detail).toBe('No wheelbase.');
    w.setRefusing(false);
    session.set('car.wheelbase', '97 in');
    await w.pass(1000);
    expect(session.read().saving).toBe('saved');
  });

  it('takes a newer version of elsewhere only where nothing is edited here', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    w.changeElsewhere({ car: { wheelbase: '95 in' } });
    session.refresh(w.stands());
    expect(wheelbase(session)).toBe('95 in');
    session.set('car.wheelbase', '97 in');
    w.changeElsewhere({ car: { wheelbase: '94 in' } });
    session.refresh(w.stands());
    expect(wheelbase(session)).toBe('97 in');
  });

  it('sends what was edited while a save was on its way', async () => {
    const w = world();
    const session = startJobSession(kept, w.outside('a'));
    session.set('car.wheelbase', '97 in');
    const first = session.saveNow();
    session.set('car.wheelbase', '98 in');
    await first;
    expect(session.read().saving).toBe('waiting');
    await w.pass(2000);
    expect(valueAt(w.stands().document, 'car.wheelbase')).toBe('98 in');
    expect(session.read().saving).toBe('saved');
  });
});
