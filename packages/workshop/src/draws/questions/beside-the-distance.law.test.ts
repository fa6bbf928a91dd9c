import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exampleJobText } from '../../job/example-job.testing.ts';
import { readJob } from '../../job/reading/read-job.ts';
import { settle } from '../../settle/settle.ts';
import { drawSheet } from '../draw-sheet.ts';
import { knownsOf } from '../knowns-of.ts';
import { answerDistance } from './answer-distance.ts';
import { besideTheDistance } from './beside-the-distance.ts';

const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { job } = reading;
const beside = besideTheDistance(job);
const answer = answerDistance();

it('no number beside the distance moves it, however far it is drawn', () => {
  const drawn = new Set<string>();
  const into = new Float64Array(2);
  const setUpIds = job.setUps.map(({ id }) => id);
  const knowns = knownsOf(job, setUpIds);
  const sheet = drawSheet({ knowns, draws: 600, seed: 11 });
  fc.assert(
    fc.property(
      fc.nat(599),
      fc.constantFrom(...setUpIds),
      fc.double({ min: 0.5, max: 2 }),
      (row, id, factor) => {
        const draw = sheet[row]!;
        answer(settle(job, id, draw), row, into);
        into[1] = into[0]!;
        const moved = settle(job, id, (known) => {
          if (!beside.has(known.path)) return draw(known);
          drawn.add(known.path);
          return Math.min(known.high, Math.max(known.low, known.value * factor));
        });
        answer(moved, row, into);
        expect(into[0]).toBe(into[1]);
      },
    ),
    { numRuns: 500 },
  );
  expect(drawn.size).toBeGreaterThan(20);
});
