import type { AssumedValue } from '@standstill/workshop';
import { createContext, useContext } from 'react';

/** What was filled in, by path. */
export const FilledContext = createContext<ReadonlyMap<string, AssumedValue>>(new Map());

export function useFilled(): ReadonlyMap<string, AssumedValue> {
  return useContext(FilledContext);
}
