/**
 * SVG into PNG, for the places that show no SVG. With the letters of one typeface that is installed with the program: the system's own would
 * give other bytes on another machine, and none at all in a bare container. Drawn on a thread of its own, and what was drawn lately is kept.
 */
import { createHash } from "node:crypto";
import { fileURLToPath } from "node:url";
import { Resvg, type ResvgRenderOptions, renderAsync } from "@resvg/resvg-js";
import { OutsideError } from "../errors.ts";
import { drawingWeight } from "./drawing-weight.ts";

/** Pixels for one unit of the drawing: a chart of 320 units fills a phone and its letters stay sharp. */
const PIXELS_PER_UNIT = 2;
const NARROWEST = 16;
const WIDEST = 4096;
/** 32 MB while it is drawn; a page of A4 at 240 dots an inch has about as many. */
const MOST_PIXELS = 8_000_000;
const MOST_CHARACTERS = 500_000;
const MOST_SHAPES = 20_000;
const MOST_KEPT = 64;

const FAMILY = "DejaVu Sans";
const letters: NonNullable<ResvgRenderOptions["font"]> = {
  loadSystemFonts: false,
  fontFiles: ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"].map((file) =>
    fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${file}`)),
  ),
  defaultFontFamily: FAMILY,
  sansSerifFamily: FAMILY,
  serifFamily: FAMILY,
  monospaceFamily: FAMILY,
  cursiveFamily: FAMILY,
  fantasyFamily: FAMILY,
};

/** The one drawn or asked for last stands last. */
const kept = new Map<string, Promise<Uint8Array>>();
/** Settled once nothing is being drawn: one at a time, so that a slow drawing never holds all of the program's threads. */
let isFree: Promise<unknown> = Promise.resolve();

/**
 * The PNG of a drawing, on white, `width` pixels wide (16 to 4096; left out: two pixels a unit). The same drawing gives the same bytes,
 * which are shared: they are to be read only. Rejects with OutsideError for what is no drawing or too large.
 */
export async function pngOf(svg: string, options: { readonly width?: number } = {}): Promise<Uint8Array> {
  const key = createHash("sha256")
    .update(`${options.width ?? ""}:`)
    .update(svg)
    .digest("base64");
  const before = kept.get(key);
  kept.delete(key);
  const png = before ?? drawn(svg, options.width);
  kept.set(key, png);
  const [oldest] = kept.keys();
  if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
  try {
    return await png;
  } catch (failure) {
    kept.delete(key);
    throw failure;
  }
}

async function drawn(svg: string, asked: number | undefined): Promise<Uint8Array> {
  if (svg.length > MOST_CHARACTERS || drawingWeight(svg) > MOST_SHAPES) throw tooLarge();
  const size = sizeOf(svg);
  const width = Math.round(asked ?? size.width * PIXELS_PER_UNIT);
  if (!(width >= NARROWEST && width <= WIDEST)) throw tooLarge();
  if (width * Math.ceil((width * size.height) / size.width) > MOST_PIXELS) throw tooLarge();
  const before = isFree;
  const image = before.then(() => renderAsync(svg, optionsFor(width)));
  isFree = image.catch(() => undefined);
  return (await image).asPng();
}

function optionsFor(width: number): ResvgRenderOptions {
  return { font: letters, background: "#ffffff", fitTo: { mode: "width", value: width }, logLevel: "off" };
}

/** In units, as the library that draws reads it: without letters that takes a millisecond. */
function sizeOf(svg: string): { readonly width: number; readonly height: number } {
  try {
    const { width, height } = new Resvg(svg, { font: { loadSystemFonts: false }, logLevel: "off" });
    return { width, height };
  } catch (failure) {
    throw new OutsideError("picture: it is no drawing that can be read", failure);
  }
}

function tooLarge(): OutsideError {
  return new OutsideError("picture: it is too large to be drawn, or too small to be seen");
}
