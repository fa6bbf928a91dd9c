import type { FastifyRequest } from 'fastify';
import { z } from 'zod';
import { RequestRefusal } from '../problems/request-refusal.ts';

const pictureType = 'image/svg+xml';

/** `?as=svg` asks for the picture of an answer; `Accept: image/svg+xml` does so, too. */
export const pictureQuery = z.object({
  as: z.enum(['json', 'svg'], { error: 'json or svg' }).exactOptional(),
});

/** The two forms of an answer, for the API's description. */
export function answerOrPicture(answer: z.ZodType) {
  return {
    description: 'The answer; with `?as=svg` or `Accept: image/svg+xml` its picture.',
    content: { 'application/json': { schema: answer }, [pictureType]: { schema: z.any() } },
  };
}

/**
 * @param request - with what it accepts
 * @param query - its query
 * @returns whether the caller wants the picture
 */
export function wantsPicture(
  { headers }: Pick<FastifyRequest, 'headers'>,
  { as }: z.infer<typeof pictureQuery>,
): boolean {
  return as === undefined ? (headers.accept ?? '').toLowerCase().includes(pictureType) : as === 'svg';
}

/**
 * @param picture - an SVG document; null where there is nothing to draw
 * @param why - the sentence of an answer that has no picture
 * @returns the body and its type
 * @throws RequestRefusal `nothing-to-draw` without a picture
 */
export function pictureBody(
  picture: string | null,
  why: string,
): { readonly type: string; readonly body: Buffer } {
  if (picture === null) throw new RequestRefusal('nothing-to-draw', why);
  return { type: `${pictureType}; charset=utf-8`, body: Buffer.from(picture) };
}
