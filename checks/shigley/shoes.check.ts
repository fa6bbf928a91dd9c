import { shoeFactor, type ShoeGeometry } from '@standstill/braking';
import { published } from '../published.ts';

/** Example 16-2: drum of 300 mm, shoes on pivots 112 mm below and 50 mm beside the center, lining from 0° to 126°. */
const radius = 0.15;
const pivot = Math.hypot(0.112, 0.05);
const lever = 0.212;
const width = 0.032;
const friction = 0.32;
const greatestPressure = 1e6;
const shoe: ShoeGeometry = {
  pivotDistance: pivot / radius,
  leverArm: lever / radius,
  liningStart: 0,
  liningEnd: (126 * Math.PI) / 180,
};
const given = 'drum 300 mm, shoe 32 mm wide, lining 0° to 126°, pivot 112 and 50 mm off center, μ = 0.32';

/** Torque of the right-hand (leading) shoe at 1000 kPa: μ p b r² (cos θ1 − cos θ2); the printed 366 N·m. */
const leadingTorque = friction * greatestPressure * width * radius ** 2 * (1 - Math.cos(shoe.liningEnd));
const factor = (direction: 'leading' | 'trailing'): number => shoeFactor({ shoe, friction, direction });
/** N, the same for both shoes. */
const push = (): number => leadingTorque / (factor('leading') * radius);

published(
  {
    id: 'ex-16-2a',
    source: 'shigley',
    quantity: `actuating force that presses the leading shoe to 1000 kPa, ${given}`,
    printed: 2.28,
    unit: 'kN',
    tolerance: 0.005,
    basis: 'M',
  },
  () => push() / 1e3,
);
published(
  {
    id: 'ex-16-2b',
    source: 'shigley',
    quantity: `torque of the trailing shoe under the same force, ${given}`,
    printed: 162,
    unit: 'N·m',
    tolerance: 0.5,
    basis: 'M',
  },
  () => push() * factor('trailing') * radius,
);
published(
  {
    id: 'ex-16-2c',
    source: 'shigley',
    quantity: `braking capacity of both shoes, ${given}`,
    printed: 528,
    unit: 'N·m',
    tolerance: 0.5,
    basis: 'M',
  },
  () => push() * (factor('leading') + factor('trailing')) * radius,
);
