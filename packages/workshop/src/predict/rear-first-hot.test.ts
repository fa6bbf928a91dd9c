import { describe, expect, it } from 'vitest';
import { balance } from '../balance/balance.ts';
import { exampleJobText } from '../job/example-job.testing.ts';
import { readJob } from '../job/reading/read-job.ts';
import { settle } from '../settle/settle.ts';
import { rowOf } from './evaluate.ts';
import { padMoments, rearFirstRange } from './lock-looks.ts';
import { predict } from './predict.ts';
import { rearFirstHot } from './rear-first-hot.ts';

/** Front pads that fade a little more with every stop, rear pads that don't. */
const fadingText = exampleJobText
  .replace(
    'title: Stock front pads, class: road,',
    'title: Stock front pads, class: road, friction: [[20 °C, 0.38], [200 °C, 0.38], [350 °C, 0.15], [900 °C, 0.08]],',
  )
  .replace(
    'title: Rear pads, class: road,',
    'title: Rear pads, class: road, friction: [[20 °C, 0.38], [900 °C, 0.38]],',
  );
const reading = readJob(fadingText, { file: 'job.yaml' });
if (!reading.ok) throw new Error(reading.problems.map(({ message }) => message).join('\n'));
const fading = reading.job;

describe('a rear axle that locks first once the pads are hot', () => {
  it('is told where it does at any moment from the first such stop on, not in that stop alone', () => {
    const settled = settle(fading, 'as-found');
    const row = rowOf(settled, 8);
    const hot = rearFirstHot(settled, row);
    const each = padMoments(row).map(({ pads }) => rearFirstRange(settled, pads));
    const found = each.filter((range) => range !== null);
    expect(found[0]!.lowest).toBeGreaterThan(hot!.range.lowest);
    expect(hot?.range.lowest).toBe(Math.min(...found.map(({ lowest }) => lowest)));
    expect(hot?.range.highest).toBe(Math.max(...found.map(({ highest }) => highest)));
    expect(hot?.range.states).toEqual(['as-tested', 'laden']);
  });

  it('is as likely by the prediction as by the balance', () => {
    const question = { draws: 100, setUps: ['as-found'] };
    const [told] = predict(fading, question).setUps;
    const [one] = balance(fading, question).setUps;
    const shares = one!.states.map(({ rearFirst }) => rearFirst.shareHot ?? 0);
    expect(told?.balance.rearFirstShareHot).toBe(Math.max(...shares));
  });
});
