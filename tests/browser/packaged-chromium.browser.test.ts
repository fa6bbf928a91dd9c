import { expect, test } from 'vitest';
import { launch } from './launch-browser.ts';
import { packagedChromium } from './packaged-chromium.ts';

const packaged = packagedChromium();

test.skipIf(packaged === null && !process.env['CI'])(
  'the browser that comes with the npm packages starts and runs a page, for machines that have none',
  async () => {
    if (packaged === null)
      throw new Error('The browser of the npm package does not start on this CI machine.');
    const browser = await launch(packaged);
    const page = await browser.newPage();
    await page.setContent('<p>1</p><script>document.querySelector("p").textContent = String(1 + 1)</script>');
    expect(await page.textContent('p')).toBe('2');
    // A sign that the fonts lack, the one in '7:53 AM': without any font the browser ends here.
    await page.setContent('<p>7:53\u202fAM ⌖</p>');
    expect((await page.locator('p').boundingBox())?.width).toBeGreaterThan(0);
    expect((await page.screenshot()).length).toBeGreaterThan(0);
    expect(packaged.path).toContain('.cache');
    await browser.close();
  },
);
