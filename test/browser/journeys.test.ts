import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import type { Page } from "playwright-core";
import { extractText } from "unpdf";
import { expect, test } from "vitest";
import { systemClock } from "../../adapters/clock.ts";
import { makeSignInPath } from "../../adapters/web/sign-in-links.ts";
import { webSite } from "../adapters/web/web-site.ts";
import { keepSeen, seenCar, seenPanels, seenSpoilers } from "../support/seen-cars.ts";
import { barriersOn, networkName, overhangOf, visit } from "./browser.ts";

const question = "which rear spoiler is this? rough inside, square tips, home market car built may 1980";
/** On a busy machine a page takes its time. */
const patiently = { timeout: 30_000 };
const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;

test("a question is asked and answered by pressing, without leaving the page, and the answer shared", async () => {
  const { address } = await webSite();
  const { page, complaints } = await visit();
  await page.goto(address);
  await page.fill("#text", question);
  await page.click(".say button");
  await page.click(".answers button:has-text('two drain notches')");
  await page.waitForSelector("p.answer");
  expect(await page.textContent("p.answer")).toContain("First spoiler with drains");
  expect(await page.locator(".turn").count()).toBe(2);
  expect(await page.locator(".answers").count()).toBe(0);
  expect(await page.evaluate("document.activeElement.className")).toBe("turn");
  await page.click(".share button");
  await page.waitForURL(/\/answers\//u);
  expect(await page.textContent("h1")).toBe("Rear spoiler: First spoiler with drains, very likely (92 %)");
  await page.click("text=Copy");
  await page.waitForSelector("text=Copied");
  expect(complaints).toEqual([]);
});

test("the same journey without script", async () => {
  const { address } = await webSite();
  const { page } = await visit({ javaScriptEnabled: false });
  await page.goto(address);
  await page.fill("#text", question);
  await page.click(".say button");
  await page.click(".answers button:has-text('two drain notches')");
  expect(await page.textContent("p.answer")).toContain("First spoiler with drains");
  await page.click(".share button");
  expect(page.url()).toMatch(/\/answers\/[\w-]{22}$/u);
});

test("on a club's own network, over plain http, forms are taken for our own, with script and without", async () => {
  const { address, store } = await webSite();
  const there = address.replace("127.0.0.1", networkName);
  for (const javaScriptEnabled of [true, false]) {
    const { page } = await visit({ javaScriptEnabled });
    await page.goto(there);
    await page.fill("#text", question);
    await page.click(".say button");
    await page.click(".share button");
    expect(await page.textContent("h1")).toContain("Rear spoiler");
    await page.goto(there + (await makeSignInPath(store, systemClock(), owner)));
    await page.click("main button");
    expect(page.url()).toBe(`${there}/desk`);
  }
});

test("the same journey with the keyboard alone", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  const press = async (key: string) => page.keyboard.press(key);
  const tabTo = async (selector: string) => {
    for (let tabs = 0; tabs < 60; tabs += 1) {
      if (await page.evaluate(`document.activeElement.matches(${JSON.stringify(selector)})`)) return;
      await press("Tab");
    }
    throw new Error(`no way to ${selector} with the keyboard`);
  };
  await page.goto(address);
  await press("Tab");
  expect(await page.evaluate("document.activeElement.textContent")).toBe("Skip to the content");
  await press("Enter");
  await tabTo("#text");
  await page.keyboard.type(question);
  await tabTo(".say button");
  await press("Enter");
  await page.waitForSelector(".answers");
  await page.waitForFunction("document.activeElement.className === 'turn'");
  await tabTo(".answers button[value]");
  const outline = await page.evaluate("getComputedStyle(document.activeElement).outlineStyle");
  expect(outline).toBe("solid");
  await press("Enter");
  await page.waitForSelector(".turn >> nth=1");
  await tabTo(".turn:last-of-type button");
});

test("what is refused is said beside the field with its reason, and nothing that was written is lost", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  await page.goto(address);
  await page.fill("#text", question);
  const telephone = Buffer.from("\0\0\0\x18ftypheic\0\0\0\0mif1heic", "latin1");
  await page.setInputFiles("#photographs", { name: "a.heic", mimeType: "image/heic", buffer: telephone });
  await page.click(".say button");
  await page.waitForSelector("[role=status]:has-text('HEIC')");
  expect(await page.inputValue("#text")).toBe(question);
  expect(await page.evaluate("document.activeElement.textContent")).toBe("Send");
  await page.context().clearCookies();
  await page.setInputFiles("#photographs", []);
  await page.click(".say button");
  await page.waitForSelector("[role=status]:has-text('This page has grown old. Open it again')");
  expect(await page.inputValue("#text")).toBe(question);
  await page.context().setOffline(true);
  await page.click(".say button");
  await page.waitForSelector("[role=status]:has-text('did not get through')");
  expect(await page.locator(".turn").count()).toBe(0);
});

