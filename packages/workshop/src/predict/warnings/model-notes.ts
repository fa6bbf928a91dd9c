import type { RepeatedStop } from '@standstill/braking';
import type { JobSetUp } from '../../job/job.ts';
import type { Warning } from '../../results/warning.ts';
import type { Settled } from '../../settle/settle.ts';
import { speaker } from '../../words/speaker.ts';
import type { Speaker } from '../../words/speaker.ts';
import type { UnitSystem } from '@standstill/units';

interface ModelNotesInput {
  readonly setUp: JobSetUp;
  readonly settled: Settled;
  readonly row: readonly RepeatedStop[];
  readonly units: UnitSystem;
}

/** Where a set-up leaves the range of what its figures were stated for. */
export function modelNotes({ setUp, settled, row, units }: ModelNotesInput): Warning[] {
  const say = speaker(units);
  return [
    ...beyondFriction(
      setUp,
      'front',
      settled.setUp.frontBrake.pad.frictionTemperatures,
      hottest(row, 'front'),
      say,
    ),
    ...beyondFriction(
      setUp,
      'rear',
      settled.setUp.rearBrake.pad.frictionTemperatures,
      hottest(row, 'rear'),
      say,
    ),
    ...driverNote(setUp, settled),
  ];
}

function hottest(row: readonly RepeatedStop[], axle: 'front' | 'rear'): number {
  return Math.max(...row.map(({ stop }) => stop[axle].peakInterface));
}

function beyondFriction(
  { id, title }: JobSetUp,
  axle: 'front' | 'rear',
  temperatures: readonly number[],
  peak: number,
  say: Speaker,
): Warning[] {
  const last = temperatures.at(-1) ?? Infinity;
  if (temperatures.length < 2 || peak <= last) return [];
  const message = `${title}: the ${axle} pads reach ${say.plain(peak, 'temperature')} in the repeated stops, above the ${say.plain(last, 'temperature')} up to which their friction is stated: what they do there is not known.`;
  return [{ code: 'friction-beyond-table', severity: 'caution', about: id, message }];
}

function driverNote({ id, title }: JobSetUp, { setUp }: Settled): Warning[] {
  if (setUp.antilock.kind !== 'none') return [];
  const message = `${title}: without ABS a practiced driver is taken to hold 90 % of the lock limit (assumed); a locked or a timid foot stops longer.`;
  return [{ code: 'driver-at-limit', severity: 'note', about: id, message }];
}

/** What holds for the whole prediction. */
export function jobNotes(surface: string, draws: number, dropped: number): Warning[] {
  const notes: Warning[] = [];
  if (surface === 'wet') {
    const message =
      'On water the grip falls with speed and depth; here one factor stands for it, good near 50 km/h and too kind at speed.';
    notes.push({ code: 'wet-by-one-factor', severity: 'caution', message });
  }
  if (dropped > 0) {
    const severity = dropped > 0.02 * draws ? 'caution' : 'note';
    const message = `${dropped} of ${draws} draws fell outside what the formulas are valid for and were left out of the intervals.`;
    notes.push({ code: 'draws-left-out', severity, message });
  }
  notes.push({
    code: 'one-load-state',
    severity: 'note',
    message:
      'The lock order was looked at for the stated test mass and load shares only; an empty or a loaded car can lock in another order.',
  });
  return notes;
}
