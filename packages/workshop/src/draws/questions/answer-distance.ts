import { quickDistance, stopWorkspace } from '@standstill/braking';
import { footThere } from '../../predict/foot-there.ts';
import type { AnswerDraw } from './answer-draw.ts';

/** Answers the question `distance`, in a room that is made once. */
export function answerDistance(): AnswerDraw {
  const march = stopWorkspace();
  return ({ setUp, road, foot, speed, startTemperature }, _row, into) => {
    const there = footThere(setUp, foot.force);
    const rotorTemperatures = { front: startTemperature, rear: startTemperature };
    const asked = { force: there.force, rampTime: foot.rampTime };
    const stop = { setUp: there.setUp, road, foot: asked, speed, rotorTemperatures };
    into[0] = there.force > 0 ? quickDistance(stop, march) : Infinity;
  };
}
