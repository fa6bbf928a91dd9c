/** Largest log that is kept, bytes. A stop log of ten minutes at 100 Hz has about five million. */
export const uploadLimit = 64 * 1024 * 1024;

/** Uploads that are held in memory at once; further ones wait with their bytes still on the way. */
export const uploadsAtOnce = 3;
