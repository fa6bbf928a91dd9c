// The heat of both axles' rotors and pads through the stops of a schedule by Euler's explicit steps: constant properties, the
// heat of each stop put in evenly over its time, faces, vent, hat and radiation as one constant coefficient chosen so that it
// comes near. A reference for speed, not for truth.
const layers = 4;
const padLayers = 3;

/** Of half a corner at each axle: capacities, J/K, links, W/K, and what cools, W/K. */
export function cornerNumbers({ frontBrake, rearBrake, car }) {
  return { mass: car.mass, front: half(frontBrake), rear: half(rearBrake) };
}

function half({ rotor, pad }) {
  const area = Math.PI * pad.radialHeight * (2 * rotor.sweptOuterRadius - pad.radialHeight);
  const cheek = rotor.cheekThickness / layers;
  const ring = (0.5 * rotor.ringMass * rotor.specificHeat * 1.2) / layers;
  const padLayer = pad.thickness / padLayers;
  return {
    rotor: { heat: ring, link: (rotor.conductivity * area) / cheek },
    pad: {
      heat: pad.area * padLayer * pad.density * pad.specificHeat,
      link: (pad.conductivity * pad.area) / padLayer,
    },
    contact: 10_000 * pad.area,
    cooling: 270 * area,
  };
}

/** Marches both axles through the stops of an outcome; answers the hottest front ring, °C, and the steps. */
export function explicitMarch(numbers, { stops, time }) {
  const front = axle(numbers.front);
  const rear = axle(numbers.rear);
  const step = Math.min(front.longest, rear.longest);
  const count = Math.ceil(time / step);
  let hottest = 0;
  let next = 0;
  for (let i = 0; i < count; i += 1) {
    const now = i * step;
    while (next < stops.length && now > stops[next].startTime + stops[next].time) next += 1;
    const stop = stops[next];
    const brakes = stop !== undefined && now >= stop.startTime;
    const power = brakes ? (0.5 * numbers.mass * stop.from * stop.from) / stop.time : 0;
    front.advance(step, (0.72 * power) / 4, brakes);
    rear.advance(step, (0.25 * power) / 4, brakes);
    hottest = Math.max(hottest, front.bulk());
  }
  return { hottest, steps: count };
}

function axle({ rotor, pad, contact, cooling }) {
  const nodes = layers + padLayers;
  const temperatures = new Float64Array(nodes).fill(100);
  const flows = new Float64Array(nodes);
  const longest = Math.min(
    rotor.heat / (2 * rotor.link + contact + cooling),
    pad.heat / (2 * pad.link + contact),
  );
  return {
    longest,
    bulk: () => temperatures.subarray(0, layers).reduce((sum, each) => sum + each, 0) / layers,
    advance(step, power, brakes) {
      flows.fill(0);
      for (let i = 0; i + 1 < nodes; i += 1) {
        const touching = brakes ? contact : 0.02 * contact;
        const link = i + 1 < layers ? rotor.link : i + 1 === layers ? touching : pad.link;
        const flow = link * (temperatures[i] - temperatures[i + 1]);
        flows[i] -= flow;
        flows[i + 1] += flow;
      }
      flows[layers - 1] += power - 0.5 * cooling * (temperatures[layers - 1] - 20);
      flows[0] -= 0.5 * cooling * (temperatures[0] - 20);
      for (let i = 0; i < nodes; i += 1)
        temperatures[i] += (step * flows[i]) / (i < layers ? rotor.heat : pad.heat);
    },
  };
}
