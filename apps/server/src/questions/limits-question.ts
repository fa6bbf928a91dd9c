import { limits, limitsReport } from '@standstill/workshop';
import { jobQuestion } from './job-question.ts';
import { stopOptions } from './stop-options.ts';
import { withoutUnits } from './without-units.ts';

/** Says what holds set-ups back, and what to measure next. */
export const limitsQuestion = jobQuestion({
  path: '/api/limits',
  summary: 'What holds the set-ups of a job back, where the feet go, and what to measure next',
  options: stopOptions,
  report: limitsReport,
  read: (options) => ({ ok: true, asked: withoutUnits(options) }),
  compute: limits,
});
