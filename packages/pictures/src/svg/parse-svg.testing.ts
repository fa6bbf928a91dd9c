/** An element as a reader of XML sees it. */
export interface ParsedElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: ParsedElement[];
  /** Of this element alone, entities resolved. */
  text: string;
}

const token = /<(\/?)([a-z]+)((?: [A-Za-z0-9:-]+="[^"<]*")*)(\/?)>|([^<]+)/gy;
const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

/** Parses the part of XML that our pictures use, and throws at anything that is not well formed. */
export function parseSvg(source: string): ParsedElement {
  const root: ParsedElement = { name: '', attributes: {}, children: [], text: '' };
  const open = [root];
  let end = 0;
  for (const [whole, closing, name = '', attributes = '', alone, text] of source.matchAll(token)) {
    end += whole.length;
    const parent = open.at(-1);
    if (parent === undefined) throw new Error(`something stands behind the end: ${whole}`);
    if (text !== undefined) parent.text += resolved(text);
    else if (closing === '/') {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes another element`);
    } else {
      const made: ParsedElement = { name, attributes: attributesOf(attributes), children: [], text: '' };
      parent.children.push(made);
      if (alone !== '/') open.push(made);
    }
  }
  const [svg, ...others] = root.children;
  if (end !== source.length || open.length !== 1 || svg === undefined || others.length > 0)
    throw new Error(`not well formed near ${source.slice(end, end + 60)}`);
  return svg;
}

function attributesOf(text: string): Record<string, string> {
  const found = [...text.matchAll(/ ([A-Za-z0-9:-]+)="([^"]*)"/g)].map(
    ([, key = '', value = '']) => [key, resolved(value)] as const,
  );
  if (new Set(found.map(([key]) => key)).size < found.length)
    throw new Error(`an attribute twice in ${text}`);
  return Object.fromEntries(found);
}

function resolved(text: string): string {
  return text.replace(/&([^;]*);?/g, (whole, name: string) => {
    const sign = entities[name];
    if (sign === undefined || !whole.endsWith(';')) throw new Error(`a bare & in ${text}`);
    return sign;
  });
}

/** Every element below one, itself included, in the order of the document. */
export function everyElement(element: ParsedElement): readonly ParsedElement[] {
  return [element, ...element.children.flatMap(everyElement)];
}

/** All lines of text of a picture. */
export function textsOf(svg: ParsedElement): readonly string[] {
  return everyElement(svg).flatMap(({ name, text }) => (name === 'text' ? [text] : []));
}
