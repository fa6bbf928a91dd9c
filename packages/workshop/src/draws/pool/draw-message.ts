import type { Job } from '../../job/job.ts';
import type { DrawRequest } from '../draw-request.ts';
import type { DrawnRange } from '../drawn-range.ts';

/** What a hand tells the thread or worker behind it. */
export type DrawMessage =
  | { readonly kind: 'open-draws'; readonly run: number; readonly job: Job; readonly request: DrawRequest }
  | { readonly kind: 'draw-range'; readonly run: number; readonly from: number; readonly to: number };

/** What comes back: a range, whose arrays are handed over; nothing of a request that is open; or why neither came. */
export type DrawReply =
  { readonly ok: true; readonly range: DrawnRange | null } | { readonly ok: false; readonly message: string };
