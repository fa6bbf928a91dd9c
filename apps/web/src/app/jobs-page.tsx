import { lazy, Suspense } from 'react';
import { Loading } from '../shared/ui/loading.tsx';
import { Sheet } from './sheet.tsx';

const Jobs = lazy(() => import('../features/jobs/jobs-list-page.tsx'));

export function JobsPage() {
  return (
    <Sheet>
      <Suspense fallback={<Loading what="the jobs" />}>
        <Jobs />
      </Suspense>
    </Sheet>
  );
}
