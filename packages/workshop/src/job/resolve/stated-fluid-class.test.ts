import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../example-job.testing.ts';
import { readJob } from '../reading/read-job.ts';
import type { JobReading } from '../reading/job-reading.ts';

const asWritten = '{ kind: fluid, title: Fluid as found, class: dot4 }';

function readWith(fluid: string): JobReading {
  if (!exampleJobText.includes(asWritten)) throw new Error('the example has another fluid');
  return readJob(exampleJobText.replace(asWritten, fluid), { file: 'job.yaml' });
}

function messages(fluid: string): readonly string[] {
  const reading = readWith(fluid);
  return reading.ok ? [] : reading.problems.map(({ code, message }) => `${code}: ${message}`);
}

describe('the class of a fluid', () => {
  it.each([
    ['DOT 3', 'dot3', 205],
    ['dot 4', 'dot4', 230],
    ['DOT4', 'dot4', 230],
    ['Dot 5.1', 'dot51', 260],
    ['DOT-5.1', 'dot51', 260],
    ['dot51', 'dot51', 260],
  ])('is read from %s', (written, id, boiling) => {
    const reading = readWith(`{ kind: fluid, title: Fluid, class: "${written}" }`);
    const part = reading.ok ? reading.job.parts['fluid'] : undefined;
    expect(part?.kind === 'fluid' ? [part.className, part.facts.dryBoilingPoint.value] : part).toEqual([
      id,
      boiling,
    ]);
  });

  it.each(['DOT 5', 'dot5', 'Dot-5', 'DOT 5 silicone', 'silicone', 'DOT 5.0', 'DOT 5 2 pt'])(
    '%s is refused with the reason, and no other fluid is suggested',
    (written) => {
      expect(messages(`{ kind: fluid, title: Fluid, class: "${written}" }`)).toEqual([
        `fluid-not-modeled: parts.fluid.class is "${written}": silicone fluid (DOT 5) is not modeled; it must never be mixed with DOT 3, 4 or 5.1, and has no place in a car with ABS unless its maker allows it`,
      ]);
    },
  );

  it('is refused by the title where no class is given, instead of taken for DOT 4', () => {
    expect(messages('{ kind: fluid, title: Silicone fluid as found }')[0]).toMatch(
      /^fluid-not-modeled: parts\.fluid\.title/,
    );
    expect(messages('{ kind: fluid, title: Fresh DOT 5.1 }')).toEqual([]);
  });

  it('of mineral fluid is refused too, and a slip gets the list and no guess', () => {
    expect(messages('{ kind: fluid, title: Fluid, class: mineral }')[0]).toMatch(
      /^fluid-not-modeled: .*mineral fluid/,
    );
    const [slip] = messages('{ kind: fluid, title: Fluid, class: dot44 }');
    expect(slip).toBe(
      'unknown-class: parts.fluid.class is "dot44"; accepted: dot3, dot4, dot4LowViscosity, dot51',
    );
  });
});
