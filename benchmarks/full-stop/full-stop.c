/* The twin of the full stop in plain C: the same scheme (classical Runge-Kutta between looks of the control, cubic pieces of
   the slip curve, series of the peak force, implicit heat in four rotors, antilock, books), so that a machine's own speed is
   known in the same run. Reads: stops to make, then the numbers of `numbers.mjs`. Prints seconds, metres, joules left over. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { SPEED, DISTANCE, PITCH, PITCH_RATE, MASTER, FOOT, WHEEL, SLIP = 10, PRESSURE = 14, SIZE = 18 };
enum { IDLE, DUMPING, HOLDING, FAST, SLOW };
enum { LAYERS = 6, NODES = LAYERS + 1, PIECES = 320, TABLE = 4 * (PIECES + 1), PADS = 16, WORKS = 10 };
enum { STEPS_PER_LOOK = 3, LOOKS_PER_WARMING = 6 };

static const double kelvin = 273.15, stefan_boltzmann = 5.670374419e-8;

/* What does not change in a stop. */
static double entry, period;
static double mass, front_still, rear_still, front_lift, rear_lift, drag, rolling_share, climb, transfer;
static double pitch_rate, pitch_damping, pitch_carry, pitch_lead;
static double load_share[4], radius[4], per_inertia[4], per_relaxation[4], gain[4], push_out[4], engine_drag[4], scale[4], power[4];
static double curve[2][TABLE];
static double booster_lag, quickness[2], dump_quickness, line_ratio, line_knee, line_slope;
static double foot_force, ramp_time, rod_share, cylinder_gain, assist_start, assist_slope, assist_limit;
static double slip_threshold, rim_threshold, slip_floor, fast_share, build_time, least_speed, fast_time, matched_rim, alert_share;
static int nodes[2], pad_points[2];
static double node_mass[2][NODES], conductance[2][NODES], vent_share[2][NODES];
static double face_resistance[2], area[2], heat_0[2], heat_1[2], radiating[2], uncovered[2], rotor_share[2];
static double face_cooling[2], vent_cooling[2], start_temperature[2], air_temperature;
static double pad_at[2][PADS], pad_friction[2][PADS];

/* What changes. */
static double state[SIZE], next_state[SIZE], k1[SIZE], k2[SIZE], k3[SIZE], k4[SIZE], between[SIZE];
static double now, speed, deceleration, air, rolling;
static double friction[4], friction_rate[4], friction_time;
static double forces[4], torques[4], per_anchor[4], peak_0[4], peak_1[4], peak_2[4], peak_3[4], from_line[4], from_own[4], most_rate[4];
static int phase[4], active;
static double mark[4], seen[4], rim[4];
static double temperature[4][NODES], enthalpy[4][NODES], face[4], given[4], warmed_at;
static double last_power[WORKS], works[WORKS], kinetic_in;

static double number(void) {
  double value;
  if (scanf("%lf", &value) != 1) exit(2);
  return value;
}

static void numbers(double *into, int count) {
  for (int i = 0; i < count; i += 1) into[i] = number();
}

static void read_all(void) {
  double *single[] = { &entry, &period, &mass, &front_still, &rear_still, &front_lift, &rear_lift, &drag, &rolling_share,
    &climb, &transfer, &pitch_rate, &pitch_damping, &pitch_carry, &pitch_lead };
  for (size_t i = 0; i < sizeof single / sizeof *single; i += 1) *single[i] = number();
  double *wheels[] = { load_share, radius, per_inertia, per_relaxation, gain, push_out, engine_drag, scale, power };
  for (size_t i = 0; i < sizeof wheels / sizeof *wheels; i += 1) numbers(wheels[i], 4);
  numbers(curve[0], TABLE);
  numbers(curve[1], TABLE);
  double *more[] = { &booster_lag, &quickness[0], &quickness[1], &dump_quickness, &line_ratio, &line_knee, &line_slope,
    &foot_force, &ramp_time, &rod_share, &cylinder_gain, &assist_start, &assist_slope, &assist_limit, &slip_threshold,
    &rim_threshold, &slip_floor, &fast_share, &build_time, &least_speed, &fast_time, &matched_rim, &alert_share, &air_temperature };
  for (size_t i = 0; i < sizeof more / sizeof *more; i += 1) *more[i] = number();
  for (int axle = 0; axle < 2; axle += 1) {
    nodes[axle] = (int)number();
    numbers(node_mass[axle], nodes[axle]);
    numbers(conductance[axle], nodes[axle]);
    numbers(vent_share[axle], nodes[axle]);
    double *own[] = { &face_resistance[axle], &area[axle], &heat_0[axle], &heat_1[axle], &radiating[axle],
      &uncovered[axle], &rotor_share[axle], &face_cooling[axle], &vent_cooling[axle], &start_temperature[axle] };
    for (size_t i = 0; i < sizeof own / sizeof *own; i += 1) *own[i] = number();
    pad_points[axle] = (int)number();
    numbers(pad_at[axle], pad_points[axle]);
    numbers(pad_friction[axle], pad_points[axle]);
  }
}

