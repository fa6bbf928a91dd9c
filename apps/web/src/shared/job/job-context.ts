import type { JobDocument } from '@standstill/workshop';
import { createContext, useContext, useSyncExternalStore } from 'react';
import type { JobSession, JobState } from './job-session.ts';

export const JobContext = createContext<JobSession | null>(null);

export function useJobSession(): JobSession {
  const session = useContext(JobContext);
  if (!session) throw new Error('A part of a job outside of a job');
  return session;
}

/** One part of the job's state; the component is drawn again only when that part changes. */
export function useJobPart<T>(part: (state: JobState) => T): T {
  const session = useJobSession();
  return useSyncExternalStore(session.subscribe, () => part(session.read()));
}

/** The document as the schema describes it; the server keeps none that breaks it, an edit here may for a moment. */
export function useJobDocument(): JobDocument {
  return useJobPart((state) => state.document) as JobDocument;
}
