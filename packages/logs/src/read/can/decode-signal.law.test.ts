import fc from 'fast-check';
import { expect, test } from 'vitest';
import { issueList } from '../../channels/issue-list.ts';
import { readDbc } from './dbc/read-dbc.ts';
import { decodeSignal } from './decode-signal.ts';

/** The whole frame as one number, from which a signal is cut by shifting: another way than bit by bit. */
function cut(
  data: Uint8Array,
  layout: { start: number; length: number; isBig: boolean; isSigned: boolean },
): bigint {
  const { start, length, isBig, isSigned } = layout;
  const bytes = isBig ? [...data] : [...data].toReversed();
  const frame = bytes.reduce((sum, byte) => (sum << 8n) | BigInt(byte), 0n);
  const total = data.length * 8;
  const fromTop = (start >> 3) * 8 + 7 - (start & 7);
  const shift = BigInt(isBig ? total - fromTop - length : start);
  const raw = (frame >> shift) & ((1n << BigInt(length)) - 1n);
  return isSigned ? BigInt.asIntN(length, raw) : raw;
}

test('a signal of any place, length, order and sign is what a shift of the whole frame gives', () => {
  const layout = fc
    .record({ size: fc.integer({ min: 1, max: 64 }), isBig: fc.boolean(), isSigned: fc.boolean() })
    .chain(({ size, isBig, isSigned }) =>
      fc.record({
        data: fc.uint8Array({ minLength: size, maxLength: size }),
        length: fc.integer({ min: 1, max: Math.min(53, size * 8) }),
        place: fc.nat(),
        isBig: fc.constant(isBig),
        isSigned: fc.constant(isSigned),
      }),
    );
  fc.assert(
    fc.property(layout, ({ data, length, place, isBig, isSigned }) => {
      const offset = place % (data.length * 8 - length + 1);
      const start = isBig ? (offset >> 3) * 8 + 7 - (offset & 7) : offset;
      const text = `BO_ 1 M: ${data.length} X\n SG_ A : ${start}|${length}@${isBig ? 0 : 1}${isSigned ? '-' : '+'} (1,0) [0|0] "" X`;
      const read = readDbc(text, 'made', issueList());
      const signal = read.ok ? read.messages.get(1)!.signals[0]! : null;
      expect(decodeSignal(signal!, data)).toBe(Number(cut(data, { start, length, isBig, isSigned })));
    }),
    { numRuns: 1000, seed: 5 },
  );
});
