import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carFacts } from '../facts/car-facts.ts';
import { caliperFacts, padFacts, pedalFacts, rotorFacts, tireFacts } from '../facts/part-facts.ts';
import type { Fact } from '../facts/fact.ts';
import { toUnit, quantityKinds, unitsOf } from '@standstill/units';
import { readQuantity } from './read-quantity.ts';

const facts: Fact[] = [carFacts, caliperFacts, padFacts, pedalFacts, rotorFacts, tireFacts].flatMap((table) =>
  Object.values(table),
);

/** A fact, a value inside its range, and a unit to write it in. */
const written = fc
  .record({
    fact: fc.constantFrom(...facts),
    share: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    pick: fc.nat(),
  })
  .map(({ fact, share, pick }) => {
    const { dimension } = quantityKinds[fact.kind];
    const units = unitsOf(dimension);
    const unit = units[pick % units.length] ?? '';
    const value = fact.low + share * (fact.high - fact.low);
    return { fact, value, unit, number: toUnit(value, unit, dimension) };
  });

describe('the spellings of a quantity', () => {
  it('all read to the same SI value, in every unit', () => {
    fc.assert(
      fc.property(written, ({ fact, value, unit, number }) => {
        const symbol = unit === '1' ? '' : unit;
        const text = `${number} ${symbol}`.trim();
        const spellings = [
          text,
          { value: text },
          { value: number, unit: symbol },
          { value: String(number), unit: symbol },
        ];
        for (const input of spellings) {
          const reading = readQuantity(input, fact);
          if (!reading.ok) throw new Error(`${JSON.stringify(input)}: ${reading.message}`);
          expect(Math.abs(reading.value - value)).toBeLessThanOrEqual(1e-13 * Math.abs(value) + 1e-18);
        }
      }),
      { numRuns: 500 },
    );
  });

  it('carry a spread as an amount or as a share of the value alike', () => {
    fc.assert(
      fc.property(
        written,
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        ({ fact, value, unit, number }, percent) => {
          fc.pre(!['temperature', 'share', 'ratio'].includes(fact.kind));
          const share = readQuantity({ value: number, unit, spread: `${percent} %` }, fact);
          const amount = readQuantity(
            { value: number, unit, spread: `${Math.abs(number) * (percent / 100)} ${unit}` },
            fact,
          );
          if (!share.ok || !amount.ok) throw new Error('not read');
          const expected = (Math.abs(value) * percent) / 100;
          expect(Math.abs((share.spread ?? NaN) - expected)).toBeLessThanOrEqual(1e-12 * expected);
          expect(Math.abs((share.spread ?? NaN) - (amount.spread ?? NaN))).toBeLessThanOrEqual(
            1e-12 * expected,
          );
        },
      ),
      { numRuns: 500 },
    );
  });
});
