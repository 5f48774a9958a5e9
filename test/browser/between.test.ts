// What happens beside a conversation while its page is open: a keeper's words arrive, the ask box stands twice on a forum's page.
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { expect, test } from "vitest";
import { systemClock } from "../../adapters/clock.ts";
import { makeSignInPath } from "../../adapters/web/sign-in-links.ts";
import { webSite } from "../adapters/web/web-site.ts";
import { visit } from "./browser.ts";

const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;

test("a keeper's question arrives, can be replied to by its button, and leaves what was being asked as it was", async () => {
  const site = await webSite({ noticesEveryMilliseconds: 50 });
  const { page, complaints } = await visit();
  const say = async (text: string) => {
    const turns = await page.locator(".turn").count();
    await page.fill("#text", text);
    await page.click(".say button");
    await page.locator(".turn").nth(turns).waitFor();
  };
  await page.goto(site.address);
  await say("which rear spoiler is this? rough inside");
  await say("ask a keeper");
  await say("which rear spoiler is this?");
  const answers = await page.locator(".answers button").count();
  expect(answers).toBeGreaterThan(1);
  const keeper = await visit();
  await keeper.page.goto(site.address + (await makeSignInPath(site.store, systemClock(), owner)));
  await keeper.page.click("main button");
  await keeper.page.fill("[id^=back-]", "Which side?");
  await keeper.page.click("button:has-text('Ask back')");
  await page.waitForSelector(".turn:has-text('Which side?') button:has-text('reply')");
  expect(await page.locator(".answers button").count()).toBe(answers);
  await page.click("button:has-text('reply')");
  await page.waitForSelector("text=/Say your words too|your words/");
  expect(complaints).toEqual([]);
});

test("what was said while a page was cut off is there once it is connected again", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  await page.goto(address);
  const asleep = await page.context().newPage();
  await asleep.route("**/events", (route) => route.abort("connectionfailed"));
  await asleep.goto(address);
  await page.fill("#text", "which rear spoiler is this? rough inside");
  await page.click(".say button");
  await page.waitForSelector(".answers");
  expect(await asleep.locator(".turn").count()).toBe(0);
  await asleep.unroute("**/events");
  await asleep.waitForSelector(".answers");
  expect(await asleep.locator(".turn").count()).toBe(1);
  await asleep.click(".answers button >> nth=0");
  await asleep.waitForSelector(".turn >> nth=1");
});

test("the two lines that put the ask box on a page may stand on it twice, and each box is as tall as what is in it", async () => {
  const { address } = await webSite();
  const lines = `<div class="witness-mark"></div><script src="${address}/static/embed.js" async></script>`;
  const forum = createServer((_, response) => {
    response.setHeader("content-type", "text/html");
    response.end(
      `<!doctype html><html lang="en"><title>Forum</title><body>${lines}<p>and</p>${lines}</body></html>`,
    );
  });
  await new Promise<void>((resolve) => forum.listen(0, "127.0.0.1", resolve));
  try {
    const { page } = await visit();
    await page.goto(`http://localhost:${(forum.address() as AddressInfo).port}/`, {
      waitUntil: "networkidle",
    });
    expect(await page.locator("iframe").count()).toBe(2);
    for (const place of await page.locator(".witness-mark").all()) {
      expect(await place.locator("iframe").count()).toBe(1);
    }
    const height = async () => (await page.locator("iframe").first().boundingBox())?.height ?? 0;
    await page.frameLocator("iframe >> nth=0").locator("#text").fill("which door mirror is this? cast alloy");
    await page.frameLocator("iframe >> nth=0").locator(".say button").click();
    await expect.poll(height, { timeout: 30_000 }).toBeGreaterThan(500);
    const wide = await height();
    await page.setViewportSize({ width: 330, height: 800 });
    await expect.poll(height, { timeout: 30_000 }).toBeGreaterThan(wide);
    await page.setViewportSize({ width: 1000, height: 800 });
    await expect.poll(height, { timeout: 30_000 }).toBe(wide);
  } finally {
    forum.closeAllConnections();
    forum.close();
  }
});
