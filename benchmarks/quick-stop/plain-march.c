/* The twin of plain-march.mjs in C, so that a machine's own speed is known in the same run.
   Reads: stops, step in s, start temperature in degrees C, then the coefficients. Prints seconds and metres. */
#include <math.h>
#include <stdio.h>
#include <time.h>

enum { SIZE = 9, FRONT = 19, REAR = 39, COUNT = 59 };
enum { ROLLING, HELD, LOCKED };

static double c[COUNT];
static int hold[2];
static double deceleration, power[2];

static double asked_pressure(double time) {
  double share = c[9] > 0 ? fmin(1, time / c[9]) : 1;
  if (share >= 1) return c[13];
  if (share < c[14]) return c[11] + (c[12] - c[11]) * share / c[14];
  return c[12] + (c[13] - c[12]) * (share - c[14]) / (1 - c[14]);
}

static double brake_force(int at, double pressure, double temperature) {
  int i = 1;
  while (i < 4 && c[at + 10 + i] < temperature) i += 1;
  double low = c[at + 9 + i];
  double share = fmin(1, fmax(0, (temperature - low) / (c[at + 10 + i] - low)));
  double friction = c[at + 14 + i] + share * (c[at + 15 + i] - c[at + 14 + i]);
  return c[at] * friction * fmax(0, pressure - c[at + 1]);
}

static double tire_force(int at, int axle, double load, double brake, double speed, int may_let_go) {
  double peak = c[at + 3] * pow(load, c[at + 4]);
  double asked = brake - c[at + 2] * deceleration;
  int active = speed > c[18];
  if (may_let_go) {
    if (hold[axle] == HELD && (!active || asked < c[17] * peak)) hold[axle] = ROLLING;
    if (hold[axle] == ROLLING && asked > peak) hold[axle] = active ? HELD : LOCKED;
  }
  if (axle == 1 && active) return fmin(asked, c[17] * peak);
  if (hold[axle] == ROLLING) return asked;
  return (hold[axle] == HELD ? c[17] : c[at + 5]) * peak;
}

static void conduct(int at, const double *state, double *slope, double heat) {
  double inflow = heat * c[at + 6];
  double outer = c[at + 8] * (state[0] - state[1]);
  double inner = c[at + 8] * (state[1] - state[2]);
  slope[0] = c[at + 7] * (inflow - outer);
  slope[1] = c[at + 7] * (outer - inner);
  slope[2] = c[at + 7] * inner;
}

static void derive(const double *state, double time, double *slope, int may_let_go) {
  double speed = fmax(0, state[0]), squared = speed * speed, front = 0, rear = 0;
  double rear_pressure = state[2] <= c[15] ? state[2] : c[15] + c[16] * (state[2] - c[15]);
  double front_brake = brake_force(FRONT, state[2], state[3] + power[0] * c[FRONT + 6] * c[FRONT + 9]);
  double rear_brake = brake_force(REAR, rear_pressure, state[6] + power[1] * c[REAR + 6] * c[REAR + 9]);
  for (int pass = 0; pass < 4; pass += 1) {
    double front_load = c[3] - c[5] * squared + c[2] * deceleration;
    double rear_load = fmax(1, c[4] - c[6] * squared - c[2] * deceleration);
    front = tire_force(FRONT, 0, front_load, front_brake, speed, may_let_go);
    rear = tire_force(REAR, 1, rear_load, rear_brake, speed, may_let_go);
    deceleration = (front + rear + c[7] * squared + c[8]) / c[1];
  }
  power[0] = hold[0] == LOCKED ? 0 : front * speed;
  power[1] = hold[1] == LOCKED ? 0 : rear * speed;
  slope[0] = -deceleration;
  slope[1] = speed;
  slope[2] = (asked_pressure(time) - state[2]) / c[10];
  conduct(FRONT, state + 3, slope + 3, power[0]);
  conduct(REAR, state + 6, slope + 6, power[1]);
}

static void shift(double *to, const double *from, const double *slope, double step) {
  for (int i = 0; i < SIZE; i += 1) to[i] = from[i] + step * slope[i];
}

static double march(double step, double temperature) {
  double state[SIZE], trial[SIZE], k[4][SIZE];
  for (int i = 3; i < SIZE; i += 1) state[i] = temperature;
  state[0] = c[0];
  state[1] = state[2] = 0;
  hold[0] = hold[1] = ROLLING;
  deceleration = power[0] = power[1] = 0;
  for (double time = 0; time < 100; time += step) {
    derive(state, time, k[0], 1);
    shift(trial, state, k[0], step / 2);
    derive(trial, time + step / 2, k[1], 0);
    shift(trial, state, k[1], step / 2);
    derive(trial, time + step / 2, k[2], 0);
    shift(trial, state, k[2], step);
    derive(trial, time + step, k[3], 0);
    double before = state[0], gone = state[1];
    for (int i = 0; i < SIZE; i += 1) state[i] += step / 6 * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]);
    if (state[0] <= 0) return gone + (state[1] - gone) * before / (before - state[0]);
  }
  return INFINITY;
}

int main(void) {
  double step, temperature, distance = 0;
  int stops;
  if (scanf("%d %lf %lf", &stops, &step, &temperature) != 3) return 1;
  for (int i = 0; i < COUNT; i += 1)
    if (scanf("%lf", &c[i]) != 1) return 1;
  clock_t start = clock();
  for (int i = 0; i < stops; i += 1) distance = march(step, temperature);
  printf("%.9f %.9f\n", (double)(clock() - start) / CLOCKS_PER_SEC, distance);
  return 0;
}
