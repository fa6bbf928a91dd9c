import { balance, balanceReport, loadStates } from '@standstill/workshop';
import { z } from 'zod';
import { jobQuestion } from './job-question.ts';
import { questionOption } from './question-option.ts';
import { withoutUnits } from './without-units.ts';

const { speed_m_s, draws, seed, setUps, units } = questionOption;

const balanceOptions = z.strictObject({
  speed_m_s,
  /** States of load; both where left out. */
  states: z.array(z.enum(loadStates)).min(1).max(2).exactOptional(),
  draws,
  seed,
  setUps,
  units,
});

/** Says which axle locks first, as tested and laden, and what else the balance decides. */
export const balanceQuestion = jobQuestion({
  path: '/api/balance',
  summary:
    'Which axle locks first, as tested and laden, what UN R13-H Annex 5 says of it, and the parking brake',
  options: balanceOptions,
  report: balanceReport,
  read: (options) => ({ ok: true, asked: withoutUnits(options) }),
  compute: balance,
});
