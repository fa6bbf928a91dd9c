import type { Pad, RepeatedStop } from '@standstill/braking';
import type { UnitSystem } from '@standstill/units';
import type { JobSetUp } from '../../job/job.ts';
import { fluidWarning } from '../../heat/fluid-warning.ts';
import type { SetUpPrediction } from '../../results/prediction.ts';
import type { Warning } from '../../results/warning.ts';
import type { Settled } from '../../settle/settle.ts';
import { speaker } from '../../words/speaker.ts';
import type { Speaker } from '../../words/speaker.ts';

interface HeatNotesInput {
  readonly setUp: JobSetUp;
  readonly settled: Settled;
  readonly row: readonly RepeatedStop[];
  readonly prediction: Pick<SetUpPrediction, 'fluid'>;
  readonly units: UnitSystem;
}

type Axle = 'front' | 'rear';

/** °C. Iron's structure changes near 730 °C (from memory); above 700 °C its stated figures end (common practice). */
export const hottestRotor = 700;
/** °C above which pads fade, so that one figure no longer does (common practice). */
const oneFigureEnds = 300;

/** Where heat takes a set-up out of the range of what its figures were stated for, or its fluid near to boiling. */
export function heatNotes(input: HeatNotesInput): Warning[] {
  const { setUp, settled, row, units } = input;
  const say = speaker(units);
  return [
    ...axleNotes(setUp, settled, row, 'front', say),
    ...axleNotes(setUp, settled, row, 'rear', say),
    ...fluidNote(input),
  ];
}

/** True where a stop is hotter than the figures of rotors or pads are stated for. */
export function beyondModel({ setUp }: Settled, { stop }: RepeatedStop): boolean {
  return (['front', 'rear'] as const).some((axle) => {
    const peak = stop[axle].peakInterface;
    const { pad } = axle === 'front' ? setUp.frontBrake : setUp.rearBrake;
    const last = pad.frictionTemperatures.at(-1) ?? Infinity;
    return peak > hottestRotor || peak > (isSingle(pad) ? oneFigureEnds : last);
  });
}

function isSingle({ frictionTemperatures }: Pad): boolean {
  return frictionTemperatures.length < 2;
}

function hottest(row: readonly RepeatedStop[], axle: Axle): number {
  return Math.max(...row.map(({ stop }) => stop[axle].peakInterface));
}

function axleNotes(
  { id, title }: JobSetUp,
  { setUp, startTemperature }: Settled,
  row: readonly RepeatedStop[],
  axle: Axle,
  say: Speaker,
): Warning[] {
  const { pad } = axle === 'front' ? setUp.frontBrake : setUp.rearBrake;
  const temperature = (value: number): string => say.rounded(value, 'temperature', 2);
  const peak = hottest(row, axle);
  const [first = -Infinity, last] = [
    pad.frictionTemperatures[0],
    pad.frictionTemperatures.at(-1) ?? Infinity,
  ];
  const caution = ({ code, message }: Pick<Warning, 'code' | 'message'>): Warning => ({
    code,
    severity: 'caution',
    about: id,
    message: `${title}: ${message}`,
  });
  const notes: Warning[] = [];
  if (peak > hottestRotor)
    notes.push(
      caution({
        code: 'rotor-beyond-model',
        message: `the ${axle} rotors reach ${temperature(peak)} in the repeated stops, above ${say.plain(hottestRotor, 'temperature')}, where the figures of iron end (common practice; its structure changes near ${say.plain(730, 'temperature')}, from memory): distances of such stops are outside the model.`,
      }),
    );
  if (isSingle(pad) && peak > oneFigureEnds)
    notes.push(
      caution({
        code: 'one-friction-figure',
        message: `one friction figure stands for the ${axle} pads over all temperatures, and they reach ${temperature(peak)}: fade is not modeled, real stops may be far longer.`,
      }),
    );
  if (!isSingle(pad) && peak > last)
    notes.push(
      caution({
        code: 'friction-beyond-table',
        message: `the ${axle} pads reach ${temperature(peak)} in the repeated stops, above the ${temperature(last)} up to which their friction is stated: what they do there is not known.`,
      }),
    );
  if (!isSingle(pad) && startTemperature < first)
    notes.push(
      caution({
        code: 'friction-below-table',
        message: `the ${axle} pads start at ${temperature(startTemperature)}, below the ${temperature(first)} from which their friction is stated: cold pads may bite far less.`,
      }),
    );
  return notes;
}

function fluidNote({ setUp: { id, title }, prediction, units }: HeatNotesInput): Warning[] {
  const { fluid } = prediction;
  if (fluid === null) return [];
  const { highest_C: highest, boiling_C: boiling, boilsShare } = fluid;
  const when = 'in the repeated stops or while the car stands after them';
  const found = fluidWarning({ id, title, highest, boiling, boilsShare, when }, speaker(units));
  return found === null ? [] : [found];
}
