/** An answer: its first sentence large, what it stands on below in reading size. */
export function Lead({ text }: { readonly text: string }) {
  const [first = text, ...rest] = sentences(text);
  return (
    <>
      <p>{first}</p>
      {rest.length > 0 && <p className="reading">{rest.join(' ')}</p>}
    </>
  );
}

/** A sentence ends with a dot, a space and a capital: '0.79 g' and 'e.g. this' do not end one. */
export function sentences(text: string): readonly string[] {
  return text.split(/(?<=[.!?])\s+(?=[A-Z“"])/);
}
