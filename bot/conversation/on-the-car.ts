/** "Actually it is on the car": a part that was told to be loose is not. */
import type { Handbook, MessageReading } from "../../knowledge/index.ts";
import type { Change } from "./change.ts";
import { thingOf } from "./named-thing.ts";
import { carLabels, loosePartValue, onTheCarValue, replacedEarlier } from "./phrases/understood.ts";
import type { Speaker } from "./speaker.ts";
import { understoodItem } from "./understood.ts";

/** The change with the part on its owner's car, when the message says so of one that was loose. */
export function withPartOnCar(
  handbook: Handbook,
  change: Change,
  { shownText, car: said }: MessageReading,
  speaker: Speaker,
): Change {
  const { isLoosePart, ...car } = change.facts.car;
  const isStillLoose = said.some(({ about }) => about === "loose-part");
  if (isLoosePart !== true || isStillLoose || !speaker.isOwner || !saysOnCar(handbook, shownText))
    return change;
  const item = understoodItem(carLabels.loose, onTheCarValue, [replacedEarlier(loosePartValue)]);
  return { ...change, facts: { ...change.facts, car }, items: [...change.items, item] };
}

function saysOnCar(handbook: Handbook, text: string): boolean {
  const thing = thingOf(handbook).one;
  const isOn = new RegExp(
    String.raw`\b(?:it'?s|it is|they'?re|they are|still|fitted|bolted)\b[^.?!,;]{0,20}\b(?:on|to) (?:the|my) (?:car|${thing})\b`,
    "iu",
  );
  return (
    (isOn.test(text) && !/\bnot\b|n't\b|\?/iu.test(text)) || /\b(?:not|isn'?t) (?:a )?loose\b/iu.test(text)
  );
}
