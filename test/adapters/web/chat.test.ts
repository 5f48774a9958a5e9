import { expect, test } from "vitest";
import { UnavailableError } from "../../../adapters/errors.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import type { Store } from "../../../bot/index.ts";
import { formsIn, hiddenIn, readerAt, silent, webSite } from "./web-site.ts";

const question = "which rear spoiler is this? rough inside, home market car built may 1980";

test("without script a question is asked, a button answered and the conversation found again", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const asked = await reader.send(await reader.get("/"), 'id="say"', { text: question });
  expect(asked.status).toBe(200);
  expect(asked.text).toContain("First spoiler with drains");
  const answers = formsIn(asked.text).find((form) => form.includes('class="answers"')) ?? "";
  const state = /name="state" value="([^"]+)"/u.exec(answers)?.[1] ?? "";
  const label = /<span>([^<]+)<\/span>/u.exec(answers)?.[1] ?? "none";
  const answered = await reader.send(asked, 'class="answers"', { state });
  expect(answered.text).toContain(`<p>${label}</p>`);
  expect((await reader.get("/")).text).toContain(`<p>${label}</p>`);
  expect(formsIn(answered.text).filter((form) => form.includes('class="answers"')).length).toBeLessThan(2);
});

test("a measurement is given with a unit chosen or written", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  let seen = await reader.send(await reader.get("/"), 'id="say"', { text: "which door mirror is this?" });
  for (let turn = 0; turn < 25 && !seen.text.includes('<select id="reading-'); turn += 1) {
    seen = await reader.send(seen, "cannot tell", { words: "cannot tell" });
  }
  const form = formsIn(seen.text).find((markup) => markup.includes("<select")) ?? "";
  const units = [...form.matchAll(/<option>(\w+)<\/option>/gu)].map(([, unit]) => unit);
  expect(units.slice(0, 3)).toEqual(form.includes("<option>g<") ? ["g", "kg", "lb"] : ["mm", "cm", "in"]);
  const measured = await reader.send(seen, "<select", { reading: "54", unit: units[0] ?? "" });
  expect(measured.text).toContain(`<p>54 ${units[0]}</p>`);
});

test("the same form sent twice is one message", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/");
  const once = await reader.send(home, 'id="say"', { text: question });
  const twice = await reader.send(home, 'id="say"', { text: question });
  expect(twice.text.match(/class="turn"/gu)).toHaveLength(1);
  expect(twice.text).toBe(once.text);
});

test("a form without the visitor's token, with another's, or from another site changes nothing", async () => {
  const { address } = await webSite();
  const [reader, other] = [readerAt(address), readerAt(address)];
  const [own, others] = [await reader.get("/"), await other.get("/")];
  const token = hiddenIn(formsIn(own.text)[0] ?? "").token ?? "";
  const foreign = hiddenIn(formsIn(others.text)[0] ?? "").token ?? "";
  expect(foreign).not.toBe(token);
  const refused = [
    await reader.post("/said", { text: question }),
    await reader.post("/said", { text: question, token: foreign }),
    await reader.post("/said", { text: question, token }, { "sec-fetch-site": "cross-site" }),
    await reader.post("/said", { text: question, token }, { origin: "https://elsewhere.example" }),
    await readerAt(address).post("/said", { text: question, token }),
  ];
  expect(refused.map(({ status }) => status)).toEqual([403, 403, 403, 403, 403]);
  expect((await reader.get("/")).text).not.toContain('class="turn"');
});

test("one visitor sees nothing of another's conversation", async () => {
  const { address } = await webSite();
  const [reader, other] = [readerAt(address), readerAt(address)];
  await reader.send(await reader.get("/"), 'id="say"', { text: question });
  expect((await other.get("/")).text).not.toContain("rough inside");
});

test("what was said is shown as it was said, whatever it looks like", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const hostile = `<script>alert(1)</script> "><img src=x onerror=alert(2)> which rear spoiler is this? ' & \u0000`;
  const { text } = await reader.send(await reader.get("/"), 'id="say"', { text: hostile });
  expect(text).not.toMatch(/<script>alert|<img src=x/u);
  expect(text).toContain("&lt;script&gt;alert(1)&lt;/script&gt;");
});

test("every page forbids scripts and styles of others, frames, and sniffing", async () => {
  const { address } = await webSite();
  for (const path of ["/", "/handbook", "/handbook/wexcombe-shrike/door-mirror", "/doors", "/nowhere"]) {
    const { headers, text } = await readerAt(address).get(path);
    const policy = headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'none'; script-src 'self'; style-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain("unsafe");
    expect(headers.get("x-content-type-options")).toBe("nosniff");
    expect(text).not.toMatch(/<script(?![^>]*\bsrc=)|<style|\sstyle=|\son\w+=/u);
  }
});

