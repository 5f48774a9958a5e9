/**
 * A photograph as it is kept: made anew from its pixels alone, so that nothing else of the file can come along: no place, no owner of the
 * camera, no preview from before the crop, no second file behind the first. Taking known metadata out was not taken: the list is never whole.
 */
import type { Metadata, Sharp, SharpOptions } from "sharp";
import type { PhotographRefusal } from "../../bot/index.ts";
import { type Format, formatOf } from "./format-of.ts";

const MOST_BYTES = 20_000_000;
/** About 200 MB while they are decoded; telephones of 2026 hand out 12 to 50 million. */
const MOST_PIXELS = 64_000_000;
const FEWEST_PIXELS_ALONG_AN_EDGE = 32;
const LONG_EDGE = 1600;
/** Casting marks stay readable, at about 0.3 MB. Common practice, no source. */
const QUALITY = 80;
const LONGEST_SECONDS = 20;
const SAFELY: SharpOptions = { autoOrient: true, failOn: "error", limitInputPixels: MOST_PIXELS };

export type Developed =
  | { readonly ok: true; readonly jpeg: Uint8Array }
  | { readonly ok: false; readonly refusal: PhotographRefusal };

const refusalOfFormat: Readonly<Partial<Record<Format, PhotographRefusal>>> = {
  heic: "telephone-format",
  gif: "moving",
  other: "no-photograph",
};

/** The photograph upright, at most 1600 pixels long, as JPEG without metadata; or why not. The same bytes give the same bytes. */
export async function developed(bytes: Uint8Array): Promise<Developed> {
  if (bytes.length === 0) return refused("empty");
  if (bytes.length > MOST_BYTES) return refused("too-many-bytes");
  const refusal = refusalOfFormat[formatOf(bytes)];
  if (refusal !== undefined) return refused(refusal);
  // Loaded with the first photograph: it takes a tenth of a second, which no start needs.
  const { default: sharp } = await import("sharp");
  try {
    const unfit = unfitness(await sharp(bytes, { limitInputPixels: false }).metadata());
    if (unfit !== undefined) return refused(unfit);
    return { ok: true, jpeg: await print(sharp(bytes, SAFELY)) };
  } catch (failure) {
    // The library says of every unsound file that it is an error, in words about its own inside.
    if (failure instanceof Error) return refused("damaged");
    throw failure;
  }
}

/** What the head of the file says; nothing is decoded yet. */
function unfitness({ width, height, pages = 1 }: Metadata): PhotographRefusal | undefined {
  if (pages > 1) return "moving";
  if (width * height > MOST_PIXELS) return "too-many-pixels";
  return Math.min(width, height) < FEWEST_PIXELS_ALONG_AN_EDGE ? "too-few-pixels" : undefined;
}

async function print(photograph: Sharp): Promise<Uint8Array> {
  return photograph
    .timeout({ seconds: LONGEST_SECONDS })
    .resize({ width: LONG_EDGE, height: LONG_EDGE, fit: "inside", withoutEnlargement: true })
    .flatten({ background: "#ffffff" })
    .toColourspace("srgb")
    .jpeg({ quality: QUALITY })
    .toBuffer();
}

function refused(refusal: PhotographRefusal): Developed {
  return { ok: false, refusal };
}
