import { useJobDocument, useJobPart } from '../shared/job/job-context.ts';
import type { JobState } from '../shared/job/job-session.ts';

const words: Readonly<Record<JobState['saving'], string>> = {
  saved: 'saved',
  waiting: 'saving …',
  saving: 'saving …',
  'server-down': 'kept on this device',
  refused: 'not saved',
  conflict: 'changed elsewhere',
};

/** The job's cells of the title block: title, version, and how saving goes. */
export function JobCells() {
  const { title } = useJobDocument();
  const version = useJobPart((state) => state.kept.version);
  const saving = useJobPart((state) => state.saving);
  const unread = useJobPart((state) => Object.keys(state.texts).length);
  return (
    <>
      <div className="job-cell">
        <span className="label">Job</span>
        <span className="job-title">{title}</span>
      </div>
      <div className="revision">
        <span className="label">Version {version}</span>
        <span role="status">
          {saving === 'saved' && unread > 0
            ? `saved, ${unread} ${unread === 1 ? 'value' : 'values'} not taken`
            : words[saving]}
        </span>
      </div>
    </>
  );
}

export function JobCellsWaiting() {
  return (
    <>
      <div className="job-cell">
        <span className="label">Job</span>
        <span className="job-title">…</span>
      </div>
      <div className="revision">
        <span className="label">Version</span>
        <span>…</span>
      </div>
    </>
  );
}
