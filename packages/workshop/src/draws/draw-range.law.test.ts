import { stopWorkspace } from '@standstill/braking';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { evaluate } from '../predict/evaluate.ts';
import { figureNames } from '../predict/figures.ts';
import { settle } from '../settle/settle.ts';
import { drawBlock } from './draw-block.ts';
import { drawRange } from './draw-range.ts';
import type { DrawRequest } from './draw-request.ts';
import { drawSheet } from './draw-sheet.ts';
import { knownsOf } from './knowns-of.ts';
import { openDraws } from './open-draws.ts';
import { RangeJoin } from './pool/range-join.ts';
import { drawQuestions } from './questions/draw-questions.ts';
import type { DrawQuestionName } from './questions/draw-questions.ts';

const reading = readJob(exampleJobText, { file: 'job.yaml' });
if (!reading.ok) throw new Error('the example job is not a job');
const { job } = reading;
const setUpIds = ['as-found', 'front-kit'];
const questions = Object.keys(drawQuestions) as DrawQuestionName[];

function requestOf(draws: number, seed: number, question: DrawRequest['question'] = 'distance'): DrawRequest {
  return { question, setUpIds, overrides: {}, draws, seed };
}

describe('blocks', () => {
  it('hold every draw once, in order, nearly equal in length, the last one longest', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 200_000 }),
        fc.double({ min: 0, max: 0.999999, noNaN: true }),
        (draws, share) => {
          const row = Math.floor(share * draws);
          const block = drawBlock(draws, row);
          const last = drawBlock(draws, draws - 1);
          expect(block.from <= row && row < block.to && block.to <= draws).toBe(true);
          expect(last.to).toBe(draws);
          expect(block.to - block.from).toBeLessThanOrEqual(Math.min(1000, last.to - last.from));
          expect(last.to - last.from - (block.to - block.from)).toBeLessThanOrEqual(1);
          if (block.from > 0) expect(drawBlock(draws, block.from - 1).to).toBe(block.from);
        },
      ),
      { numRuns: 500 },
    );
  });
});

describe('ranges', () => {
  it.each(questions)('of the question %s, put together in any order, are bit by bit one pass', (question) => {
    const cuts = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 5 });
    const most = question === 'distance' ? 30 : 3;
    fc.assert(
      fc.property(fc.integer({ min: 1, max: most }), fc.nat(), cuts, fc.nat(), (draws, seed, at, turn) => {
        const request = requestOf(draws, seed, question);
        const edges = [0, ...at.map((share) => Math.floor(share * draws)), draws].sort((a, b) => a - b);
        const spans = edges.slice(1).map((to, index) => [edges[index]!, to] as const);
        const join = new RangeJoin(request);
        const middle = turn % spans.length;
        for (const [from, to] of [...spans.slice(middle), ...spans.slice(0, middle)])
          join.add(drawRange(job, request, from, to));
        expect(join.whole()).toStrictEqual(drawRange(job, request, 0, draws));
      }),
      { numRuns: 500 },
    );
  });

  it('are the same over the edge of a block, whoever draws them in whichever order', () => {
    const request = requestOf(2300, 7);
    const [forward, backward] = [openDraws(job, request), openDraws(job, request)];
    const spans = [
      [0, 500],
      [500, 1300],
      [1300, 1301],
      [1301, 2300],
    ] as const;
    const [one, other] = [new RangeJoin(request), new RangeJoin(request)];
    for (const [from, to] of spans) one.add(forward(from, to));
    for (const [from, to] of spans.toReversed()) other.add(backward(from, to));
    expect(one.whole()).toStrictEqual(drawRange(job, request, 0, 2300));
    expect(other.whole()).toStrictEqual(one.whole());
  });

  it('hold what settling every draw anew and asking it gives', () => {
    const draws = 1100;
    const request = requestOf(draws, 3, 'prediction');
    const { bySetUp } = drawRange(job, request, 0, draws);
    const sheet = drawSheet({ knowns: knownsOf(job, setUpIds), draws, seed: 3 });
    const march = stopWorkspace();
    for (const row of [0, 1, 199, 200, 549, 550, 551, 1099]) {
      setUpIds.forEach((id, index) => {
        const { figures } = evaluate(settle(job, id, sheet[row]), march, row < 200 ? 8 : 0);
        const drawn = figureNames.map((_, k) => bySetUp[index]?.[k * draws + row]);
        expect(drawn).toStrictEqual(figureNames.map((name) => figures[name]));
      });
    }
  });
});
