/** "withdraw the width": a fact is dropped as if never said. The owner may drop anybody's, others only their own. */
import type { CarDescription, Cars, Feature, PartKind } from "../../knowledge/index.ts";
import { carInWords } from "../conversation/apply-car.ts";
import { type Change, withNote } from "../conversation/change.ts";
import {
  nothingToWithdraw,
  notToldThat,
  withdrawn,
  withdrawWhich,
} from "../conversation/phrases/commands.ts";
import { sayFact } from "../conversation/saying/say-value.ts";
import type { Speaker } from "../conversation/speaker.ts";

/** What is said of a car's particular, in the words of its owner. */
const particulars: readonly (readonly [RegExp, string, readonly (keyof CarDescription)[]])[] = [
  [/\bmarket\b/iu, "market", ["market"]],
  [/\btrim\b/iu, "trim", ["trim"]],
  [/\bmodel\b/iu, "model", ["model"]],
  [/\bhistory\b/iu, "history", ["grade"]],
  [/\b(?:build date|built|date of build|model year)\b/iu, "built", ["built", "modelYear"]],
  [/\b(?:chassis|serial|vin)\b/iu, "serial", ["maskedSerial", "serialDigest"]],
];

/** Drops what was told of the car's market, trim and so on, when the words name it; undefined when they name none that was told. */
export function withdrawOfCar(
  cars: Cars,
  change: Change,
  words: string,
  speaker: Speaker,
): Change | undefined {
  const { car } = change.facts;
  const told = particulars.find(
    ([named, , keys]) => named.test(words) && keys.some((key) => car[key] !== undefined),
  );
  if (told === undefined || !speaker.isOwner) return undefined;
  const [, label, keys] = told;
  const rest = Object.fromEntries(Object.entries(car).filter(([key]) => !keys.some((one) => one === key)));
  const value = carInWords(cars, car)[label] ?? "";
  return withNote({ ...change, facts: { ...change.facts, car: rest } }, withdrawn(`${label} (${value})`));
}

/** Drops the fact of this feature; without a feature the only fact, or asks which. */
export function withdraw(
  part: PartKind | undefined,
  change: Change,
  feature: string | undefined,
  speaker: Speaker,
): Change {
  const theirs = change.facts.reports.filter((report) => speaker.isOwner || report.by === speaker.id);
  const [only] = theirs;
  if (part === undefined || only === undefined) return withNote(change, nothingToWithdraw);
  if (feature !== undefined) return dropped(part, change, feature, speaker);
  if (theirs.length === 1) return dropped(part, change, only.feature, speaker);
  const names = theirs.flatMap((report) => featureOf(part, report.feature)?.name ?? []);
  return { ...withNote(change, withdrawWhich), withdrawable: [...new Set(names)] };
}

function dropped(part: PartKind, change: Change, id: string, speaker: Speaker): Change {
  const feature = featureOf(part, id);
  const isMeant = (report: { readonly feature: string; readonly by: string }) =>
    report.feature === id && (speaker.isOwner || report.by === speaker.id);
  const gone = change.facts.reports.filter(isMeant);
  const last = gone.at(-1);
  if (feature === undefined || last === undefined) return withNote(change, notToldThat(feature?.name ?? id));
  const facts = {
    ...change.facts,
    reports: change.facts.reports.filter((report) => !isMeant(report)),
    rechecked: change.facts.rechecked.filter((one) => one !== id),
  };
  return withNote({ ...change, facts }, withdrawn(sayFact(feature, last.value)));
}

function featureOf(part: PartKind, id: string): Feature | undefined {
  return part.features.find((feature) => feature.id === id);
}