test("what is said in one window arrives in the other by itself", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  await page.goto(address);
  const other = await page.context().newPage();
  const isOpen = other.waitForResponse(/\/events$/u);
  await other.goto(address);
  await isOpen;
  await page.fill("#text", question);
  await page.click(".say button");
  await other.waitForSelector(".turn");
  expect(await other.textContent(".turn .said")).toContain("rough inside");
  expect(await page.locator(".turn").count()).toBe(1);
});

test("the ask box stands in a page of another site, grows with its answer, and takes the page's units", async () => {
  const { address } = await webSite();
  const forum = createServer((_, response) => {
    response.setHeader("content-type", "text/html");
    response.end(`<!doctype html><html lang="en-US"><title>Forum</title><body><div class="witness-mark"></div>
<script src="${address}/static/embed.js" async></script></body></html>`);
  });
  await new Promise<void>((resolve) => forum.listen(0, "127.0.0.1", resolve));
  // Another name for this machine is another site to a browser.
  const forumAddress = `http://localhost:${(forum.address() as AddressInfo).port}/`;
  try {
    const { page, complaints } = await visit();
    await page.goto(forumAddress);
    const frame = page.frameLocator("iframe");
    const height = async () => (await page.locator("iframe").boundingBox())?.height ?? 0;
    await frame.locator("#text").waitFor();
    await expect.poll(height, patiently).toBeGreaterThan(150);
    const before = await height();
    await frame.locator("#text").fill("which door mirror is this? cast alloy housing");
    await frame.locator(".say button").click();
    await frame.locator(".turn").waitFor();
    await expect.poll(height, patiently).toBeGreaterThan(before + 150);
    for (let turn = 0; turn < 25 && (await frame.locator(".reading select").count()) === 0; turn += 1) {
      const turns = await frame.locator(".turn").count();
      await frame.locator("button:has-text('cannot tell')").last().click();
      await expect.poll(() => frame.locator(".turn").count(), patiently).toBe(turns + 1);
    }
    expect(await frame.locator(".reading select").inputValue()).toMatch(/^(?:in|lb)$/u);
    expect(complaints).toEqual([]);
  } finally {
    forum.closeAllConnections();
    forum.close();
  }
});

test("pages other than the ask box refuse to stand in a frame", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  await page.route("http://forum.example/", (route) =>
    route.fulfill({ contentType: "text/html", body: `<iframe src="${address}/" id="f"></iframe>` }),
  );
  await page.goto("http://forum.example/");
  await page.waitForTimeout(500);
  const framed = page.frames().find((frame) => frame !== page.mainFrame());
  expect(await framed?.locator("#text").count()).toBe(0);
});

