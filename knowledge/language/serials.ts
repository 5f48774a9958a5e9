// Chassis numbers: found by the handbook's form, by the word before them, or as seventeen characters; masked at
// once in everything that is shown or kept. The build date they give is a bracket between documented cars.

import { parseDateText } from "../calendar/date-text.ts";
import type { Interval } from "../calendar/interval.ts";
import type { Cars } from "../handbook/schema.ts";
import { findVins, maskSerial, maskVins } from "../trade/vin.ts";

export interface SerialFound {
  readonly masked: string;
  readonly interval?: Interval;
  /** Of the whole number; absent when nobody gave a way to make one. */
  readonly digest?: string;
}

/** Makes of a number what tells it from others without giving it away. */
export type SerialDigest = (serial: string) => string;

export interface Masked {
  readonly text: string;
  readonly serials: readonly SerialFound[];
}

const mark = "\u2022";
const labelled =
  /\b(?:(?:chassis|serial|vin|frame|vehicle|car|plate|commission|body)(?: ?(?:plate|number|numbers|no\.?|nos?|nr\.?|#|id))+|number on the (?:chassis |car |vin |commission )?plate|chassis|serial|vin|commission)(?: ?(?:is|reads?|says?|was|of|:|=|#|-|starts|ends|ending|in|number|no\.?))* ?#?(?<number>[a-z]{0,4}[ -]?\d[\da-z-]{2,18}\d)(?![\w-])/gi;

/** The text with every serial masked, and what each says. `text` is the shown text; the result may be as long. */
export function maskSerials(text: string, cars: Cars, digest?: SerialDigest): Masked {
  const serials: SerialFound[] = [];
  let masked = maskVins(text);
  if (masked !== text) serials.push(...vinsIn(text, digest));
  const form = cars.serials === undefined ? undefined : formPattern(cars.serials.form);
  if (form !== undefined) {
    masked = masked.replace(form, (found) => {
      serials.push(serialOf(found, cars, digest));
      return maskFigures(found);
    });
  }
  masked = masked.replace(labelled, (found, ...rest) => {
    const groups: unknown = rest.at(-1);
    const number = numberIn(groups);
    if (/^(?:19|20)\d\d$/.test(number)) return found;
    serials.push(serialOf(number, cars, digest));
    return found.slice(0, found.length - number.length) + maskFigures(number);
  });
  return { text: masked, serials };
}

function numberIn(groups: unknown): string {
  return typeof groups === "object" && groups !== null && "number" in groups ? String(groups.number) : "";
}

function vinsIn(text: string, digest: SerialDigest | undefined): readonly SerialFound[] {
  return findVins(text).map((vin) => ({ masked: maskSerial(vin), ...digestOf(vin, digest) }));
}

function digestOf(serial: string, digest: SerialDigest | undefined): Pick<SerialFound, "digest"> {
  return digest === undefined ? {} : { digest: digest(serial) };
}

/** Letters of the form stay, the last six figures or letters after them go. */
function maskFigures(serial: string): string {
  return serial.replace(/\d/g, mark);
}

function formPattern(form: string): RegExp {
  const pieces = Array.from(form, (sign) => {
    if (sign === "#") return String.raw`\d`;
    if (/[\s-]/.test(sign)) return "[ -]?";
    return /[a-z0-9]/i.test(sign) ? sign : `\\${sign}`;
  });
  const start = /^\w/.test(form) ? String.raw`(?<![\w•])` : "";
  const shorter = pieces
    .join("")
    .replace(
      /(\\d)+$/,
      (figures) => String.raw`\d{${Math.max(3, figures.length / 2 - 1)},${figures.length / 2}}`,
    );
  return new RegExp(`${start}${shorter}(?![\\w•])`, "gi");
}

function serialOf(written: string, cars: Cars, digest: SerialDigest | undefined): SerialFound {
  const plain = written.replace(/[ -]/g, "").toUpperCase();
  const figures = /\d+$/.exec(plain)?.[0];
  const interval = figures === undefined ? undefined : buildInterval(Number(figures), cars);
  const masked = maskFigures(written.toUpperCase());
  // The same car is written with and without its letters, and with and without leading noughts.
  const number = figures === undefined ? plain : String(Number(figures));
  return { masked, ...(interval === undefined ? {} : { interval }), ...digestOf(number, digest) };
}

/**
 * The stretch in which car `serial` was built: from the documented car before it to the one after it, both
 * included. Below the first or above the last anchor the production span closes it; undefined without anchors.
 */
export function buildInterval(serial: number, cars: Cars): Interval | undefined {
  const anchors = cars.serials?.anchors;
  if (anchors === undefined) return undefined;
  const below = anchors.filter((anchor) => anchor.serial <= serial).at(-1);
  const above = anchors.find((anchor) => anchor.serial >= serial);
  const span = productionSpan(cars);
  const from = below === undefined ? span.from : (parseDateText(below.built)?.from ?? span.from);
  const to = above === undefined ? span.to : (parseDateText(above.built)?.to ?? span.to);
  const last = anchors.at(-1);
  const isBeyond = serial === 0 || (last !== undefined && serial > last.serial * 1.5);
  return from < to && !isBeyond ? { from, to } : undefined;
}

/** From the first model's start to the last model's end. */
export function productionSpan(cars: Cars): Interval {
  const starts = cars.models.flatMap((model) => parseDateText(model.from)?.from ?? []);
  const ends = cars.models.flatMap((model) => parseDateText(model.to)?.to ?? []);
  return { from: Math.min(...starts), to: Math.max(...ends) };
}
