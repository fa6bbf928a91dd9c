import { predict, prediction } from '@standstill/workshop';
import { jobQuestion } from './job-question.ts';
import { stopOptions } from './stop-options.ts';
import { withoutUnits } from './without-units.ts';

/** Predicts stops for programs that have no physics of their own. */
export const predictQuestion = jobQuestion({
  path: '/api/predictions',
  summary: 'What the set-ups of a job would do, with intervals',
  options: stopOptions,
  report: prediction,
  read: (options) => ({ ok: true, asked: withoutUnits(options) }),
  compute: predict,
});
