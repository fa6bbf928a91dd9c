import { isBeyondWaterSource, usualRegain } from '@standstill/braking';
import type { Job, JobSetUp } from '../../job/job.ts';
import type { Warning } from '../../results/warning.ts';
import type { Settled } from '../../settle/settle.ts';
import { speaker } from '../../words/speaker.ts';
import { isOnWater } from '../is-on-water.ts';
import type { UnitSystem } from '@standstill/units';

/** What is taken for granted about whoever drives a set-up. */
export function modelNotes({ setUp: { id, title }, settled }: ModelNotesInput): Warning[] {
  const notes = waterNotes({ setUp: { id, title }, settled });
  if (settled.setUp.antilock.kind !== 'none') return notes;
  const message = `${title}: without ABS a practiced driver is taken to hold 90 % of the lock limit (assumed); a locked or a timid foot stops longer.`;
  return [...notes, { code: 'driver-at-limit', severity: 'note', about: id, message }];
}

interface ModelNotesInput {
  readonly setUp: JobSetUp;
  readonly settled: Settled;
}

/** Where the table of grip on water ends. */
function waterNotes({ setUp: { id, title }, settled }: WaterNotesInput): Warning[] {
  const { setUp, road, speed } = settled;
  const isBeyond = [setUp.frontTire, setUp.rearTire].some((tire) =>
    isBeyondWaterSource({ tire, road, speed }),
  );
  if (!isBeyond) return [];
  const message = `${title}: the table of grip on water ends at 130 km/h (81 mph) and at 1.6 mm (2/32 in) of tread; beyond that its last row is held, and real tires may float with no grip at all.`;
  return [{ code: 'water-out-of-range', severity: 'caution', about: id, message }];
}

interface WaterNotesInput {
  readonly setUp: Pick<JobSetUp, 'id' | 'title'>;
  readonly settled: Settled;
}

interface JobNotesInput {
  readonly job: Job;
  readonly settled: Settled;
  /** s, longest first stop of all set-ups. */
  readonly stopTime: number;
  readonly units: UnitSystem;
}

/** Where nothing of the model but its energy is sure. */
const looseOrFrozen: ReadonlySet<string> = new Set(['gravel', 'packedSnow', 'ice']);

/** What holds for the whole prediction. */
export function jobNotes(input: JobNotesInput): Warning[] {
  const notes: Warning[] = [];
  if (isOnWater(input.job)) {
    const message =
      input.settled.road.waterDepth > 0
        ? 'On water the grip falls with speed, depth of water and worn tread, by one published table for all tires; from tire to tire and road to road it differs by more than the intervals here hold. No saving on this road is sure.'
        : 'On water the grip falls with speed and depth; here one stated surface factor stands for it at every speed. No saving on this road is sure.';
    notes.push({ code: 'grip-on-water', severity: 'caution', message });
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
  const notes = ladenNotes(car);
  if (car.regeneration === null && car.creep === null) return notes;
  const message =
    'Distances are those of the friction brakes alone; regeneration and creep count in the lock order only.';
  return [...notes, { code: 'drive-left-out', severity: 'caution', message }];
}

/** Where what the car carries is assumed. */
export function ladenNotes({ laden }: Job['car']): Warning[] {
  if (Object.values(laden).every(({ of }) => of === 'car')) return [];
  const message =
    'The lock order was looked at as tested and laden, but what the car carries laden is assumed in part: weigh it, or state car.laden from its papers.';
  return [{ code: 'laden-assumed', severity: 'note', message }];
}

function rowNotes({ job, settled, stopTime, units }: JobNotesInput): Warning[] {
  if (job.conditions.repeatedStops.count < 2) return [];
  const say = speaker(units);
  const needed = stopTime + settled.speed / usualRegain;
  if (settled.interval >= needed) return [];
  const message = `The stops follow each other after ${say.rounded(settled.interval, 'time', 2)}, but stopping and regaining ${say.plain(settled.speed, 'speed')} takes about ${say.rounded(needed, 'time', 2)} (at ${usualRegain} m/s², assumed): no car can be driven like this, and the temperatures belong to no real row of stops.`;
  return [{ code: 'interval-too-short', severity: 'caution', message }];
}
