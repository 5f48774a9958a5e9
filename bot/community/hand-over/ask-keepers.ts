/**
 * "ask a keeper" hands over the case in hand with its notes. "ask a keeper: WORDS" hands over the words: who holds something that no
 * handbook knows has no case, and needs a keeper most.
 */
import { assess } from "../../conversation/assess.ts";
import type { Case } from "../../conversation/case.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { handOver } from "../../conversation/saying/hand-over.ts";
import type { Block } from "../../reply.ts";
import { aside, text } from "../../text-blocks.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/hand-over.ts";
import { newRecord } from "../record-change.ts";
import { recordId } from "../record-id.ts";
import { say } from "../say.ts";
import { isRequest } from "../spoken.ts";
import { type HandedOver, handedOverKind, isOpen } from "./handed-over.ts";

const asksKeeper =
  /^(?:please )?(?:ask|hand (?:it |this )?(?:over )?to) (?:a|the) keepers?(?: please)?$|^hand over$/u;
const asksInWords = /^(?:please )?ask (?:a|the) keepers?\s?[:,–-]\s?(.*\p{L}.*)$/iu;

/** undefined: the words ask no keeper. */
export function askedOfKeepers(scene: CommunityScene, said: string): Handled | undefined {
  const words = asksInWords.exec(said)?.[1];
  if (words !== undefined) return handQuestion(scene, words);
  return isRequest(said, asksKeeper) ? handCase(scene) : undefined;
}

function handCase(scene: CommunityScene): Handled {
  const { conversation, speaker, memory } = scene;
  const kept = caseInHand(conversation, speaker.id);
  if (kept === undefined || (kept.facts.part === null && kept.facts.unplaced.length === 0)) {
    return say(phrases.nothingToHandOver);
  }
  const { conversation: place } = scene.message;
  const waiting = [...memory.handedOver].find(
    ([, one]) => one.conversation === place && one.case === kept.id && isOpen(one),
  );
  if (waiting !== undefined) return say(phrases.handedAlready(waiting[0]));
  const id = freeId(scene, kept.id, "hand-over");
  const { handbook, facts } = kept;
  const about = { case: kept.id, handbook, part: facts.part, notes: notesOf(scene, kept) };
  return handed(scene, id, about, phrases.handedOver(id));
}

function notesOf({ knowledge }: CommunityScene, kept: Case): string {
  const compiled = kept.facts.part === null ? undefined : knowledge.compiled(kept.facts.part);
  if (compiled === undefined) return kept.facts.unplaced.join("\n");
  return handOver(knowledge.handbook, kept, assess(compiled, kept.facts));
}

function handQuestion(scene: CommunityScene, words: string): Handled {
  const waiting = [...scene.memory.handedOver].find(
    ([, one]) => one.case === null && one.asker === scene.speaker.id && one.notes === words && isOpen(one),
  );
  if (waiting !== undefined) return say(phrases.askedAlready(waiting[0]));
  const id = freeId(scene, words, "question");
  return handed(scene, id, { case: null, part: null, notes: words }, phrases.questionAsked(id));
}

type About = Pick<HandedOver, "case" | "handbook" | "part" | "notes">;

function handed(scene: CommunityScene, id: string, about: About, answer: string): Handled {
  const { speaker } = scene;
  const record: HandedOver = {
    ...about,
    conversation: scene.message.conversation,
    asker: speaker.id,
    askerName: speaker.name,
    at: scene.at,
    stands: "waiting",
    sayings: [],
  };
  return {
    ...say(answer),
    changes: [newRecord(handedOverKind, id, phrases.whyHandedOver(id), record)],
    tellings: [
      {
        audience: "keepers",
        blocks: [
          text(phrases.newForKeepers(speaker.name, id)),
          text(about.notes),
          aside(phrases.howToAnswer(id)),
          keepersChoices(id),
        ],
      },
    ],
  };
}

/** The first that is free for it: of two who hand it over at the same moment the second finds the first. */
function freeId(scene: CommunityScene, matter: string, kind: string, times = 0): string {
  const { community, message, memory } = scene;
  const id = recordId(community, message.conversation, matter, kind, String(times));
  return memory.handedOver.has(id) ? freeId(scene, matter, kind, times + 1) : id;
}

/** Words that end in an ellipsis are completed by whoever presses them. */
export function keepersChoices(id: string): Block {
  const choices = [
    { id: "answer", label: phrases.answerLabel, say: `answer ${id}: …` },
    { id: "ask-back", label: phrases.askBackLabel, say: `ask back ${id}: …` },
    { id: "close", label: phrases.closeLabel, say: `close ${id} because …` },
  ];
  return { kind: "choices", choices };
}
