import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Page } from 'playwright-core';
import { copyOfDemo } from './jobs-api.ts';
import { launchBrowser } from './launch-browser.ts';
import { madeLog } from './made-log.ts';
import { startServerProcess, type ServerProcess } from './server-process.ts';
import { openPage, settled } from './watched-page.ts';

const browser = await launchBrowser();
afterAll(() => browser?.close());
const stages = ['survey', 'limits', 'options', 'work', 'proof', 'record'];
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

describe.skipIf(browser === null)('every page', () => {
  let server: ServerProcess;
  let jobId: string;

  beforeAll(async () => {
    server = await startServerProcess();
    jobId = (await copyOfDemo(server.address, 'Looked at')).id;
    const { page, context } = await openPage(browser!);
    await page.goto(`${server.address}/jobs/${jobId}/proof`);
    for (const [side, deceleration] of [
      ['before', 0.8],
      ['after', 0.9],
    ] as const) {
      const { name, text } = madeLog({
        name: `${side}.csv`,
        speed: 60,
        decelerations: [0, 0.01, -0.01].map((d) => deceleration + d),
      });
      await page
        .getByLabel(`Add logs of stops ${side}`)
        .setInputFiles({ name, mimeType: 'text/csv', buffer: Buffer.from(text) });
      await page.getByRole('article', { name }).getByRole('article', { name: 'Stop 3' }).waitFor();
    }
    await page.getByRole('status').getByText('saved', { exact: true }).waitFor();
    await context.close();
  });
  afterAll(() => server.remove());

  const open = async (page: Page, stage: string) => {
    await page.goto(stage === 'jobs' ? `${server.address}/jobs` : `${server.address}/jobs/${jobId}/${stage}`);
    await settled(page);
    if (stage === 'proof')
      await page.getByRole('img', { name: 'Every run, before and after' }).waitFor({ timeout: 60_000 });
  };

  const looks = (['desktop', 'phone'] as const).flatMap((size) =>
    (['light', 'dark'] as const).map((theme) => ({ size, theme })),
  );

  test.each(looks)('can be used by everybody, $size, $theme', async (look) => {
    const { page, context, complaints } = await openPage(browser!, look);
    for (const stage of ['jobs', ...stages]) {
      await open(page, stage);
      await unfold(page);
      const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
      const found = violations.map(
        ({ id, nodes }) => `${stage}: ${id} ${nodes.map(({ html }) => html).join(' | ')}`,
      );
      expect(found).toEqual([]);
      expect(await tooWide(page)).toEqual([]);
      expect(await tooSmall(page, stage === 'work' ? 48 : 44)).toEqual([]);
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  test('says its own name, answers its question, and takes the focus when it is opened from another', async () => {
    const { page, context } = await openPage(browser!);
    await open(page, 'survey');
    for (const stage of stages.toReversed()) {
      const title = stage.charAt(0).toUpperCase() + stage.slice(1);
      await page.getByRole('navigation', { name: 'Stages' }).getByRole('link', { name: title }).focus();
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { level: 1, name: title }).waitFor();
      await expect.poll(() => page.evaluate(() => document.activeElement?.tagName)).toBe('H1');
      expect(await page.title()).toBe(`${title} – Standstill`);
      expect(await page.getByRole('navigation').locator('[aria-current=page]').textContent()).toContain(
        title,
      );
    }
    await context.close();
  });

  test('begins for the keyboard with a way past the navigation', async () => {
    const { page, context } = await openPage(browser!);
    await open(page, 'limits');
    await page.keyboard.press('Tab');
    const skip = page.getByRole('link', { name: 'Skip to the page' });
    expect(await skip.evaluate((link) => link === document.activeElement)).toBe(true);
    expect((await skip.boundingBox())?.x).toBeGreaterThanOrEqual(0);
    await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.closest('main') !== null)).toBe(true);
    await context.close();
  });

  test('the choice of units and look can be used by everybody, and gives the focus back', async () => {
    const { page, context } = await openPage(browser!);
    await open(page, 'record');
    const button = page.getByRole('button', { name: 'Units and look' });
    await button.click();
    await page.getByText('Each kind by itself').click();
    const { violations } = await new AxeBuilder({ page }).withTags(rules).analyze();
    expect(violations).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    await context.close();
  });

  test.each(['desktop', 'phone'] as const)('does not shift while it loads, %s', async (size) => {
    const { page, context } = await openPage(browser!, { size });
    for (const stage of ['limits', 'options', 'survey']) {
      await open(page, stage);
      await page.waitForTimeout(300);
      expect(await layoutShift(page)).toBeLessThanOrEqual(0.05);
    }
    await context.close();
  });

  test('prints its figures though they are folded on the screen, and no buttons', async () => {
    const { page, context } = await openPage(browser!, { theme: 'dark' });
    await open(page, 'options');
    await page.emulateMedia({ media: 'print' });
    const folded = page.locator('details:not([open]) table').first();
    expect((await folded.boundingBox())?.height).toBeGreaterThan(20);
    expect(await page.getByRole('navigation').isVisible()).toBe(false);
    const colors = await page.evaluate(() => [
      getComputedStyle(document.body).backgroundColor,
      getComputedStyle(document.body).color,
    ]);
    expect(colors).toEqual(['rgb(255, 255, 255)', 'rgb(0, 0, 0)']);
    await context.close();
  });

  test('follows the person: units and dark or light are kept on this device', async () => {
    const { page, context } = await openPage(browser!);
    await open(page, 'limits');
    await page.getByRole('button', { name: 'Units and look' }).click();
    await page.getByLabel(/^Metric/).check();
    await page.getByLabel('Dark').check();
    await page.getByRole('button', { name: 'Done' }).click();
    await settled(page);
    await page.reload();
    await settled(page);
    expect(await page.locator('tfoot td').first().textContent()).toMatch(/ m$/);
    expect(await page.locator('.answer').textContent()).toMatch(/ m[ ,.]| km\/h/);
    expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('dark');
    await context.close();
  });

  test('asks for little script before it can be used, and for a stage only when it is opened', async () => {
    const { page, context } = await openPage(browser!);
    const scripts = new Map<string, number>();
    page.on('response', (response) => {
      const { pathname } = new URL(response.url());
      if (!pathname.endsWith('.js') || pathname.includes('worker') || scripts.has(pathname)) return;
      scripts.set(pathname, Number(response.headers()['content-length'] ?? Infinity));
    });
    const bytes = () => [...scripts.values()].reduce((sum, one) => sum + one, 0);
    await open(page, 'jobs');
    expect(bytes()).toBeLessThan(180_000);
    expect([...scripts.keys()].some((name) => /options|proof/.test(name))).toBe(false);
    for (const stage of stages) await open(page, stage);
    expect(bytes()).toBeLessThan(250_000);
    await context.close();
  });

  test('an address that is nobody’s says so', async () => {
    const { page, context } = await openPage(browser!);
    await page.goto(`${server.address}/jobs/nobody/limits`);
    await page.getByRole('heading', { name: 'No such job' }).waitFor();
    expect(await page.locator('.answer').textContent()).toMatch(/no job at this address/);
    await page.goto(`${server.address}/elsewhere`);
    await page.getByRole('heading', { name: 'Not here' }).waitFor();
    await context.close();
  });

  test('a log that can not be used is refused in one line and is kept all the same', async () => {
    const { page, context } = await openPage(browser!);
    await open(page, 'proof');
    const noise = Buffer.from(Array.from({ length: 4000 }, (_, index) => (index * 7919) % 256));
    await page
      .getByLabel('Add logs of stops before')
      .setInputFiles({ name: 'noise.bin', mimeType: '', buffer: noise });
    const run = page.getByRole('article', { name: 'noise.bin' });
    const refusal = await run.locator('.warning').textContent();
    expect(refusal?.split('\n')).toHaveLength(1);
    expect(refusal?.length).toBeLessThan(300);
    await run.getByRole('button', { name: 'Take out of the set' }).click();
    await run.waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'noise.bin as before' }).waitFor();
    await context.close();
  });
});

