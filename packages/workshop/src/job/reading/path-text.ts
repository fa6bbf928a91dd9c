import type { DocumentPath } from './position.ts';

/** A path as a person reads it: `parts.kit-caliper.pistons[1]`. */
export function pathText(path: DocumentPath): string {
  return path
    .map((step, index) => (typeof step === 'number' ? `[${step}]` : `${index === 0 ? '' : '.'}${step}`))
    .join('');
}