static double curve_at(const double *pieces, double slip) {
  double size = fabs(slip), place = size < 1 ? PIECES * size : PIECES;
  int piece = (int)place;
  const double *c = pieces + 4 * piece;
  double t = place - piece, value = c[0] + t * (c[1] + t * (c[2] + t * c[3]));
  return slip < 0 ? -value : value;
}

static double peak_at(int wheel, double load) {
  double off = load * per_anchor[wheel] - 1;
  if (off < 0.03 && off > -0.03)
    return peak_0[wheel] + off * (peak_1[wheel] + off * (peak_2[wheel] + off * peak_3[wheel]));
  if (load <= 0) return 0;
  double e = power[wheel], peak = scale[wheel] * pow(load, e);
  if (load < 1) return peak;
  per_anchor[wheel] = 1 / load;
  peak_0[wheel] = peak;
  peak_1[wheel] = e * peak;
  peak_2[wheel] = 0.5 * (e - 1) * peak_1[wheel];
  peak_3[wheel] = (e - 2) / 3 * peak_2[wheel];
  return peak;
}

static double table_at(int axle, double at) {
  const double *x = pad_at[axle], *y = pad_friction[axle];
  int last = pad_points[axle] - 1, low = 0, high = last;
  if (at >= x[last]) return y[last];
  if (at < x[0]) return y[0];
  while (high - low > 1) {
    int middle = (low + high) / 2;
    if (x[middle] <= at) low = middle;
    else high = middle;
  }
  return y[low] + (at - x[low]) / (x[low + 1] - x[low]) * (y[low + 1] - y[low]);
}

static double asked_pressure(double time) {
  double share = time < ramp_time ? fmax(1e-9, time / ramp_time) : 1;
  double force = foot_force * share;
  if (force <= 0) return 0;
  double rod = rod_share * force, wanted = assist_start + assist_slope * rod;
  return cylinder_gain * (rod + (wanted < assist_limit ? wanted : assist_limit));
}

static double wheel_speed(const double *y) { return y[SPEED] - pitch_carry * y[PITCH_RATE]; }

static void slopes(double time, const double *y, double *dy) {
  double u = wheel_speed(y), squared = u * u;
  double moved = transfer * (y[PITCH] + pitch_lead * y[PITCH_RATE]);
  double front = front_still - front_lift * squared + moved, rear = rear_still - rear_lift * squared - moved;
  if (rear < 0) {
    front += rear;
    rear = 0;
  } else if (front < 0) {
    rear += front;
    front = 0;
  }
  air = drag * squared;
  rolling = rolling_share * (front + rear);
  double line = asked_pressure(time);
  dy[MASTER] = 0;
  if (booster_lag > 0) {
    dy[MASTER] = (line - y[MASTER]) / booster_lag;
    line = y[MASTER];
  }
  double inlet = line_ratio * line, rear_line = inlet <= line_knee ? inlet : line_knee + line_slope * (inlet - line_knee);
  double since = time - friction_time, size = u < 0 ? -u : u, sum = 0;
  for (int i = 0; i < 4; i += 1) {
    int axle = i / 2;
    double force = peak_at(i, (axle ? rear : front) * load_share[i]) * curve_at(curve[axle], y[SLIP + i]);
    double above = y[PRESSURE + i] - push_out[i];
    double torque = above > 0 ? gain[i] * (friction[i] + friction_rate[i] * since) * above : 0;
    double net = radius[i] * force - torque - engine_drag[i];
    double rate = (axle ? rear_line : line) * from_line[i] - y[PRESSURE + i] * from_own[i];
    dy[WHEEL + i] = y[WHEEL + i] > 0 || net > 0 ? net * per_inertia[i] : 0;
    dy[SLIP + i] = (u - radius[i] * y[WHEEL + i] - size * y[SLIP + i]) * per_relaxation[i];
    dy[PRESSURE + i] = rate < most_rate[i] ? rate : most_rate[i];
    forces[i] = force;
    torques[i] = torque;
    sum += force;
  }
  double whole = sum + rolling + air;
  deceleration = (whole + climb) / mass;
  dy[SPEED] = -deceleration;
  dy[DISTANCE] = u;
  dy[PITCH] = y[PITCH_RATE];
  dy[PITCH_RATE] = pitch_rate * (pitch_rate * (whole / mass - y[PITCH]) - 2 * pitch_damping * y[PITCH_RATE]);
  dy[FOOT] = 0;
}