/** Opens what is folded, and what is folded inside of it; of many alike six are enough. */
async function unfold(page: Page): Promise<void> {
  for (let depth = 0; depth < 2; depth++) {
    await page.evaluate(() => {
      for (const details of [...document.querySelectorAll('details')].slice(0, 6)) details.open = true;
    });
    await page.waitForTimeout(100);
  }
}

/** What reaches past the right edge of the page, outside of regions that scroll by themselves. */
function tooWide(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    if (document.documentElement.scrollWidth <= window.innerWidth) return [];
    const all = [...document.querySelectorAll('body *')].filter((element) => !element.closest('.table-wrap'));
    return all
      .filter((element) => element.getBoundingClientRect().right > window.innerWidth + 1)
      .map((element) => element.outerHTML.slice(0, 80));
  });
}

/** Controls that are smaller than a finger; links inside of a sentence are let through, as the standard does. */
function tooSmall(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate((size) => {
    const controls = [
      ...document.querySelectorAll<HTMLElement>(
        'button, select, textarea, summary, a.button, nav a, input, label.choice',
      ),
    ];
    const shown = controls.filter(
      (control) => control.offsetParent !== null && !control.closest('label.choice > *'),
    );
    const fingers = shown.filter(
      (control) => !['radio', 'checkbox'].includes((control as HTMLInputElement).type),
    );
    return fingers
      .filter((control) => control.getBoundingClientRect().height < size - 0.5)
      .map((control) => control.outerHTML.slice(0, 80));
  }, least);
}

/** The sum of all layout shifts so far that no input caused. */
function layoutShift(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries() as (PerformanceEntry & {
            value: number;
            hadRecentInput: boolean;
          })[]) {
            if (!entry.hadRecentInput) sum += entry.value;
          }
        }).observe({ type: 'layout-shift', buffered: true });
        setTimeout(() => resolve(sum), 200);
      }),
  );
}
