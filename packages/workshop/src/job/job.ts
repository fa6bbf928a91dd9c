import type { PistonMaterialId, ShoeArrangement } from '@standstill/braking';
import type { surfaceClasses } from '@standstill/braking';
import type { Filling } from './filling.ts';
import type { Known } from './known.ts';
import type { PartSlot } from './document/part-slots.ts';
import type { LogColumnsDocument } from './document/log-columns-schema.ts';
import type { JudgementDocument, RunDocument } from './document/run-schema.ts';
import type { carFacts } from './facts/car-facts.ts';
import type { hubFacts } from './facts/hub-facts.ts';
import type { runFacts } from './facts/run-facts.ts';
import type { testFacts } from './facts/test-facts.ts';
import type { PedalPointDocument, PedalTestDocument } from './document/pedal-test-schema.ts';
import type { conditionsFacts } from './facts/conditions-facts.ts';
import type * as facts from './facts/part-facts.ts';
import type { TireSize } from './resolve/tire-size.ts';

/** A table of facts with every value known. */
export type KnownFacts<F> = { readonly [K in keyof F]: Known };

/** A job as the program works with it: every value in SI, with origin and spread, nothing left out. */
export interface Job {
  readonly title: string;
  readonly complaint: string | null;
  readonly notice: string | null;
  readonly car: {
    readonly name: string;
    readonly className: string | null;
    readonly facts: KnownFacts<typeof carFacts>;
    /** What knocks the pads back. */
    readonly hubs: KnownFacts<typeof hubFacts>;
    readonly laden: LadenCar;
    /** 1, greatest deceleration over g by the motors; null where there is none. */
    readonly regeneration: Known | null;
    /** 1, push over weight of a drive that creeps at idle; null where there is none. */
    readonly creep: Known | null;
  };
  readonly conditions: JobConditions;
  /** By id: the document's parts, and the assumed ones under ids that start with `assumed:`. */
  readonly parts: Readonly<Record<string, JobPart>>;
  /** In the order of the document; the first without `basedOn` is the car as found. */
  readonly setUps: readonly JobSetUp[];
  readonly runs: readonly JobRun[];
  /** What a test is wanted to show; null where it is not stated. */
  readonly test: StatedFacts<typeof testFacts>;
  readonly logColumns: readonly LogColumnsDocument[];
  /** Measured pedals. */
  readonly pedalTests: readonly JobPedalTest[];
  /** What was filled in, in the order of the document. */
  readonly fillings: readonly Filling[];
}

/** One figure of the laden car: of its whole state, or of the load that is put on top of the test mass. */
export interface LadenFigure {
  readonly of: 'car' | 'load';
  readonly known: Known;
}

export interface LadenCar {
  readonly mass: LadenFigure;
  readonly frontLoadShare: LadenFigure;
  readonly centerOfGravityHeight: LadenFigure;
}

export interface JobConditions {
  readonly surface: keyof typeof surfaceClasses;
  readonly facts: KnownFacts<typeof conditionsFacts>;
  readonly repeatedStops: { readonly count: number; readonly interval: Known };
}

/** A set-up with every slot filled by a part id; null where the car has nothing there. */
export interface JobSetUp {
  readonly id: string;
  readonly title: string;
  readonly basedOn: string | null;
  readonly circuitSplit: 'front-rear' | 'diagonal';
  readonly slots: Readonly<Record<PartSlot, string | null>>;
}

/** A table of facts of which any may be left out: what is not stated is not assumed either. */
export type StatedFacts<F> = { readonly [K in keyof F]: Known | null };

type RunQuantity = 'nominalSpeed' | keyof typeof runFacts;

export interface JobRun extends Omit<RunDocument, RunQuantity | 'judgements'>, StatedFacts<typeof runFacts> {
  readonly nominalSpeed: Known | null;
  readonly judgements: readonly JobJudgement[];
}

/** A person's word on the stop that was under way at a moment of the run's log. */
export interface JobJudgement extends Omit<JudgementDocument, 'at'> {
  /** s, on the log's time base. */
  readonly at: Known;
}

export interface JobPedalTest extends Omit<PedalTestDocument, 'points'> {
  readonly points: readonly JobPedalPoint[];
}

/** Of force and line pressure exactly one is there. */
export interface JobPedalPoint {
  readonly force: Known | null;
  readonly linePressure: Known | null;
  readonly travel: Known;
  readonly plugged: NonNullable<PedalPointDocument['plugged']>;
}

interface PartAbout {
  readonly id: string;
  readonly title: string;
  readonly className: string | null;
}

