import { saveJob } from '../api/jobs.ts';
import type { DraftShelf } from './draft.ts';
import type { JobOutside } from './job-session.ts';
import { pageId } from './page-id.ts';

/** The real outside of a job session: the server, this device's storage and the browser's clock. */
export function browserOutside(): JobOutside {
  return {
    save: saveJob,
    shelf: browserShelf(),
    pageId: pageId(),
    now: () => Date.now(),
    later: (work, milliseconds) => window.setTimeout(work, milliseconds),
    cancel: (handle) => window.clearTimeout(handle as number),
  };
}

/** `localStorage`, or nothing at all where the browser refuses it: the app works on, only without drafts. */
function browserShelf(): DraftShelf {
  try {
    localStorage.setItem('standstill.probe', '1');
    localStorage.removeItem('standstill.probe');
    return localStorage;
  } catch {
    return { getItem: () => null, setItem: () => {}, removeItem: () => {}, key: () => null, length: 0 };
  }
}
