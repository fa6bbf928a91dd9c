import { createHash } from 'node:crypto';

/**
 * @param content - any bytes
 * @returns hex SHA-256 of the bytes
 */
export function sha256(content: Uint8Array): string {
  return createHash('sha256').update(content).digest('hex');
}
