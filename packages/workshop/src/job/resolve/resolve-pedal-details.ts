import { readQuantity } from '../document/read-quantity.ts';
import { boosterDetailsFacts } from '../facts/booster-details-facts.ts';
import { hubFacts } from '../facts/hub-facts.ts';
import { masterCylinderDetailsFacts } from '../facts/master-cylinder-details-facts.ts';
import type { CarDocument } from '../document/job-document.ts';
import type { BalanceBarPart, Job, TandemCylinderPart, VacuumBoosterPart } from '../job.ts';
import type { Known } from '../known.ts';
import { pathText } from '../reading/path-text.ts';
import { fillFacts } from './fill-facts.ts';
import { practice } from './filler.ts';
import type { Fallback, Filler } from './filler.ts';
import type { PartOf } from './part-of.ts';

/** Room on both sides of the diaphragm: by its size where it is not stated. */
export function boosterDetails(
  filler: Filler,
  id: string,
  stated: PartOf<'booster'>,
  diameter: Known,
): VacuumBoosterPart['details'] {
  const area = (Math.PI / 4) * diameter.value ** 2;
  const deep = (depth: number, share: number, note: string) => (): Fallback =>
    practice(depth * area, share * depth * area, note);
  return fillFacts(filler, {
    facts: boosterDetailsFacts,
    stated,
    path: ['parts', id],
    fallbacks: {
      vacuumVolume: deep(0.055, 0.25, 'about 55 mm deep behind the diaphragm, no tank'),
      deadVolume: deep(0.006, 0.4, 'about 6 mm deep before the diaphragm at rest'),
    },
  });
}

export function tandemDetails(
  filler: Filler,
  id: string,
  stated: PartOf<'master-cylinder'>,
  stroke: Known,
): TandemCylinderPart['details'] {
  const details = fillFacts(filler, {
    facts: masterCylinderDetailsFacts,
    stated,
    path: ['parts', id],
    fallbacks: {
      primaryStroke: () => rest(stroke, strokeOf(stated, 'secondaryStroke')),
      secondaryStroke: () => rest(stroke, strokeOf(stated, 'primaryStroke')),
      reservoirVolume,
    },
  });
  refuseOtherSum(filler, id, stated, stroke);
  return details;
}

export function balanceBarDetails(
  filler: Filler,
  id: string,
  stated: PartOf<'master-cylinder'>,
): BalanceBarPart['details'] {
  const facts = { reservoirVolume: masterCylinderDetailsFacts.reservoirVolume };
  return fillFacts(filler, { facts, stated, path: ['parts', id], fallbacks: { reservoirVolume } });
}

const reservoirVolume = (): Fallback =>
  practice(1.5e-4, 4e-5, 'about 150 cm³ between the marks of a car of this kind');

/** Which axle hangs on the primary piston: it matters only where the two strokes differ. */
export function primaryFeeds(
  filler: Filler,
  id: string,
  { primaryFeeds: stated }: PartOf<'master-cylinder'>,
): 'front' | 'rear' {
  if (stated !== undefined) return stated;
  const reason = 'not stated; matters only where the strokes of the two pistons differ';
  filler.assumedWord(['parts', id, 'primaryFeeds'], 'Axle on the primary piston', 'front', reason);
  return 'front';
}

const runOut = (): Fallback => practice(4e-5, 2e-5, 'a rotor mounted clean, measured at the pads');
const bearingPlay = (): Fallback => practice(3e-5, 2e-5, 'a wheel bearing in good order');
const axleFloat = (): Fallback =>
  practice(0, 0, 'an axle that does not float; state it where a clip or wedge holds it');

/** Run-out, bearing play and axle float. */
export function resolveHubs(filler: Filler, stated: CarDocument['hubs'] = {}): Job['car']['hubs'] {
  return fillFacts(filler, {
    facts: hubFacts,
    stated,
    path: ['car', 'hubs'],
    fallbacks: {
      frontRunOut: runOut,
      rearRunOut: runOut,
      frontBearingPlay: bearingPlay,
      rearBearingPlay: bearingPlay,
      frontAxleFloat: axleFloat,
      rearAxleFloat: axleFloat,
    },
  });
}

type StrokeKey = 'primaryStroke' | 'secondaryStroke';

/** The full stroke where both single ones are stated. */
export function sumOfStrokes(stated: PartOf<'master-cylinder'>): Fallback | null {
  const [primary, secondary] = [strokeOf(stated, 'primaryStroke'), strokeOf(stated, 'secondaryStroke')];
  if (primary === null || secondary === null) return null;
  const value = primary + secondary;
  return { value, spread: 0.005 * value, reason: 'sum of the strokes of both pistons' };
}

/** m; null where not stated, or not readable (then the schema has said so). */
function strokeOf(stated: PartOf<'master-cylinder'>, key: StrokeKey): number | null {
  const input = stated[key];
  const reading = input === undefined ? null : readQuantity(input, masterCylinderDetailsFacts[key]);
  return reading?.ok === true ? reading.value : null;
}

function rest(stroke: Known, other: number | null): Fallback {
  const least = masterCylinderDetailsFacts.primaryStroke.low;
  if (other !== null) {
    const value = Math.max(least, stroke.value - other);
    return { value, spread: stroke.spread, reason: 'full stroke less that of the other piston' };
  }
  return practice(
    stroke.value / 2,
    0.15 * stroke.value,
    'half of the full stroke; the single strokes are not stated',
  );
}

function refuseOtherSum(filler: Filler, id: string, stated: PartOf<'master-cylinder'>, stroke: Known): void {
  const [primary, secondary] = [strokeOf(stated, 'primaryStroke'), strokeOf(stated, 'secondaryStroke')];
  const sum = (primary ?? 0) + (secondary ?? 0);
  const both = primary !== null && secondary !== null;
  const fits = both ? Math.abs(sum / stroke.value - 1) <= 0.05 : sum < stroke.value;
  if (fits) return;
  const path = ['parts', id, primary === null ? 'secondaryStroke' : 'primaryStroke'];
  const found = `${millimeters(sum)} for ${both ? 'both pistons together' : 'one piston'}`;
  const accepted = both
    ? `strokes of both pistons that sum to the full stroke of ${millimeters(stroke.value)} (within 5 %)`
    : `less than the full stroke of ${millimeters(stroke.value)}`;
  const message = `${pathText(path)}: ${found}; accepted is ${accepted}`;
  filler.findings.push({ code: 'contradiction', path, at: 'value', found, accepted, message });
}

function millimeters(value: number): string {
  return `${(1000 * value).toFixed(1)} mm`;
}
