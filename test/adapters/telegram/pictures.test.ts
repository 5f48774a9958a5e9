// Photographs in, drawings and files out: what a member sends is kept without what its camera wrote beside it.
import sharp from "sharp";
import { afterEach, beforeEach, expect, test } from "vitest";
import { systemClock } from "../../../adapters/clock.ts";
import { photographKeeper } from "../../../adapters/photographs/index.ts";
import { memoryStore } from "../../../adapters/store/memory.ts";
import { plainSummary } from "../../support/plain-summary.ts";
import { anna, botOn, type Club, group, openClub } from "./club.ts";

let club: Club;
const store = memoryStore();
const keeper = photographKeeper(store, systemClock());

beforeEach(async () => {
  club = await openClub({ photographs: keeper });
});

afterEach(async () => {
  await club.close();
  expect(club.double.violations).toEqual([]);
});

/** Of one grey, with the place it was taken at. */
function photograph(grey: number): Promise<Buffer> {
  const background = { r: grey, g: grey, b: grey };
  return sharp({ create: { width: 320, height: 240, channels: 3, background } })
    .jpeg()
    .withExif({ IFD0: { Artist: "Anna" }, IFD3: { GPSLatitude: "51/1 30/1 0/1", GPSLatitudeRef: "N" } })
    .toBuffer();
}

test("a photograph in private reaches the bot with its caption, and its place of taking is gone", async () => {
  const photo = await photograph(90);
  expect((await sharp(photo).metadata()).exif).toBeDefined();
  club.double.people.say(anna, anna, "the foot of my mirror", { photo });
  await club.settled();
  const [heard] = club.heard;
  expect(heard).toMatchObject({ text: "the foot of my mirror", photographs: [expect.any(String)] });
  const kept = await keeper.read(heard?.photographs?.[0] ?? "");
  expect((await sharp(kept?.bytes).metadata()).exif).toBeUndefined();
  expect(Buffer.from(kept?.bytes ?? []).includes("Anna")).toBe(false);
});

test("an album is one message, heard in its place in the row, wherever its words stand", async () => {
  for (const grey of [10, 20, 30]) {
    club.double.people.say(anna, anna, grey === 20 ? "mirror foot, three sides" : "", {
      photo: await photograph(grey),
      album: "A",
    });
  }
  club.double.people.say(anna, anna, "and two screws");
  await club.settled();
  expect(club.heard.map(({ text, photographs = [] }) => [text, photographs.length])).toEqual([
    ["mirror foot, three sides", 3],
    ["and two screws", 0],
  ]);
});

test("in a group an album in answer to the bot is heard, and one among members is not", async () => {
  const { people } = club.double;
  people.say(group, anna, "@witness_mark_bot which door mirror is this?");
  await club.settled();
  const [asked] = club.written(group);
  for (const grey of [40, 50]) {
    const photo = await photograph(grey);
    people.say(group, anna, "", { photo, album: "B", replyTo: asked?.id ?? 0 });
    people.say(group, anna, "", { photo, album: "C" });
  }
  await club.settled();
  expect(club.heard.map(({ photographs = [] }) => photographs.length)).toEqual([0, 2]);
});

test("what is no photograph, is too large or cannot be fetched is answered in words, and nothing of it kept", async () => {
  const { people, world } = club.double;
  people.say(anna, anna, "", { photo: Buffer.from("not a picture at all") });
  await club.settled();
  people.say(anna, anna, "", { photo: Buffer.alloc(20 * 1024 * 1024 + 1) });
  await club.settled();
  people.say(anna, anna, "", { photo: await photograph(60) });
  world.files.clear();
  await club.settled();
  const [unread, large, gone] = club.written(anna).map(({ text }) => text);
  expect(unread).toMatch(/photograph|picture|file/u);
  expect(large).toContain("20 MB");
  expect(gone).toContain("Send it once more");
  expect(club.heard).toEqual([]);
});

test("a file that is cut on its way is fetched again", async () => {
  club.double.fail("file", { kind: "cut before" });
  club.double.people.say(anna, anna, "the foot of my mirror", { photo: await photograph(70) });
  await club.settled();
  expect(club.heard[0]?.photographs).toHaveLength(1);
});

test("a drawing comes as a photograph with its caption, above the words that go with it", async () => {
  const { people } = club.double;
  people.say(anna, anna, "which rear spoiler is this?");
  people.say(anna, anna, "how do I check?");
  await club.settled();
  const drawing = club.written(anna).find(({ photo }) => photo !== undefined);
  expect(drawing?.caption).toMatch(/^Drawing: \w/u);
  expect(await sharp(drawing?.photo?.bytes).metadata()).toMatchObject({ format: "png" });
  expect(club.written(anna).at(-1)?.text).toBeDefined();
});

test("several pictures are one album, a file is a document, a kept photograph is shown", async () => {
  const photo = await keeper.take(await photograph(80), `telegram:${anna}`);
  if (!photo.ok) throw new Error("not taken");
  const picture = (name: string) => ({
    kind: "picture" as const,
    path: null,
    svg: '<svg xmlns="http://www.w3.org/2000/svg" width="60" height="40"><rect width="60" height="40"/></svg>',
    alternative: `${name} <of> @karl_of_wexcombe`,
  });
  const showing = await openClub({
    photographs: keeper,
    bot: {
      ...botOn(memoryStore()),
      receive: async () => ({
        summary: plainSummary,
        blocks: [
          picture("first"),
          picture("second"),
          { kind: "photograph", photograph: photo.id, alternative: "seen on a car" },
          { kind: "photograph", photograph: "forgotten", alternative: "gone" },
          {
            kind: "file",
            name: "mine.json",
            mediaType: "application/json",
            text: "{}",
            alternative: "all of it",
          },
        ],
      }),
    },
  });
  showing.double.people.say(anna, anna, "show me");
  await showing.settled();
  const written = showing.written(anna);
  expect(written.map(({ caption, album }) => [caption?.split(" ")[0], album !== undefined])).toEqual([
    ["first", true],
    ["second", true],
    ["seen", true],
    ["all", false],
  ]);
  expect(written.at(-1)?.document).toMatchObject({ name: "mine.json" });
  await showing.close();
  expect(showing.double.violations).toEqual([]);
  expect(showing.double.rung).toEqual([]);
});
