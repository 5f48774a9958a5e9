import { expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { makeSignInPath } from "../../../adapters/web/sign-in-links.ts";
import { parseSightings } from "../../../knowledge/index.ts";
import { type OpenSite, type Reader, readerAt, webSite } from "./web-site.ts";

const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;

async function keeperAt({ address, store }: OpenSite, guest: Parameters<typeof makeSignInPath>[2] = owner) {
  const keeper = readerAt(address);
  const link = await keeper.get(await makeSignInPath(store, systemClock(), guest));
  await keeper.send(link, "/sign-in/", {});
  return keeper;
}

const question = "which rear spoiler is this? rough inside, home market car built may 1980";

async function asked(reader: Reader) {
  return reader.send(await reader.get("/"), 'id="say"', { text: question });
}

test("a link signs in once; opening it does not use it up", async () => {
  const site = await webSite();
  const path = await makeSignInPath(site.store, systemClock(), owner);
  const [first, second] = [readerAt(site.address), readerAt(site.address)];
  await first.get(path);
  const shown = await first.get(path);
  const other = await second.get(path);
  expect((await first.send(shown, "/sign-in/", {})).path).toBe("/desk");
  expect((await second.send(other, "/sign-in/", {})).status).toBe(403);
  expect((await second.get("/desk")).path).toBe("/sign-in");
});

test("a link is too old after ten minutes, and a made up one leads nowhere", async () => {
  let now = Date.now();
  const clock = systemClock(() => now);
  const site = await webSite({ clock });
  const path = await makeSignInPath(site.store, clock, owner);
  const reader = readerAt(site.address);
  const shown = await reader.get(path);
  now += 11 * 60_000;
  expect((await reader.send(shown, "/sign-in/", {})).status).toBe(403);
  const madeUp = await reader.get(`/sign-in/home/${"0".repeat(64)}`);
  expect((await reader.send(madeUp, "/sign-in/", {})).status).toBe(403);
  expect(await site.store.ids("sign-in-link")).toHaveLength(1);
});

test("signing in gives a new session; one that somebody had planted before opens nothing", async () => {
  const site = await webSite();
  const keeper = readerAt(site.address);
  const planted = "p".repeat(43);
  keeper.cookies.set("session", planted);
  const link = await keeper.get(await makeSignInPath(site.store, systemClock(), owner));
  await keeper.send(link, "/sign-in/", {});
  expect(keeper.cookies.get("session")).not.toBe(planted);
  const thief = readerAt(site.address);
  thief.cookies.set("session", planted);
  expect((await thief.get("/desk")).path).toBe("/sign-in");
  const before = keeper.cookies.get("session") ?? "";
  const again = await keeper.get(await makeSignInPath(site.store, systemClock(), owner));
  await keeper.send(again, "/sign-in/", {});
  thief.cookies.set("session", before);
  expect((await thief.get("/desk")).path).toBe("/sign-in");
});

test("signing out ends the session for whoever has its cookie", async () => {
  const site = await webSite();
  const keeper = await keeperAt(site);
  const cookie = keeper.cookies.get("session") ?? "";
  await keeper.send(await keeper.get("/desk"), "/sign-out", {});
  const thief = readerAt(site.address);
  thief.cookies.set("session", cookie);
  expect((await thief.get("/desk")).path).toBe("/sign-in");
});

test("the store keeps no secret that could be used", async () => {
  const site = await webSite();
  const path = await makeSignInPath(site.store, systemClock(), owner);
  const keeper = readerAt(site.address);
  await keeper.send(await keeper.get(path), "/sign-in/", {});
  const secrets = [path.split("/").at(-1) ?? "", ...keeper.cookies.values()];
  for (const kind of ["sign-in-link", "web-session", "web-transcript", "conversation"]) {
    for (const id of await site.store.ids(kind)) {
      const text = JSON.stringify([id, await site.store.history(kind, id)]);
      for (const secret of secrets) expect(text).not.toContain(secret);
    }
  }
});

test("the desk is closed to members, and to a keeper whose role has ended", async () => {
  const site = await webSite();
  const member = await keeperAt(site, { ...owner, person: "discord:5", standing: "contributor" });
  expect((await member.get("/desk")).status).toBe(403);
  const ada = await keeperAt(site);
  const people = await ada.get("/desk/people");
  const invited = await ada.send(people, "invite a keeper", { words: "invite a keeper" });
  const code = /redeem ([0-9a-f]{20})/u.exec(invited.text)?.[1] ?? "";
  const home = await member.get("/");
  await member.send(home, 'id="say"', { text: `redeem ${code}` });
  expect((await member.get("/desk")).status).toBe(200);
  await ada.send(await ada.get("/desk/people"), "dismiss discord:5", { words: "dismiss discord:5" });
  expect((await member.get("/desk")).status).toBe(403);
});

test("what a keeper wrote comes back to be copied when the session has run out meanwhile, and never to another site", async () => {
  let now = Date.now();
  const site = await webSite({ clock: systemClock(() => now) });
  const keeper = await keeperAt(site);
  const page = await keeper.get("/desk/pins");
  now += 13 * 3_600_000;
  const answer = "Only the <later> ones.\nThe early ones have none.";
  const refused = await keeper.send(page, 'action="/desk/pin"', { question: "drains?", answer });
  expect(refused.status).toBe(403);
  expect(refused.text).toContain(
    "\ndrains?\nOnly the &lt;later&gt; ones.\nThe early ones have none.</textarea>",
  );
  const elsewhere = await keeper.post("/desk/pin", { answer }, { "sec-fetch-site": "cross-site" });
  expect(elsewhere.text).not.toContain("ones");
});

test("the same button pressed again later does the same again: two invitations, and two dismissals", async () => {
  const site = await webSite();
  const ada = await keeperAt(site);
  const member = await keeperAt(site, { ...owner, person: "discord:5", standing: "contributor" });
  const invite = async () => {
    const page = await ada.send(await ada.get("/desk/people"), "invite a keeper", {
      words: "invite a keeper",
    });
    return /redeem ([0-9a-f]{20})/u.exec(page.text)?.[1] ?? "none";
  };
  for (const code of [await invite(), await invite()]) {
    await member.send(await member.get("/"), 'id="say"', { text: `redeem ${code}` });
    expect((await member.get("/desk")).status).toBe(200);
    await ada.send(await ada.get("/desk/people"), "dismiss discord:5", { words: "dismiss discord:5" });
    expect((await member.get("/desk")).status).toBe(403);
  }
});

test("a form of the desk without its token, or from elsewhere, does nothing", async () => {
  const site = await webSite();
  const keeper = await keeperAt(site);
  const page = await keeper.get("/desk/people");
  const token = /action="\/desk\/said"[\s\S]*?name="token" value="([^"]+)"/u.exec(page.text)?.[1] ?? "";
  const words = "invite a keeper";
  expect((await keeper.post("/desk/said", { words })).status).toBe(403);
  expect((await keeper.post("/desk/said", { words, token }, { "sec-fetch-site": "cross-site" })).status).toBe(
    403,
  );
  const stranger = readerAt(site.address);
  expect((await stranger.post("/desk/said", { words, token })).status).toBe(403);
  expect(await site.store.ids("keepers")).toEqual([]);
});

