import { Link, useLocation } from 'wouter';
import { stages } from '../shared/stages.ts';

/** The six stages as numbered sheets of one set. */
export function StageNavigation({ jobId }: { readonly jobId: string }) {
  const [location] = useLocation();
  return (
    <nav aria-label="Stages of the job">
      <ol className="stages">
        {stages.map(({ id, title }, index) => {
          const address = `/jobs/${jobId}/${id}`;
          return (
            <li key={id}>
              <Link href={address} aria-current={location === address ? 'page' : undefined}>
                <span className="label" aria-hidden="true">
                  {index + 1}
                </span>
                {title}
              </Link>
            </li>
          );
        })}
      </ol>
    </nav>
  );
}
