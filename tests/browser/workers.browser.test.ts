import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyOfDemo } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());

describe.skipIf(browser === null)('the draws of a page', () => {
  let server: ServerProcess;
  let jobId: string;

  beforeAll(async () => {
    server = await startServerProcess();
    jobId = (await copyOfDemo(server.address, 'Drawn by workers')).id;
  });
  afterAll(() => server.remove());

  test('are spread over workers that are started once and kept from page to page', async () => {
    const { page, context, complaints } = await openPage(browser!);
    await page.goto(`${server.address}/jobs/${jobId}/limits`);
    await settled(page);
    const drawing = () => page.workers().filter((worker) => worker.url().includes('draw-worker'));
    const cores = await page.evaluate(() => navigator.hardwareConcurrency);
    const first = drawing();
    expect(first).toHaveLength(cores < 2 ? 0 : Math.min(8, cores));
    await page.getByRole('navigation', { name: 'Stages' }).getByRole('link', { name: 'Options' }).click();
    await page.getByRole('heading', { level: 1, name: 'Options' }).waitFor();
    await settled(page);
    await page.getByRole('combobox').first().selectOption({ index: 1 });
    await settled(page);
    expect(drawing()).toEqual(first);
    expect(complaints).toEqual([]);
    await context.close();
  });
});
