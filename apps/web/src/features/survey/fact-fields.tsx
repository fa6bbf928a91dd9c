import type { Fact } from '@standstill/workshop';
import { QuantityField } from '../../shared/quantity/quantity-field.tsx';
import { useFilled } from './filled.tsx';

export interface FactFieldsProps {
  /** Where the facts stand in the document: 'car', 'parts.front-pad'. */
  readonly under: string;
  readonly facts: readonly (readonly [string, Fact])[];
}

/** A field for each quantity of a table of facts. */
export function FactFields({ under, facts }: FactFieldsProps) {
  const filled = useFilled();
  return facts.map(([key, fact]) => {
    const path = `${under}.${key}`;
    return <QuantityField key={path} path={path} fact={fact} filled={filled.get(path)} />;
  });
}
