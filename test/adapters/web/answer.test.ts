import { join } from "node:path";
import { expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { openHandbook } from "../../../adapters/handbooks.ts";
import { makeSignInPath } from "../../../adapters/web/sign-in-links.ts";
import { knowledgeOf } from "../../../bot/index.ts";
import { root } from "../program.ts";
import { readerAt, type Seen, webSite } from "./web-site.ts";

const question =
  "which rear spoiler is this? rough inside, square tips, home market car built may 1980, two drain notches";

async function shared(address: string): Promise<{ reader: ReturnType<typeof readerAt>; page: Seen }> {
  const reader = readerAt(address);
  const asked = await reader.send(await reader.get("/"), 'id="say"', { text: question });
  return { reader, page: await reader.send(asked, 'action="/share"', {}) };
}

test("a shared answer says what was asked and seen, the ranking, the weights, what is open, sources, edition and how to cite", async () => {
  const { address } = await webSite();
  const { page } = await shared(address);
  expect(page.path).toMatch(/^\/answers\/[\w-]{22}$/u);
  for (const words of [
    "About a rear spoiler: which kind it is.",
    "May 1980",
    "inside finish",
    "said as “rough",
    "very likely (92 %)",
    "Norrick re-make",
    "Weights of evidence",
    "Would settle it:",
    "service bulletin 9",
    "(grade A)",
    `${address}${page.path}`,
  ]) {
    expect(page.text).toContain(words);
  }
  expect(page.text).toMatch(/Wexcombe Shrike, edition [0-9a-f]{8}\. \d+ \w+ \d{4}\./u);
});

test("anybody who has the address reads the same page, without what its owner may do", async () => {
  const { address } = await webSite();
  const { page } = await shared(address);
  const stranger = await readerAt(address).get(page.path);
  expect(stranger.status).toBe(200);
  expect(page.text).toContain("Withdraw this page");
  expect(stranger.text).not.toContain("<form");
  expect(stranger.text).toContain("very likely (92 %)");
});

test("what was shared stays as it was when the conversation goes on", async () => {
  const { address } = await webSite();
  const { reader, page } = await shared(address);
  const before = await readerAt(address).get(page.path);
  await reader.send(await reader.get("/"), 'id="say"', { text: "smooth inside, round tips" });
  expect((await readerAt(address).get(page.path)).text).toBe(before.text);
});

test("only its owner withdraws a page, and then nobody finds it", async () => {
  const { address } = await webSite();
  const { reader, page } = await shared(address);
  const stranger = readerAt(address);
  await stranger.get("/");
  expect((await stranger.send(await stranger.get("/"), 'id="say"', { text: "hello" })).status).toBe(200);
  const foreign = await stranger.post(`${page.path}/withdraw`, { token: "none" });
  expect(foreign.status).toBe(403);
  const token = /name="token" value="([^"]+)"/u.exec((await stranger.get("/")).text)?.[1] ?? "";
  expect((await stranger.post(`${page.path}/withdraw`, { token })).status).toBe(404);
  expect((await stranger.get(page.path)).status).toBe(200);
  expect((await reader.send(page, "withdraw", {})).text).toContain("The page is withdrawn.");
  expect((await readerAt(address).get(page.path)).status).toBe(404);
});

test("what somebody shared is theirs to withdraw once they have signed in as a keeper too", async () => {
  const { address, store } = await webSite();
  const { reader, page } = await shared(address);
  const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;
  await reader.send(await reader.get(await makeSignInPath(store, systemClock(), owner)), "/sign-in/", {});
  const own = await reader.get(page.path);
  expect((await reader.send(own, "withdraw", {})).text).toContain("The page is withdrawn.");
});

test("what cannot be shared any more says so", async () => {
  const { address, store } = await webSite();
  const reader = readerAt(address);
  const asked = await reader.send(await reader.get("/"), 'id="say"', { text: question });
  const gone = (await openHandbook(join(root, "knowledge/handbooks/ollerton-finch"))).handbook;
  const other = await webSite({ store }, knowledgeOf(gone));
  const there = readerAt(other.address);
  for (const [name, value] of reader.cookies) there.cookies.set(name, value);
  const refused = await there.send(asked, 'action="/share"', {});
  expect([refused.status, refused.path]).toEqual([409, "/share"]);
  expect(refused.text).toContain("There is no answer to make a page of");
});

test("addresses that were not given out lead nowhere, however they are written", async () => {
  const { address } = await webSite();
  const { page } = await shared(address);
  const reader = readerAt(address);
  for (const path of [
    "/answers/",
    "/answers/1",
    "/answers/AAAAAAAAAAAAAAAAAAAAAA",
    `${page.path}A`,
    "/answers/..%2f..%2fetc%2fpasswd",
    "/static/..%2fpage.js",
    "/static/%2e%2e/index.ts",
    "/static/styles",
    "/drawings/..%2f..%2fhandbook.yaml",
    "/drawings/mirror-foot.svg",
    "/photographs/..%2f..%2fwitness-mark.sqlite",
    "/handbook/..%2f/door-mirror",
    "/handbook/wexcombe-shrike/constructor",
  ]) {
    expect([path, (await reader.get(path)).status]).toEqual([path, 404]);
  }
});

test("words share an answer in any chat, and take it back", async () => {
  let now = Date.now();
  const { address } = await webSite({ clock: systemClock(() => now) });
  const reader = readerAt(address);
  const asked = await reader.send(await reader.get("/"), 'id="say"', { text: question });
  const said = await reader.send(asked, 'id="say"', { text: "share this answer" });
  const path = /href="(\/answers\/home\/[0-9a-f]{32})"/u.exec(said.text)?.[1] ?? "none";
  const stranger = readerAt(address);
  expect((await stranger.get(path)).text).toContain("very likely (92 %)");
  expect((await reader.get(path)).text).toContain("Withdraw this page");
  await reader.send(said, 'id="say"', { text: "stop sharing answers" });
  // A page that was shown lately is kept for some seconds.
  now += 6000;
  expect((await stranger.get(path)).status).toBe(404);
});