test("a case goes to the keepers, is answered at the desk, and its asker reads the answer", async () => {
  const site = await webSite({ noticesEveryMilliseconds: 20 });
  const asker = readerAt(site.address);
  const answer = await asked(asker);
  await asker.send(answer, 'id="say"', { text: "ask a keeper" });
  const keeper = await keeperAt(site);
  const desk = await keeper.get("/desk");
  expect(desk.text).toContain("Notes of the case");
  expect(desk.text).toContain("rough, fibres showing");
  const told = await keeper.send(desk, 'id="answer-', { reason: "A first one <b>with</b> drains." });
  expect(told.status).toBe(200);
  await expect
    .poll(async () => (await asker.get("/")).text, { timeout: 10_000 })
    .toContain("A first one &lt;b&gt;with&lt;/b&gt; drains.");
  expect((await keeper.get("/desk")).text).toContain("No case waits.");
});

test("a question that waits keeps its buttons when a keeper's words come in between", async () => {
  const site = await webSite({ noticesEveryMilliseconds: 20 });
  const asker = readerAt(site.address);
  const answer = await asked(asker);
  const label = /<button type="submit" name="state" value="([^"]+)">(?:<img[^>]*>)?<span>([^<]+)/u.exec(
    answer.text,
  );
  const [, state = "", words = ""] = label ?? [];
  await asker.send(answer, 'id="say"', { text: "ask a keeper" });
  await asker.send(answer, 'id="say"', { text: "which rear spoiler is this?" });
  const keeper = await keeperAt(site);
  await keeper.send(await keeper.get("/desk"), 'id="back-', { reason: "Which side?" });
  const there = async () => (await asker.get("/")).text;
  await expect.poll(there, { timeout: 10_000 }).toContain("Which side?");
  const page = await asker.get("/");
  expect(page.text).toMatch(/<button type="submit" name="words" value="reply [\w-]{9}: …">reply<\/button>/u);
  const pressed = await asker.send(page, 'class="answers"', { state });
  expect(pressed.text).toContain(`<p>${words}</p>`);
});

test("a pin made at the desk stands on the handbook's page, is disputed nowhere it holds, and is withdrawn with a reason", async () => {
  const site = await webSite();
  const keeper = await keeperAt(site);
  const draft = await keeper.send(await keeper.get("/desk/pins"), 'action="/desk/pin"', {
    question: "does the rear spoiler have drains?",
    answer: "Only the later first spoilers <i>do</i>.",
  });
  expect(draft.text).toContain("This would be pinned:");
  const kept = await keeper.send(draft, "keep it", pressed(draft.text, "keep it"));
  const id = /Pinned as ([\w-]{9})/u.exec(kept.text)?.[1] ?? "";
  expect(id).not.toBe("");
  const pins = await keeper.get("/desk/pins");
  expect(pins.text).toContain("Only the later first spoilers &lt;i&gt;do&lt;/i&gt;.");
  const gone = await keeper.send(pins, `id="withdraw-${id}"`, { reason: "measured again" });
  expect(gone.text).toContain(`Pinned answer ${id} is withdrawn.`);
  expect((await keeper.get("/desk/audit")).text).toContain("measured again");
});

