import type { Job, JobSetUp } from '../../job/job.ts';
import type { Warning } from '../../results/warning.ts';
import type { Settled } from '../../settle/settle.ts';
import { speaker } from '../../words/speaker.ts';
import type { UnitSystem } from '@standstill/units';

/** What is taken for granted about whoever drives a set-up. */
export function modelNotes({ setUp: { id, title }, settled }: ModelNotesInput): Warning[] {
  if (settled.setUp.antilock.kind !== 'none') return [];
  const message = `${title}: without ABS a practiced driver is taken to hold 90 % of the lock limit (assumed); a locked or a timid foot stops longer.`;
  return [{ code: 'driver-at-limit', severity: 'note', about: id, message }];
}

interface ModelNotesInput {
  readonly setUp: JobSetUp;
  readonly settled: Settled;
}

interface JobNotesInput {
  readonly job: Job;
  readonly settled: Settled;
  /** s, longest first stop of all set-ups. */
  readonly stopTime: number;
  readonly units: UnitSystem;
}

/** m/s², at which a road car regains its speed between stops (assumed). */
const regain = 3;

/** Where nothing of the model but its energy is sure. */
const looseOrFrozen: ReadonlySet<string> = new Set(['gravel', 'packedSnow', 'ice']);

/** What holds for the whole prediction. */
export function jobNotes(input: JobNotesInput): Warning[] {
  const notes: Warning[] = [];
  if (input.job.conditions.surface === 'wet') {
    const message =
      'On water the grip falls with speed and depth; here one factor stands for it, good near 50 km/h and too kind at speed. No saving on this road is sure.';
    notes.push({ code: 'wet-by-one-factor', severity: 'caution', message });
  }
  if (looseOrFrozen.has(input.job.conditions.surface)) {
    const message =
      'On gravel, snow and ice the slip curve and the ABS of a dry road do not hold, and one grip factor stands for roads that differ widely: take this as an order of size.';
    notes.push({ code: 'loose-or-frozen-road', severity: 'caution', message });
  }
  notes.push(...rowNotes(input), ...loadNotes(input.job));
  return notes;
}

/** What of load and drive is only assumed or left out. */
function loadNotes({ car }: Job): Warning[] {
  const notes: Warning[] = [];
  if (Object.values(car.laden).some(({ of }) => of === 'load')) {
    const message =
      'The lock order was looked at as tested and laden, but what the car carries laden is assumed in part: weigh it, or state car.laden from its papers.';
    notes.push({ code: 'laden-assumed', severity: 'note', message });
  }
  if (car.regeneration !== null || car.creep !== null) {
    const message =
      'Distances are those of the friction brakes alone; regeneration and creep count in the lock order only.';
    notes.push({ code: 'drive-left-out', severity: 'caution', message });
  }
  return notes;
}

function rowNotes({ job, settled, stopTime, units }: JobNotesInput): Warning[] {
  if (job.conditions.repeatedStops.count < 2) return [];
  const say = speaker(units);
  const needed = stopTime + settled.speed / regain;
  const notes: Warning[] = [];
  if (settled.interval < needed) {
    const message = `The stops follow each other after ${say.rounded(settled.interval, 'time', 2)}, but stopping and regaining ${say.plain(settled.speed, 'speed')} takes about ${say.rounded(needed, 'time', 2)} (at 3 m/s², assumed): no car can be driven like this, and the temperatures belong to no real row of stops.`;
    notes.push({ code: 'interval-too-short', severity: 'caution', message });
  }
  const message =
    'Between the repeated stops the rotors cool as if the speed were regained at once: real rotors get somewhat hotter than shown.';
  return [...notes, { code: 'cooling-optimistic', severity: 'note', message }];
}
