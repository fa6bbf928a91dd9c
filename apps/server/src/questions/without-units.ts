/** `speed_m_s` becomes `speed`. */
type NameOf<Key> = Key extends `${infer Name}_${string}` ? Name : Key;

export type WithoutUnits<Options> = { [Key in keyof Options as NameOf<Key>]: Options[Key] };

/**
 * Options as the workshop takes them: all SI, so that their names carry no unit.
 *
 * @param options - with units in their names
 * @returns the same values by the names alone
 */
export function withoutUnits<Options extends object>(options: Options): WithoutUnits<Options> {
  const entries = Object.entries(options).map(([key, value]) => [key.replace(/_.*$/, ''), value] as const);
  return Object.fromEntries(entries) as WithoutUnits<Options>;
}
