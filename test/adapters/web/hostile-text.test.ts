import { Webhook } from "standardwebhooks";
import { expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { makeSignInPath } from "../../../adapters/web/sign-in-links.ts";
import { formsIn, hiddenIn, type Reader, readerAt, type Seen, webSite } from "./web-site.ts";

const evil = `"'><img src=x onerror=alert(1)><script>alert(2)</script>{{7*7}}\${7*7}javascript:alert(3)`;
const secret = `whsec_${Buffer.from("a secret of thirty-two bytes 123").toString("base64")}`;

/** What would run, open an element or leave an attribute, had it not been escaped. */
function danger({ text }: Seen): readonly string[] {
  return text.match(/<img src=x|<script>|\sonerror=(?!alert\(1\)&gt;)|href="javascript:|value=""'/gu) ?? [];
}

/** Every form of a page sent with hostile text in each of its fields, its own hidden ones apart. */
async function sendAll(reader: Reader, seen: Seen): Promise<readonly Seen[]> {
  const answers: Seen[] = [];
  for (const form of formsIn(seen.text)) {
    if (!form.includes('method="post"')) continue;
    const action = /action="([^"]+)"/u.exec(form)?.[1] ?? "/";
    if (action === "/sign-out") continue;
    const names = [...form.matchAll(/<(?:input|textarea|select|button)[^>]* name="(\w+)"/gu)].map(
      ([, name = ""]) => name,
    );
    const hidden = hiddenIn(form);
    const hostile = names.filter((name) => hidden[name] === undefined && name !== "photographs");
    answers.push(
      await reader.post(action, { ...hidden, ...Object.fromEntries(hostile.map((name) => [name, evil])) }),
    );
  }
  return answers;
}

test("hostile text in any field of any form comes back as text, on the pages of visitors and keepers", async () => {
  const site = await webSite({ webhookSecrets: new Map([["forum", secret]]), noticesEveryMilliseconds: 20 });
  const visitor = readerAt(site.address);
  const pages: Seen[] = [];
  let seen = await visitor.get("/");
  for (const text of [evil, `which rear spoiler is this? ${evil}`, `rough inside ${evil}`, "ask a keeper"]) {
    seen = await visitor.send(seen, 'id="say"', { text });
    pages.push(seen, ...(await sendAll(visitor, seen)));
    seen = await visitor.get("/");
  }
  pages.push(await visitor.send(seen, 'id="say"', { text: `which rear spoiler is this? rough inside` }));
  pages.push(await visitor.send(pages.at(-1) ?? seen, 'action="/share"', {}));
  for (const path of [
    `/handbook?q=${encodeURIComponent(evil)}`,
    `/handbook/${encodeURIComponent(evil)}`,
    `/handbook/wexcombe-shrike/rear-spoiler?kind=${encodeURIComponent(evil)}`,
    `/?units=${encodeURIComponent(evil)}`,
    `/embed?units=${encodeURIComponent(evil)}`,
    `/sign-in/${encodeURIComponent(evil)}/${encodeURIComponent(evil)}`,
    `/answers/${encodeURIComponent(evil)}`,
    `/${encodeURIComponent(evil)}`,
  ]) {
    pages.push(await visitor.get(path));
  }
  pages.push(...(await sendAll(visitor, await visitor.get("/embed"))));

  const keeper = readerAt(site.address);
  const guest = {
    person: `x:${evil}`,
    community: "home",
    standing: "owner",
    name: evil.slice(0, 80),
  } as const;
  await keeper.send(
    await keeper.get(await makeSignInPath(site.store, systemClock(), guest)),
    "/sign-in/",
    {},
  );
  for (const round of [1, 2]) {
    for (const path of ["", "/observations", "/pins", "/board", "/audit", "/people", "/export"]) {
      const desk = await keeper.get(`/desk${path}`);
      expect([round, desk.status]).toEqual([round, 200]);
      pages.push(desk, ...(await sendAll(keeper, desk)));
    }
  }
  pages.push(await visitor.get("/"), await visitor.get("/handbook/wexcombe-shrike/rear-spoiler"));
  expect(pages.length).toBeGreaterThan(50);
  expect(pages.filter((page) => danger(page).length > 0).map(({ path }) => path)).toEqual([]);
  expect(pages.some(({ text }) => text.includes("&lt;img src=x"))).toBe(true);
  expect(pages.filter(({ status }) => status >= 500).map(({ path }) => path)).toEqual([]);
});

test("hostile text of a forum's post comes back escaped in the HTML of the reply", async () => {
  const { address } = await webSite({ webhookSecrets: new Map([["forum", secret]]) });
  const author = { id: evil, name: evil.slice(0, 80) };
  const post = {
    id: "1",
    thread: evil.slice(0, 90),
    author,
    text: `${evil} which rear spoiler is this? rough`,
  };
  const body = JSON.stringify(post);
  const at = new Date();
  const answer = await fetch(`${address}/webhook/forum`, {
    method: "POST",
    body,
    headers: {
      "webhook-id": "msg_1",
      "webhook-timestamp": `${Math.floor(at.getTime() / 1000)}`,
      "webhook-signature": new Webhook(secret).sign("msg_1", at, body),
    },
  });
  expect(answer.status).toBe(200);
  const { html } = (await answer.json()) as { html: string };
  expect(html).not.toMatch(/<img src=x|<script>/u);
});
