import { fullStop, fullStopWorkspace } from '@standstill/braking';
import { footThere } from '../../predict/foot-there.ts';
import type { AnswerDraw } from './answer-draw.ts';

/** Answers the question `full-distance`, in a room that is made once. */
export function answerFullDistance(): AnswerDraw {
  const march = fullStopWorkspace();
  return ({ setUp, road, foot, speed, startTemperature }, _row, into) => {
    const there = footThere(setUp, foot.force);
    const rotorTemperatures = { front: startTemperature, rear: startTemperature };
    const asked = { kind: 'ramp', force: there.force, rampTime: foot.rampTime } as const;
    const stop = fullStop({ setUp: there.setUp, road, foot: asked, speed, rotorTemperatures }, march);
    into[0] = there.force > 0 ? stop.distance : Infinity;
  };
}
