import type { JobDocument } from '@standstill/workshop';
import { useId, useState } from 'react';
import { useJobDocument, useJobSession } from '../../shared/job/job-context.ts';
import { Section } from '../../shared/ui/section.tsx';
import { ChoiceField } from './choice-field.tsx';
import { addSetUp, keptBecause } from './edit-set-ups.ts';
import { slotGroups } from './slot-groups.ts';
import { SlotRow } from './slot-row.tsx';
import { TextField } from '../../shared/job/text-field.tsx';

/** The set-ups of the job, one at a time: which part stands where, and what is known about each. */
export function SetUpsSection() {
  const document = useJobDocument();
  const session = useJobSession();
  const ids = Object.keys(document.setUps);
  const [wanted, setWanted] = useState(ids[0] ?? '');
  const shown = document.setUps[wanted] ? wanted : (ids[0] ?? '');

  const add = () => {
    const added = addSetUp(session.read().document as JobDocument);
    session.edit(() => added.document);
    setWanted(added.id);
  };

  return (
    <Section
      title="Set-ups and parts"
      intro="The first set-up is the car as found. Others say only what changes."
    >
      <div className="stack">
        <div className="actions inline-actions">
          <SetUpChoice document={document} shown={shown} onChoose={setWanted} />
          <button type="button" onClick={add}>
            Add a set-up
          </button>
        </div>
        {document.setUps[shown] && <SetUpForm key={shown} id={shown} document={document} />}
      </div>
    </Section>
  );
}

interface SetUpChoiceProps {
  readonly document: JobDocument;
  readonly shown: string;
  readonly onChoose: (id: string) => void;
}

function SetUpChoice({ document, shown, onChoose }: SetUpChoiceProps) {
  const id = useId();
  return (
    <div className="field">
      <label htmlFor={id}>Set-up to edit</label>
      <select id={id} value={shown} onChange={(event) => onChoose(event.target.value)}>
        {Object.entries(document.setUps).map(([setUpId, setUp]) => (
          <option key={setUpId} value={setUpId}>
            {setUp.title}
          </option>
        ))}
      </select>
    </div>
  );
}

const splits = [
  { id: 'front-rear', title: 'front and rear' },
  { id: 'diagonal', title: 'diagonal' },
];

function SetUpForm({ id, document }: { readonly id: string; readonly document: JobDocument }) {
  const session = useJobSession();
  const stays = keptBecause(document, id);
  return (
    <div className="stack">
      <div className="fields">
        <TextField path={`setUps.${id}.title`} title="Name of the set-up" required />
        <ChoiceField
          path={`setUps.${id}.circuitSplit`}
          title="Circuits split"
          options={splits}
          open="not stated"
        />
      </div>
      {slotGroups.map(({ title, slots }) => (
        <section key={title} className="slot-group" aria-label={title}>
          <h3>{title}</h3>
          <div className="slots">
            {slots.map((slot) => (
              <SlotRow key={slot} setUpId={id} slot={slot} />
            ))}
          </div>
        </section>
      ))}
      <p className="small soft">
        {stays === null ? (
          <button type="button" className="bare" onClick={() => session.set(`setUps.${id}`, undefined)}>
            Take this set-up out of the job
          </button>
        ) : (
          `This set-up stays: ${stays}.`
        )}
      </p>
    </div>
  );
}
