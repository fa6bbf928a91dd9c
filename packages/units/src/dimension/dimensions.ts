import { dimensionWords } from './dimension-words.ts';
import type { Dimension } from './dimension.ts';

/** All dimensions. */
export const dimensions = Object.keys(dimensionWords) as readonly Dimension[];
