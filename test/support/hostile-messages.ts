// Messages that nobody would write on purpose, mixed with ones that somebody might: put together by a small grammar from
// the handbook's own words, real messages in pieces, and what breaks programs.

import type { IncomingMessage } from "../../bot/index.ts";
import type { Handbook } from "../../knowledge/index.ts";
import { logEven, pick } from "./draws.ts";
import type { Chance } from "./random-tables.ts";
import { nonsense, tellings, wishes } from "./spoken-fragments.ts";

/** One message or pressed answer in a workshop of three people. */
export type HostileMessage = (chance: Chance) => IncomingMessage;

const LONGEST = 2000;
/** One message in so many is far longer than any chat lets through. */
const FLOODS = 2000;
const FLOOD = 100_000;
const BREAKERS = [
  "\u0000",
  "\u0007",
  "\u001b[31m",
  "\r\n",
  "\t",
  "\u200e",
  "\u200f",
  "\u202e",
  "\u2066",
  "\u2069",
  "\ufeff",
  "\u200b",
  "\ud800",
  "\udfff",
  "e\u0301\u0301\u0301",
  "\u{1f697}",
  "\u{1f468}\u200d\u{1f527}",
  "👍🏽",
  "１１８０ｍｍ",
  "ﬁ",
  "İ",
  "ß",
  '{"feature":',
  "[[[[",
  "}}",
  "\\",
  "`",
  "<script>",
  "$&",
  "%s",
  "../../",
  "' or 1=1 --",
  "__proto__",
  "constructor",
  "((((",
  "a*a*a*",
  "----",
  "????",
  "!!!!",
  '"',
  "“",
  "’",
  "½",
  '17 3/8"',
  "1/0",
  "0/0",
  "NaN",
  "Infinity",
  "-0",
  "1e308",
  "99999999999999999999 mm",
  "0.0000000001 g",
  "1,180.5.3",
  "31/02/1981",
  "week 99/81",
  "13/1981",
  "year 0",
  "built 9999",
  "'80",
  "80/81",
  "4/72",
  "between 1999 and 1901",
  "WS-1234",
  "case 99999999999",
  "№",
  "° ' \"",
  "mm mm mm",
  "not not not",
] as const;
const UNITS = ["mm", "cm", "in", "inches", '"', "g", "kg", "lb", "oz", "thou", "", "bar", "°C"];

/** Built once for a handbook; the messages then depend on chance alone. */
export function hostileMessages(handbook: Handbook, texts: readonly string[]): HostileMessage {
  const names = handbook.parts.flatMap((part) => [
    part.name,
    ...part.also,
    ...part.variants.flatMap(({ name, also }) => [name, ...also]),
    ...part.features.flatMap((feature) => [
      feature.name,
      ...feature.also,
      ...(feature.kind === "states" ? feature.states.flatMap(({ name, also }) => [name, ...also]) : []),
    ]),
  ]);
  const pieces: readonly ((chance: Chance) => string)[] = [
    (chance) => pick(chance, names),
    (chance) => pick(chance, names),
    (chance) => slice(chance, pick(chance, texts)),
    (chance) => slice(chance, pick(chance, texts)),
    (chance) => pick(chance, tellings),
    (chance) => pick(chance, [...wishes, ...nonsense]),
    (chance) => pick(chance, BREAKERS),
    (chance) => number(chance),
    (chance) => String.fromCharCode(Math.floor(65_536 * chance())),
  ];
  return (chance) => ({
    conversation: "workshop",
    from: pick(chance, ["owner", "__proto__", "neighbour", "constructor"]),
    ...(chance() < 0.2 ? { answer: pressed(handbook, chance) } : { text: text(pieces, chance) }),
    ...(chance() < 0.02 ? { case: pick(chance, ["case-1", "case-2", "case-0", "toString", ""]) } : {}),
    ...(chance() < 0.02
      ? { goal: pick(chance, ["right-for-car", "genuine", "what-should-it-have"] as const) }
      : {}),
  });
}

function text(pieces: readonly ((chance: Chance) => string)[], chance: Chance): string {
  const isFlood = chance() < 1 / FLOODS;
  const length = isFlood ? FLOOD : Math.floor(logEven(chance, 1, LONGEST));
  const only = isFlood && chance() < 0.5 ? pick(chance, pieces)(chance) : undefined;
  const joints = [" ", " ", " ", ", ", ". ", "", "\n"];
  let written = "";
  while (written.length < length) {
    const piece = only ?? pick(chance, pieces)(chance);
    written += piece.length === 0 ? " " : piece + pick(chance, joints);
  }
  return written.slice(0, length);
}

function slice(chance: Chance, from: string): string {
  const start = Math.floor(chance() * from.length);
  return from.slice(start, start + Math.floor(60 * chance()));
}

function number(chance: Chance): string {
  const figures = Array.from({ length: 1 + Math.floor(chance() ** 3 * 40) }, () => Math.floor(10 * chance()));
  const decimals = chance() < 0.2 ? `.${Math.floor(1000 * chance())}` : "";
  return `${chance() < 0.1 ? "-" : ""}${figures.join("")}${decimals} ${pick(chance, UNITS)}`;
}

/** Known and unknown ids in every combination, sizes in units that do not suit, years that cannot be. */
function pressed(handbook: Handbook, chance: Chance): NonNullable<IncomingMessage["answer"]> {
  const part = pick(chance, handbook.parts);
  const known = pick(chance, part.features);
  const odd = [
    "car.built",
    "car.trim",
    "car.market",
    "car.model",
    "part",
    "unit:width",
    "constructor",
    "",
    "\u202e",
  ];
  const feature = chance() < 0.6 ? known.id : pick(chance, odd);
  if (chance() < 0.1) return { feature, cannotTell: true };
  if (chance() < 0.4) {
    const readings = [
      "9999-99",
      "0000",
      "1981-13",
      "1981-W54",
      "1979-06",
      "-5 kg",
      "1180",
      "46 1/2 inches",
      "",
      "e",
      "🚗",
    ];
    return { feature, reading: chance() < 0.5 ? pick(chance, readings) : number(chance) };
  }
  const states = known.kind === "states" ? known.states.map(({ id }) => id) : ["yes"];
  const wild = ["rear-spoiler", "door-mirror", "s", "not-there", "toString", "yes", "no", "", "\ud800"];
  return { feature, state: chance() < 0.7 ? pick(chance, states) : pick(chance, wild) };
}
