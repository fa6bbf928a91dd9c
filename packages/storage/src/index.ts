export { openStore } from './open-store.ts';
export { StoreError } from './errors/store-error.ts';
export type { StoreErrorCode } from './errors/store-error.ts';
