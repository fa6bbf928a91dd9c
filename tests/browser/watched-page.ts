import type { Browser, BrowserContext, Page } from 'playwright-core';

export const sizes = {
  desktop: { width: 1280, height: 900 },
  phone: { width: 390, height: 844 },
} as const;

export interface WatchedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Everything that went wrong in the page, broken security policy included. */
  readonly complaints: readonly string[];
}

export interface PageWishes {
  readonly size?: keyof typeof sizes;
  readonly theme?: 'light' | 'dark';
}

/** A fresh page that writes down every error and warning of its console. */
export async function openPage(
  browser: Browser,
  { size = 'desktop', theme = 'light' }: PageWishes = {},
): Promise<WatchedPage> {
  const context = await browser.newContext({ viewport: sizes[size], colorScheme: theme, locale: 'en-US' });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(`${page.url()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => complaints.push(`${page.url()}: ${error.message}`));
  return { page, context, complaints };
}

/** Waits until nothing is loading or computing any more: the page has its answer. */
export async function settled(page: Page): Promise<void> {
  await page.waitForFunction(
    () => {
      const answer = document.querySelector('.answer');
      return answer !== null && !(answer.textContent ?? '…').includes('…');
    },
    undefined,
    { timeout: 60_000 },
  );
}
