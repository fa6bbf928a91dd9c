import { pathText } from '../reading/path-text.ts';
import type { DocumentPath } from '../reading/position.ts';
import { shown } from '../reading/shown.ts';
import type { Filler } from './filler.ts';

interface StatedFluid {
  readonly class?: string | undefined;
  readonly title: string;
}

const silicone = /\bdot\s*[-_]?\s*5(?![\s._-]*1(?!\d)|\d)|\bsilicon/i;
const mineral = /\bmineral\b|\bhydraulic oil\b/i;

/**
 * The class of a brake fluid as the person states it, with `DOT 5.1` and the like brought to the id. A fluid that is
 * not modeled is refused with the reason, by its title too where no class is given, and another is never suggested:
 * the wrong fluid swells the seals or leaves gas in the brakes.
 *
 * @param filler - takes the finding
 * @param fluid - class and title as written
 * @param path - of the part
 * @returns the id; undefined where none is stated or the stated one is refused
 */
export function statedFluidClass(filler: Filler, fluid: StatedFluid, path: DocumentPath): string | undefined {
  const key = fluid.class === undefined ? 'title' : 'class';
  const written = fluid.class ?? fluid.title;
  const refused = fluidRefusal(written);
  if (refused === null) return fluid.class === undefined ? undefined : glycolId(fluid.class);
  const at = [...path, key];
  const message = `${pathText(at)} is ${shown(written)}: ${refused}`;
  const accepted = 'DOT 3, DOT 4 or DOT 5.1, as the cap and the maker of the car say';
  filler.findings.push({
    code: 'fluid-not-modeled',
    path: at,
    at: 'value',
    found: shown(written),
    accepted,
    message,
  });
  return undefined;
}

/** Why a fluid is not modeled, by how it is called; null where nothing speaks against it. */
export function fluidRefusal(written: string): string | null {
  if (silicone.test(written)) return siliconeWords;
  return mineral.test(written) ? mineralWords : null;
}

const siliconeWords =
  'silicone fluid (DOT 5) is not modeled; it must never be mixed with DOT 3, 4 or 5.1, and has no place in a car with ABS unless its maker allows it';
const mineralWords =
  'mineral fluid is not modeled; it must never be mixed with DOT 3, 4 or 5.1, and goes only where the maker of the car asks for it';

/** `DOT 5.1` and `dot5.1` are `dot51`; whatever else is written stays as it is. */
function glycolId(written: string): string {
  const grade = /^\s*dot[\s_-]*(3|4|5[\s._-]*1)\s*$/i.exec(written)?.[1];
  return grade === undefined ? written : `dot${grade.replace(/\D/g, '')}`;
}
