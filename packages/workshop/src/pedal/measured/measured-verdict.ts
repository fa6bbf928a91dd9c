import type { UnitSystem } from '@standstill/units';
import type { Estimate } from '../../results/estimate.ts';
import type { MeasuredPedal } from '../../results/pedal-report.ts';
import { speaker } from '../../words/speaker.ts';
import type { Speaker } from '../../words/speaker.ts';

/** m³: what a good bleed may leave (common practice). */
export const goodBleed = 1.5e-6;
/** m³: an interval of the air wider than this says nothing that a person can act on (assumed), unless all of it is a fault. */
const widest = 4e-6;

/** Whether the points tell the air from free play and compliance. */
export function airIsTold({ low, high }: Estimate): boolean {
  return high - low <= widest || low > goodBleed;
}

type Figures = Pick<
  MeasuredPedal,
  'air_m3' | 'compliance_m3_Pa' | 'expectedCompliance_m3_Pa' | 'airTold' | 'engine'
>;

/**
 * What a measured pedal says, in a sentence or two.
 *
 * @param figures - the measured figures beside the expected ones
 * @param units - units of the sentence
 * @returns the verdict
 */
export function measuredVerdict(figures: Figures, units: UnitSystem): string {
  const say = speaker(units);
  return `${airWords(figures, say)} ${complianceWords(figures)}`;
}

function airWords({ air_m3, airTold, engine }: Figures, say: Speaker): string {
  const range = say.range(air_m3.low, air_m3.high, 'fluid-volume');
  const most = say.rounded(air_m3.high, 'fluid-volume', 2);
  if (!airTold) {
    const how = engine === 'running' ? 'with the engine off and the vacuum pumped out' : 'lighter than these';
    return `From these points trapped air (${range}) can't be told from free play and clearance: add light pushes ${how}.`;
  }
  if (air_m3.low > goodBleed)
    return `The measured pedal has ${range} of trapped air in it, more than a good bleed leaves.`;
  if (air_m3.high <= goodBleed)
    return `The measured pedal has no more air in it than a good bleed leaves (at most ${most}).`;
  return `The measured pedal has ${air_m3.low > 0 ? range : `up to ${most}`} of trapped air in it; a good bleed may leave ${say.rounded(goodBleed, 'fluid-volume', 2)}.`;
}

/** By how much it gives more or less than its parts should, only where the intervals do not meet. */
function complianceWords({
  compliance_m3_Pa: found,
  expectedCompliance_m3_Pa: wanted,
  airTold,
}: Figures): string {
  if (!airTold) return 'Nor can its compliance be told.';
  if (found.low > wanted.high) {
    const times = (found.value / wanted.value).toFixed(1);
    return `Under pressure it gives about ${times} times what the job's parts should: hose, pad, caliper or pedal box, which these points can't tell apart.`;
  }
  if (found.high < wanted.low)
    return "Under pressure it gives less than the job's parts should; the parts' figures are too soft.";
  return "Under pressure it gives about what the job's parts should.";
}

/** What no such points can tell apart, and how it can be done safely. */
export function cannotTellWords(figures: Pick<MeasuredPedal, 'split' | 'points'>): string {
  const plugged = figures.points.some((point) => point.plugged.length > 0);
  const told = figures.split.filter((part) => part.told).map((part) => part.title);
  const start =
    'Hoses, pads, calipers and pedal box give almost alike with pressure: these points know their sum, and the split is that of the spreads in the job';
  const after = told.length === 0 ? '.' : `; the points themselves narrow ${told.join(', ')}.`;
  const how = plugged
    ? ' Plugged corners tell an axle from the other, not a hose from its pads.'
    : ' To tell a corner from the rest, shut it off at its line with a plug, bleed, and measure again.';
  return `${start}${after}${how} Never clamp a hose: it can be hurt inside where nobody sees it.`;
}
