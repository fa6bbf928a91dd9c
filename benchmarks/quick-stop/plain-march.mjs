// The plain march: Runge and Kutta's fourth-order method in steps of 1 ms. Its twin in C is plain-march.c.
const stateSize = 9; // speed, distance, pressure, three layers front, three layers rear
const frontAt = 19;
const rearAt = 39;
const rolling = 0;
const held = 1;
const locked = 2;

/** m from the first touch to rest. */
export function plainMarch(c, step, startTemperature) {
  const state = new Float64Array(stateSize).fill(startTemperature);
  state[0] = c[0];
  state[1] = 0;
  state[2] = 0;
  const slopes = [0, 1, 2, 3].map(() => new Float64Array(stateSize));
  const trial = new Float64Array(stateSize);
  const car = { front: rolling, rear: rolling, deceleration: 0 };
  for (let time = 0; time < 100; time += step) {
    derive(c, state, time, slopes[0], car, true);
    shift(trial, state, slopes[0], step / 2);
    derive(c, trial, time + step / 2, slopes[1], car, false);
    shift(trial, state, slopes[1], step / 2);
    derive(c, trial, time + step / 2, slopes[2], car, false);
    shift(trial, state, slopes[2], step);
    derive(c, trial, time + step, slopes[3], car, false);
    const before = state[0];
    const gone = state[1];
    for (let i = 0; i < stateSize; i += 1) {
      state[i] += (step / 6) * (slopes[0][i] + 2 * slopes[1][i] + 2 * slopes[2][i] + slopes[3][i]);
    }
    if (state[0] <= 0) return gone + ((state[1] - gone) * before) / (before - state[0]);
  }
  return Infinity;
}

function shift(to, from, slope, step) {
  for (let i = 0; i < stateSize; i += 1) to[i] = from[i] + step * slope[i];
}

function derive(c, state, time, slope, car, mayLetGo) {
  const speed = Math.max(0, state[0]);
  const squared = speed * speed;
  const rearIn = state[2];
  const rearPressure = rearIn <= c[15] ? rearIn : c[15] + c[16] * (rearIn - c[15]);
  const frontBrake = brakeForce(c, frontAt, state[2], faceOf(c, frontAt, state, 3, car.frontPower ?? 0));
  const rearBrake = brakeForce(c, rearAt, rearPressure, faceOf(c, rearAt, state, 6, car.rearPower ?? 0));
  const resistance = c[7] * squared + c[8];
  let deceleration = car.deceleration;
  let front = 0;
  let rear = 0;
  for (let pass = 0; pass < 4; pass += 1) {
    const frontLoad = c[3] - c[5] * squared + c[2] * deceleration;
    const rearLoad = Math.max(1, c[4] - c[6] * squared - c[2] * deceleration);
    front = tireForce(c, frontAt, frontLoad, frontBrake, deceleration, speed, car, 'front', mayLetGo);
    rear = tireForce(c, rearAt, rearLoad, rearBrake, deceleration, speed, car, 'rear', mayLetGo);
    deceleration = (front + rear + resistance) / c[1];
  }
  car.deceleration = deceleration;
  car.frontPower = car.front === locked ? 0 : front * speed;
  car.rearPower = car.rear === locked ? 0 : rear * speed;
  slope[0] = -deceleration;
  slope[1] = speed;
  slope[2] = (askedPressure(c, time) - state[2]) / c[10];
  conduct(c, frontAt, state, slope, 3, car.frontPower);
  conduct(c, rearAt, state, slope, 6, car.rearPower);
}

function askedPressure(c, time) {
  const share = c[9] > 0 ? Math.min(1, time / c[9]) : 1;
  if (share >= 1) return c[13];
  if (share < c[14]) return c[11] + ((c[12] - c[11]) * share) / c[14];
  return c[12] + ((c[13] - c[12]) * (share - c[14])) / (1 - c[14]);
}

function faceOf(c, at, state, first, power) {
  return state[first] + power * c[at + 6] * c[at + 9];
}

function brakeForce(c, at, pressure, temperature) {
  let i = 1;
  while (i < 4 && c[at + 10 + i] < temperature) i += 1;
  const low = c[at + 9 + i];
  const share = Math.min(1, Math.max(0, (temperature - low) / (c[at + 10 + i] - low)));
  const friction = c[at + 14 + i] + share * (c[at + 15 + i] - c[at + 14 + i]);
  return c[at] * friction * Math.max(0, pressure - c[at + 1]);
}

function tireForce(c, at, load, brake, deceleration, speed, car, axle, mayLetGo) {
  const peak = c[at + 3] * Math.pow(load, c[at + 4]);
  const asked = brake - c[at + 2] * deceleration;
  const isActive = speed > c[18];
  if (mayLetGo) {
    if (car[axle] === held && (!isActive || asked < c[17] * peak)) car[axle] = rolling;
    if (car[axle] === rolling && asked > peak) car[axle] = isActive ? held : locked;
  }
  if (axle === 'rear' && isActive) return Math.min(asked, c[17] * peak);
  if (car[axle] === rolling) return asked;
  return (car[axle] === held ? c[17] : c[at + 5]) * peak;
}

function conduct(c, at, state, slope, first, power) {
  const inflow = power * c[at + 6];
  const outer = c[at + 8] * (state[first] - state[first + 1]);
  const inner = c[at + 8] * (state[first + 1] - state[first + 2]);
  slope[first] = c[at + 7] * (inflow - outer);
  slope[first + 1] = c[at + 7] * (outer - inner);
  slope[first + 2] = c[at + 7] * inner;
}