static void try_step(double h) {
  for (int i = 0; i < SIZE; i += 1) between[i] = state[i] + 0.5 * h * k1[i];
  slopes(now + 0.5 * h, between, k2);
  for (int i = 0; i < SIZE; i += 1) between[i] = state[i] + 0.5 * h * k2[i];
  slopes(now + 0.5 * h, between, k3);
  for (int i = 0; i < SIZE; i += 1) between[i] = state[i] + h * k3[i];
  slopes(now + h, between, k4);
  for (int i = 0; i < SIZE; i += 1) next_state[i] = state[i] + h / 6 * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
}

static void add(int at, double watts, double half) {
  works[at] += half * (last_power[at] + watts);
  last_power[at] = watts;
}

static void book(double h) {
  double half = 0.5 * h, slipping = 0, engine = 0;
  for (int i = 0; i < 4; i += 1) {
    slipping += forces[i] * (speed - radius[i] * state[WHEEL + i]);
    engine += engine_drag[i] * state[WHEEL + i];
    add(6 + i, torques[i] * state[WHEEL + i], half);
  }
  add(0, slipping, half);
  add(1, air * speed, half);
  add(2, rolling * speed, half);
  add(3, engine, half);
  add(4, climb * state[SPEED], half);
  add(5, pitch_lead * mass * pitch_carry * state[PITCH_RATE] * state[PITCH_RATE], half);
}

static void accept(double h, int locks) {
  memcpy(state, next_state, sizeof state);
  for (int i = 0; i < 4; i += 1)
    if (i == locks || state[WHEEL + i] < 0) state[WHEEL + i] = 0;
  now += h;
  speed = wheel_speed(state);
  slopes(now, state, k1);
  book(h);
}

static double figure(const double *y, int wheel) { return wheel < 0 ? wheel_speed(y) : y[WHEEL + wheel]; }

static double until(double whole, int wheel) {
  double low = 0, low_value = figure(state, wheel), high = whole, high_value = figure(next_state, wheel), middle = whole;
  int side = 0;
  for (int i = 0; i < 40 && fabs(high_value) > 1e-10; i += 1) {
    middle = (low * high_value - high * low_value) / (high_value - low_value);
    try_step(middle);
    double value = figure(next_state, wheel);
    if (fabs(value) <= 1e-10) return middle;
    if (value > 0) {
      low = middle;
      low_value = value;
      if (side == 1) high_value *= 0.5;
      side = 1;
    } else {
      high = middle;
      high_value = value;
      if (side == -1) low_value *= 0.5;
      side = -1;
    }
  }
  return middle;
}

static int is_rough(void) {
  double most = 2 * 2.5e-5 * kinetic_in;
  for (int i = 0; i < 4; i += 1) {
    double was = state[WHEEL + i], tried = next_state[WHEEL + i], is = tried > 0 ? tried : 0;
    if (fabs(is * is - was * was) > most * per_inertia[i]) return 1;
  }
  return 0;
}

static int march_to(double time) {
  for (int parts = 0; parts < 1000 && now < time; parts += 1) {
    double whole = time - now, h, soonest;
    int locking = -1, last;
    try_step(whole);
    while (whole > 2e-5 && is_rough()) {
      whole *= 0.5;
      try_step(whole);
    }
    last = now + whole >= time;
    h = soonest = whole;
    for (int i = 0; i < 4; i += 1) {
      double was = state[WHEEL + i], is = next_state[WHEEL + i];
      if (is >= 0 || was <= 0) continue;
      double when = whole * was / (was - is);
      if (locking < 0 || when < soonest) {
        locking = i;
        soonest = when;
      }
    }
    if (locking >= 0) h = until(whole, locking);
    if (wheel_speed(next_state) <= 1e-10) {
      accept(until(h, -1), -1);
      return 1;
    }
    accept(h, locking);
    if (h == whole && last) now = time;
  }
  return 0;
}

