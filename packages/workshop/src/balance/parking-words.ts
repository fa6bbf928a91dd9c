import type { BalanceState } from '../results/balance-report.ts';
import { percent } from '../words/percent.ts';
import type { Speaker } from '../words/speaker.ts';
import { stateWords } from './lock-words.ts';

/** Whether the parking brake holds the grade that FMVSS 135 asks for, in the heaviest state looked at. */
export function parkingSentence(states: readonly BalanceState[], say: Speaker): string {
  const heaviest = states.at(-1);
  if (heaviest === undefined || heaviest.parking === null)
    return 'Parking brake: not known for this rear brake; try it on a slope before the car is left on one.';
  const { parking, state } = heaviest;
  const { operatedBy, force_N, gradeHeld, gradeByBrake, gradeByTires, holdsTwentyPercent, holdsShare } =
    parking;
  const holds = holdsTwentyPercent ? 'holds' : 'does NOT hold';
  const limit = gradeByBrake.value <= gradeByTires.value ? 'the brake' : 'the tires';
  const sure =
    holdsShare === 0 || holdsShare === 1 ? 'in every draw' : `holds in ${percent(holdsShare)} of the draws`;
  const steepest = say.range(gradeHeld.low, gradeHeld.high, 'share');
  return (
    `Parking brake: ${holds} the 20 % grade of FMVSS 135 ${stateWords[state]} with ${say.plain(force_N, 'force')} by ${operatedBy}, ` +
    `${sure}; the steepest is ${steepest}, and ${limit} set it.`
  );
}
