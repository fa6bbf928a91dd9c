import { lowered } from './lowered.ts';

/** A set-up as the subject of a sentence, with its verbs in the right number. */
export interface Subject {
  /** `The front kit alone`, or the title in quotes where it reads badly otherwise. */
  readonly name: string;
  /** `verb('save', 'saves')`. */
  readonly verb: (plural: string, singular: string) => string;
}

/**
 * Makes a sentence's subject of a set-up's title.
 *
 * @param title - as the person wrote it
 * @param alone - true where nothing but brakes changes, so that `alone` says that tires do not; left out where it
 *   reads badly behind a long title
 * @returns subject and number
 */
export function subjectOf(title: string, alone: boolean): Subject {
  const bare = title.replace(/\s+(?:alone|only)$/i, '');
  const plain = /^[A-Z][a-z-]+(?: [A-Za-z0-9-]+){0,6}$/.test(bare);
  const name = plain ? `The ${lowered(bare)}` : `"${bare}"`;
  const many = plain && isMany(bare);
  const short = bare.split(' ').length <= 3;
  return {
    name: alone && short ? `${name} alone` : name,
    verb: (plural, singular) => (many ? plural : singular),
  };
}

/** By the noun before any `with`, `on` and the like. */
function isMany(title: string): boolean {
  const head = title.split(/ (?:with|on|for|in|of|without) /)[0] ?? title;
  return / and /.test(head) || /[^s]s$/.test(head);
}
