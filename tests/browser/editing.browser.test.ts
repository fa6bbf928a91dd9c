import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { copyOfDemo, readJob, valueIn, type KeptJob } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled, type WatchedPage } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());

const fill = async ({ page }: WatchedPage, label: string, text: string) => {
  await page.getByLabel(label, { exact: true }).fill(text);
  await page.keyboard.press('Tab');
};

describe.skipIf(browser === null)('editing a job', () => {
  let server: ServerProcess;
  let job: KeptJob;
  let watched: WatchedPage;

  beforeAll(async () => {
    server = await startServerProcess();
  });
  afterAll(() => server.remove());
  beforeEach(async () => {
    job = await copyOfDemo(server.address, 'Edited');
    watched = await openPage(browser!);
    await openSurvey(watched);
  });
  afterEach(() => watched.context.close());

  const openSurvey = async ({ page }: WatchedPage) => {
    await page.goto(`${server.address}/jobs/${job.id}/survey`);
    await page.getByRole('heading', { level: 1, name: 'Survey' }).waitFor();
    await settled(page);
  };
  const kept = async (...steps: readonly string[]) =>
    valueIn(await readJob(server.address, job.id), ...steps);

  test('survives a restart of the server', async () => {
    await fill(watched, 'Name of the car', 'A renamed car');
    await fill(watched, 'Test mass', '2500 lb');
    await expect.poll(() => kept('car', 'mass')).toMatchObject({ value: '2500 lb', origin: 'measured' });
    expect(await kept('car', 'name')).toBe('A renamed car');
    await server.stop();
    await server.start();
    await openSurvey(watched);
    expect(await watched.page.getByLabel('Test mass', { exact: true }).inputValue()).toBe('2500 lb');
  });

  test('what is typed while the server is down survives a reload and is sent when it is back', async () => {
    const { page } = watched;
    await server.stop();
    await fill(watched, 'Test mass', '2510 lb');
    await page.getByText('The server does not answer. What you typed is kept').waitFor();
    await page.getByRole('status').getByText('kept on this device', { exact: true }).waitFor();
    await server.start();
    await page.reload();
    await settled(page);
    expect(await page.getByLabel('Test mass', { exact: true }).inputValue()).toBe('2510 lb');
    await expect.poll(() => kept('car', 'mass')).toMatchObject({ value: '2510 lb' });
  });

  test('text that can not be read stays in the field, is said, and never replaces the good value', async () => {
    const { page } = watched;
    const field = page.getByLabel('Test mass', { exact: true });
    await fill(watched, 'Test mass', '2500 stone');
    await page.getByText(/unknown unit "stone"/).waitFor();
    expect(await field.getAttribute('aria-invalid')).toBe('true');
    await fill(watched, 'Wheelbase', '95 in');
    await expect.poll(() => kept('car', 'wheelbase')).toMatchObject({ value: '95 in' });
    expect(await kept('car', 'mass')).toMatchObject({ value: '2480 lb' });
    await page.reload();
    await settled(page);
    expect(await field.inputValue()).toBe('2500 stone');
    await page.getByText(/unknown unit "stone"/).waitFor();
    await fill(watched, 'Test mass', '2500 lb');
    await expect.poll(() => kept('car', 'mass')).toMatchObject({ value: '2500 lb' });
    expect(await field.getAttribute('aria-invalid')).toBe('false');
  });

  test('two people at once: both versions are shown, nothing is overwritten, a person chooses', async () => {
    const other = await openPage(browser!);
    await openSurvey(other);
    await fill(watched, 'Test mass', '2500 lb');
    await expect.poll(() => kept('car', 'mass')).toMatchObject({ value: '2500 lb' });
    await fill(other, 'Wheelbase', '95 in');
    await fill(other, 'Test mass', '2600 lb');
    await other.page.getByRole('heading', { name: 'Changed elsewhere' }).waitFor();
    expect(await kept('car', 'mass')).toMatchObject({ value: '2500 lb' });
    expect(await kept('car', 'wheelbase')).toMatchObject({ value: '94.5 in' });
    const table = other.page.getByRole('table');
    await table.getByText('2500 lb').waitFor();
    await table.getByText('2600 lb').waitFor();
    const { violations } = await new AxeBuilder({ page: other.page }).analyze();
    expect(violations).toEqual([]);
    const save = other.page.getByRole('button', { name: 'Save these choices' });
    expect(await save.isDisabled()).toBe(true);
    await table.getByLabel(/2500 lb/).check();
    await save.click();
    await expect.poll(() => kept('car', 'wheelbase')).toMatchObject({ value: '95 in' });
    expect(await kept('car', 'mass')).toMatchObject({ value: '2500 lb' });
    await other.page.getByRole('heading', { level: 1, name: 'Survey' }).waitFor();
    await other.context.close();
  });

  test('a job that contradicts itself is not sent, and says where', async () => {
    const { page } = watched;
    await fill(watched, 'Center of gravity height', '60 in');
    await page.getByText(/^Not saved:/).waitFor();
    await page
      .getByText(/60 % of the wheelbase/)
      .first()
      .waitFor();
    expect(await kept('car', 'centerOfGravityHeight')).toMatchObject({ value: '18.5 in' });
    await fill(watched, 'Center of gravity height', '19 in');
    await expect.poll(() => kept('car', 'centerOfGravityHeight')).toMatchObject({ value: '19 in' });
  });

  test('a set-up is added, gets a part of its own, and believes none of its copied values', async () => {
    const { page } = watched;
    await page.getByRole('button', { name: 'Add a set-up' }).click();
    await page.getByLabel('Front pads', { exact: true }).selectOption('+');
    await expect
      .poll(() => kept('setUps', 'proposed'))
      .toMatchObject({ basedOn: 'as-found', frontPad: 'new-pad' });
    expect(await kept('parts', 'new-pad')).toMatchObject({
      kind: 'pad',
      area: { value: '5.6 in²', origin: 'assumed' },
    });
  });

  test('a new job begins from a name; everything nobody typed is marked as assumed', async () => {
    const { page } = watched;
    await page.goto(`${server.address}/jobs`);
    await page.getByRole('button', { name: 'Begin the job' }).click();
    await page.getByText('A job needs a name.').waitFor();
    await page.getByLabel('Job', { exact: true }).fill('Long pedal');
    await page.getByLabel('Test mass').fill('2650 pints');
    await page.reload();
    expect(await page.getByLabel('Job', { exact: true }).inputValue()).toBe('Long pedal');
    await page.getByRole('button', { name: 'Begin the job' }).click();
    await page.getByText(/"2650 pints"/).waitFor();
    await page.getByLabel('Test mass').fill('2650 lb');
    await page.getByRole('button', { name: 'Begin the job' }).click();
    await page.getByRole('heading', { level: 1, name: 'Survey' }).waitFor();
    const made = await readJob(server.address, new URL(page.url()).pathname.split('/')[2] ?? '');
    expect(valueIn(made, 'car', 'mass')).toBe('2650 lb');
    expect(valueIn(made, 'car', 'wheelbase')).toMatchObject({ origin: 'assumed' });
    expect(valueIn(made, 'parts', 'front-rotor', 'outerDiameter')).toMatchObject({ origin: 'assumed' });
  });
});
