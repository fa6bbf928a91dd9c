import { useState } from 'react';
import {
  documentDifferences,
  shownValue,
  type DocumentDifference,
} from '../shared/job/document-differences.ts';
import { useJobPart, useJobSession } from '../shared/job/job-context.ts';
import { setAt } from '../shared/job/set-at.ts';
import { PageHead } from '../shared/ui/page-head.tsx';

type Choice = 'mine' | 'theirs';

/** Two people changed the job at once: both versions side by side, and a person chooses. Nothing is written before. */
export function Conflict() {
  const session = useJobSession();
  const document = useJobPart((state) => state.document);
  const kept = useJobPart((state) => state.kept);
  const theirs = useJobPart((state) => state.theirs);
  const [choices, setChoices] = useState<Readonly<Record<string, Choice>>>({});
  if (!theirs) return null;
  const differences = documentDifferences(document, theirs.document, kept.document);
  const chosen = (difference: DocumentDifference) => choices[difference.path] ?? usual(difference);
  const open = differences.filter((difference) => chosen(difference) === null).length;
  const merged = () =>
    differences
      .filter((difference) => chosen(difference) === 'mine')
      .reduce((result, { path, mine }) => setAt(result, path, mine), theirs.document);
  return (
    <div className="stack">
      <PageHead title="Changed elsewhere" question="Which version stands?">
        Somebody saved version {theirs.version} of this job while you were editing version {kept.version}.
        Nothing of yours was written, nothing is lost: choose for each value.
      </PageHead>
      <div className="table-wrap" tabIndex={0} role="group" aria-label="Differences between the two versions">
        <table>
          <thead>
            <tr>
              <th scope="col">Value</th>
              <th scope="col">Yours</th>
              <th scope="col">Theirs, version {theirs.version}</th>
            </tr>
          </thead>
          <tbody>
            {differences.map((difference) => (
              <DifferenceRow
                key={difference.path}
                difference={difference}
                choice={chosen(difference)}
                onChoose={(choice) => setChoices({ ...choices, [difference.path]: choice })}
              />
            ))}
          </tbody>
        </table>
      </div>
      <div className="actions">
        <button
          type="button"
          className="primary"
          disabled={open > 0}
          onClick={() => void session.keep(merged())}
        >
          Save these choices
        </button>
        <button type="button" onClick={() => void session.keep(document)}>
          Keep all of mine
        </button>
        <button type="button" onClick={session.takeTheirs}>
          Take all of theirs
        </button>
      </div>
      <p className="small soft">
        {open > 0 && `${open} changed by both, still to choose. `}
        Every version stays in the history of the job.
      </p>
    </div>
  );
}

/** What only one side changed, that side keeps; what both changed is for a person. */
function usual({ changedBy }: DocumentDifference): Choice | null {
  if (changedBy === null) return null;
  return changedBy === 'me' ? 'mine' : 'theirs';
}

interface DifferenceRowProps {
  readonly difference: DocumentDifference;
  readonly choice: Choice | null;
  readonly onChoose: (choice: Choice) => void;
}

function DifferenceRow({ difference, choice, onChoose }: DifferenceRowProps) {
  const { path, mine, theirs } = difference;
  const option = (which: Choice, value: unknown) => (
    <td>
      <label className="choice">
        <input type="radio" name={path} checked={choice === which} onChange={() => onChoose(which)} />
        {shownValue(value)}
      </label>
    </td>
  );
  return (
    <tr>
      <th scope="row">{path}</th>
      {option('mine', mine)}
      {option('theirs', theirs)}
    </tr>
  );
}
