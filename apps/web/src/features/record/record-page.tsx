import { useQuery } from '@tanstack/react-query';
import { Link } from 'wouter';
import { listLogs } from '../../shared/api/logs.ts';
import { useJobDocument, useJobPart } from '../../shared/job/job-context.ts';
import { JobDangers } from '../../shared/ui/job-dangers.tsx';
import { PageHead } from '../../shared/ui/page-head.tsx';
import { Section } from '../../shared/ui/section.tsx';

/** An honest empty page: what the owner will get, what does not exist yet, and what can be handed over today. */
export default function RecordPage() {
  const { title, notice } = useJobDocument();
  const id = useJobPart((state) => state.id);
  return (
    <>
      <PageHead title="Record" question="What does the owner get?">
        <p>No record yet: this version can print its pages, but makes no signed record of “{title}”.</p>
      </PageHead>
      <JobDangers />
      {notice && <p>{notice}</p>}
      <Section title="What can be handed over today">
        <ul>
          <li>
            The pages <Link href={`/jobs/${id}/limits`}>Limits</Link>,{' '}
            <Link href={`/jobs/${id}/options`}>Options</Link> and{' '}
            <Link href={`/jobs/${id}/proof`}>Proof</Link>, printed from the browser. Pictures print with their
            figures.
          </li>
          <li>
            <a href={`/api/jobs/${id}`} download={`${id}.json`}>
              The job as open data
            </a>
            , and the log files byte for byte as they came off the logger:
            <KeptLogs jobId={id} />
          </li>
        </ul>
      </Section>
      <Section title="What comes here">
        <p>
          A page and a PDF for the owner: what was changed, torque sheet, fluids, bed-in, the stops before and
          after with their intervals and what they do not show, what to watch and when to come back. Readable
          without this program in twenty years. None of that exists yet.
        </p>
      </Section>
      <Section title="What to tell the owner meanwhile">
        <ul>
          <li>
            A measured gain holds for that day’s tires, surface and driver; it is no promise for wet roads.
          </li>
          <li>Bed-in is part of the work: stops before it are longer.</li>
          <li>Wheel nuts again after the first miles. Fluid ages: it boils sooner every year.</li>
          <li>A lamp that lights, a pedal that sinks, a pull to one side: do not drive on.</li>
        </ul>
      </Section>
    </>
  );
}

function KeptLogs({ jobId }: { readonly jobId: string }) {
  const logs = useQuery({ queryKey: ['logs', jobId], queryFn: ({ signal }) => listLogs(jobId, signal) });
  if (logs.error) return ' the list of logs could not be read.';
  if (!logs.data) return ' …';
  if (logs.data.length === 0) return ' none yet.';
  return (
    <ul>
      {logs.data.map(({ id, name }) => (
        <li key={id}>
          <a href={`/api/jobs/${jobId}/logs/${id}`} download={name}>
            {name}
          </a>
        </li>
      ))}
    </ul>
  );
}
