import { useQuery } from '@tanstack/react-query';
import {
  statedConfounders,
  type Comparison,
  type ComparisonRefusal,
  type LogReport,
  type LogSummary,
} from '@standstill/workshop';
import { useSearchParams } from 'wouter';
import { listLogs } from '../../shared/api/logs.ts';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { useJobReading } from '../../shared/job/use-job-reading.ts';
import { RoadSheet } from '../../shared/picture/road-scale.tsx';
import { PrintAssumed } from '../../shared/ui/print-assumed.tsx';
import { PrintCaveat } from '../../shared/ui/print-caveat.tsx';
import { Lead } from '../../shared/ui/lead.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { WarningBox } from '../../shared/ui/warnings.tsx';
import { ComparisonSection } from './comparison-section.tsx';
import { pairOf, ProofChoices } from './proof-choices.tsx';
import { unusable, whatIsMissing, type LogState } from './proof-state.ts';
import { logOf } from './run-edits.ts';
import { SetPanel } from './set-panel.tsx';
import { statedFacts, statedWords, type StatedFact } from './stated-facts.ts';
import { SpeedChoosingContext } from './speed-choice.ts';
import { useSpeedChoosing } from './use-speed-choosing.ts';
import { useComparison } from './use-comparison.ts';
import { nominalSpeedOf, useReports, type RunReport } from './use-reports.ts';
import './proof.css';

const noLogs: readonly LogSummary[] = [];

/** What the measured stops show: the comparison first, then every stop of both sets. */
export default function ProofPage() {
  const jobId = useJobPart((state) => state.id);
  const document = useJobDocument();
  const [search] = useSearchParams();
  const { before, after, definition } = pairOf(document, search);
  const logs = useQuery({
    queryKey: ['logs', jobId],
    queryFn: ({ signal }) => listLogs(jobId, signal),
    staleTime: 10_000,
  });
  const kept = logs.data ?? noLogs;
  const reading = useJobReading().data;
  const job = reading?.ok ? reading.job : null;
  const runs = document.runs ?? [];
  const nominalSpeed = nominalSpeedOf(job?.runs ?? [], job?.conditions.facts.speed.value ?? null);
  const shown = job ? runs.filter((run) => run.setUp === before || run.setUp === after) : [];
  const speedChoosing = useSpeedChoosing();
  const reports = useReports({
    jobId,
    runs: shown,
    logs: kept,
    nominalSpeed,
    speedColumns: speedChoosing.choices,
  });
  const of = (setUp: string) => reports.filter(({ run }) => run.setUp === setUp);
  const runsOf = (setUp: string) => of(setUp).map(({ run }) => run);
  const said = statedConfounders(runsOf(before), runsOf(after));
  const facts = statedFacts(runsOf(before), runsOf(after));
  const missing = whatIsMissing({
    sameSetUp: before === after,
    before: of(before).map(stateOf),
    after: of(after).map(stateOf),
  });
  const set = (setUp: string) => ({
    setUp,
    name: document.setUps[setUp]?.title ?? setUp,
    reports: readReports(of(setUp)),
  });
  const comparison = useComparison({
    before: set(before),
    after: set(after),
    definition,
    confounders: said,
    ready: missing === null,
  });
  const spare = kept.filter((log) => !runs.some((run) => logOf(run, kept)?.id === log.id));
  const all = readReports(reports);
  const compared = missing === null && comparison.data?.kind === 'comparison' ? comparison.data : null;
  const fastest = Math.max(...all.flatMap(({ stops }) => stops.map((stop) => stop.entrySpeed_m_s)), 1);
  const left = missing === null ? unusable(reports.map(stateOf)) : [];

  return (
    <SpeedChoosingContext value={speedChoosing}>
      <PageHead title="Proof" question="What did the stops show?">
        <Lead text={missing ?? answer(comparison.data, compared ? facts : [])} />
      </PageHead>
      {compared && <PrintCaveat words={caveat} />}
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
      <ProofChoices document={document} />
      <RoadSheet longest={longest(all, compared)}>
        {compared && <ComparisonSection comparison={compared} facts={facts} said={said} />}
        <Section title="Stops before" intro={document.setUps[before]?.title}>
          <SetPanel side="before" setUp={before} reports={of(before)} spare={spare} fastest={fastest} />
        </Section>
        {before !== after && (
          <Section title="Stops after" intro={document.setUps[after]?.title}>
            <SetPanel side="after" setUp={after} reports={of(after)} spare={spare} fastest={fastest} />
          </Section>
        )}
      </RoadSheet>
      {compared?.expectation && reading?.ok && <PrintAssumed assumed={reading.assumed} />}
    </SpeedChoosingContext>
  );
}

const caveat =
  'Measured stops hold for their day’s tires, surface, rotor temperature and driver; they are no promise for other roads.';

function answer(data: Comparison | ComparisonRefusal | undefined, facts: readonly StatedFact[]): string {
  if (!data) return 'Comparing …';
  return [data.sentence, ...statedWords(facts)].join(' ');
}

function stateOf({ run, log, query }: RunReport): LogState {
  return {
    name: log?.name ?? run.log,
    missing: log === undefined,
    failed: query.isError,
    refused: query.data?.kind === 'log-refusal',
    report: query.data?.kind === 'log-report' ? query.data : null,
  };
}

function readReports(reports: readonly RunReport[]): readonly LogReport[] {
  return reports.flatMap((report) => stateOf(report).report ?? []);
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
