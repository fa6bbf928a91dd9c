import {
  statedConfounders,
  type Comparison,
  type ComparisonRefusal,
  type JobSets,
  type LogReport,
} from '@standstill/workshop';
import { useState } from 'react';
import { RoadSheet } from '../../shared/picture/road-scale.tsx';
import { Lead } from '../../shared/ui/lead.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { PrintAssumed } from '../../shared/ui/print-assumed.tsx';
import { PrintCaveat } from '../../shared/ui/print-caveat.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { WarningBox } from '../../shared/ui/warnings.tsx';
import { ComparisonSection } from './compare/comparison-section.tsx';
import { stateOf, unusable, whatIsMissing } from './compare/proof-state.ts';
import { setsOfPage } from './compare/sets-of-page.ts';
import { statedFacts, statedWords, type StatedFact } from './compare/stated-facts.ts';
import { useComparison } from './compare/use-comparison.ts';
import { FadeSection } from './fade/fade-section.tsx';
import { ModelSection } from './model/model-section.tsx';
import { ProofChoices } from './pair/proof-choices.tsx';
import { PlanSection } from './plan/plan-section.tsx';
import { OtherRuns } from './set/other-runs.tsx';
import { SetPanel } from './set/set-panel.tsx';
import { readReports, useProof } from './use-proof.ts';
import './proof.css';

/** What the measured stops show: the comparison first, then every stop of both sets. */
export default function ProofPage() {
  const proof = useProof();
  const { document, pair, logs, reading, job, reports, at, titleOf, spare } = proof;
  const [before, after] = [at('before'), at('after')];
  const runsOf = (side: typeof before) => side.map(({ run }) => run);
  const said = job
    ? statedConfounders(
        job.runs.filter(({ id }) => before.some(({ run }) => run.id === id)),
        job.runs.filter(({ id }) => after.some(({ run }) => run.id === id)),
      )
    : [];
  const facts = statedFacts(runsOf(before), runsOf(after));
  const missing = whatIsMissing({
    sameSetUp: pair.before === pair.after,
    before: before.map(stateOf),
    after: after.map(stateOf),
  });
  const sets = job && setsOfPage({ job, pair, reports, titleOf });
  const compared = missing === null && sets ? sets.compared : null;
  const comparison = useComparison({ pair, sets: compared, confounders: said });
  const shown = compared && comparison.data?.kind === 'comparison' ? comparison.data : null;
  const all = readReports(reports);
  const fastest = Math.max(...all.flatMap(({ stops }) => stops.map((stop) => stop.entrySpeed_m_s)), 1);
  const left = missing === null ? unusable(reports.map(stateOf)) : [];
  const panel = { spare, fastest };
  const [reach, setReach] = useState(0);

  return (
    <>
      <PageHead title="Proof" question="What did the stops show?">
        <Lead text={missing ?? unsorted(sets) ?? answer(comparison.data, shown ? facts : [])} />
      </PageHead>
      {shown && <PrintCaveat words={caveat} />}
      {left.length > 0 && (
        <WarningBox severity="caution">Not in this comparison: {left.join(', ')}, see below.</WarningBox>
      )}
      {logs.error && (
        <Trouble tried="list the logs" reason={logs.error} onRetry={() => void logs.refetch()} />
      )}
      {comparison.error && (
        <Trouble
          tried="compare the sets"
          reason={comparison.error}
          onRetry={() => void comparison.refetch()}
        />
      )}
      {reading && !reading.ok && (
        <p className="state">The job has mistakes; the survey lists them. Nothing is read until then.</p>
      )}
      <PlanSection job={job} pair={pair} sets={sets} isMeasured={(document.runs ?? []).length > 0} />
      <ProofChoices document={document} />
      <RoadSheet longest={Math.max(longest(all, shown), reach * 1.04)}>
        {shown && <ComparisonSection comparison={shown} facts={facts} said={said} />}
        <ModelSection job={job} pair={pair} sets={sets} onReach={setReach} />
        <FadeSection job={job} pair={pair} sets={sets} titleOf={titleOf} />
        <Section title="Stops before" intro={titleOf(pair.before)}>
          <SetPanel side="before" setUp={pair.before} place="before" reports={before} {...panel} />
        </Section>
        {pair.before !== pair.after && (
          <Section title="Stops after" intro={titleOf(pair.after)}>
            <SetPanel side="after" setUp={pair.after} place="after" reports={after} {...panel} />
          </Section>
        )}
        <Section
          title="Other stops"
          intro="Stops of neither set: a repeat of the old set-up or a car left alone tells the change from the day; stops in a row show fade."
        >
          <OtherRuns
            pair={pair}
            reports={at('repeat', 'reference-before', 'reference-after', 'fade')}
            {...panel}
          />
        </Section>
      </RoadSheet>
      {shown?.expectation && reading?.ok && <PrintAssumed assumed={reading.assumed} />}
    </>
  );
}

const caveat =
  'Measured stops hold for their day’s tires, surface, rotor temperature and driver; they are no promise for other roads.';

/** Why logs that are all read make no two sets; null where they do. */
function unsorted(sets: JobSets | null): string | null {
  if (!sets || sets.compared) return null;
  return ['No comparison: what the job says of these logs does not make two sets.', ...sets.warnings].join(
    ' ',
  );
}

function answer(data: Comparison | ComparisonRefusal | undefined, facts: readonly StatedFact[]): string {
  if (!data) return 'Comparing …';
  return [data.sentence, ...statedWords(facts)].join(' ');
}

/**
 * m, the longest that counts on the page. A stop that is left out does not stretch the scale of the others; it is marked
 * where it leaves the picture.
 */
function longest(reports: readonly LogReport[], compared: Comparison | null): number {
  const stops = reports.flatMap((report) => report.stops);
  const counting = stops.filter(({ counted }) => counted);
  const distances = (counting.length > 0 ? counting : stops).flatMap((stop) => [
    stop.applicationDistance_m,
    stop.correctedDistance_m ?? 0,
  ]);
  const expected = compared?.expectation
    ? compared.before.mean_m.value + compared.expectation.expected_m.high
    : 0;
  return Math.max(...distances, expected, 30) * 1.04;
}
