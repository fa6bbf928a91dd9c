/** Something is on its way; says what. */
export function Loading({ what }: { readonly what: string }) {
  return (
    <p className="soft" role="status">
      Loading {what} …
    </p>
  );
}
