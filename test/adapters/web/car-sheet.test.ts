import { extractText } from "unpdf";
import { expect, test } from "vitest";
import { type Reader, readerAt, type Seen, webSite } from "./web-site.ts";

async function say(reader: Reader, ...said: readonly string[]): Promise<Seen> {
  let seen = await reader.get("/");
  for (const text of said) seen = await reader.send(seen, 'id="say"', { text });
  return seen;
}

const told = [
  "my car: shrike S, home market, built june 1980. rear spoiler, rough inside, tips square",
  "the door mirror is cast alloy with a milled groove and two screws",
];

function linkIn({ text }: Seen): string {
  return /href="(\/sheet\/home\/[0-9a-f]{32})"/u.exec(text)?.[1] ?? "none";
}

test("a car sheet is private until its owner shares it, and then anybody with its link reads page and PDF", async () => {
  const { address } = await webSite();
  const owner = readerAt(address);
  expect(linkIn(await say(owner, ...told, "car sheet"))).toBe("none");
  const path = linkIn(await say(owner, "share car sheet"));
  const judge = readerAt(address);
  const { text, status } = await judge.get(path);
  expect(status).toBe(200);
  for (const words of [
    "June 1980",
    "rear spoiler",
    "door mirror",
    "cast alloy",
    "Not looked at yet",
    "edition",
  ]) {
    expect(text).toContain(words);
  }
  expect(text).toContain('<meta name="robots" content="noindex">');
  const file = await fetch(`${address}${path}/car-sheet.pdf`);
  expect(file.headers.get("content-type")).toBe("application/pdf");
  const { text: paper } = await extractText(new Uint8Array(await file.arrayBuffer()), { mergePages: true });
  for (const words of ["June 1980", "rough, fibres showing", "cast alloy", `${address}${path}`]) {
    expect(paper.replaceAll(/\s+/gu, " ")).toContain(words);
  }
});

test("a link that was taken back, guessed or changed leads nowhere", async () => {
  const { address } = await webSite();
  const owner = readerAt(address);
  const path = linkIn(await say(owner, ...told, "share car sheet"));
  const judge = readerAt(address);
  for (const other of [
    `/sheet/home/${"0".repeat(32)}`,
    path.replace("/home/", "/elsewhere/"),
    `${path.slice(0, -1)}${path.endsWith("0") ? "1" : "0"}`,
    path.replace("/home/", "/..%2fhome/"),
    `${path}/other.pdf`,
    "/sheet/home/",
  ]) {
    expect([other, (await judge.get(other)).status]).toEqual([other, 404]);
  }
  await say(owner, "stop sharing car sheet");
  expect((await judge.get(path)).status).toBe(404);
  expect((await judge.get(`${path}/car-sheet.pdf`)).status).toBe(404);
});

test("who has all of it erased leaves no word on the pages or in the store", async () => {
  const { address, store } = await webSite();
  const owner = readerAt(address);
  const seen = await say(owner, ...told, "which rear spoiler is this? it has a purple unicorn on it");
  const shared = await owner.send(seen, 'action="/share"', {});
  const sheet = linkIn(await say(owner, "share car sheet"));
  await say(owner, "erase mine", "erase all of it");
  expect((await owner.get("/")).text).not.toMatch(/purple unicorn|tips square/u);
  expect((await readerAt(address).get(shared.path)).status).toBe(404);
  expect((await readerAt(address).get(sheet)).status).toBe(404);
  for (const kind of ["conversation", "web-transcript", "shared-answer", "shared-sheet"]) {
    for (const id of await store.ids(kind)) {
      expect(JSON.stringify(await store.history(kind, id))).not.toMatch(
        /purple unicorn|tips square|rough inside/u,
      );
    }
  }
});
