/** A record of the physics whose fields may still be written. */
export type Draft<T> = { -readonly [K in keyof T]: T[K] };
