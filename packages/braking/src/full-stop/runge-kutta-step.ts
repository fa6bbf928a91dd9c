import type { StopDynamics } from './stop-dynamics.ts';

/**
 * Tries one step of the classical fourth-order Runge-Kutta scheme from the last node, stage by stage; leaves where it ends
 * in the tried fields of the car and its wheels.
 *
 * Equation: y_1 = y_0 + h (k_1 + 2 k_2 + 2 k_3 + k_4) / 6. Each k is added to the sum as soon as it is known.
 *
 * Allocates nothing; the length of the step stands in a field, so that it need not come in a box.
 *
 * @param dynamics - the equations, standing at a node with the slopes there taken; `car.duration` is h, s
 * Source: [runge-kutta]
 */
export function rungeKuttaStep(dynamics: StopDynamics): void {
  const { car } = dynamics;
  const { each } = dynamics.wheels;
  car.openStep();
  for (let at = 0; at < 4; at += 1) each[at]!.openStep();
  car.ahead = 0.5 * car.duration;
  car.weight = 2;
  dynamics.slopes();
  dynamics.slopes();
  car.ahead = car.duration;
  car.weight = 1;
  dynamics.slopes();
  car.closeStep();
  const sixth = car.duration / 6;
  for (let at = 0; at < 4; at += 1) each[at]!.closeStep(sixth);
}
