import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyOfDemo, readJob, valueIn } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { madeLog } from './made-log.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled, sizes, type WatchedPage } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());
const before = madeLog({ name: 'before.csv', speed: 60, decelerations: [0.8, 0.79, 0.81, 0.8] });
const after = madeLog({ name: 'after.csv', speed: 60, decelerations: [0.88, 0.9, 0.89, 0.885] });

describe.skipIf(browser === null)('the parts of the proof that are opened', () => {
  let server: ServerProcess;
  let watched: WatchedPage;
  let jobId: string;

  beforeAll(async () => {
    server = await startServerProcess();
    jobId = (await copyOfDemo(server.address, 'Opened parts')).id;
    watched = await openPage(browser!);
    await watched.page.goto(`${server.address}/jobs/${jobId}/proof`);
    await settled(watched.page);
  });
  afterAll(async () => {
    await watched.context.close();
    await server.remove();
  });

  const part = (name: string) =>
    watched.page.locator('section', { has: watched.page.getByRole('button', { name, exact: true }) });

  /** As it stands, and on a phone in the dark. */
  const nothingAgainstIt = async () => {
    const { page } = watched;
    for (const [size, colorScheme] of [
      ['phone', 'dark'],
      ['desktop', 'light'],
    ] as const) {
      await page.setViewportSize(sizes[size]);
      await page.emulateMedia({ colorScheme });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id} ${nodes[0]?.html}`)).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
      ).toBeLessThanOrEqual(0);
    }
  };

  test('before anything is measured the page plans, cautions first, and prints the plan alone on one sheet', async () => {
    const { page } = watched;
    const plan = part('Before you drive');
    await plan.getByRole('heading', { name: 'Run by run' }).waitFor({ timeout: 60_000 });
    await plan.getByRole('textbox', { name: 'Difference that the test should show' }).fill('8 ft');
    await page.keyboard.press('Tab');
    await plan
      .locator('h2 + p', { hasText: /^To see a difference of 8.* ft from 60 mph, drive \d+ stops/ })
      .waitFor({ timeout: 60_000 });
    const top = async (selector: string) => (await plan.locator(selector).first().boundingBox())?.y ?? NaN;
    expect(await top('.plan-cautions')).toBeLessThan(await top('.plan-figures'));
    expect(await plan.locator('.plan-cautions li').first().textContent()).toMatch(/closed course/);
    const repeat = plan.getByRole('region', { name: 'The old set-up once more' });
    expect(await repeat.getByRole('listitem').count()).toBeGreaterThanOrEqual(6);
    await plan.getByLabel('Drive the old set-up once more').uncheck();
    await repeat.waitFor({ state: 'detached', timeout: 60_000 });
    await plan.getByLabel('Drive the old set-up once more').check();
    await repeat.waitFor({ timeout: 60_000 });
    await nothingAgainstIt();
    await page.emulateMedia({ media: 'print' });
    await page.evaluate(() => (document.documentElement.dataset['print'] = 'plan'));
    // A letter sheet less its margins of 14 mm, in px.
    await page.setViewportSize({ width: 710, height: 950 });
    expect(await page.locator('main > *:visible').count()).toBe(1);
    expect(await page.locator('html').evaluate((root) => root.scrollHeight)).toBeLessThanOrEqual(950);
    await page.evaluate(() => delete document.documentElement.dataset['print']);
    await page.emulateMedia({ media: 'screen' });
    await page.setViewportSize(sizes.desktop);
  });

  test('the model is held against the stops in the worker, and says what they can not tell apart', async () => {
    const { page } = watched;
    for (const [side, log] of [
      ['before', before],
      ['after', after],
    ] as const)
      await page
        .getByLabel(`Add logs of stops ${side}`)
        .setInputFiles({ name: log.name, mimeType: 'text/csv', buffer: Buffer.from(log.text) });
    await page.getByRole('img', { name: 'Every run, before and after' }).waitFor({ timeout: 60_000 });
    const model = part('The model against the stops');
    await model.getByRole('button', { name: 'The model against the stops' }).press('Enter');
    await model.getByRole('img', { name: 'Measured and expected stops' }).waitFor({ timeout: 90_000 });
    expect(await model.locator('h2 + p').textContent()).toMatch(/^From 60 mph/);
    await model.getByRole('row', { name: /Grip of the tires.*%/ }).waitFor();
    await model.getByRole('heading', { name: 'What these stops can not tell apart' }).waitFor();
    await model.getByText('Share that the brakes can explain').waitFor();
    await nothingAgainstIt();
  });

  test('a log that is made a fade run leaves its set, and its stops are shown against their number', async () => {
    const { page } = watched;
    const run = page.getByRole('article', { name: before.name, exact: true });
    await run.getByLabel('This log is').selectOption('fade');
    await page.locator('.answer', { hasText: /after the work, but none before/ }).waitFor();
    const fade = part('Stops in a row');
    await fade.getByRole('img', { name: 'Distance of each stop in a row' }).waitFor({ timeout: 60_000 });
    expect(await fade.locator('svg circle').count()).toBeGreaterThanOrEqual(before.distances.length);
    expect(await fade.locator('h2 + p').textContent()).toMatch(/fade|longer|shorter/);
    await fade.getByText('In figures').click();
    expect(await fade.getByRole('table').getByRole('row').count()).toBe(before.distances.length + 1);
    await expect
      .poll(async () => valueIn(await readJob(server.address, jobId), 'runs'))
      .toMatchObject([{ role: 'fade' }, {}]);
    await nothingAgainstIt();
    await run.getByLabel('This log is').selectOption('before');
    await page.getByRole('img', { name: 'Every run, before and after' }).waitFor({ timeout: 60_000 });
  });

  test('nothing was complained about on the way', () => {
    expect(watched.complaints).toEqual([]);
  });
});
