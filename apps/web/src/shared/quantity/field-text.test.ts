import { carFacts } from '@standstill/workshop';
import { describe, expect, it } from 'vitest';
import { fieldText, inOwnUnit, originOf, readFieldText, withOrigin } from './field-text.ts';

const { wheelbase, centerOfGravityHeight } = carFacts;

describe('fieldText', () => {
  it('reads every spelling of a value as it was typed', () => {
    expect(fieldText('94.5 in')).toBe('94.5 in');
    expect(fieldText({ value: 94.5, unit: 'in', origin: 'measured' })).toBe('94.5 in');
    expect(fieldText({ value: '94.5 in', spread: '0.2 in' })).toBe('94.5 in ± 0.2 in');
    expect(fieldText(undefined)).toBe('');
  });
});

describe('readFieldText', () => {
  it('keeps a plain value plain', () => {
    expect(readFieldText(' 94.5 in ', wheelbase, '90 in')).toEqual({ ok: true, input: '94.5 in' });
  });

  it('keeps origin and note, and replaces the unit that stood apart', () => {
    const before = { value: 94, unit: 'in', origin: 'measured', note: 'tape' } as const;
    expect(readFieldText('2.41 m', wheelbase, before)).toEqual({
      ok: true,
      input: { value: '2.41 m', origin: 'measured', note: 'tape' },
    });
  });

  it('reads a spread behind ± or +/-, and drops it when it is taken out', () => {
    const read = readFieldText('94.5 in +/- 0.2 in', wheelbase, undefined);
    expect(read).toEqual({ ok: true, input: { value: '94.5 in', spread: '0.2 in' } });
    expect(readFieldText('94.5 in', wheelbase, { value: '94.5 in', spread: '0.2 in' })).toEqual({
      ok: true,
      input: '94.5 in',
    });
  });

  it('says what was found and what is accepted', () => {
    for (const text of ['94.5 parsecs', '94.5 kg', 'long', '94.5 in ± much']) {
      const reading = readFieldText(text, wheelbase, undefined);
      expect(reading.ok).toBe(false);
      if (!reading.ok) expect(reading.message).toMatch(/accepted/i);
    }
  });

  it('ends each sentence with one mark, and says once what is accepted', () => {
    for (const text of ['94.5 inn', '94.5 kg', 'long', '94.5 ft']) {
      const reading = readFieldText(text, wheelbase, undefined);
      if (reading.ok) throw new Error(text);
      expect(reading.message).not.toMatch(/[?.!][.]/);
      expect(reading.message.match(/accepted/gi)).toHaveLength(1);
    }
  });

  it('refuses what no car can have', () => {
    const reading = readFieldText('94.5 ft', wheelbase, undefined);
    expect(reading.ok).toBe(false);
  });

  it('takes the value out where it may be assumed, and only there', () => {
    expect(readFieldText('', centerOfGravityHeight, '19 in')).toEqual({ ok: true, input: undefined });
    expect(readFieldText('', wheelbase, '96 in').ok).toBe(false);
  });
});

describe('origins and units', () => {
  it('what says nothing counts as specified', () => {
    expect(originOf('96 in')).toBe('specified');
    expect(originOf(withOrigin('96 in', 'measured'))).toBe('measured');
  });

  it("adds the person's own unit only where another was typed", () => {
    expect(inOwnUnit('96 in', wheelbase, { system: 'metric' })).toBe('= 2438 mm');
    expect(inOwnUnit('96 in', wheelbase, { system: 'us' })).toBeNull();
  });
});
