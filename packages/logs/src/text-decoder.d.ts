/** The text decoder that browsers and Node share; declared here because this room knows neither. */
declare class TextDecoder {
  constructor(label?: string, options?: { readonly fatal?: boolean; readonly ignoreBOM?: boolean });
  decode(input?: Uint8Array, options?: { readonly stream?: boolean }): string;
}

/** Likewise: text to UTF-8. */
declare class TextEncoder {
  encode(input: string): Uint8Array;
}
