import module from 'node:module';

/** Lets Node keep compiled code between starts where it can (22.1 and later). */
export function enableCache(): void {
  if ('enableCompileCache' in module && typeof module.enableCompileCache === 'function')
    module.enableCompileCache();
}