static void set_valve(int wheel, double line_share, double own_share, double most) {
  from_line[wheel] = line_share;
  from_own[wheel] = own_share;
  most_rate[wheel] = most;
}

static void enter(int wheel, int next, int first) {
  double quick = quickness[wheel / 2];
  phase[wheel] = next;
  if (next == DUMPING) set_valve(wheel, 0, dump_quickness, INFINITY);
  else if (next == HOLDING) set_valve(wheel, 0, 0, INFINITY);
  else set_valve(wheel, quick, quick, mark[first] / (next == FAST ? fast_time : build_time));
}

static void decide(int first, int last) {
  double slowest = fmin(state[WHEEL + first], state[WHEEL + last]);
  double slip = 1 - radius[first] * slowest / speed;
  double gaining = fmax(rim[first], rim[last]) - deceleration;
  double pressure = fmax(state[PRESSURE + first], state[PRESSURE + last]);
  double alert = slip_floor + alert_share * (slip_threshold - slip_floor);
  int far = slip > slip_threshold, locking = far || (gaining > rim_threshold && slip > alert);
  int was = phase[first], next = was;
  if (was == DUMPING) {
    if (gaining < 0 || pressure < 0.02 * mark[first]) next = HOLDING;
  } else if (was == HOLDING) {
    if (slip < slip_floor) next = FAST;
    else if (gaining > 0 && locking) next = DUMPING;
    else if (gaining > -matched_rim) next = far ? DUMPING : SLOW;
  } else if (locking) {
    next = DUMPING;
    mark[first] = pressure;
  } else if (was == FAST && pressure >= fast_share * mark[first]) next = SLOW;
  if (next == was) return;
  for (int wheel = first; wheel <= last; wheel += 1) enter(wheel, next, first);
}

static void look(double since) {
  for (int i = 0; i < 4; i += 1) {
    rim[i] = radius[i] * (seen[i] - state[WHEEL + i]) / since;
    seen[i] = state[WHEEL + i];
  }
  if (speed <= least_speed) {
    if (!active) return;
    memset(phase, 0, sizeof phase);
    for (int i = 0; i < 4; i += 1) set_valve(i, quickness[i / 2], quickness[i / 2], INFINITY);
    active = 0;
    return;
  }
  decide(0, 0);
  decide(1, 1);
  decide(2, 3);
  active = phase[0] || phase[1] || phase[2];
}

/* One two-stage implicit step of the heat in one rotor. */
static void warm_rotor(int wheel, double span) {
  const double gamma = 1 - sqrt(0.5), carry = (1 - gamma) / gamma;
  int a = wheel / 2, n = nodes[a];
  double flux = rotor_share[a] * (works[6 + wheel] - given[wheel]) / (2 * area[a] * span), weight = gamma * span;
  double hot = face[wheel] + kelvin, cold = air_temperature + kelvin, strength = radiating[a] * stefan_boltzmann;
  double cubed = hot * hot * hot, radiation_slope = 4 * strength * cubed;
  double offset = strength * (cubed * hot - cold * cold * cold * cold) - radiation_slope * (hot - cold);
  double face_slope = uncovered[a] * face_cooling[a] + radiation_slope;
  double through = 1 / (1 + face_slope * face_resistance[a]), face_conductance = face_slope * through;
  double before[NODES], after[NODES], capacity[NODES], inverse[NODES], links[NODES];
  double *t = temperature[wheel], *h = enthalpy[wheel];
  for (int i = 0; i < n; i += 1) {
    before[i] = after[i] = t[i] - air_temperature;
    capacity[i] = node_mass[a][i] * (heat_0[a] + heat_1[a] * (t[i] - 20));
  }
  double link = 0, linked = 0, loss = weight * face_conductance;
  for (int i = 0; i < n; i += 1) {
    double next_link = weight * conductance[a][i];
    loss += weight * vent_cooling[a] * vent_share[a][i];
    inverse[i] = 1 / (capacity[i] + link + next_link + loss - linked);
    links[i] = next_link;
    link = next_link;
    linked = next_link * next_link * inverse[i];
    loss = 0;
  }
  double source = (flux - offset) * through;
  for (int stage = 0; stage < 2; stage += 1) {
    double start = stage ? carry : 1;
    for (int i = 0; i < n; i += 1) after[i] = capacity[i] * (before[i] + start * (after[i] - before[i]));
    after[0] += weight * source;
    for (int i = 1; i < n; i += 1) after[i] += links[i - 1] * inverse[i - 1] * after[i - 1];
    double next = 0;
    for (int i = n - 1; i >= 0; i -= 1) after[i] = next = (after[i] + links[i] * next) * inverse[i];
  }
  for (int i = 0; i < n; i += 1) {
    h[i] += (heat_0[a] + heat_1[a] * (t[i] - 20)) * (after[i] - before[i]);
    t[i] = 20 + 2 * h[i] / (heat_0[a] + sqrt(heat_0[a] * heat_0[a] + 2 * heat_1[a] * h[i]));
  }
  double into = source - face_conductance * (t[0] - air_temperature);
  face[wheel] = t[0] + face_resistance[a] * (2.0 / 3 * into + conductance[a][0] * (t[0] - t[1]) / 3);
}

