import { quickStop, stopWorkspace } from '@standstill/braking';
import { footThere } from '../../predict/foot-there.ts';
import type { DrawQuestion } from './draw-question.ts';

/** How far the car goes from the first touch of the pedal to rest, m, by the quick stop. */
export const distanceQuestion: DrawQuestion = {
  figures: ['distance'],
  rangeLength: 1000,
  open: () => {
    const march = stopWorkspace();
    return ({ setUp, road, foot, speed, startTemperature }, _row, into) => {
      const there = footThere(setUp, foot.force);
      const rotorTemperatures = { front: startTemperature, rear: startTemperature };
      const asked = { force: there.force, rampTime: foot.rampTime };
      const { distance } = quickStop(
        { setUp: there.setUp, road, foot: asked, speed, rotorTemperatures },
        march,
      );
      into[0] = there.force > 0 ? distance : Infinity;
    };
  },
};
