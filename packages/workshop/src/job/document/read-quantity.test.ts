import { describe, expect, it } from 'vitest';
import { carFacts } from '../facts/car-facts.ts';
import { conditionsFacts } from '../facts/conditions-facts.ts';
import { readQuantity } from './read-quantity.ts';

const { wheelbase, frontLoadShare, rollingResistance } = carFacts;

describe('a spread', () => {
  it('of a share is in points, of anything else a share of the value', () => {
    expect(readQuantity({ value: '50 %', spread: '2 %' }, frontLoadShare)).toMatchObject({ spread: 0.02 });
    expect(readQuantity({ value: '0.01', spread: '2 %' }, rollingResistance)).toMatchObject({
      spread: 0.0002,
    });
  });

  it('of a temperature is a difference', () => {
    const reading = readQuantity({ value: '212 °F', spread: '18 °F' }, conditionsFacts.startTemperature);
    expect(reading.ok && [reading.value, reading.spread]).toEqual([100, 10]);
  });

  it('takes the unit of its value', () => {
    expect(readQuantity({ value: 2.5, unit: 'm', spread: 0.01 }, wheelbase)).toMatchObject({
      value: 2.5,
      spread: 0.01,
    });
  });

  it.each(['-1 in', 'some', '2 lb'])('can not be %s', (spread) => {
    expect(readQuantity({ value: '96 in', spread }, wheelbase)).toMatchObject({
      ok: false,
      code: 'unreadable-number',
    });
  });
});

describe('a value', () => {
  it('is specified unless the job says otherwise', () => {
    expect(readQuantity('96 in', wheelbase)).toMatchObject({ origin: 'specified', spread: null });
    expect(readQuantity({ value: '96 in', origin: 'measured' }, wheelbase)).toMatchObject({
      origin: 'measured',
    });
  });

  it.each([NaN, Infinity])('that is %s is refused', (value) => {
    expect(readQuantity({ value, unit: 'm' }, wheelbase)).toMatchObject({
      ok: false,
      code: 'unreadable-number',
    });
  });
});
