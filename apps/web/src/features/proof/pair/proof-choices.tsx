import type { JobDocument } from '@standstill/workshop';
import { useSearchParams } from 'wouter';
import { Choice } from './choice.tsx';
import { StartWindow } from './start-window.tsx';
/** Which of the two named definitions of distance. */
export type Definition = 'application' | 'gate';

export interface ProofPair {
  readonly before: string;
  readonly after: string;
  readonly definition: Definition;
}

/** Which set-ups are compared, and by which definition of distance: as the address says, else the likeliest. */
export function pairOf(document: JobDocument, search: URLSearchParams): ProofPair {
  const ids = Object.keys(document.setUps);
  const named = (key: string) => ids.find((id) => id === search.get(key));
  const measured = ids.filter((id) => document.runs?.some((run) => run.setUp === id));
  const before = named('before') ?? ids[0] ?? '';
  const others = (list: readonly string[]) => list.find((id) => id !== before);
  const after = named('after') ?? others(measured) ?? others(ids) ?? before;
  return { before, after, definition: search.get('distance') === 'gate' ? 'gate' : 'application' };
}

const definitions = [
  { id: 'application', title: 'from the first touch of the brake' },
  { id: 'gate', title: 'from crossing the speed' },
] as const;

/** The choices stand in the address, so that a reload or a link keeps them. */
export function ProofChoices({ document }: { readonly document: JobDocument }) {
  const [search, setSearch] = useSearchParams();
  const { before, after, definition } = pairOf(document, search);
  const choose = (change: Partial<ProofPair>) => {
    const next = { before, after, definition, ...change };
    setSearch({ before: next.before, after: next.after, distance: next.definition }, { replace: true });
  };
  const setUps = Object.entries(document.setUps).map(([id, { title }]) => ({ id, title }));
  return (
    <>
      <div className="fields choices">
        <Choice title="Before" value={before} options={setUps} onChoose={(id) => choose({ before: id })} />
        <Choice title="After" value={after} options={setUps} onChoose={(id) => choose({ after: id })} />
        <Choice
          title="Distance"
          value={definition}
          options={definitions}
          onChoose={(id) => choose({ definition: id === 'gate' ? 'gate' : 'application' })}
        />
      </div>
      <StartWindow />
    </>
  );
}
