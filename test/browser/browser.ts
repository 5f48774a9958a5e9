/** One real Chromium for a file of tests: the one in CHROMIUM_PATH, else the one that comes with the packages. */
import packaged from "@sparticuz/chromium";
import axe from "axe-core";
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from "playwright-core";
import { afterAll, afterEach, vi } from "vitest";

// Two busy cores start a browser and draw pages here.
vi.setConfig({ testTimeout: 120_000, hookTimeout: 120_000 });

export const networkName = "club.example";

let browser: Promise<Browser> | undefined;
const open: BrowserContext[] = [];

afterEach(async () => {
  for (const context of open.splice(0)) await context.close();
});
afterAll(async () => {
  await (await browser)?.close();
});

async function started(): Promise<Browser> {
  const executablePath = process.env.CHROMIUM_PATH ?? (await packaged.executablePath());
  // What the package is made for runs all in one process, which dies with its first page.
  const args = packaged.args.filter((one) => one !== "--single-process" && one !== "--no-zygote");
  // A name that is not this machine's own: browsers treat plain http there as they do on a network.
  const names = `--host-resolver-rules=MAP ${networkName} 127.0.0.1`;
  return chromium.launch({ executablePath, args: [...args, names], headless: true });
}

export interface Visit {
  readonly page: Page;
  /** What the browser complained of: errors of scripts, and what the policy forbade. */
  readonly complaints: readonly string[];
}

/** A page in a browser of its own, with its own cookies; closed after the test. */
export async function visit(options: BrowserContextOptions = {}): Promise<Visit> {
  browser ??= started();
  const context = await (await browser).newContext({ viewport: { width: 1000, height: 800 }, ...options });
  context.setDefaultTimeout(60_000);
  open.push(context);
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on("pageerror", ({ message }) => complaints.push(message));
  page.on("console", (message) => {
    if (message.type() === "error") complaints.push(message.text());
  });
  return { page, complaints };
}

/** What axe finds wrong for people who do not see, hear or point: "rule: target". */
export async function barriersOn(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const page = globalThis as unknown as {
      axe: { run(): Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }> };
    };
    const { violations } = await page.axe.run();
    return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(" ")}`));
  });
}

/** How many pixels a page is wider than its window. */
export async function overhangOf(page: Page): Promise<number> {
  return page.evaluate("document.documentElement.scrollWidth - window.innerWidth");
}
