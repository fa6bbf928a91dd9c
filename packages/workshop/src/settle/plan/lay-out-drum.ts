import type { AxleBrake, Hose, Tube } from '@standstill/braking';
import type { DrumPart } from '../../job/job.ts';
import type { Known } from '../../job/known.ts';
import { settleDrum } from '../settle-drum.ts';
import type { Draft } from './draft.ts';
import type { Refill } from './refill.ts';

interface LayOutDrumInput {
  readonly drum: DrumPart;
  /** With the central values. */
  readonly fresh: AxleBrake;
  readonly hose: Hose;
  readonly tube: Tube;
  readonly refill: Refill;
}

/** Puts a drum brake down for refilling: the disc that acts like it is worked out anew for every draw. */
export function layOutDrum({ drum, fresh, hose, tube, refill }: LayOutDrumInput): AxleBrake {
  const brake: Draft<AxleBrake> = { ...fresh, hose, tube };
  const knowns: readonly Known[] = [...Object.values(drum.facts), drum.friction.factor];
  const drawn: Record<string, number> = {};
  for (const known of knowns) refill.take(known, drawn, known.path);
  refill.workOut(knowns, () => {
    Object.assign(
      brake,
      settleDrum(drum, hose, tube, ({ path, value }) => drawn[path] ?? value),
    );
  });
  return brake;
}
