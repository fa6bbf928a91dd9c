import {
  expectFade,
  reportFade,
  type FadeRefusal,
  type FadeReport,
  type Job,
  type ReportFadeInput,
} from '@standstill/workshop';

export interface FadeAsk extends Omit<ReportFadeInput, 'expectation'> {
  /** Null where nothing is to be expected. */
  readonly job: Job | null;
  /** Id of the set-up that was driven. */
  readonly setUp: string;
}

/** The stops as measured first, since the model drives them from the same speed; then with what it expects. */
export function fadeOfJob({ job, setUp, ...input }: FadeAsk): FadeReport | FadeRefusal {
  const measured = reportFade(input);
  if (measured.kind === 'fade-refusal' || job === null) return measured;
  const { set } = input;
  try {
    const expectation = expectFade(job, { setUp, set, nominalSpeed: measured.nominalSpeed_m_s });
    return expectation === null ? measured : reportFade({ ...input, expectation });
  } catch (reason) {
    const why = reason instanceof Error ? reason.message : String(reason);
    return {
      ...measured,
      warnings: [`The model expects nothing of these stops: ${why}`, ...measured.warnings],
    };
  }
}
