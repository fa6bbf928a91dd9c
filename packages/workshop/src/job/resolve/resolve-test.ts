import type { TestDocument } from '../document/job-document.ts';
import { testFacts } from '../facts/test-facts.ts';
import type { Job } from '../job.ts';
import type { Filler } from './filler.ts';
import { statedFacts } from './stated-facts.ts';

/** What a test is wanted to show; refused where the window of start temperatures is upside down. */
export function resolveTest(filler: Filler, stated: TestDocument = {}): Job['test'] {
  const test = statedFacts(filler, { facts: testFacts, stated, path: ['test'] });
  const { startTemperatureLow: low, startTemperatureHigh: high } = test;
  if (low === null || high === null || low.value < high.value) return test;
  const accepted = 'a startTemperatureHigh above the startTemperatureLow';
  const found = 'a hottest start that is not above the coldest';
  const message = `test.startTemperatureHigh is ${found}; accepted is ${accepted}`;
  const path = ['test', 'startTemperatureHigh'];
  filler.findings.push({ code: 'contradiction', path, at: 'value', found, accepted, message });
  return test;
}
