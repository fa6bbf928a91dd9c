import { closeSync, openSync, readSync, statSync } from 'node:fs';
import type { LogFile } from '@standstill/workshop';
import { CommandError } from '../surface/command-error.ts';
import { exitCode } from '../surface/exit-code.ts';
import { fileTrouble } from './file-trouble.ts';

/** A file that is read piece by piece while `use` works on it: a log of any size is never in memory whole. */
export function withFileSource<T>(file: string, use: (content: LogFile['content']) => T): T {
  const { descriptor, size } = opened(file);
  try {
    return use({
      size,
      read: (offset, length) => readAt(file, descriptor, offset, Math.min(length, size - offset)),
    });
  } finally {
    closeSync(descriptor);
  }
}

function opened(file: string): { readonly descriptor: number; readonly size: number } {
  try {
    const stats = statSync(file);
    if (stats.isDirectory()) throw new CommandError(`${file}: it is a folder.`, exitCode.unreadable);
    return { descriptor: openSync(file, 'r'), size: stats.size };
  } catch (error) {
    throw fileTrouble(file, error);
  }
}

function readAt(file: string, descriptor: number, offset: number, length: number): Uint8Array {
  const bytes = new Uint8Array(Math.max(0, length));
  let read = 0;
  try {
    while (read < bytes.length) {
      const count = readSync(descriptor, bytes, read, bytes.length - read, offset + read);
      if (count === 0) break;
      read += count;
    }
  } catch (error) {
    throw fileTrouble(file, error);
  }
  return bytes.subarray(0, read);
}
