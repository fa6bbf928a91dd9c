import { useQuery } from '@tanstack/react-query';
import { statedConfounders, type LogReport, type LogSummary } from '@standstill/workshop';
import { useSearchParams } from 'wouter';
import { listLogs } from '../../shared/api/logs.ts';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { useJobReading } from '../../shared/job/use-job-reading.ts';
import { RoadSheet } from '../../shared/picture/road-scale.tsx';
import { Lead } from '../../shared/ui/lead.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { ComparisonSection } from './comparison-section.tsx';
import { pairOf, ProofChoices } from './proof-choices.tsx';
import { logOf } from './run-edits.ts';
import { SetPanel } from './set-panel.tsx';
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
  const reports = useReports({ jobId, runs: shown, logs: kept, nominalSpeed });
  const of = (setUp: string) => reports.filter(({ run }) => run.setUp === setUp);
  const comparison = useComparison({
    before: {
      setUp: before,
      name: document.setUps[before]?.title ?? before,
      reports: readReports(of(before)),
    },
    after: { setUp: after, name: document.setUps[after]?.title ?? after, reports: readReports(of(after)) },
    definition,
    confounders: statedConfounders(
      of(before).map(({ run }) => run),
      of(after).map(({ run }) => run),
    ),
  });
  const spare = kept.filter((log) => !runs.some((run) => logOf(run, kept)?.id === log.id));
  const all = readReports(reports);
  const compared = comparison.data?.kind === 'comparison' ? comparison.data : null;
  const fastest = Math.max(...all.flatMap(({ stops }) => stops.map((stop) => stop.entrySpeed_m_s)), 1);

  return (
    <>
      <PageHead title="Proof" question="What did the stops show?">
        <Lead text={comparison.data?.sentence ?? firstWords(of(before), of(after))} />
      </PageHead>
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
      <RoadSheet longest={longest(all)}>
        {compared && <ComparisonSection comparison={compared} />}
        <Section title="Stops before" intro={document.setUps[before]?.title}>
          <SetPanel side="before" setUp={before} reports={of(before)} spare={spare} fastest={fastest} />
        </Section>
        <Section title="Stops after" intro={document.setUps[after]?.title}>
          <SetPanel side="after" setUp={after} reports={of(after)} spare={spare} fastest={fastest} />
        </Section>
      </RoadSheet>
    </>
  );
}

function readReports(reports: readonly RunReport[]): readonly LogReport[] {
  return reports.flatMap(({ query }) => (query.data?.kind === 'log-report' ? [query.data] : []));
}

/** What can be said before there is a comparison. */
function firstWords(before: readonly RunReport[], after: readonly RunReport[]): string {
  const reading = [...before, ...after].some(({ log, query }) => log && query.isPending);
  if (reading) return 'Reading the logs …';
  if (before.length === 0 && after.length === 0)
    return 'Nothing yet: add a log of stops before the work and one after.';
  if (before.length === 0) return 'Half of it: there are stops after the work, but none before.';
  if (after.length === 0) return 'Half of it: there are stops before the work, but none after.';
  if (readReports(before).length === 0 || readReports(after).length === 0)
    return 'No comparison: a log could not be used, see below.';
  return 'Comparing …';
}

/** m, the longest stop on the page; a stop that is left out counts as driven, not as corrected from far off. */
function longest(reports: readonly LogReport[]): number {
  const distances = reports.flatMap(({ stops }) =>
    stops.flatMap((stop) => [stop.applicationDistance_m, stop.counted ? (stop.correctedDistance_m ?? 0) : 0]),
  );
  return Math.max(...distances, 30) * 1.04;
}
