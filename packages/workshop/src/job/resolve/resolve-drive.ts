import type { CarDocument } from '../document/job-document.ts';
import { driveFacts } from '../facts/laden-facts.ts';
import type { Known } from '../known.ts';
import type { Filler } from './filler.ts';

const titles = { regeneration: 'Regeneration', creep: 'Creep at idle' } as const;

/** What the drive does beside the brakes; null where it does nothing. */
export function resolveDrive(filler: Filler, car: CarDocument, key: keyof typeof titles): Known | null {
  const stated = car[key];
  if (stated === undefined) filler.assumedWord(['car', key], titles[key], 'none', 'not stated');
  if (stated === undefined || stated === 'none') return null;
  return filler.stated(driveFacts.share, stated.share, ['car', key, 'share']);
}

/** Where software alone links foot and pressure nothing here holds: one clear line, and no figure. */
export function refuseByWire(filler: Filler, { brakeByWire }: CarDocument): void {
  const path = ['car', 'brakeByWire'];
  if (brakeByWire === undefined) filler.assumedWord(path, 'Brake by wire', 'no', 'not stated');
  if (brakeByWire !== 'yes') return;
  filler.findings.push({
    code: 'by-wire-not-modeled',
    path,
    at: 'value',
    found: 'yes',
    accepted: 'no',
    message:
      'car.brakeByWire is yes; software decides there what the foot does, and no figure of this program would hold. Accepted is no',
  });
}
