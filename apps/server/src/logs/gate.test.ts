import { expect, test } from 'vitest';
import { Gate } from './gate.ts';

test('never lets more through at once than it has places, and lets all through', async () => {
  const gate = new Gate(3);
  let inside = 0;
  let most = 0;
  const work = async (): Promise<void> => {
    most = Math.max(most, (inside += 1));
    await new Promise((resolve) => setTimeout(resolve, 2));
    inside -= 1;
  };
  await Promise.all(Array.from({ length: 20 }, () => gate.through(work)));
  expect([most, inside]).toEqual([3, 0]);
});

test('work that fails gives its place back', async () => {
  const gate = new Gate(1);
  const failing = gate.through(() => Promise.reject(new Error('broken')));
  await expect(failing).rejects.toThrow('broken');
  expect(await gate.through(() => Promise.resolve('next'))).toBe('next');
});
