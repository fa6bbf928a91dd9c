import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { root } from '../run/root.mjs';
import { readExamples } from './read-examples.mjs';
import { sameAsPrinted } from './same-as-printed.ts';

interface Room {
  readonly name: string;
  readonly folder: string;
  readonly pure: boolean;
}

interface Example {
  readonly name: string;
  readonly expression: string;
  readonly expected: string;
}

const { rooms } = JSON.parse(readFileSync(`${root}/tools/rooms.json`, 'utf8')) as {
  readonly rooms: readonly Room[];
};

for (const room of rooms.filter(({ pure }) => pure)) {
  const examples: readonly Example[] = readExamples(root, room.folder);
  describe(`examples in the docstrings of ${room.name}`, async () => {
    const names: Record<string, unknown> = await import(`${root}/${room.folder}/src/index.ts`);
    const evaluate = (text: string): unknown =>
      new Function(...Object.keys(names), `'use strict'; return (${text});`)(...Object.values(names));

    if (examples.length === 0) it('are none yet', () => expect(examples).toEqual([]));

    it.each(examples)('$name: $expression // => $expected', ({ expression, expected }) => {
      const thrown = /^throws (\w+)/.exec(expected)?.[1];
      if (thrown !== undefined) {
        expect(() => evaluate(expression)).toThrow(expect.objectContaining({ name: thrown }));
        return;
      }
      const actual = evaluate(expression);
      expect(sameAsPrinted(actual, evaluate(expected), expected), `gives ${JSON.stringify(actual)}`).toBe(
        true,
      );
    });
  });
}

describe('the comparison of an example', () => {
  it.each([
    [2449.58, '2449.6', true],
    [2449.54, '2449.6', false],
    [1 / 3, '0.333333', true],
    [1 / 3, '0.33334', false],
    [5, '5', true],
    [5.4, '5', false],
    [0.54, '0.5', false],
    [0.5, '0.5', true],
    [68.947572931684, '68.947572931684', true],
    [68.94757294, '68.947572931684', true],
    [-0.5, '-0.5', true],
    [0, '1e-9', false],
    [1.5e-7, '1.5e-7', true],
  ])('of %d with %s', (actual, printed, same) => {
    expect(sameAsPrinted(actual, Number(printed), printed)).toBe(same);
  });

  it('goes into lists and records and is exact about words', () => {
    expect(sameAsPrinted([1, 2.00000001], [1, 2], '[1, 2]')).toBe(true);
    expect(sameAsPrinted([1, 2], [1, 2, 3], '[1, 2, 3]')).toBe(false);
    expect(sameAsPrinted(new Float64Array([1, 2]), [1, 2], '[1, 2]')).toBe(true);
    expect(sameAsPrinted({ ok: true, unit: 'm' }, { ok: true, unit: 'm' }, '')).toBe(true);
    expect(sameAsPrinted({ ok: true, unit: 'm' }, { ok: true, unit: 'mm' }, '')).toBe(false);
    expect(sameAsPrinted(null, null, 'null')).toBe(true);
    expect(sameAsPrinted(NaN, NaN, 'NaN')).toBe(true);
  });
});
