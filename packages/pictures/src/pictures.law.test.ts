import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakWords } from './sheet/break-words.ts';
import { fadePicture } from './fade/fade-picture.ts';
import { madeComparison, madeFade, madeReport, madeSet, madeStop, within } from './made-results.testing.ts';
import { setsPicture } from './sets/sets-picture.ts';
import { stopsPicture } from './stop/stops-picture.ts';
import { parseSvg } from './svg/parse-svg.testing.ts';

const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 60 }), fc.string({ maxLength: 60 }));

test('any name and reason, from whatever file, leaves a well-formed document that says it', () => {
  fc.assert(
    fc.property(anyText, anyText, (name, reason) => {
      const set = madeSet(name, [40, 41], { leftOut: [{ log: name, number: 1, reason }] });
      const comparison = madeComparison(set, madeSet('after', [30, 31]));
      const svg = parseSvg(setsPicture(comparison, { before: [], after: [] }, { units: 'us' }));
      expect(svg.name).toBe('svg');
      expect(parseSvg(stopsPicture([madeReport(name, [madeStop(1)])], { units: 'us' })).name).toBe('svg');
    }),
    { numRuns: 100 },
  );
});

test('the same result is the same bytes, and no figure of any size breaks the drawing', () => {
  const size = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
  fc.assert(
    fc.property(
      fc.array(size, { minLength: 1, maxLength: 12 }),
      size,
      fc.constantFrom('us', 'metric'),
      (all, half, units) => {
        const set = { ...madeSet('before', all), mean_m: within(all[0] ?? 1, half) };
        const comparison = madeComparison(set, madeSet('after', all.toReversed()));
        const drawn = setsPicture(comparison, { before: [], after: [] }, { units });
        expect(drawn).toBe(setsPicture(structuredClone(comparison), { before: [], after: [] }, { units }));
        expect(drawn).not.toMatch(/NaN|Infinity|undefined|e[+-]?\d+"/);
        const made = madeFade();
        const fade = { ...made, set: { ...made.set, slope_m_per_stop: within(all[0] ?? 1, half) } };
        expect(fadePicture(fade, { units })).not.toMatch(/NaN|Infinity|undefined/);
      },
    ),
    { numRuns: 80 },
  );
});

test('broken lines hold every letter and none is too wide', () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 300 }), fc.integer({ min: 20, max: 800 }), (text, width) => {
      const lines = breakWords(text, width, 12);
      expect(lines.join('').replace(/\s/gu, '')).toBe(text.replace(/\s/gu, ''));
      const most = Math.max(1, Math.floor(width / (0.56 * 12)));
      for (const line of lines) expect([...line].length).toBeLessThanOrEqual(most);
    }),
    { numRuns: 500 },
  );
});
