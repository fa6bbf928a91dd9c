import type { JobDocument } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { addPart, addSetUp, freeId, keptBecause, partInSlot } from './edit-set-ups.ts';

const document = {
  standstill: 2,
  title: 'A job',
  car: { name: 'A car', mass: '2600 lb', wheelbase: '96 in' },
  parts: {
    pad: {
      kind: 'pad',
      title: 'Pad',
      note: 'new',
      area: '6 in²',
      radialHeight: { value: '45 mm', origin: 'measured' },
      friction: [['400 °F', '0.4']],
    },
    tire: { kind: 'tire', title: 'Tire', size: '205/50 R16' },
  },
  setUps: { found: { title: 'As found', frontPad: 'pad' }, kit: { title: 'Kit', basedOn: 'found' } },
} as unknown as JobDocument;

describe('set-ups', () => {
  it('a set-up has the parts of the one it is based on', () => {
    expect(partInSlot(document, 'kit', 'frontPad')).toBe('pad');
    expect(partInSlot(document, 'kit', 'rearPad')).toBeUndefined();
  });

  it('a circle of set-ups ends', () => {
    const circle = {
      ...document,
      setUps: { a: { title: 'A', basedOn: 'b' }, b: { title: 'B', basedOn: 'a' } },
    } as JobDocument;
    expect(partInSlot(circle, 'a', 'frontPad')).toBeUndefined();
  });

  it('a new set-up is based on the first and has an id of its own', () => {
    const first = addSetUp(document);
    const second = addSetUp(first.document);
    expect(first.document.setUps[first.id]).toEqual({ title: 'Proposed', basedOn: 'found' });
    expect(second.id).not.toBe(first.id);
    expect(freeId('pad', document.parts)).toBe('pad-2');
  });

  it('says why a set-up stays', () => {
    expect(keptBecause(document, 'found')).toMatch(/Kit/);
    expect(keptBecause(document, 'kit')).toBeNull();
    const measured = { ...document, runs: [{ id: 'r', setUp: 'kit', log: 'l' }] };
    expect(keptBecause(measured, 'kit')).toMatch(/runs/);
  });

  it('a new part copies the one in the slot and believes none of its values', () => {
    const changed = addPart(document, 'kit', 'frontPad');
    const id = changed.setUps['kit']?.frontPad ?? '';
    expect(changed.parts[id]).toEqual({
      kind: 'pad',
      title: 'New front pads',
      area: { value: '6 in²', origin: 'assumed' },
      radialHeight: { value: '45 mm', origin: 'assumed' },
      friction: [
        [
          { value: '400 °F', origin: 'assumed' },
          { value: '0.4', origin: 'assumed' },
        ],
      ],
    });
    expect(changed.setUps['found']?.frontPad).toBe('pad');
  });
});
