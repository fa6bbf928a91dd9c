import { dimensionWords } from '../dimension/dimension-words.ts';
import type { Dimension } from '../dimension/dimension.ts';
import type { Refusal } from './reading.ts';

/**
 * Says to a person what was found and what is wanted, in one line.
 *
 * @param refusal - what `parseQuantity` or `quantityFrom` answered
 * @returns one or two short sentences
 */
export function refusalSentence(refusal: Refusal): string {
  const found = `"${short(refusal.found)}"`;
  const wanted = `${dimensionWords[refusal.dimension].noun} is wanted, e.g. ${examples(refusal.dimension)}`;
  switch (refusal.code) {
    case 'empty':
      return `nothing is written here; ${wanted}`;
    case 'bad-number':
      return `${found} does not start with a number that can be read; ${wanted}`;
    case 'ambiguous-number':
      return `${found}: the number can be read in two ways; write it without thousands marks. ${capital(wanted)}`;
    case 'not-finite':
      return `${found} is not a finite number; ${wanted}`;
    case 'missing-unit':
      return `${found} has no unit; ${wanted}`;
    case 'wrong-dimension':
      return `${found} is ${dimensionWords[refusal.foundDimension].noun}; ${wanted}`;
    case 'unknown-unit': {
      const start = `${found}: unknown unit "${short(refusal.foundUnit)}"`;
      return refusal.nearest ? `${start}; did you mean "${refusal.nearest}"?` : `${start}; ${wanted}`;
    }
  }
}

function examples(dimension: Dimension): string {
  return dimensionWords[dimension].examples.map((example) => `"${example}"`).join(' or ');
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** A long text is cut, so that the answer stays one line. */
function short(text: string): string {
  const line = text.replace(/\s+/gu, ' ');
  return line.length > 60 ? `${line.slice(0, 57)}…` : line;
}
