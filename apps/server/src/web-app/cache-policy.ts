/**
 * Answers how long a browser may keep a file of the app. Names with a hash never change their content; all else is
 * asked for again each time.
 *
 * @param path - path of the file
 * @returns value of the Cache-Control header
 */
export function cachePolicy(path: string): string {
  const hashed = /[\\/]assets[\\/][^\\/]+-[\w-]{8,}\.\w+(\.gz|\.br)?$/.test(path);
  return hashed ? 'public, max-age=31536000, immutable' : 'no-cache';
}
