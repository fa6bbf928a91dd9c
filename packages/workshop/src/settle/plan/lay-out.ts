import type { Foot, Road, SetUp } from '@standstill/braking';
import type { Job, JobPart, JobSetUp } from '../../job/job.ts';
import { airDensity } from '../air-density.ts';
import { partIn, partOrNone } from '../part-in.ts';
import { settle } from '../settle.ts';
import type { Overrides, Settled } from '../settle.ts';
import type { Draft } from './draft.ts';
import { layOutAxle } from './lay-out-axle.ts';
import { layOutBooster } from './lay-out-booster.ts';
import { layOutParking } from './lay-out-parking.ts';
import { layOutLaden } from './lay-out-laden.ts';
import type { Altitude } from './lay-out-booster.ts';
import type { Refill } from './refill.ts';
import { SharedRecords } from './shared-records.ts';

interface LayOutInput {
  readonly job: Job;
  readonly setUpIds: readonly string[];
  readonly overrides: Overrides;
  readonly refill: Refill;
}

/** What every set-up of a plan stands on: filled first, so that what is worked out from it finds it there. */
interface Ground {
  readonly road: Road;
  readonly foot: Foot;
  readonly altitude: Altitude;
}

/** The set-ups with their central values, every uncertain number of them put down for refilling. */
export function layOut({ job, setUpIds, overrides, refill }: LayOutInput): readonly Settled[] {
  const shared = new SharedRecords();
  return setUpIds.map((id) => {
    const draft = settle(job, id, undefined, overrides);
    const ground = shared.one('ground', () => layOutGround(job, draft, overrides, refill));
    const { facts, repeatedStops } = job.conditions;
    const setUp = layOutSetUp(job, id, draft.setUp, ground, shared, refill);
    const fresh = draft.ladenCar;
    const { regeneration, creep } = job.car;
    const settled: Draft<Settled> = {
      ...draft,
      setUp,
      parking: layOutParking({ job, setUp: setUpOf(job, id), fresh: draft.parking, refill }),
      ladenCar: shared.one('laden car', () => layOutLaden({ job, car: setUp.car, fresh, refill })),
      road: ground.road,
      foot: ground.foot,
    };
    if (overrides.speed === undefined) refill.take(facts.speed, settled, 'speed');
    if (regeneration !== null) refill.take(regeneration, settled, 'regeneration');
    if (creep !== null) refill.take(creep, settled, 'creep');
    refill.take(facts.startTemperature, settled, 'startTemperature');
    refill.take(repeatedStops.interval, settled, 'interval');
    return settled;
  });
}

function layOutGround(
  { conditions }: Job,
  { road, foot }: { readonly road: Draft<Road>; readonly foot: Foot },
  overrides: Overrides,
  refill: Refill,
): Ground {
  const { facts } = conditions;
  const altitude = { known: facts.altitude, value: facts.altitude.value };
  refill.take(facts.altitude, altitude, 'value');
  refill.take(facts.surfaceFactor, road, 'surfaceFactor');
  refill.take(facts.waterDepth, road, 'waterDepth');
  refill.take(facts.grade, road, 'grade');
  refill.take(facts.airTemperature, road, 'airTemperature');
  refill.workOut([facts.altitude, facts.airTemperature], () => {
    road.airDensity = airDensity({ altitude: altitude.value, temperature: road.airTemperature });
  });
  if (overrides.pedalForce === undefined) refill.take(facts.pedalForce, foot, 'force');
  refill.take(facts.pedalRamp, foot, 'rampTime');
  return { road, foot, altitude };
}

function layOutSetUp(
  job: Job,
  id: string,
  fresh: SetUp,
  { altitude }: Ground,
  shared: SharedRecords,
  refill: Refill,
): SetUp {
  const setUp = setUpOf(job, id);
  const plain = <T extends object>(part: JobPart | null, record: T): T =>
    part === null
      ? record
      : shared.one(part.id, () => {
          refill.takeFacts<object>(part.facts, record);
          return record;
        });
  const booster = partOrNone(job, setUp, 'booster', 'booster');
  return {
    car: shared.one('car', () => {
      refill.takeFacts(job.car.facts, fresh.car);
      return fresh.car;
    }),
    frontTire: plain(partIn(job, setUp, 'frontTire', 'tire'), fresh.frontTire),
    rearTire: plain(partIn(job, setUp, 'rearTire', 'tire'), fresh.rearTire),
    pedal: plain(partIn(job, setUp, 'pedal', 'pedal'), fresh.pedal),
    booster:
      booster === null
        ? fresh.booster
        : shared.one(booster.id, () => layOutBooster(booster, fresh.booster, altitude, refill)),
    masterCylinder: plain(partIn(job, setUp, 'masterCylinder', 'master-cylinder'), fresh.masterCylinder),
    circuitSplit: fresh.circuitSplit,
    rearValve: plain(partOrNone(job, setUp, 'rearValve', 'rear-valve'), fresh.rearValve),
    antilock: plain(partOrNone(job, setUp, 'antilock', 'antilock'), fresh.antilock),
    fluid: plain(partIn(job, setUp, 'fluid', 'fluid'), fresh.fluid),
    frontBrake: layOutAxle({ job, setUp, axle: 'front', fresh: fresh.frontBrake, shared, refill }),
    rearBrake: layOutAxle({ job, setUp, axle: 'rear', fresh: fresh.rearBrake, shared, refill }),
  };
}

function setUpOf(job: Job, id: string): JobSetUp {
  const found = job.setUps.find((setUp) => setUp.id === id);
  if (found === undefined) throw new RangeError(`the job has no set-up "${id}"`);
  return found;
}
