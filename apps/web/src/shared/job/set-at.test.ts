import { describe, expect, it } from 'vitest';
import { setAt, valueAt } from './set-at.ts';

describe('setAt', () => {
  const document = { car: { wheelbase: 1 }, setUps: [{ id: 'a' }, { id: 'b' }] };

  it('changes one value and leaves the original and the other branches as they were', () => {
    const changed = setAt(document, 'car.wheelbase', 2);
    expect(changed.car.wheelbase).toBe(2);
    expect(document.car.wheelbase).toBe(1);
    expect(changed.setUps).toBe(document.setUps);
  });

  it('makes the branches that are missing, lists where the step is a figure', () => {
    expect(setAt({}, 'car.tires.0.width', 5)).toEqual({ car: { tires: [{ width: 5 }] } });
  });

  it('takes a key out, and closes the gap in a list', () => {
    expect(setAt(document, 'car.wheelbase', undefined)).toEqual({ car: {}, setUps: document.setUps });
    expect(setAt(document, 'setUps.0', undefined).setUps).toEqual([{ id: 'b' }]);
  });

  it('reads back what was set, and undefined through a missing branch', () => {
    expect(valueAt(setAt(document, 'setUps.1.id', 'c'), 'setUps.1.id')).toBe('c');
    expect(valueAt(document, 'car.tires.0.width')).toBeUndefined();
  });
});
