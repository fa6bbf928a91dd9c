import { idealBalance, liftOffDeceleration, mostAdhesionAllowed, torqueWheelLine } from '@standstill/braking';
import type { BalancePoint, Car } from '@standstill/braking';
import { intervalOf } from '../draws/interval-of.ts';
import type { BalanceState } from '../results/balance-report.ts';
import type { StateDraws } from './balance-draws.ts';
import { curveDecelerations } from './balance-figures.ts';

type Curves = BalanceState['curves'];

/** The picture of the balance as columns over deceleration, with the intervals of the adhesion used. */
export function curvesResult(
  car: Car,
  curve: readonly (BalancePoint | undefined)[],
  draws: StateDraws,
): Curves {
  const lift = liftOffDeceleration(car);
  const ideal = curveDecelerations.map((deceleration) =>
    deceleration < lift ? idealBalance({ car, deceleration }) : null,
  );
  const column = (value: (point: BalancePoint) => number): (number | null)[] =>
    curve.map((point) => (point === undefined ? null : value(point)));
  const bands = (name: 'frontAdhesion' | 'rearAdhesion') =>
    curve.map((point, index) =>
      point === undefined ? null : intervalOf(point[name], draws.curve(name, index)),
    );
  const [front, rear] = [bands('frontAdhesion'), bands('rearAdhesion')];
  return {
    deceleration_g: [...curveDecelerations],
    idealFrontForceOverWeight: ideal.map((forces) => forces?.front ?? null),
    idealRearForceOverWeight: ideal.map((forces) => forces?.rear ?? null),
    installedFrontForceOverWeight: column(({ frontForce }) => frontForce),
    installedRearForceOverWeight: column(({ rearForce }) => rearForce),
    frontAdhesion: front.map((band) => band?.value ?? null),
    frontAdhesionLow: front.map((band) => band?.low ?? null),
    frontAdhesionHigh: front.map((band) => band?.high ?? null),
    rearAdhesion: rear.map((band) => band?.value ?? null),
    rearAdhesionLow: rear.map((band) => band?.low ?? null),
    rearAdhesionHigh: rear.map((band) => band?.high ?? null),
    brakingEfficiency: column(({ deceleration, frontAdhesion, rearAdhesion }) => {
      const most = Math.max(frontAdhesion, rearAdhesion);
      return most > 0 ? deceleration / most : 1;
    }),
    annexFiveLimit: curveDecelerations.map((z) => within(z, 0.1, 0.52, mostAdhesionAllowed)),
    torqueWheelLimit: curveDecelerations.map((z) => within(z, 0.15, 0.8, torqueWheelLine)),
  };
}

function within(z: number, low: number, high: number, line: (z: number) => number): number | null {
  return z >= low - 1e-9 && z <= high + 1e-9 ? line(Math.min(high, Math.max(low, z))) : null;
}
