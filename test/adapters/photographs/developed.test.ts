import sharp, { type Sharp } from "sharp";
import { expect, test } from "vitest";
import { developed } from "../../../adapters/photographs/developed.ts";
import {
  place,
  placeBytes,
  scene,
  whitePng,
  withEverything,
  withHiddenPlaces,
} from "../../support/photographs.ts";

async function print(bytes: Uint8Array): Promise<Buffer> {
  const result = await developed(bytes);
  if (!result.ok) throw new Error(result.refusal);
  return Buffer.from(result.jpeg);
}

/** Red, green and blue in the middle of the left and of the right half. */
async function halves(jpeg: Uint8Array): Promise<readonly (readonly number[])[]> {
  const { data, info } = await sharp(jpeg).raw().toBuffer({ resolveWithObject: true });
  const row = Math.floor(info.height / 2) * info.width;
  return [0.25, 0.75].map((across) => {
    const at = (row + Math.floor(info.width * across)) * info.channels;
    return [...data.subarray(at, at + 3)];
  });
}

const encodings = {
  jpeg: () => withEverything(scene()).jpeg().toBuffer(),
  png: () => withEverything(scene()).png().toBuffer(),
  webp: () => withEverything(scene()).webp().toBuffer(),
  avif: () => withEverything(scene()).avif({ effort: 0 }).toBuffer(),
} as const;

test.each(Object.entries(encodings))("nothing of a %s is kept but its pixels", async (_, encoded) => {
  const bytes = await encoded();
  const before = await sharp(bytes).metadata();
  expect([before.exif?.includes(placeBytes), before.exif?.includes(place.owner)]).toEqual([true, true]);
  expect(before.xmpAsString).toContain(place.inWords);
  const jpeg = await print(bytes);
  for (const trace of [
    "Exif",
    "adobe",
    "xmp",
    "XMP",
    "ICC_PROFILE",
    "Photoshop",
    "WGS-84",
    place.owner,
    place.inWords,
  ]) {
    expect(jpeg.includes(trace), trace).toBe(false);
  }
  expect(jpeg.includes(placeBytes)).toBe(false);
  const after = await sharp(jpeg).metadata();
  expect(after).toMatchObject({ format: "jpeg", width: 600, height: 400 });
  expect([after.exif, after.icc, after.iptc, after.xmp, after.orientation]).toEqual(Array(5).fill(undefined));
});

test("a comment, a newspaper's block and what hangs behind the end of a JPEG go too", async () => {
  const bytes = withHiddenPlaces(await encodings.jpeg());
  expect(Buffer.from(bytes).toString("latin1").split(place.owner)).toHaveLength(5);
  expect((await print(bytes)).includes(place.owner)).toBe(false);
});

test("only the segments a JPEG needs are left", async () => {
  const jpeg = await print(withHiddenPlaces(await encodings.jpeg()));
  const markers: number[] = [];
  for (let at = 2; jpeg[at] === 0xff && jpeg[at + 1] !== 0xda; at += 2 + jpeg.readUInt16BE(at + 2)) {
    markers.push(jpeg[at + 1] ?? 0);
  }
  // ITU-T T.81, table B.1: JFIF's APP0, tables of quantisation (DB) and Huffman codes (C4), the frame (C0 or C2).
  expect(markers.length).toBeGreaterThan(3);
  for (const marker of markers) expect([0xe0, 0xdb, 0xc4, 0xc0, 0xc2]).toContain(marker);
});

/** How the sensor saw it, for orientations 1 to 8: the inverse of what each asks a viewer to do. */
const sensorImages: readonly ((upright: Sharp) => Promise<Uint8Array>)[] = [
  (upright) => upright.png().toBuffer(),
  (upright) => upright.flop().png().toBuffer(),
  (upright) => upright.rotate(180).png().toBuffer(),
  (upright) => upright.flip().png().toBuffer(),
  async (upright) =>
    sharp(await upright.rotate(270).png().toBuffer())
      .flip()
      .png()
      .toBuffer(),
  (upright) => upright.rotate(270).png().toBuffer(),
  async (upright) =>
    sharp(await upright.rotate(90).png().toBuffer())
      .flip()
      .png()
      .toBuffer(),
  (upright) => upright.rotate(90).png().toBuffer(),
];

