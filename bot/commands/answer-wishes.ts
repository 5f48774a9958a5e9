/** Which command answers which wish. The reader has already told wishes from facts; here each is only looked up. */
import type { Intent } from "../../knowledge/index.ts";
import { noPrices, smallTalk, smallTalkInCase } from "../conversation/phrases/commands.ts";
import type { Block } from "../reply.ts";
import { listCases } from "./cases.ts";
import { compare } from "./compare.ts";
import { help } from "./help.ts";
import { howToCheck } from "./how-to-check.ts";
import { listKinds } from "./list-kinds.ts";
import { photographs } from "./photographs.ts";
import type { Scene } from "./scene.ts";
import { showSources } from "./sources.ts";
import { whatDoYouKnow } from "./what-do-you-know.ts";
import { whatFits } from "./what-fits.ts";
import { whereFromHere } from "./where-from-here.ts";
import { why } from "./why.ts";

/** The answers to all wishes of a message, in the order said; wishes that only change the case answer nothing here. `said`: its words. */
export function answerWishes(scene: Scene, intents: readonly Intent[], said: string): readonly Block[] {
  const isOnlyTalk = intents.every((intent) => intent.kind === "small-talk");
  return intents
    .filter((intent) => isOnlyTalk || intent.kind !== "small-talk")
    .flatMap((intent) => answerWish(scene, intent, said));
}

function answerWish(scene: Scene, intent: Intent, said: string): readonly Block[] {
  switch (intent.kind) {
    case "why":
      return why(scene);
    case "how-to-check":
      return howToCheck(scene, intent.feature);
    case "what-do-you-know":
      return whatDoYouKnow(scene);
    case "compare":
      return compare(scene, intent.part, intent.variants, said);
    case "list-variants":
      return listKinds(scene, intent.part);
    case "what-fits":
      return whatFits(scene);
    case "photographs":
      return photographs(scene);
    case "where-from-here":
      return whereFromHere(scene);
    case "sources":
      return showSources(scene);
    case "list-cases":
      return listCases(scene);
    case "help":
      return help(scene);
    case "price":
      return [{ kind: "text", text: noPrices }];
    case "small-talk":
      return [{ kind: "text", text: scene.assessed === undefined ? smallTalk : smallTalkInCase }];
    case "goal":
    case "cannot-tell":
    case "undo":
    case "start-over":
    case "withdraw":
    case "new-case":
    case "switch-case":
    case "yes":
    case "no":
      return [];
  }
}
