/** The part of an API's description that this looks at. */
interface Described {
  readonly components?: { readonly schemas?: Readonly<Record<string, unknown>> };
}

/**
 * Leaves out the named schemas that nothing refers to: each comes in two forms, for requests and for answers, and most
 * are needed in one only.
 *
 * @param description - an OpenAPI document
 * @returns the same with only the schemas that it uses
 */
export function onlyNamedSchemas(description: object): object {
  const { schemas = {}, ...components } = (description as Described).components ?? {};
  const used = new Set<string>();
  const waiting = namesIn({ ...description, components });
  for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
    if (used.has(name)) continue;
    used.add(name);
    waiting.push(...namesIn(schemas[name]));
  }
  const kept = Object.fromEntries(Object.entries(schemas).filter(([name]) => used.has(name)));
  return { ...description, components: { ...components, schemas: kept } };
}

function namesIn(part: unknown): string[] {
  const text = JSON.stringify(part ?? null);
  return [...text.matchAll(/"#\/components\/schemas\/([^"/]+)"/g)].map((match) => match[1] ?? '');
}
