import {
  assumableSlots,
  emptiableSlots,
  partSlots,
  type JobDocument,
  type PartSlot,
} from '@standstill/workshop';
import { useId, useState } from 'react';
import { useJobDocument, useJobSession } from '../../shared/job/job-context.ts';
import { addPart, partInSlot } from './edit-set-ups.ts';
import { PartFields } from './part-fields.tsx';

export interface SlotRowProps {
  readonly setUpId: string;
  readonly slot: PartSlot;
}

const newPart = '+';

/** What stands in one place of a set-up, and the values of that part. */
export function SlotRow({ setUpId, slot }: SlotRowProps) {
  const document = useJobDocument();
  const session = useJobSession();
  const id = useId();
  const [open, setOpen] = useState(false);
  const { title } = partSlots[slot];
  const present = partInSlot(document, setUpId, slot);
  const part = present === undefined ? undefined : document.parts[present];

  const choose = (choice: string) => {
    if (choice === newPart) return session.edit((now) => addPart(now as JobDocument, setUpId, slot));
    session.set(`setUps.${setUpId}.${slot}`, choice === '' ? undefined : choice);
  };

  return (
    <div className="slot">
      <div className="field">
        <label htmlFor={id}>{capital(title)}</label>
        <select
          id={id}
          value={document.setUps[setUpId]?.[slot] ?? ''}
          onChange={(event) => choose(event.target.value)}
        >
          <SlotOptions document={document} setUpId={setUpId} slot={slot} />
        </select>
      </div>
      {part && present !== undefined && (
        <details onToggle={(event) => setOpen(event.currentTarget.open)}>
          <summary>
            Values of {part.title}
            {sharers(document, present, setUpId)}
          </summary>
          {open && <PartFields id={present} />}
        </details>
      )}
    </div>
  );
}

function SlotOptions({ document, setUpId, slot }: { readonly document: JobDocument } & SlotRowProps) {
  const setUp = document.setUps[setUpId];
  const base = setUp?.basedOn === undefined ? undefined : document.setUps[setUp.basedOn];
  const inherited = setUp?.basedOn === undefined ? undefined : partInSlot(document, setUp.basedOn, slot);
  const { kind } = partSlots[slot];
  const fitting = Object.entries(document.parts).filter(([, part]) => part.kind === kind);
  return (
    <>
      <option value="">
        {openChoice(base?.title, inherited && (document.parts[inherited]?.title ?? inherited), slot)}
      </option>
      {fitting.map(([id, part]) => (
        <option key={id} value={id}>
          {part.title}
        </option>
      ))}
      {(emptiableSlots as readonly PartSlot[]).includes(slot) && (
        <option value="none">none on this car</option>
      )}
      <option value={newPart}>a part of its own …</option>
    </>
  );
}

/** How the slot reads where the set-up itself says nothing. */
function openChoice(base: string | undefined, inherited: string | undefined, slot: PartSlot): string {
  if (base !== undefined && inherited !== undefined) return `as in “${base}”: ${inherited}`;
  if ((assumableSlots as readonly PartSlot[]).includes(slot)) return 'not stated: assumed';
  return 'needed: choose a part';
}

/** A part that several set-ups share changes in all of them. */
function sharers(document: JobDocument, partId: string, setUpId: string): string {
  const others = Object.entries(document.setUps).filter(
    ([id]) =>
      id !== setUpId &&
      Object.keys(partSlots).some((slot) => partInSlot(document, id, slot as PartSlot) === partId),
  );
  return others.length === 0 ? '' : ` (also in ${others.map(([, setUp]) => setUp.title).join(', ')})`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
