/** The careful handbook compiled for reading, with the words that a test would have it hear by; and messages of its owners. */
import { monthInterval } from "../../knowledge/calendar/interval.ts";
import { loadHandbook } from "../../knowledge/handbook/load-handbook.ts";
import type { Ear, Handbook, LearntWords } from "../../knowledge/handbook/schema.ts";
import type { TaughtMessage } from "../../knowledge/language/hearing/learn-words.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";
import type { MessageView } from "../../knowledge/language/message-view.ts";
import { carefulFiles } from "./careful-handbook.ts";

export const tarnToday = monthInterval(2024, 6);
export const silent: Ear = { bias: 0, weights: "" };

export function tarnHandbook(): Handbook {
  const loaded = loadHandbook(carefulFiles());
  if (!loaded.ok) throw new Error("the careful handbook does not load");
  return loaded.handbook;
}

export function tarnLexicon(learntWords?: LearntWords): Lexicon {
  return compileLexicon({ ...tarnHandbook(), ...(learntWords === undefined ? {} : { learntWords }) });
}

/** A message about the door handle, unless another context is given. */
export function tarnView(
  text: string,
  lexicon: Lexicon = tarnLexicon(),
  context: { readonly part?: string; readonly askedFeature?: string } = { part: "door-handle" },
): MessageView {
  return layOut(text, lexicon, { today: tarnToday, ...context }).view;
}

/** A message about the door handle that tells states of one feature. */
export function taughtOf(text: string, feature: string, ...states: readonly string[]): TaughtMessage {
  return {
    text,
    context: { part: "door-handle" },
    told: states.map((state) => ({ part: "door-handle", feature, state })),
  };
}
