import { useQuery } from '@tanstack/react-query';
import type { JobSummary } from '@standstill/workshop';
import { Link } from 'wouter';
import { listJobs } from '../../shared/api/jobs.ts';
import { Loading } from '../../shared/ui/loading.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';
import { Trouble } from '../../shared/ui/trouble.tsx';
import { NewJobForm } from './new-job-form.tsx';
import './jobs.css';

/** All jobs of the shop, and the way to a new one. */
export default function JobsListPage() {
  const jobs = useQuery({
    queryKey: ['jobs'],
    queryFn: ({ signal }) => listJobs(signal),
    refetchOnWindowFocus: true,
  });
  return (
    <>
      <PageHead title="Jobs" question="What is in the shop?">
        <p>{answer(jobs.data, jobs.error !== null)}</p>
      </PageHead>
      {jobs.isPending && <Loading what="the jobs" />}
      {jobs.error && (
        <Trouble tried="list the jobs" reason={jobs.error} onRetry={() => void jobs.refetch()} />
      )}
      {jobs.data && jobs.data.length > 0 && <JobsTable jobs={jobs.data} />}
      <Section
        title="New job"
        intro="A name is enough to begin. What you leave out is assumed, and marked so until you measure it."
      >
        <NewJobForm />
      </Section>
    </>
  );
}

function answer(jobs: readonly JobSummary[] | undefined, failed: boolean): string {
  if (failed) return 'The list could not be read.';
  if (!jobs) return '…';
  if (jobs.length === 0) return 'No job yet. Begin one below.';
  return jobs.length === 1 ? 'One job.' : `${jobs.length} jobs, the last changed first.`;
}

const day = new Intl.DateTimeFormat('en-US', { dateStyle: 'medium', timeStyle: 'short' });

function JobsTable({ jobs }: { readonly jobs: readonly JobSummary[] }) {
  return (
    <ul className="jobs">
      {jobs.map(({ id, title, version, changedAt }) => (
        <li key={id}>
          <Link href={`/jobs/${id}/survey`}>{title}</Link>
          <span className="small soft">
            version {version}, {day.format(new Date(changedAt))}
          </span>
        </li>
      ))}
    </ul>
  );
}
