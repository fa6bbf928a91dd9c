import { useQuery } from '@tanstack/react-query';
import type { StoredJob } from '@standstill/workshop';
import { Suspense, useEffect, useRef, useState } from 'react';
import { Link, Redirect } from 'wouter';
import { getJob } from '../shared/api/jobs.ts';
import { ServerRefusal } from '../shared/api/request.ts';
import { browserOutside } from '../shared/job/browser-outside.ts';
import { JobContext, useJobPart } from '../shared/job/job-context.ts';
import { startJobSession, type JobSession } from '../shared/job/job-session.ts';
import { stages, type StageId } from '../shared/stages.ts';
import { Loading } from '../shared/ui/loading.tsx';
import { PageHead } from '../shared/ui/page-head.tsx';
import { Trouble } from '../shared/ui/trouble.tsx';
import { Conflict } from './conflict.tsx';
import { JobCells, JobCellsWaiting } from './job-cells.tsx';
import { SavingBand } from './saving-band.tsx';
import { Sheet } from './sheet.tsx';
import { StageErrors } from './stage-errors.tsx';
import { StageNavigation } from './stage-navigation.tsx';
import { stagePages } from './stage-pages.ts';

export interface JobFrameProps {
  readonly id: string;
  readonly stage: string | null;
}

/** One job: loads it, and holds its edits while the person moves between the stages. */
export function JobFrame({ id, stage }: JobFrameProps) {
  const job = useQuery({
    queryKey: ['job', id],
    queryFn: ({ signal }) => getJob(id, signal),
    staleTime: 2000,
  });
  const known = stages.find((one) => one.id === stage);
  if (!known) return <Redirect to={`/jobs/${id}/survey`} replace />;
  if (job.data) return <LoadedJob kept={job.data} stage={known.id} />;
  return (
    <JobSheetWaiting id={id}>
      {job.error ? (
        <NoJob reason={job.error} onRetry={() => void job.refetch()} />
      ) : (
        <Loading what="the job" />
      )}
    </JobSheetWaiting>
  );
}

function JobSheetWaiting({ id, children }: { readonly id: string; readonly children: React.ReactNode }) {
  return (
    <Sheet cells={<JobCellsWaiting />} above={<StageNavigation jobId={id} />}>
      {children}
    </Sheet>
  );
}

/** Starts a session with the first version that is loaded; later versions reach it where nothing is edited. */
function LoadedJob({ kept, stage }: { readonly kept: StoredJob; readonly stage: StageId }) {
  const first = useRef(kept);
  const [session, setSession] = useState<JobSession | null>(null);
  useEffect(() => {
    const started = startJobSession(first.current, browserOutside());
    setSession(started);
    return () => started.close();
  }, []);
  useEffect(() => session?.refresh(kept), [kept, session]);
  if (!session) return <JobSheetWaiting id={kept.id}>{null}</JobSheetWaiting>;
  return (
    <JobContext.Provider value={session}>
      <OpenJobSheet id={kept.id} stage={stage} />
    </JobContext.Provider>
  );
}

function NoJob({ reason, onRetry }: { readonly reason: unknown; readonly onRetry: () => void }) {
  if (reason instanceof ServerRefusal && reason.problem.status === 404) {
    return (
      <>
        <PageHead title="No such job" question="Where is this job?">
          There is no job at this address. It may have been kept on another server.
        </PageHead>
        <Link href="/jobs" className="button">
          All jobs
        </Link>
      </>
    );
  }
  return <Trouble tried="read the job" reason={reason} onRetry={onRetry} />;
}

function OpenJobSheet({ id, stage }: { readonly id: string; readonly stage: StageId }) {
  const inConflict = useJobPart((state) => state.saving === 'conflict');
  const Page = stagePages[stage];
  const above = (
    <>
      <StageNavigation jobId={id} />
      <SavingBand />
    </>
  );
  return (
    <Sheet cells={<JobCells />} above={above}>
      {inConflict ? (
        <Conflict />
      ) : (
        <StageErrors key={stage}>
          <Suspense fallback={<Loading what="the page" />}>
            <Page />
          </Suspense>
        </StageErrors>
      )}
    </Sheet>
  );
}
