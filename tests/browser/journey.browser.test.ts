import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { copyOfDemo, readJob, valueIn } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { madeLog } from './made-log.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled, type WatchedPage } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());
const before = madeLog({ name: 'before.csv', speed: 60, decelerations: [0.8, 0.79, 0.81, 0.8, 0.795] });
const after = madeLog({ name: 'after.csv', speed: 60, decelerations: [0.88, 0.9, 0.89, 0.885, 0.895] });

const mean = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0) / numbers.length;

describe.skipIf(browser === null).each(['desktop', 'phone'] as const)('from survey to proof, %s', (size) => {
  let server: ServerProcess;
  let watched: WatchedPage;
  let jobId: string;

  beforeAll(async () => {
    server = await startServerProcess();
    jobId = (await copyOfDemo(server.address, 'The journey')).id;
    watched = await openPage(browser!, { size });
  });
  afterAll(async () => {
    await watched.context.close();
    await server.remove();
  });

  const openStage = async (name: string) => {
    await watched.page.getByRole('navigation', { name: 'Stages' }).getByRole('link', { name }).click();
    await watched.page.getByRole('heading', { level: 1, name }).waitFor();
    await settled(watched.page);
  };

  test('the jobs of the shop are listed, and one is opened', async () => {
    const { page } = watched;
    await page.goto(`${server.address}/`);
    await page.getByRole('link', { name: 'The journey' }).click();
    await page.getByRole('heading', { level: 1, name: 'Survey' }).waitFor();
    await settled(page);
    expect(await page.locator('.answer').textContent()).toMatch(
      /Two-seat hill-climb coupe.*2480 lb.*measured.*assumed/s,
    );
  });

  test('survey: a value with its unit, spread and origin reaches the server', async () => {
    const { page } = watched;
    await page.getByLabel('Wheelbase', { exact: true }).fill('95 in ± 0.2 in');
    await page.getByLabel('How wheelbase is known').selectOption('measured');
    await expect
      .poll(async () => valueIn(await readJob(server.address, jobId), 'car', 'wheelbase'))
      .toEqual({
        value: '95 in',
        spread: '0.2 in',
        origin: 'measured',
      });
    await page.getByRole('status').getByText('saved', { exact: true }).waitFor();
  });

  test('limits: the sentence first, then a budget that sums to the stop', async () => {
    const { page } = watched;
    await openStage('Limits');
    expect(await page.locator('.answer').textContent()).toMatch(/\d/);
    const budget = page.locator('figure').filter({ has: page.getByRole('img', { name: /^Stop budget/ }) });
    const figures = await budget.locator('tbody td, tfoot td').allTextContents();
    const feet = figures.map((text) => Number(text.replace('−', '-').replace(' ft', '')));
    const total = feet.pop() ?? NaN;
    const sum = feet.reduce((all, one) => all + one, 0);
    expect(feet.length).toBeGreaterThan(2);
    expect(Math.abs(sum - total)).toBeLessThanOrEqual(feet.length / 2 + 0.5);
    expect(total).toBeGreaterThan(80);
    expect(total).toBeLessThan(400);
  });

  test('options: the app says the same as the server, word for word, and shows the dangers of every set-up first', async () => {
    const { page } = watched;
    await openStage('Options');
    await page.getByLabel('With', { exact: true }).selectOption('four-wheel-kit');
    const { document } = await readJob(server.address, jobId);
    const predicted = await fetch(`${server.address}/api/predictions`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ document, options: { units: 'us' } }),
    });
    const prediction = (await predicted.json()) as {
      sentence: string;
      setUps: { title: string }[];
      differences: { id: string; verdict: string }[];
      warnings: { severity: string; about?: string; message: string }[];
    };
    const verdict = prediction.differences.find(({ id }) => id === 'four-wheel-kit')?.verdict;
    expect((await page.locator('.answer p').allTextContents()).join(' ')).toBe(prediction.sentence);
    await expect.poll(() => page.locator('.verdict').textContent()).toBe(verdict);
    const dangers = prediction.warnings.filter(({ severity }) => severity === 'danger');
    expect(dangers.length).toBeGreaterThan(0);
    expect(await page.locator('.warnings').first().locator('.warning.danger').allTextContents()).toEqual(
      dangers.map(({ message }) => `Danger${message}`),
    );
    const rows = page.locator('.all-set-ups tbody tr');
    const inDanger = new Set(dangers.map(({ about }) => about)).size;
    expect(await rows.count()).toBe(prediction.setUps.length);
    for (let row = 0; row < prediction.setUps.length; row++)
      expect(((await rows.nth(row).textContent()) ?? '').includes('DANGER')).toBe(row < inDanger);
    await page.getByRole('img', { name: 'Balance of front and rear brake force' }).waitFor();
    await page.getByRole('img', { name: 'Stops in a row' }).waitFor();
  });

  test('options: the same set-up twice is said, and no choice is changed behind the person', async () => {
    const { page } = watched;
    await page.getByLabel('Against', { exact: true }).selectOption('four-wheel-kit');
    await page.getByText(/^Both are “Four-wheel kit as sold”/).waitFor();
    expect(await page.getByLabel('With', { exact: true }).inputValue()).toBe('four-wheel-kit');
    expect(await page.getByLabel('Against', { exact: true }).inputValue()).toBe('four-wheel-kit');
    expect(await page.getByRole('img', { name: 'Where each set-up comes to rest' }).count()).toBe(0);
  });

  test.each(['Work', 'Record'])('%s repeats every danger', async (stage) => {
    const { page } = watched;
    await openStage(stage);
    const dangers = page.locator('.warning.danger', { hasText: 'REAR wheels lock first' });
    await expect
      .poll(() => dangers.allTextContents())
      .toEqual(
        expect.arrayContaining([
          expect.stringContaining('Four-wheel kit as sold: the REAR wheels lock first'),
        ]),
      );
  });

  test('proof: dropped logs are kept byte for byte and every stop is shown with both distances', async () => {
    const { page } = watched;
    await openStage('Proof');
    expect(await page.locator('.answer').textContent()).toMatch(/add a log/);
    for (const [label, log] of [
      ['Add logs of stops before', before],
      ['Add logs of stops after', after],
    ] as const) {
      await page
        .getByLabel(label)
        .setInputFiles({ name: log.name, mimeType: 'text/csv', buffer: Buffer.from(log.text) });
      const run = page.getByRole('article', { name: log.name });
      await run.getByRole('article', { name: `Stop ${log.distances.length}` }).waitFor();
      expect(await run.getByRole('article', { name: /^Stop \d/ }).count()).toBe(log.distances.length);
      const driven = await run.locator('dt:has-text("Applied to rest") + dd').allTextContents();
      driven.forEach((text, index) => {
        expect(Math.abs(Number(text.split(' ')[0]) - (log.distances[index] ?? NaN))).toBeLessThan(2);
      });
      expect(await run.locator('dt:has-text("Gate to rest")').count()).toBe(log.distances.length);
    }
    const { logs } = (await (await fetch(`${server.address}/api/jobs/${jobId}/logs`)).json()) as {
      logs: { id: string; name: string }[];
    };
    for (const log of [before, after]) {
      const kept = logs.find(({ name }) => name === log.name);
      expect(await (await fetch(`${server.address}/api/jobs/${jobId}/logs/${kept?.id}`)).text()).toBe(
        log.text,
      );
    }
  });

  test('proof: the comparison is one sentence first, and every run is a dot', async () => {
    const { page } = watched;
    const picture = page.getByRole('img', { name: 'Every run, before and after' });
    await picture.waitFor({ timeout: 60_000 });
    expect(await page.locator('.answer').textContent()).toMatch(/shorter|saves|less/i);
    expect(await picture.locator('circle').count()).toBe(before.distances.length + after.distances.length);
    const difference = page.locator('dt:has-text("Difference of the means") + dd');
    const truth = mean(after.distances) - mean(before.distances);
    const shown = Number((await difference.textContent())?.match(/−?\d+(\.\d+)?/)?.[0].replace('−', '-'));
    expect(Math.abs(shown - truth)).toBeLessThan(1);
    await page.getByText('Expected and measured').waitFor();
  });

  test('proof: what nobody stated is said, and what is stated reaches the job and the words', async () => {
    const { page } = watched;
    await page.locator('.answer', { hasText: /Not stated.*tires/s }).waitFor();
    for (const [name, tires] of [
      [before.name, 'old tires'],
      [after.name, 'new tires'],
    ] as const) {
      const run = page.getByRole('article', { name });
      await run.getByLabel('Tires', { exact: true }).fill(tires);
    }
    await page.locator('.both-sides dt', { hasText: 'Tires: different' }).waitFor();
    await page.locator('.answer', { hasText: /tires were changed/ }).waitFor();
    await expect
      .poll(async () => valueIn(await readJob(server.address, jobId), 'runs'))
      .toMatchObject([{ tires: 'old tires' }, { tires: 'new tires' }]);
  });

  test('proof: no verdict stays over a changed set, and each half that is missing is named', async () => {
    const { page } = watched;
    const picture = page.getByRole('img', { name: 'Every run, before and after' });
    const says = (words: RegExp) => page.locator('.answer', { hasText: words }).waitFor();
    const chosen = await page.getByLabel('After', { exact: true }).inputValue();
    await page.getByLabel('After', { exact: true }).selectOption('four-wheel-kit');
    await says(/before the work, but none after/);
    expect(await picture.count()).toBe(0);
    await page.getByLabel('After', { exact: true }).selectOption('as-found');
    await says(/same set-up/);
    expect(await picture.count()).toBe(0);
    await page.getByLabel('After', { exact: true }).selectOption(chosen);
    await picture.waitFor();
    await page
      .getByRole('article', { name: before.name })
      .getByRole('button', { name: 'Take out of the set' })
      .click();
    await says(/after the work, but none before/);
    expect(await picture.count()).toBe(0);
    await page.getByRole('button', { name: `${before.name} as before` }).click();
    await picture.waitFor();
  });

  test('nothing was complained about on the way', () => {
    expect(watched.complaints).toEqual([]);
  });
});
