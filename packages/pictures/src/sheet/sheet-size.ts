/** px; wide enough that a foot of a stop from 60 mph is about 5 px, narrow enough for a page in landscape. */
export const sheetSize = { width: 900, margin: 28 } as const;

/** px, from the left to the right end of what is drawn. */
export const sheetEdges = { left: sheetSize.margin, right: sheetSize.width - sheetSize.margin } as const;
