import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, beforeEach, afterEach, describe, expect, test } from 'vitest';
import { copyOfDemo, readJob, valueIn } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { madeLog, type MadeLog } from './made-log.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled, type WatchedPage } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());

describe.skipIf(browser === null)('logs with something about them', () => {
  let server: ServerProcess;
  let watched: WatchedPage;
  let jobId: string;

  beforeAll(async () => {
    server = await startServerProcess();
  });
  afterAll(() => server.remove());
  beforeEach(async () => {
    const job = await copyOfDemo(server.address, 'Odd logs');
    jobId = job.id;
    watched = await openPage(browser!);
    await watched.page.goto(`${server.address}/jobs/${jobId}/proof`);
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

  test('a column that nobody can guess is read by a person’s word, which the job keeps for all such logs', async () => {
    const { page } = watched;
    const log = madeLog({ name: 'odd.csv', speed: 60, decelerations: [0.8, 0.81, 0.79] });
    const odd = (name: string) => ({ name, text: log.text.replace('speed [mph]', 'gizmo') });
    const run = await add(odd('odd.csv'));
    await run.locator('.warning').first().waitFor();
    expect(await run.getByRole('article').count()).toBe(0);
    await run.getByText('Say what its columns are').click();
    await run.getByLabel('Heading of the column').fill('gizmo');
    await run.getByLabel('What it is').selectOption('speed');
    await run.getByLabel('Unit of its numbers').selectOption('mph');
    await run.getByRole('button', { name: 'Read the log this way' }).click();
    await run.getByRole('article', { name: 'Stop 3' }).waitFor();
    expect(Math.abs((await firstDistance(run)) - (log.distances[0] ?? NaN))).toBeLessThan(2);
    await expect
      .poll(async () => valueIn(await readJob(server.address, jobId), 'logColumns'))
      .toMatchObject([{ headings: 'time [s] | gizmo | brake switch', columns: { speed: { unit: 'mph' } } }]);
    const again = await add({ ...odd('again.csv'), text: `${odd('').text}\n` }, 'after');
    await again.getByRole('article', { name: 'Stop 3' }).waitFor();
    await again.getByText(/“gizmo” in mph/).waitFor();
    await run.getByText(/^Columns: /).click();
    await run.getByRole('row', { name: /gizmo.*speed of the car.*a person/ }).waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await run.getByRole('button', { name: 'Guess again gizmo' }).click();
    await run.getByRole('article', { name: 'Stop 3' }).waitFor({ state: 'detached' });
    await again.getByRole('article', { name: 'Stop 3' }).waitFor({ state: 'detached' });
  });

  test('a stop is left out by hand with a reason and put back; both words stay in the job', async () => {
    const { page } = watched;
    const run = await add(madeLog({ name: 'usual.csv', speed: 60, decelerations: [0.8, 0.81, 0.79] }));
    const card = run.getByRole('article', { name: 'Stop 2' });
    await card.getByRole('button', { name: /Leave this stop out/ }).click();
    await card.getByRole('button', { name: 'Leave this stop out', exact: true }).click();
    await card.getByText('A reason is needed').waitFor();
    await card.getByLabel('Why').fill('the driver lifted');
    await page.keyboard.press('Enter');
    await card.getByText('left out', { exact: true }).waitFor();
    await card.getByText(/Left out by hand: the driver lifted/).waitFor();
    await card.getByRole('button', { name: /Count this stop/ }).click();
    await card.getByLabel('Why').fill('it was the gust');
    await page.keyboard.press('Enter');
    await card.getByText('counts', { exact: true }).waitFor();
    await expect
      .poll(async () => valueIn(await readJob(server.address, jobId), 'runs'))
      .toMatchObject([
        {
          judgements: [
            { verdict: 'rejected', reason: 'the driver lifted' },
            { verdict: 'restored', reason: 'it was the gust' },
          ],
        },
      ]);
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
