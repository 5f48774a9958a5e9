import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { demonstrationHandbook } from "../../../adapters/configuration.ts";
import { OutsideError } from "../../../adapters/errors.ts";
import { pngOf } from "../../../adapters/pictures/png.ts";
import { type Timeline, timeline } from "../../../adapters/pictures/timeline.ts";
import { greyPixelsOf, inkOf } from "../../support/pixels.ts";

const JANUARY_1980 = 12 * 1980;
const change: Timeline = {
  title: "The change",
  description: "described",
  heading: ["First to second, 1981"],
  old: ["first type"],
  new: ["second type"],
  span: { from: JANUARY_1980, to: JANUARY_1980 + 36 },
  marks: [
    { side: "old", built: month(8), grade: "documented-from-new", isSuspect: false, words: "seen" },
    { side: "new", built: month(26), grade: "one-owner", isSuspect: true, words: "seen" },
  ],
  band: { from: JANUARY_1980 + 14, to: JANUARY_1980 + 20 },
  legend: [{ sign: "band", words: "90 %" }],
};

function month(from: number) {
  return { from: JANUARY_1980 + from, to: JANUARY_1980 + from + 1 };
}

function picture(inside: string, size = 'viewBox="0 0 320 200"'): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" ${size}>${inside}</svg>`;
}

/** Fresh bytes: what was drawn lately is kept, and a comment makes it another drawing. */
function again(svg: string): string {
  return svg.replace("</svg>", "<!-- again --></svg>");
}

test("a chart has letters: without its texts the picture has less ink and fewer bytes", async () => {
  const svg = timeline(change);
  const [whole, silent] = await Promise.all([pngOf(svg), pngOf(svg.replaceAll(/<text.*?<\/text>/gu, ""))]);
  expect(whole.length).toBeGreaterThan(silent.length);
  const difference = inkOf(await greyPixelsOf(whole)) - inkOf(await greyPixelsOf(silent));
  expect(difference).toBeGreaterThan(1000);
});

test("letters outside English are drawn, each differently", async () => {
  const ink = await Promise.all(
    [..."ŽřőΩж½"].map(async (letter) =>
      inkOf(await greyPixelsOf(await pngOf(picture(`<text x="9" y="99" font-size="90">${letter}</text>`)))),
    ),
  );
  expect(Math.min(...ink)).toBeGreaterThan(1000);
  expect(new Set(ink).size).toBe(ink.length);
});

// The library ends the process, and all that it serves, when a character of its complaint is a zero.
test.each(["\0", "\u0001", "\u009f", "\ufffe", "\ud800"])(
  "a drawing with a character that no XML holds is refused before it is read: %j",
  async (character) => {
    for (const inside of [`<text>${character}</text>`, `<rect width="4" ${character}/>`]) {
      await expect(pngOf(picture(inside))).rejects.toThrow(OutsideError);
    }
  },
);

test("a drawing is two pixels a unit, or as wide as asked for", async () => {
  const svg = picture('<circle r="50"/>');
  const [usual, asked] = await Promise.all([pngOf(svg), pngOf(svg, { width: 1000 })]);
  expect(await greyPixelsOf(usual)).toMatchObject({ width: 640, height: 400 });
  expect(await greyPixelsOf(asked)).toMatchObject({ width: 1000, height: 625 });
});

test("the same drawing gives the same bytes, drawn anew or kept", async () => {
  const svg = timeline(change);
  const [first, kept, anew] = await Promise.all([pngOf(svg), pngOf(svg), pngOf(again(svg))]);
  expect(kept).toBe(first);
  expect(anew).not.toBe(first);
  expect(Buffer.compare(anew, first)).toBe(0);
});

test("the ground is white and the ink nearly black, whatever a screen at night would show", async () => {
  const { grey } = await greyPixelsOf(await pngOf(timeline(change)));
  const light = grey.filter((brightness) => brightness > 240).length;
  expect(light / grey.length).toBeGreaterThan(0.75);
  expect(grey.reduce((darkest, brightness) => Math.min(darkest, brightness), 255)).toBeLessThan(40);
  const [corner] = (await greyPixelsOf(await pngOf(picture('<circle cx="160" cy="100" r="5"/>')))).grey;
  expect(corner).toBe(255);
});

