import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from 'vitest';
import { copyOfDemo } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { madeLog, type MadeLog } from './made-log.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled, type WatchedPage } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());

describe.skipIf(browser === null)('logs with something about them', () => {
  let server: ServerProcess;
  let watched: WatchedPage;

  beforeAll(async () => {
    server = await startServerProcess();
  });
  afterAll(() => server.remove());
  beforeEach(async () => {
    const job = await copyOfDemo(server.address, 'Odd logs');
    watched = await openPage(browser!);
    await watched.page.goto(`${server.address}/jobs/${job.id}/proof`);
    await settled(watched.page);
  });
  afterEach(() => watched.context.close());

  const add = async ({ name, text }: Pick<MadeLog, 'name' | 'text'>, side = 'before') => {
    await watched.page
      .getByLabel(`Add logs of stops ${side}`)
      .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
    return watched.page.getByRole('article', { name, exact: true });
  };
  const firstDistance = async (run: Awaited<ReturnType<typeof add>>) =>
    Number((await run.locator('dt:has-text("Applied to rest") + dd').first().textContent())?.split(' ')[0]);

  test('a speed column that nobody can guess is read by a person’s word, and says so', async () => {
    const { page } = watched;
    const log = madeLog({ name: 'odd.csv', speed: 60, decelerations: [0.8, 0.81, 0.79] });
    const run = await add({ name: log.name, text: log.text.replace('speed [mph]', 'gizmo') });
    await run.locator('.warning').first().waitFor();
    expect(await run.getByRole('article').count()).toBe(0);
    await run.getByText('Speed is another column').click();
    await run.getByLabel('Heading of the speed column').fill('gizmo');
    await run.getByLabel('Unit of its numbers').selectOption('mph');
    await run.getByRole('button', { name: 'Read the log this way' }).click();
    await run.getByRole('article', { name: 'Stop 3' }).waitFor();
    expect(Math.abs((await firstDistance(run)) - (log.distances[0] ?? NaN))).toBeLessThan(2);
    await run.getByText(/“gizmo” in mph by your word/).waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.reload();
    await settled(page);
    await run.getByText(/“gizmo” in mph by your word/).waitFor();
    await run.getByRole('button', { name: 'Go by the headings again' }).click();
    await run.getByRole('article', { name: 'Stop 3' }).waitFor({ state: 'detached' });
  });

  test('a stop that is left out does not stretch the scale; it is marked where it leaves it', async () => {
    const { page } = watched;
    const usual = madeLog({ name: 'usual.csv', speed: 60, decelerations: [0.8, 0.81, 0.79] });
    const fast = madeLog({ name: 'fast.csv', speed: 90, decelerations: [0.8] });
    const run = await add(usual);
    await run.getByRole('article', { name: 'Stop 3' }).waitFor();
    const road = run.getByRole('img', { name: /^Stop 1: speed along the road/ });
    const scale = await road.locator('text').allTextContents();
    const odd = await add(fast);
    const card = odd.getByRole('article', { name: 'Stop 1' });
    await card.getByText('left out', { exact: true }).waitFor();
    await expect.poll(() => road.locator('text').allTextContents()).toEqual(scale);
    const mark = await card.locator('svg text', { hasText: 'off the scale' }).textContent();
    expect(Math.abs(Number(mark?.match(/\d+/)?.[0]) - (fast.distances[0] ?? NaN))).toBeLessThan(5);
    expect(await page.locator('.warning', { hasText: 'closed course' }).count()).toBe(2);
  });

  test('prints the stops as a table, with the claim and its caveat on the first page', async () => {
    const { page } = watched;
    await add(madeLog({ name: 'b.csv', speed: 60, decelerations: [0.8, 0.81, 0.79] }));
    await add(madeLog({ name: 'a.csv', speed: 60, decelerations: [0.9, 0.91, 0.89] }), 'after');
    await page.getByRole('img', { name: 'Every run, before and after' }).waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('table.stops tbody tr:visible').count()).toBe(6);
    expect(await page.locator('.stop-card:visible').count()).toBe(0);
    const place = async (selector: string) => (await page.locator(selector).first().boundingBox())?.y ?? NaN;
    expect(await place('.print-caveat')).toBeLessThan(await place('.picture'));
    expect(await page.locator('.print-caveat').textContent()).toMatch(/printed \d{4}-\d{2}-\d{2}/);
    expect(await place('.print-assumed')).toBeGreaterThan(await place('.set-panel'));
  });
});
