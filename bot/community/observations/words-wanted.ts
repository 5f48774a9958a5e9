/** What was asked for by a button and needs words: a reason, a question, a reply. The words are asked for, and go on as if they had been said at once. */
import { z } from "zod";
import type { Errand } from "../../conversation/errand.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import { leavesIt, spoken } from "../spoken.ts";
import { observingErrand, stepPrefix } from "./step-names.ts";

export const WordsWanted = z.strictObject({ verb: z.string(), id: z.string() }).readonly();
export type WordsWanted = z.output<typeof WordsWanted>;

const feature = `${stepPrefix}words`;

export function askForWords({ speaker }: CommunityScene, wanted: WordsWanted, question: string): Handled {
  const leaveIt = { id: "leave-it", label: phrases.leaveIt, say: phrases.leaveIt };
  return {
    blocks: [
      {
        kind: "question",
        feature,
        text: question,
        effort: 1,
        photographDoes: false,
        answers: [],
        expects: "words",
        besides: [leaveIt],
      },
    ],
    errand: { person: speaker.id, affair: observingErrand, state: z.json().parse(wanted) },
  };
}

export function isForNextWords(errand: Errand | undefined): boolean {
  return errand?.affair === observingErrand && WordsWanted.safeParse(errand.state).success;
}

/** The whole request, now that its words are there; null: it is left; undefined: the message is about something else. */
export function withWords({ message }: CommunityScene, { verb, id }: WordsWanted): string | null | undefined {
  const said = saidTo(message);
  if (said === undefined) return undefined;
  return leavesIt(said) ? null : `${verb} ${id}: ${said}`;
}

function saidTo(message: CommunityScene["message"]): string | undefined {
  const { answer } = message;
  if (answer === undefined) return spoken(message);
  if (answer.feature !== feature) return undefined;
  if ("reading" in answer) return answer.reading;
  return "state" in answer ? answer.state : phrases.leaveIt;
}
