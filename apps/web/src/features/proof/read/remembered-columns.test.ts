import type { JobDocument, LogReport } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { rememberedFor, rememberColumns, withColumn, withoutColumn } from './remembered-columns.ts';

const channel = (name: string, quantity: string, unitAsRead = ''): LogReport['channels'][number] => ({
  name,
  quantity,
  unitAsRead,
  unitOrigin: unitAsRead === '' ? 'none' : 'header',
  chosenBy: 'guess',
});

describe('remembered columns', () => {
  it('a new word on a column replaces the old one, and the role moves with it', () => {
    const first = withColumn({}, { role: 'speed', name: 'gizmo', unit: 'mph' }, []);
    expect(first).toEqual({ speed: { name: 'gizmo', unit: 'mph' } });
    expect(withColumn(first, { role: 'speed', name: 'V', unit: 'km/h' }, [])).toEqual({
      speed: { name: 'V', unit: 'km/h' },
    });
    expect(withColumn(first, { role: 'distance', name: 'gizmo', unit: 'm' }, [])).toEqual({
      distance: { name: 'gizmo', unit: 'm' },
    });
  });

  it('a word on one wheel keeps the other wheels, guessed or said', () => {
    const channels = [
      channel('FL', 'wheel-speed', 'km/h'),
      channel('FR', 'wheel-speed'),
      channel('x', 'speed'),
    ];
    const first = withColumn({}, { role: 'wheel-speed', name: 'FL', unit: 'mph' }, channels);
    expect(first).toEqual({ 'wheel-speed': [{ name: 'FR' }, { name: 'FL', unit: 'mph' }] });
    const more = withColumn(first, { role: 'wheel-speed', name: 'RL', unit: 'mph', assumed: true }, channels);
    expect(more['wheel-speed']).toHaveLength(3);
    expect(withoutColumn(more, 'FR')['wheel-speed']).toEqual([
      { name: 'FL', unit: 'mph' },
      { name: 'RL', unit: 'mph', assumed: true },
    ]);
  });

  it('are found again by the headings alone, and an empty entry goes', () => {
    const document = { title: 'j' } as JobDocument;
    const columns = { speed: { name: 'gizmo', unit: 'mph' } };
    const kept = rememberColumns(document, 't | gizmo', columns);
    expect(rememberedFor(kept.logColumns, 't | gizmo')).toEqual(columns);
    expect(rememberedFor(kept.logColumns, 't | other')).toEqual({});
    expect(rememberColumns(kept, 't | gizmo', {})).toEqual(document);
  });
});