static void warm(void) {
  double span = now - warmed_at;
  if (span <= 0) return;
  for (int i = 0; i < 4; i += 1) {
    double was = face[i];
    warm_rotor(i, span);
    given[i] = works[6 + i];
    friction[i] = table_at(i / 2, face[i]);
    friction_rate[i] = (table_at(i / 2, face[i] + face[i] - was) - friction[i]) / span;
  }
  friction_time = now;
  warmed_at = now;
}

static double energy(void) {
  double squared = pitch_rate * pitch_rate, x = state[PITCH], rate = state[PITCH_RATE];
  double sum = 0.5 * mass * state[SPEED] * state[SPEED] + 0.5 * mass * pitch_carry * (x * x + rate * rate / squared);
  for (int i = 0; i < 4; i += 1) sum += 0.5 / per_inertia[i] * state[WHEEL + i] * state[WHEEL + i];
  return sum;
}

static double stop(double *open) {
  memset(state, 0, sizeof state);
  memset(phase, 0, sizeof phase);
  memset(works, 0, sizeof works);
  memset(given, 0, sizeof given);
  active = 0;
  now = warmed_at = friction_time = 0;
  state[SPEED] = entry;
  for (int i = 0; i < 4; i += 1) {
    int axle = i / 2;
    double still = start_temperature[axle], rise = still - 20;
    per_anchor[i] = 1e9;
    set_valve(i, quickness[axle], quickness[axle], INFINITY);
    face[i] = still;
    for (int j = 0; j < nodes[axle]; j += 1) {
      temperature[i][j] = still;
      enthalpy[i][j] = rise * (heat_0[axle] + 0.5 * heat_1[axle] * rise);
    }
    friction[i] = table_at(axle, still);
    friction_rate[i] = 0;
    state[WHEEL + i] = seen[i] = entry / radius[i];
  }
  speed = wheel_speed(state);
  kinetic_in = energy();
  slopes(0, state, k1);
  book(0);
  memset(works, 0, sizeof works);
  int rest = 0;
  for (int looks = 1; !rest; looks += 1) {
    double from = now, to = looks * period;
    for (int i = 1; i <= STEPS_PER_LOOK && !rest; i += 1)
      rest = march_to(i == STEPS_PER_LOOK ? to : from + (to - from) * i / STEPS_PER_LOOK);
    if (rest) break;
    look(period);
    if (looks % LOOKS_PER_WARMING == 0) warm();
    slopes(now, state, k1);
  }
  warm();
  *open = kinetic_in - energy();
  for (int i = 0; i < WORKS; i += 1) *open -= works[i];
  return state[DISTANCE];
}

int main(void) {
  int stops = (int)number();
  read_all();
  double distance = 0, open = 0;
  struct timespec start, end;
  stop(&open);
  clock_gettime(CLOCK_MONOTONIC, &start);
  for (int i = 0; i < stops; i += 1) distance += stop(&open);
  clock_gettime(CLOCK_MONOTONIC, &end);
  double seconds = (double)(end.tv_sec - start.tv_sec) + 1e-9 * (double)(end.tv_nsec - start.tv_nsec);
  printf("%.9f %.9f %.6f\n", seconds / stops, distance / stops, open);
  return 0;
}
