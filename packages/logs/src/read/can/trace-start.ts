import { textChunks } from '../bytes/text-chunks.ts';
import { refuseLog, type LogRefusal } from '../log-refusal.ts';

const headLength = 1 << 12;
/** Days from 1899-12-30, from which traces count, to 1970-01-01. */
const daysBefore1970 = 25_569;
const readVersions = new Set(['1.0', '1.1']);

/**
 * When a numbered trace began, by its head.
 *
 * @param bytes - the whole file
 * @param name - what it is called
 * @returns s since 1970 on the logger's own clock, NaN where the head does not say; a refusal for a version that is not read
 */
export function traceStart(
  bytes: Uint8Array,
  name: string,
): { readonly ok: true; readonly clock: number } | LogRefusal {
  const [head = ''] = textChunks(bytes.subarray(0, headLength), 'windows-1252');
  const version = /^;\$FILEVERSION=(\S+)/m.exec(head)?.[1];
  if (version !== undefined && !readVersions.has(version))
    return refuseLog(
      'log-not-read',
      name,
      `is a CAN trace of version ${version.slice(0, 20)}; versions 1.0 and 1.1 are read, and candump logs.`,
    );
  const days = /^;\$STARTTIME=(\d{4,6}(?:\.\d+)?)\s*$/m.exec(head)?.[1];
  return { ok: true, clock: days === undefined ? NaN : (Number(days) - daysBefore1970) * 86_400 };
}
