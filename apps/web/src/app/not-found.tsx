import { Link } from 'wouter';
import { PageHead } from '../shared/ui/page-head.tsx';
import { Sheet } from './sheet.tsx';

export function NotFound() {
  return (
    <Sheet>
      <PageHead title="Not here" question="Where is this page?">
        There is no page at this address.
      </PageHead>
      <Link href="/jobs" className="button">
        All jobs
      </Link>
    </Sheet>
  );
}
