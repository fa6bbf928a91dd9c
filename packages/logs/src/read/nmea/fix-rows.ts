import type { FixPart } from './read-fix.ts';

/** All that is known of one moment. */
export interface FixRow {
  /** s since midnight UTC. */
  readonly seconds: number;
  /** Days since 1970-01-01; NaN where no sentence of the moment tells it. */
  readonly day: number;
  /** Whether any sentence of the moment calls the fix void. */
  readonly isVoid: boolean;
  readonly recommended: FixPart | null;
  readonly course: FixPart | null;
  readonly position: FixPart | null;
  /** Line of the moment's first sentence, 1-based. */
  readonly line: number;
}

interface OpenRow {
  seconds: number;
  day: number;
  isVoid: boolean;
  recommended: FixPart | null;
  course: FixPart | null;
  position: FixPart | null;
  line: number;
}

/**
 * Gathers sentences into moments. RMC, GGA and ZDA name their moment; a new time of day closes the one before. VTG
 * names none and is taken to belong to the moment that stands open, that is, receivers send it after RMC or GGA.
 *
 * @param emit - takes each finished moment
 * @returns `add` takes the next sentence and says false where it belongs to no moment; `end` closes the last one
 */
export function fixRows(emit: (row: FixRow) => void): {
  readonly add: (part: FixPart, line: number) => boolean;
  readonly end: () => void;
} {
  let open: OpenRow | null = null;
  const end = (): void => {
    if (open !== null) emit(open);
    open = null;
  };
  const add = (part: FixPart, line: number): boolean => {
    if (part.type !== 'VTG') {
      if (Number.isNaN(part.seconds)) return false;
      if (open?.seconds !== part.seconds) {
        end();
        open = {
          seconds: part.seconds,
          day: NaN,
          isVoid: false,
          recommended: null,
          course: null,
          position: null,
          line,
        };
      }
    }
    if (open === null) return false;
    put(open, part);
    return true;
  };
  return { add, end };
}

/** The first sentence of a kind counts; a repeated one changes nothing but may still call the fix void. */
function put(row: OpenRow, part: FixPart): void {
  row.isVoid ||= part.isVoid;
  if (Number.isNaN(row.day)) row.day = part.day;
  if (part.type === 'RMC') row.recommended ??= part;
  if (part.type === 'VTG') row.course ??= part;
  if (part.type === 'GGA') row.position ??= part;
}