// Exif 2.32, section 4.6.4, tag 274: which way the camera was held.
test.each([1, 2, 3, 4, 5, 6, 7, 8])(
  "a photograph with orientation %i stands upright",
  async (orientation) => {
    const seen = await sensorImages[orientation - 1]?.(sharp(await scene().png().toBuffer()));
    const jpeg = await print(await withEverything(sharp(seen), orientation).jpeg().toBuffer());
    expect(await sharp(jpeg).metadata()).toMatchObject({ width: 600, height: 400 });
    const [left = [], right = []] = await halves(jpeg);
    expect(left[0]).toBeGreaterThan(150);
    expect(left[2]).toBeLessThan(80);
    expect(right[0]).toBeLessThan(80);
    expect(right[2]).toBeGreaterThan(150);
  },
);

test("a large photograph becomes 1600 pixels long, a small one stays as it is", async () => {
  expect(await sharp(await print(await scene(4000, 3000).jpeg().toBuffer())).metadata()).toMatchObject({
    width: 1600,
    height: 1200,
  });
  expect(await sharp(await print(await scene(90, 120).jpeg().toBuffer())).metadata()).toMatchObject({
    width: 90,
    height: 120,
  });
});

test("what can be seen through becomes white", async () => {
  const glass = { width: 60, height: 60, channels: 4 as const, background: { r: 0, g: 0, b: 0, alpha: 0 } };
  const [left = []] = await halves(await print(await sharp({ create: glass }).png().toBuffer()));
  expect(Math.min(...left)).toBeGreaterThan(250);
});

test("the same photograph gives the same bytes", async () => {
  const bytes = await encodings.jpeg();
  expect((await print(bytes)).equals(await print(bytes))).toBe(true);
});

async function moving(format: "gif" | "webp"): Promise<Uint8Array> {
  const frames = await Promise.all(
    ["#f00", "#00f"].map((background) =>
      sharp({ create: { width: 64, height: 64, channels: 3, background } })
        .png()
        .toBuffer(),
    ),
  );
  return sharp(frames, { join: { animated: true } })
    [format]()
    .toBuffer();
}

const text = (words: string) => async () => Buffer.from(words);

/** Small as a file: 67 million pixels of white. */
async function bomb(): Promise<Uint8Array> {
  const bytes = await whitePng(8200);
  expect(bytes.length).toBeLessThan(250_000);
  return bytes;
}

const unfit: readonly (readonly [string, string, () => Promise<Uint8Array>])[] = [
  ["nothing", "empty", text("")],
  ["text", "no-photograph", text("this is my mirror, honest")],
  ["a drawing", "no-photograph", text('<svg xmlns="http://www.w3.org/2000/svg" width="99" height="99"/>')],
  ["a document", "no-photograph", text("%PDF-1.7\n%âãÏÓ\n")],
  ["a TIFF", "no-photograph", () => scene().tiff().toBuffer()],
  ["a moving GIF", "moving", () => moving("gif")],
  ["a moving WebP", "moving", () => moving("webp")],
  ["a telephone's HEIC", "telephone-format", text("\0\0\0\x18ftypheic\0\0\0\0mif1heic")],
  ["21 MB", "too-many-bytes", async () => new Uint8Array(21_000_000).fill(0xff)],
  ["a small PNG that unpacks to 67 million pixels", "too-many-pixels", bomb],
  ["a dot", "too-few-pixels", async () => whitePng(8)],
  ["the start of a JPEG alone", "damaged", async () => Buffer.from([0xff, 0xd8, 0xff, 0xe0])],
  [
    "a JPEG that calls itself a PNG",
    "damaged",
    async () => Buffer.from("\x89PNG\r\n\x1a\n\xff\xd8\xff", "latin1"),
  ],
];

test.each(unfit)("%s is refused: %s", async (_, refusal, bytes) => {
  expect(await developed(await bytes())).toEqual({ ok: false, refusal });
});

test.each(Object.entries(encodings))("a %s that was cut off on the way is refused", async (_, encoded) => {
  const bytes = await encoded();
  for (const share of [0.2, 0.5, 0.9]) {
    const result = await developed(bytes.subarray(0, Math.floor(bytes.length * share)));
    expect(result, String(share)).toEqual({ ok: false, refusal: "damaged" });
  }
});