export type TirePart = PartAbout & {
  readonly kind: 'tire';
  /** What the size on the sidewall says; null where none is given. */
  readonly size: TireSize | null;
  readonly facts: KnownFacts<typeof facts.tireFacts>;
};
export type PedalPart = PartAbout & {
  readonly kind: 'pedal';
  readonly facts: KnownFacts<typeof facts.pedalFacts>;
};
export type BoosterPart = VacuumBoosterPart | HydraulicBoosterPart;
export type VacuumBoosterPart = PartAbout & {
  readonly kind: 'booster';
  readonly type: 'vacuum';
  readonly facts: KnownFacts<Omit<typeof facts.boosterFacts, 'greatestAssist'>>;
  readonly details: KnownFacts<typeof facts.boosterDetailsFacts>;
};
export type HydraulicBoosterPart = PartAbout & {
  readonly kind: 'booster';
  readonly type: 'hydraulic';
  readonly facts: KnownFacts<Pick<typeof facts.boosterFacts, 'gain' | 'greatestAssist'>>;
};
export type MasterCylinderPart = TandemCylinderPart | BalanceBarPart;
export type TandemCylinderPart = PartAbout & {
  readonly kind: 'master-cylinder';
  readonly type: 'tandem';
  readonly facts: KnownFacts<Pick<typeof facts.masterCylinderFacts, 'bore' | 'stroke' | 'efficiency'>>;
  readonly primaryFeeds: 'front' | 'rear';
  readonly details: KnownFacts<typeof facts.masterCylinderDetailsFacts>;
};
export type BalanceBarPart = PartAbout & {
  readonly kind: 'master-cylinder';
  readonly type: 'balance-bar';
  readonly facts: KnownFacts<Omit<typeof facts.masterCylinderFacts, 'bore'>>;
  readonly details: KnownFacts<Pick<typeof facts.masterCylinderDetailsFacts, 'reservoirVolume'>>;
};
export type RearValvePart = PartAbout & {
  readonly kind: 'rear-valve';
  readonly facts: KnownFacts<typeof facts.rearValveFacts>;
};
export type AntilockPart = PartAbout & {
  readonly kind: 'antilock';
  readonly electronicRearLimit: boolean;
  readonly facts: KnownFacts<typeof facts.antilockFacts>;
};
export type FluidPart = PartAbout & {
  readonly kind: 'fluid';
  readonly facts: KnownFacts<typeof facts.fluidFacts>;
};
export type CaliperPart = PartAbout & {
  readonly kind: 'caliper';
  readonly type: 'floating' | 'fixed';
  readonly pistons: readonly Known[];
  readonly pistonMaterial: PistonMaterialId;
  readonly facts: KnownFacts<typeof facts.caliperFacts>;
  readonly heat: KnownFacts<typeof facts.caliperHeatFacts>;
};
export type PadPart = PartAbout & {
  readonly kind: 'pad';
  readonly contact: 'uniform-pressure' | 'uniform-wear';
  readonly friction: KnownTable;
  readonly facts: KnownFacts<typeof facts.padFacts>;
  readonly heat: KnownFacts<typeof facts.padHeatFacts>;
};
export type RotorPart = PartAbout & {
  readonly kind: 'rotor';
  readonly type: 'solid' | 'vented';
  readonly facts: KnownFacts<typeof facts.rotorFacts>;
  readonly heat: KnownFacts<typeof facts.rotorHeatFacts>;
};
export type HosePart = PartAbout & {
  readonly kind: 'hose';
  readonly expansion: KnownTable;
  readonly facts: KnownFacts<typeof facts.hoseFacts>;
};
export type TubePart = PartAbout & {
  readonly kind: 'tube';
  readonly facts: KnownFacts<typeof facts.tubeFacts>;
};

export type DrumPart = PartAbout & {
  readonly kind: 'drum';
  readonly type: ShoeArrangement;
  readonly friction: KnownTable;
  readonly facts: KnownFacts<typeof facts.drumFacts>;
};
type ParkingPull = 'force' | 'leverRatio' | 'cableEfficiency';
export type ParkingBrakePart = HatParkingPart | CaliperParkingPart | DrumParkingPart;
type ParkingAbout = PartAbout & { readonly kind: 'parking-brake'; readonly operatedBy: 'hand' | 'foot' };
export type HatParkingPart = ParkingAbout & {
  readonly type: 'drum-in-hat';
  readonly facts: KnownFacts<
    Pick<typeof facts.parkingBrakeFacts, ParkingPull | 'shoeLeverRatio' | 'drumDiameter' | 'brakeFactor'>
  >;
};
export type CaliperParkingPart = ParkingAbout & {
  readonly type: 'caliper';
  readonly facts: KnownFacts<Pick<typeof facts.parkingBrakeFacts, ParkingPull | 'clampRatio'>>;
};
export type DrumParkingPart = ParkingAbout & {
  readonly type: 'drum';
  readonly facts: KnownFacts<Pick<typeof facts.parkingBrakeFacts, ParkingPull | 'shoeLeverRatio'>>;
};

export type JobPart =
  | TirePart
  | PedalPart
  | BoosterPart
  | MasterCylinderPart
  | RearValvePart
  | AntilockPart
  | FluidPart
  | CaliperPart
  | PadPart
  | RotorPart
  | HosePart
  | TubePart
  | DrumPart
  | ParkingBrakePart;

/** A curve that is known as a whole: one factor carries its spread, so that its points move together. */
export interface KnownTable {
  /** SI, ascending. */
  readonly at: readonly number[];
  readonly values: readonly number[];
  /** Around 1. */
  readonly factor: Known;
}
