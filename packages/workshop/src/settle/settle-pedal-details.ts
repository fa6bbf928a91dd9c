import type { AxleHubs, BoosterChambers, TandemStrokes } from '@standstill/braking';
import type { Job, JobSetUp } from '../job/job.ts';
import type { Draw } from './draw.ts';
import { partIn, partOrNone } from './part-in.ts';
import { settleFacts } from './settle-facts.ts';

/** What the pedal is asked beyond the set-up, SI. */
export interface PedalDetails {
  readonly hubs: AxleHubs;
  /** Null with a balance bar. */
  readonly strokes: TandemStrokes | null;
  /** Null without a vacuum booster. */
  readonly chambers: BoosterChambers | null;
  /** m³ between the marks. */
  readonly reservoirVolume: number;
}

/**
 * Turns what only the pedal is asked into plain numbers.
 *
 * @param job - the job
 * @param setUp - one of its set-ups
 * @param draw - which of the possible values to take
 * @returns the numbers, SI
 */
export function settlePedalDetails(job: Job, setUp: JobSetUp, draw: Draw): PedalDetails {
  const booster = partOrNone(job, setUp, 'booster', 'booster');
  const cylinder = partIn(job, setUp, 'masterCylinder', 'master-cylinder');
  return {
    hubs: settleHubs(job, draw),
    strokes: settleStrokes(cylinder, draw),
    chambers: booster?.type === 'vacuum' ? settleFacts(booster.details, draw) : null,
    reservoirVolume: draw(cylinder.details.reservoirVolume),
  };
}

function settleHubs(job: Job, draw: Draw): AxleHubs {
  const { frontRunOut, frontBearingPlay, frontAxleFloat, rearRunOut, rearBearingPlay, rearAxleFloat } =
    settleFacts(job.car.hubs, draw);
  return {
    front: { runOut: frontRunOut, bearingPlay: frontBearingPlay, axleFloat: frontAxleFloat },
    rear: { runOut: rearRunOut, bearingPlay: rearBearingPlay, axleFloat: rearAxleFloat },
  };
}

/** The two strokes keep their ratio and sum to the full stroke of the same draw. */
function settleStrokes(
  cylinder: ReturnType<typeof partIn<'master-cylinder'>>,
  draw: Draw,
): TandemStrokes | null {
  if (cylinder.type !== 'tandem') return null;
  const { primaryStroke, secondaryStroke } = cylinder.details;
  const [primary, secondary] = [draw(primaryStroke), draw(secondaryStroke)];
  const scale = draw(cylinder.facts.stroke) / (primary + secondary);
  return { primary: scale * primary, secondary: scale * secondary, primaryFeeds: cylinder.primaryFeeds };
}