test("the cookie of a visitor is out of reach of scripts; behind https it is bound to its host", async () => {
  const plain = await webSite();
  const cookie = (await fetch(plain.address)).headers.getSetCookie()[0] ?? "";
  expect(cookie).toMatch(/^visitor=[\w-]{43}; Max-Age=\d+; Path=\/; HttpOnly; SameSite=Lax$/u);
  const again = await fetch(plain.address, { headers: { cookie: cookie.split(";")[0] ?? "" } });
  expect(again.headers.getSetCookie()).toEqual([cookie]);
  const secure = await webSite({ publicAddress: "https://mark.example" });
  const bound = (await fetch(secure.address)).headers.getSetCookie()[0] ?? "";
  expect(bound).toMatch(/^__Host-visitor=.*; Secure; SameSite=Lax$/u);
});

test("the first page without pictures is under 60 kB with its style and script", async () => {
  const { address } = await webSite();
  const { text } = await readerAt(address).get("/");
  const linked = [...text.matchAll(/(?:href|src)="(\/static\/[^"]+)"/gu)].map(([, path = ""]) => path);
  expect(linked).toHaveLength(3);
  const sizes = await Promise.all(
    linked.map(async (path) => (await (await fetch(`${address}${path}`)).arrayBuffer()).byteLength),
  );
  const total = sizes.reduce((sum, size) => sum + size, Buffer.byteLength(text));
  expect(total).toBeLessThan(60_000);
});

test("too large a form and too many of them are refused in words", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/");
  const { token = "" } = hiddenIn(formsIn(home.text)[0] ?? "");
  const large = await reader.post("/share", { token, text: "x".repeat(70_000) });
  expect(large.status).toBe(413);
  const statuses: number[] = [];
  for (let count = 0; count < 130; count += 1)
    statuses.push((await reader.post("/said", { token, text: "" })).status);
  expect(statuses[0]).toBe(200);
  expect(statuses.at(-1)).toBe(429);
  const refused = await reader.post("/said", { token, text: question });
  expect(refused.headers.get("retry-after")).toBe("60");
  expect(refused.text).toContain(`\n${question}</textarea>`);
});

test("a form that is torn on the way is refused as one without a token, and is no fault of the site", async () => {
  const failures: string[] = [];
  const log = { ...silent, error: (_: object, words: string) => failures.push(words) };
  const { address } = await webSite({ log });
  const headers = { "content-type": "multipart/form-data; boundary=x" };
  for (const path of ["/said", "/share", "/sign-out", "/desk/said", "/embed/said"]) {
    const { status } = await fetch(`${address}${path}`, { method: "POST", headers, body: "--y\r\ntext" });
    expect([path, status < 500]).toEqual([path, true]);
  }
  expect(failures).toEqual([]);
});

test("while the store is out of reach what was written is given back, and the answer says that it passes", async () => {
  const kept = memoryStore();
  const store: Store = {
    ...kept,
    advance: (change, advance) =>
      change.kind === "conversation"
        ? Promise.reject(new UnavailableError("store: out of reach"))
        : kept.advance(change, advance),
  };
  const { address } = await webSite({ store });
  const reader = readerAt(address);
  const refused = await reader.send(await reader.get("/"), 'id="say"', { text: question });
  expect([refused.status, refused.headers.get("retry-after")]).toEqual([503, "60"]);
  expect(refused.text).toContain(`\n${question}</textarea>`);
});

test("a chassis number is shown and kept masked, also in what the page keeps of the talk", async () => {
  const { address, store } = await webSite();
  const reader = readerAt(address);
  const text = "rear spoiler, rough inside, chassis number WS-1432, vin 1M8GDM9AXKP042788";
  const seen = await reader.send(await reader.get("/"), 'id="say"', { text });
  expect(seen.text).toContain("rough inside, chassis number");
  for (const kind of ["web-transcript", "conversation"])
    for (const id of await store.ids(kind))
      expect(JSON.stringify(await store.history(kind, id))).not.toMatch(/1432|042788/u);
  expect(seen.text).not.toMatch(/1432|042788/u);
});

test("a style asked for by another version's name is not kept under it", async () => {
  const { address } = await webSite();
  const { text } = await readerAt(address).get("/");
  const path = /href="(\/static\/styles\.css\?v=\w+)"/u.exec(text)?.[1] ?? "none";
  const cachingOf = async (one: string) => (await fetch(address + one)).headers.get("cache-control");
  expect(await cachingOf(path)).toContain("immutable");
  expect(await cachingOf(`${path}0`)).toBe("no-store");
  expect(await cachingOf("/static/embed.js")).toBe("public, max-age=3600");
});

test("a page that is spoken of in the ask box opens beside the frame, where it is allowed to", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  let seen = await reader.get("/embed");
  for (const text of [question, "share this answer"]) seen = await reader.send(seen, 'id="say"', { text });
  expect(seen.text).toMatch(/href="\/answers\/home\/[0-9a-f]{32}" target="_blank" rel="noopener"/u);
});

test("a turn said in one window arrives in the other", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/");
  const cookie = [...reader.cookies].map(([name, value]) => `${name}=${value}`).join("; ");
  const events = await fetch(`${address}/events`, { headers: { cookie } });
  await reader.send(home, 'id="say"', { text: question });
  let heard = "";
  for await (const piece of events.body ?? []) {
    heard += Buffer.from(piece).toString();
    if (heard.includes("First spoiler with drains")) break;
  }
  expect(heard).toContain("event: turn");
});