test("an answer prints on paper with everything it rests on and nothing to press", async () => {
  const { address } = await webSite();
  const { page } = await visit();
  await page.goto(address);
  await page.fill("#text", `${question}, two drain notches`);
  await page.click(".say button");
  await page.click(".share button");
  await page.waitForURL(/\/answers\//u);
  for (const format of ["A4", "Letter"] as const) {
    const { text, totalPages } = await extractText(new Uint8Array(await page.pdf({ format })), {
      mergePages: true,
    });
    expect(totalPages).toBeLessThanOrEqual(2);
    for (const words of [
      "First spoiler with drains",
      "What was seen",
      "Sources",
      "Would settle it",
      page.url(),
    ]) {
      expect(text).toContain(words);
    }
    expect(text).not.toMatch(/Withdraw this page|Keepers’ desk|Copy\b/u);
  }
});

test("a pin comes first in the next answer, with what speaks against it, and is withdrawn at the desk", async () => {
  const site = await webSite();
  const { page, complaints } = await visit();
  const say = async (text: string, seen: Page = page) => {
    const turns = await seen.locator(".turn").count();
    await seen.fill("#text", text);
    await seen.click(".say button");
    await seen.locator(".turn").nth(turns).waitFor();
  };
  await page.goto(site.address + (await makeSignInPath(site.store, systemClock(), owner)));
  await page.click("main button");
  await page.waitForURL(/\/desk$/u);
  await page.goto(site.address);
  await say("rear spoiler, which kind is it?");
  await say("pin this: Cars of early 1979 have the third spoiler.");
  await say("says third spoiler");
  await say("only for built february to april 1979");
  await say("for any question");
  await page.click("button:has-text('keep it')");
  await page.waitForSelector("text=/Pinned as/");
  const asker = await visit();
  await asker.page.goto(site.address);
  await say("my car was built in march 1979; rear spoiler, what should it have?", asker.page);
  expect(await asker.page.textContent(".pinned")).toContain("Cars of early 1979 have the third spoiler.");
  expect(await asker.page.textContent(".pinned .doubt")).toContain("The handbook speaks against this");
  await asker.page.goto(`${site.address}/handbook/wexcombe-shrike/rear-spoiler`);
  expect(await asker.page.textContent("#pinned .doubt")).toContain("The handbook speaks against this");
  await page.goto(`${site.address}/desk/pins`);
  expect(await page.textContent(".pinned .doubt")).toContain("The handbook speaks against this");
  await page.fill("[id^=withdraw-]", "the handbook is right");
  await page.click("button:has-text('Withdraw')");
  await page.waitForSelector("text=/is withdrawn/");
  await asker.page.reload();
  expect(await asker.page.textContent("#pinned")).toContain("Nothing is pinned here yet.");
  expect(complaints).toEqual([]);
});

test("what a member saw is recorded, reviewed and accepted, and the numbers change", async () => {
  const site = await webSite();
  const told =
    "door mirror, moulded housing, three screws, rounded groove, on a home market shrike s built october 1981";
  const shareOf = async () => {
    const { page } = await visit();
    await page.goto(site.address);
    await page.fill(
      "#text",
      "what door mirror should my car have? shrike s, home market, built october 1981",
    );
    await page.click(".say button");
    await page.waitForSelector(".turn");
    const words = (await page.textContent(".turn .reply")) ?? "";
    return Number(/Second-type mirror[^%]*?\((\d+) %\)/u.exec(words)?.[1]);
  };
  const before = await shareOf();
  for (let cars = 0; cars < 5; cars += 1) {
    const { page } = await visit();
    await page.goto(site.address);
    const turn = async (act: () => Promise<void>) => {
      const turns = await page.locator(".turn").count();
      await act();
      await page.locator(".turn").nth(turns).waitFor();
    };
    for (const text of [told, "record an observation"]) {
      await turn(async () => {
        await page.fill("#text", text);
        await page.click(".say button");
      });
    }
    for (const label of ["Second-type mirror", "one owner from new", "not sure", "none", "no", "record it"]) {
      await turn(() => page.click(`.answers button:has-text("${label}") >> nth=0`));
    }
    expect(await page.textContent(".turn:last-of-type .reply")).toContain("Recorded as");
  }
  const { page } = await visit();
  await page.goto(site.address + (await makeSignInPath(site.store, systemClock(), owner)));
  await page.click("main button");
  await page.click("text=Observations");
  expect(await page.locator(".item").count()).toBe(5);
  for (let left = 4; left >= 0; left -= 1) {
    await page.click(".item button:has-text('Accept') >> nth=0");
    await expect.poll(() => page.locator(".item").count(), patiently).toBe(left);
    if (left === 1)
      expect(await page.textContent(".item")).toMatch(/If it is accepted[\s\S]*Second-type mirror/u);
  }
  expect(await shareOf()).toBeGreaterThan(before);
});

test("no page keeps anybody out who does not see or point, in light or dark, and none is wider than a narrow phone", async () => {
  const found: string[] = [];
  for (const colorScheme of ["light", "dark"] as const) {
    const site = await webSite();
    const { page, complaints } = await visit({ colorScheme, viewport: { width: 320, height: 640 } });
    const look = async (name: string) => {
      const barriers = await barriersOn(page);
      found.push(...barriers.map((barrier) => `${name} ${colorScheme} ${barrier}`));
      const overhang = await overhangOf(page);
      if (overhang > 0) found.push(`${name} ${colorScheme} is ${overhang} pixels too wide`);
    };
    const go = async (path: string) => {
      await page.goto(site.address + path);
      await look(path);
    };
    await go("/");
    await page.fill("#text", question);
    await page.click(".say button");
    await page.waitForSelector(".answers");
    await look("a question");
    await page.click(".answers button >> nth=0");
    await page.waitForSelector(".evidence");
    await look("an answer");
    await page.fill("#text", "compare the first and the second spoiler");
    await page.click(".say button");
    await page.waitForSelector(".turn >> nth=2");
    await look("a comparison");
    await page.click(".share button");
    await page.waitForURL(/\/answers\//u);
    await look("a shared answer");
    await page.goto(site.address);
    await page.fill("#text", "share car sheet");
    await page.click(".say button");
    await page.click("a[href^='/sheet/']");
    await look("a car sheet");
    await page.goto(site.address);
    await page.fill("#text", "ask a keeper");
    await page.click(".say button");
    await page.waitForSelector(".turn >> nth=4");
    const seen = [...seenSpoilers, ...seenPanels].map((car, number) => seenCar(number, car));
    await keepSeen(site.store, seen);
    for (const path of [
      "/handbook",
      "/handbook?q=miror",
      "/handbook/wexcombe-shrike/door-mirror",
      "/handbook/wexcombe-shrike/rear-spoiler",
      "/handbook/wexcombe-shrike/instrument-panel",
      "/doors",
      "/embed",
      "/sign-in",
      "/nowhere",
    ]) {
      await go(path);
    }
    await page.goto(site.address + (await makeSignInPath(site.store, systemClock(), owner)));
    await look("a sign-in link");
    await page.click("main button");
    for (const path of ["", "/observations", "/pins", "/board", "/audit", "/people", "/export"]) {
      await go(`/desk${path}`);
    }
    expect(complaints.filter((complaint) => !complaint.includes("404"))).toEqual([]);
  }
  expect(found).toEqual([]);
});