test("a timeline printed in black and white tells the hatched interval from the empty ground", async () => {
  const [hatched, empty] = await Promise.all([
    pngOf(timeline(change)),
    pngOf(timeline({ ...change, band: { from: JANUARY_1980 + 14, to: JANUARY_1980 + 14.1 } })),
  ]);
  const extra = inkOf(await greyPixelsOf(hatched)) - inkOf(await greyPixelsOf(empty));
  expect(extra).toBeGreaterThan(400);
});

test("every drawing of the demonstration handbook becomes a picture with ink on it", async () => {
  const folder = `${demonstrationHandbook}/drawings`;
  const files = readdirSync(folder);
  expect(files.length).toBeGreaterThan(100);
  for (const file of files) {
    const pixels = await greyPixelsOf(await pngOf(readFileSync(`${folder}/${file}`, "utf8")));
    expect(pixels.width, file).toBe(640);
    expect(inkOf(pixels), file).toBeGreaterThan(500);
    expect(inkOf(pixels) / pixels.grey.length, file).toBeLessThan(0.4);
  }
});

const doubling = Array.from({ length: 30 }, (_, at) => {
  const use = `<use href="#g${at}"/>`;
  return `<g id="g${at + 1}">${use}${use}</g>`;
}).join("");

test.each([
  ["text", "this is no drawing"],
  ["nothing", ""],
  ["a tag that is never closed", '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200"><g>'],
  ["a ribbon of a million rows", picture('<circle r="5"/>', 'width="1mm" height="100in"')],
  ["a wall", picture('<circle r="5"/>', 'viewBox="0 0 90000 90000"')],
  [
    "a group that doubles thirty times",
    picture(`<defs><g id="g0"><circle r="1"/></g>${doubling}</defs><use href="#g30"/>`),
  ],
  ["a group that uses itself", picture('<g id="a"><circle r="9"/><use href="#a"/></g>')],
  ["two groups that use each other", picture('<g id="a"><use href="#b"/></g><g id="b"><use href="#a"/></g>')],
  ["a file of the disk", picture('<image href="/etc/hostname" width="9" height="9"/>')],
  ["a script", picture("<script>1</script>")],
  ["a document type", `<!DOCTYPE svg [<!ENTITY a "aa">]>${picture("&a;")}`],
  ["a text without end", picture(`<text>${"w".repeat(100_000)}</text>`)],
  ["an outline without end", picture(`<path d="${"M0 0C1 2 300 300 9 9".repeat(200_000)}"/>`)],
  ["a reference in disguise", picture('<use href="&#x23;a"/><g id="a"/>')],
])("%s is refused in one line", async (_, svg) => {
  const failure = await pngOf(svg).catch((error: unknown) => error);
  expect(failure).toBeInstanceOf(OutsideError);
  expect((failure as OutsideError).message).toMatch(/^picture: [^\n]+[^.\n]$/u);
});

test("tiles are counted each time they are used", async () => {
  const tiled = (times: number) =>
    picture(
      `<defs><pattern id="p" width="9" height="9" patternUnits="userSpaceOnUse"><path d="M0 0L9 9" stroke="#000"/></pattern></defs>${'<rect width="320" height="200" fill="url(#p)"/>'.repeat(times)}`,
    );
  expect(inkOf(await greyPixelsOf(await pngOf(tiled(3))))).toBeGreaterThan(5000);
  await expect(pngOf(tiled(30))).rejects.toThrow(/too large/u);
});

test("drawing leaves the program free: other work goes on meanwhile", async () => {
  const marks = Array.from({ length: 500 }, (_, at) => `<text x="${at % 300}" y="${at % 200}">mark</text>`);
  let isDrawn = false;
  let turns = 0;
  const drawing = pngOf(picture(marks.join(""))).then(() => {
    isDrawn = true;
  });
  while (!isDrawn) {
    await new Promise((resolve) => setImmediate(resolve));
    turns += 1;
  }
  await drawing;
  expect(turns).toBeGreaterThan(20);
});
