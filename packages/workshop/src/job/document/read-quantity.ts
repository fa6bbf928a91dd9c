import { parseQuantity, quantityFrom, quantityKinds, refusalSentence } from '@standstill/units';
import type { Dimension, Reading, Refusal } from '@standstill/units';
import type { Fact } from '../facts/fact.ts';
import { printBound } from './print-bound.ts';
import type { JobProblemCode } from '../reading/problem-codes.ts';
import type { Origin, QuantityInput, QuantityRecord } from './quantity-input.ts';

/** A quantity in SI, or what is wrong with it. */
export type QuantityReading =
  | {
      readonly ok: true;
      /** SI. */
      readonly value: number;
      readonly origin: Origin;
      /** One standard deviation, SI; null where none is stated. */
      readonly spread: number | null;
    }
  | QuantityTrouble;

export interface QuantityTrouble {
  readonly ok: false;
  readonly code: JobProblemCode;
  readonly found: string;
  readonly accepted: string;
  /** Reads on after the path: `is 200 %; accepted is 20 to 80 %`. */
  readonly message: string;
}

/**
 * Reads one quantity of the job document in any of its spellings.
 *
 * @param input - what the person wrote
 * @param fact - which quantity it is, with its kind and its possible range
 * @returns the value in SI with origin and spread, or one plain sentence about what is wrong
 */
export function readQuantity(input: QuantityInput, fact: Fact): QuantityReading {
  const record: QuantityRecord = typeof input === 'object' ? input : { value: input };
  const dimension = quantityKinds[fact.kind].dimension;
  const reading = readWritten(record.value, record.unit, dimension);
  if (!reading.ok) return unreadable(reading, fact);
  if (!(reading.value >= fact.low && reading.value <= fact.high)) return outOfRange(reading, fact);
  const spread =
    record.spread === undefined ? null : readSpread(record.spread, record.unit, reading.value, fact);
  if (spread !== null && typeof spread !== 'number') return spread;
  return { ok: true, value: reading.value, origin: record.origin ?? 'specified', spread };
}

function readWritten(written: string | number, unit: string | undefined, dimension: Dimension): Reading {
  if (typeof written === 'number') return quantityFrom(written, unit ?? '', dimension);
  if (unit === undefined) return parseQuantity(written, dimension);
  const number = Number(written);
  return Number.isFinite(number) && written.trim() !== ''
    ? quantityFrom(number, unit, dimension)
    : parseQuantity(`${written} ${unit}`, dimension);
}

const refusalCodes: Readonly<Record<Refusal['code'], JobProblemCode>> = {
  empty: 'missing',
  'bad-number': 'unreadable-number',
  'ambiguous-number': 'unreadable-number',
  'not-finite': 'unreadable-number',
  'missing-unit': 'unit-missing',
  'unknown-unit': 'unit-unknown',
  'wrong-dimension': 'unit-wrong-dimension',
};

function unreadable(refusal: Refusal, fact: Fact): QuantityTrouble {
  const units = refusal.accepted.units.filter((unit) => unit !== '1');
  const accepted = `the ${fact.title.toLowerCase()} such as ${fact.example}; units: ${units.join(', ')}`;
  const code = refusalCodes[refusal.code];
  return {
    ok: false,
    code,
    found: refusal.found,
    accepted,
    message: `can't be read: ${refusalSentence(refusal)}`,
  };
}

function outOfRange(reading: Reading & { readonly ok: true }, fact: Fact): QuantityTrouble {
  const dimension = quantityKinds[fact.kind].dimension;
  const found = reading.unit === '1' ? String(reading.number) : `${reading.number} ${reading.unit}`;
  const least = printBound(fact.low, reading.unit, dimension, 'low');
  const accepted = `${least} to ${printBound(fact.high, reading.unit, dimension, 'high')}`;
  return {
    ok: false,
    code: 'out-of-range',
    found,
    accepted,
    message: `is ${found}; accepted is ${accepted}`,
  };
}

/** A spread is an amount in a unit of the value, or `2 %` of it; of a share, which is itself in %, points. */
function readSpread(
  written: string | number,
  unit: string | undefined,
  value: number,
  fact: Fact,
): number | QuantityTrouble {
  const dimension = quantityKinds[fact.kind].dimension;
  const ofValue = fact.kind !== 'share' && typeof written === 'string' && /%\s*$/.test(written);
  const percent = ofValue ? parseQuantity(written, 'ratio') : null;
  const most = fact.high - fact.low;
  const share = percent?.ok === true ? percent.value * Math.abs(value) : NaN;
  if (share >= 0 && share <= most) return share;
  const amount = readAmount(
    written,
    unit,
    dimension === 'temperature' ? 'temperature-difference' : dimension,
  );
  if (amount.ok && amount.value >= 0 && amount.value <= most) return amount.value;
  const accepted =
    'a spread such as "2 %", or an amount with a unit, not below zero and within what the value can be';
  const found = String(written);
  return {
    ok: false,
    code: 'unreadable-number',
    found,
    accepted,
    message: `has the spread "${found}"; accepted is ${accepted}`,
  };
}

/** A spread may have a unit of its own beside that of the value. */
function readAmount(written: string | number, unit: string | undefined, dimension: Dimension): Reading {
  const own = typeof written === 'string' ? parseQuantity(written, dimension) : null;
  return own?.ok === true ? own : readWritten(written, unit, dimension);
}
