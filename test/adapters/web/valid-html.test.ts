import { HtmlValidate } from "html-validate";
import { expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { makeSignInPath } from "../../../adapters/web/sign-in-links.ts";
import { keepSeen, seenCar, seenPanels, seenSpoilers } from "../../support/seen-cars.ts";
import { formsIn, hiddenIn, readerAt, type Seen, webSite } from "./web-site.ts";

// The rules of the HTML standard and of its accessibility; those of taste about how markup is laid out are off.
const validator = new HtmlValidate({
  extends: ["html-validate:standard", "html-validate:a11y"],
  rules: { "long-title": "off", "no-trailing-whitespace": "off" },
});

function faultsOf({ text }: Seen): readonly string[] {
  const report = validator.validateString(text);
  return report.results.flatMap(({ messages }) =>
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  );
}

test("every page is valid HTML", async () => {
  const { address } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/");
  const asked = await reader.send(home, 'id="say"', { text: "which rear spoiler is this? rough inside" });
  const why = await reader.send(asked, "why this?", { words: "why this?" });
  const compared = await reader.send(why, 'id="say"', { text: "compare first spoiler and second spoiler" });
  const sources = await reader.send(compared, 'id="say"', { text: "show the sources" });
  const pages: readonly Seen[] = [
    home,
    asked,
    why,
    compared,
    sources,
    await reader.send(sources, 'action="/share"', {}),
    await reader.get("/handbook"),
    await reader.get("/handbook?q=mirror"),
    ...(await Promise.all(
      ["door-mirror", "front-wing", "instrument-panel", "rear-spoiler", "road-wheel", "steering-wheel"].map(
        (part) => reader.get(`/handbook/wexcombe-shrike/${part}`),
      ),
    )),
    await reader.get("/doors"),
    await reader.get("/embed"),
    await reader.get("/nowhere"),
  ];
  expect(pages.flatMap(faultsIn)).toEqual([]);
});

function faultsIn(page: Seen): readonly string[] {
  return faultsOf(page).map((fault) => `${page.path} ${page.status} ${fault}`);
}

test("a car sheet, the way in for keepers and every page of their desk are valid HTML", async () => {
  const { address, store } = await webSite();
  const member = readerAt(address);
  let seen = await member.get("/");
  for (const text of [
    "rear spoiler, rough inside, home market car built june 1980",
    "pin this: they <b>all</b> had it",
    "record what I saw",
    "what I told decides",
    "one owner",
    "today",
    "none",
    "yes",
    "record it",
    "ask a keeper",
    "share car sheet",
  ])
    seen = await member.send(seen, 'id="say"', { text });
  const sheet = /href="(\/sheet\/home\/[0-9a-f]{32})"/u.exec(seen.text)?.[1] ?? "no sheet";
  const keeper = readerAt(address);
  const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;
  const wayIn = await keeper.get(await makeSignInPath(store, systemClock(), owner));
  const desk = await keeper.send(wayIn, "/sign-in/", {});
  const pages = [await member.get(sheet), await member.get("/sign-in"), wayIn, desk];
  for (const place of ["observations", "pins", "board", "audit", "people", "export"])
    pages.push(await keeper.get(`/desk/${place}`));
  expect(pages.map(({ path, status }) => [path, status])).toEqual(pages.map(({ path }) => [path, 200]));
  expect(pages[4]?.text).toContain("rear spoiler");
  expect(pages.flatMap(faultsIn)).toEqual([]);
});

test("so are the pages that refuse something and give back what was written, and the ask box with a page in it", async () => {
  const { address, store } = await webSite();
  const reader = readerAt(address);
  const home = await reader.get("/?text=which%20%3Cdoor%3E%20mirror");
  const stranger = readerAt(address);
  const stale = await stranger.post("/said", { text: "a <b>mirror</b>\n& more", token: "none" });
  const body = new FormData();
  body.set("token", hiddenIn(formsIn(home.text)[0] ?? "").token ?? "");
  body.set("text", "a <b>mirror</b>");
  body.append("photographs", new File(["no photograph"], "a.jpg"));
  const cookie = [...reader.cookies].map(([name, value]) => `${name}=${value}`).join("; ");
  const answer = await fetch(`${address}/said`, { method: "POST", body, headers: { cookie } });
  const refused = {
    status: answer.status,
    path: "/said",
    text: await answer.text(),
    headers: answer.headers,
  };
  let box = await reader.get("/embed");
  for (const text of ["which door mirror is this?", "share this answer"])
    box = await reader.send(box, 'id="say"', { text });
  const owner = { person: "console:owner", community: "home", standing: "owner", name: "Ada" } as const;
  const wayIn = await stranger.get(await makeSignInPath(store, systemClock(), owner));
  const desk = await stranger.send(wayIn, "/sign-in/", {});
  const done = await stranger.send(desk, 'id="words"', { words: "pin this: they <b>all</b> had it" });
  const pages = [home, stale, refused, box, done];
  expect(pages.map(({ status }) => status)).toEqual([200, 403, 422, 200, 200]);
  expect(done.text).toContain('id="lately"');
  expect(pages.flatMap(faultsIn)).toEqual([]);
});

test("so are the pages of parts that members have seen, with drawings of their changes", async () => {
  const { address, store } = await webSite();
  await keepSeen(
    store,
    [...seenSpoilers, ...seenPanels].map((car, number) => seenCar(number, car)),
  );
  const reader = readerAt(address);
  for (const part of ["rear-spoiler", "instrument-panel"]) {
    const page = await reader.get(`/handbook/wexcombe-shrike/${part}`);
    expect(page.text).toContain('<figure class="picture">');
    expect(faultsOf(page)).toEqual([]);
  }
});