/** The field that a button of this label sends. */
function pressed(text: string, label: string): Readonly<Record<string, string>> {
  const buttons = [
    ...text.matchAll(/<button type="submit" name="(\w+)" value="([^"]*)">(?:<span>)?([^<]*)/gu),
  ];
  const [, name = "", value = ""] = buttons.find(([, , , shown]) => shown === label) ?? [];
  return { [name]: value };
}

test("pages of the desk are valid for nobody else's cache", async () => {
  const site = await webSite();
  const keeper = await keeperAt(site);
  for (const path of ["", "/observations", "/pins", "/board", "/audit", "/people", "/export"]) {
    const { status, headers } = await keeper.get(`/desk${path}`);
    expect([path, status, headers.get("cache-control")]).toEqual([path, 200, "no-store"]);
  }
});

/** Records what a visitor saw, by words and buttons as the bot asks for them, and gives what the page says last. */
async function observed(reader: Reader, told: string, grade: string): Promise<string> {
  let seen = await reader.get("/");
  for (const text of [told, "record an observation"]) seen = await reader.send(seen, 'id="say"', { text });
  for (let step = 0; step < 8 && !/Recorded as/u.test(seen.text); step += 1) {
    const answers = ["Second-type mirror", grade, "not sure", "none", "no", "record it", "cannot tell"];
    const label = answers.find(
      (one) => pressed(seen.text, one)[""] === undefined && seen.text.includes(`>${one}<`),
    );
    if (label === undefined) break;
    seen = await reader.send(seen, 'class="answers"', pressed(seen.text, label));
  }
  return seen.text;
}

test("what members saw waits at the desk with what it would change, and once accepted the numbers are those", async () => {
  const site = await webSite();
  const reader = readerAt(site.address);
  const told =
    "door mirror, moulded housing, three screws, rounded groove, on a home market shrike s built october 1981";
  for (let count = 0; count < 6; count += 1) {
    expect(await observed(readerAt(site.address), told, "one owner from new")).toContain("Recorded as");
  }
  const asBuilt = async () => {
    const other = readerAt(site.address);
    const text = "what door mirror should my car have? shrike s, home market, built october 1981";
    const { text: page } = await other.send(await other.get("/"), 'id="say"', { text });
    return /Second-type mirror[^%]*?\((\d+) %\)/u.exec(page)?.[1];
  };
  const before = await asBuilt();
  const keeper = await keeperAt(site);
  for (let count = 0; count < 6; count += 1) {
    const desk = await keeper.get("/desk/observations");
    expect(desk.text).toContain("moulded plastic");
    expect(desk.text).toContain("If it is accepted");
    const id = /Observation ([\w-]{9})/u.exec(desk.text)?.[1] ?? "";
    if (count === 5)
      expect(desk.text).toMatch(
        /built with the Second-type mirror<\/th><td[^>]*>[\d.]+ %<\/td><td[^>]*>[\d.]+ %<\/td>/u,
      );
    await keeper.send(desk, `accept observation ${id}`, { words: `accept observation ${id}` });
  }
  expect((await keeper.get("/desk/observations")).text).toContain("No observation waits.");
  const after = await asBuilt();
  expect(before).toBeDefined();
  expect(Number(after)).toBeGreaterThan(Number(before));
  const part = await reader.get("/handbook/wexcombe-shrike/door-mirror");
  expect(part.text).toContain("seen on 6 cars");
  const csv = await keeper.get("/desk/export/sightings/wexcombe-shrike/door-mirror.csv");
  expect(parseSightings(csv.text)).toMatchObject({ ok: true, value: { length: 6 } });
  const json = await keeper.get("/desk/export/observations.json");
  expect(JSON.parse(json.text)).toHaveLength(6);
  expect(json.text).not.toContain("visitor");
  expect((await reader.get("/desk/export/observations.json")).path).toBe("/sign-in");
  expect(part.text).toMatch(/gave way to Second-type mirror between .*\(nine in ten; 6 cars seen\)/u);
});

test("a keeper who asks in a chat gets a link for their eyes only, and a member does not", async () => {
  const site = await webSite();
  const ada = await keeperAt(site);
  const said = await ada.send(await ada.get("/"), 'id="say"', { text: "sign in" });
  const path = /href="(\/sign-in\/home\/[0-9a-f]{64})"/u.exec(said.text)?.[1] ?? "none";
  const elsewhere = readerAt(site.address);
  expect((await elsewhere.send(await elsewhere.get(path), "/sign-in/", {})).path).toBe("/desk");
  const member = readerAt(site.address);
  const refused = await member.send(await member.get("/"), 'id="say"', { text: "sign in" });
  expect(refused.text).toContain("That is for a keeper to do.");
  expect(refused.text).not.toContain("/sign-in/home/");
});
