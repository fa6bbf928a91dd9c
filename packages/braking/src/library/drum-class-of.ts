import type { ShoeArrangement } from '../set-up/drum-brake.ts';
import { drumClasses, type DrumClass } from './drum-classes.ts';

/**
 * Answers the class of drum brakes with an arrangement of shoes.
 *
 * @param arrangement - how the shoes are carried
 * @returns the class; its brake factor in 1
 * Source: [bosch-drums]
 * @example
 * drumClassOf('duo-servo').brakeFactor.value // => 5
 */
export function drumClassOf(arrangement: ShoeArrangement): DrumClass {
  return arrangement === 'duo-servo' ? drumClasses.duoServo : drumClasses[arrangement];
}
