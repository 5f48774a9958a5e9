/** "ask a keeper", "keepers' queue", "answer ID: …", "ask back ID: …", "reply ID: …", "close ID because …". */

import { assess } from "../../conversation/assess.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { findPart } from "../../conversation/knowledge.ts";
import { handOver } from "../../conversation/saying/hand-over.ts";
import type { Block } from "../../reply.ts";
import { aside, strong, text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { dayInWords } from "../day-in-words.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/hand-over.ts";
import { notForYou } from "../phrases/keepers.ts";
import { changedRecord, newRecord, type RecordChange } from "../record-change.ts";
import { recordId } from "../record-id.ts";
import { say } from "../say.ts";
import { isRequest, requestAbout, spoken } from "../spoken.ts";
import { type HandedOver, handedOverKind, knowledgeOfPart } from "./handed-over.ts";

const asksKeeper = /^(?:please )?(?:ask|hand (?:it |this )?(?:over )?to) (?:a|the) keepers?$|^hand over$/u;

export const handOverAffair: Affair = {
  name: "hand-over",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    if (isRequest(said, asksKeeper)) return handToKeepers(scene);
    for (const { verb, handle } of verbs) {
      const request = requestAbout(said, verb);
      if (request !== undefined) return about(scene, request.id, request.words, handle);
    }
    return undefined;
  },
};

function handToKeepers(scene: CommunityScene): Handled {
  const { conversation, speaker, knowledge, memory } = scene;
  const kept = caseInHand(conversation, speaker.id);
  if (kept === undefined || (kept.facts.part === null && kept.facts.unplaced.length === 0)) {
    return say(phrases.nothingToHandOver);
  }
  const { conversation: place } = scene.message;
  const waiting = [...memory.handedOver].find(
    ([, one]) => one.conversation === place && one.case === kept.id && isOpen(one),
  );
  if (waiting !== undefined) return say(phrases.handedAlready(waiting[0]));
  const compiled = kept.facts.part === null ? undefined : knowledge.compiled(kept.facts.part);
  const notes =
    compiled === undefined
      ? kept.facts.unplaced.join("\n")
      : handOver(knowledge.handbook, kept, assess(compiled, kept.facts));
  const id = freeId(scene, kept.id);
  const record: HandedOver = {
    conversation: place,
    case: kept.id,
    handbook: kept.handbook,
    part: kept.facts.part,
    asker: speaker.id,
    askerName: speaker.name,
    at: scene.at,
    notes,
    stands: "waiting",
    sayings: [],
  };
  return {
    ...say(phrases.handedOver(id)),
    changes: [newRecord(handedOverKind, id, phrases.whyHandedOver(id), record)],
    tellings: [
      {
        audience: "keepers",
        blocks: [
          text(phrases.newForKeepers(speaker.name, id)),
          text(notes),
          aside(phrases.howToAnswer(id)),
          keepersChoices(id),
        ],
      },
    ],
  };
}

/** The first that is free for this case: of two who hand it over at the same moment the second finds the first. */
function freeId(scene: CommunityScene, kept: string, times = 0): string {
  const { community, message, memory } = scene;
  const id = recordId(community, message.conversation, kept, "hand-over", String(times));
  return memory.handedOver.has(id) ? freeId(scene, kept, times + 1) : id;
}

interface Spoken {
  readonly scene: CommunityScene;
  readonly id: string;
  readonly words: string;
  readonly record: HandedOver;
}

interface Verb {
  readonly verb: string;
  readonly handle: (spoken: Spoken) => Handled;
}

const verbs: readonly Verb[] = [
  { verb: "answer", handle: forKeepers("answer", answer) },
  { verb: "ask back", handle: forKeepers("ask back", askBack) },
  { verb: "close", handle: forKeepers(undefined, close) },
  { verb: "reply(?: to)?", handle: reply },
];

function about(scene: CommunityScene, id: string, words: string, handle: Verb["handle"]): Handled {
  const record = scene.memory.handedOver.get(id);
  return record === undefined ? say(phrases.noSuchCase(id)) : handle({ scene, id, words, record });
}

/** `needsWords`: the verb, when nothing can be done without words after it. */
function forKeepers(needsWords: string | undefined, handle: Verb["handle"]): Verb["handle"] {
  return (spoken) => {
    if (!reaches(spoken.scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
    if (!isOpen(spoken.record)) return say(phrases.isSettled(spoken.id));
    if (needsWords !== undefined && spoken.words === "") return say(phrases.sayWhat(needsWords, spoken.id));
    return handle(spoken);
  };
}

function answer(spoken: Spoken): Handled {
  const { scene, id, words, record } = spoken;
  return {
    blocks: [
      text(phrases.answered(record.askerName)),
      { kind: "choices", choices: [{ id: `pin-${id}`, label: phrases.pinThis, say: `pin ${id}` }] },
    ],
    changes: [saidOn(spoken, phrases.whyAnswered(id, words), "answered")],
    tellings: [
      toAsker(record, [text(phrases.keeperAnswers(scene.speaker.name, numberOf(record))), strong(words)]),
    ],
  };
}

function askBack(spoken: Spoken): Handled {
  const { scene, id, words, record } = spoken;
  const lead = text(phrases.keeperAsks(scene.speaker.name, numberOf(record)));
  return {
    ...say(phrases.askedBack(record.askerName)),
    changes: [saidOn(spoken, phrases.whyAskedBack(id), "asked-back")],
    tellings: [toAsker(record, [lead, strong(words), aside(phrases.howToReply(id)), replyChoice(id)])],
  };
}

function close(spoken: Spoken): Handled {
  const { scene, id, words, record } = spoken;
  return {
    ...say(phrases.closed(id)),
    changes: [saidOn(spoken, phrases.whyClosed(id, words), "closed")],
    tellings: [toAsker(record, [text(phrases.keeperClosed(scene.speaker.name, words))])],
  };
}

function reply(spoken: Spoken): Handled {
  const { scene, id, words, record } = spoken;
  if (scene.speaker.id !== record.asker) return say(phrases.notYours);
  if (!isOpen(record)) return say(phrases.isSettled(id));
  if (words === "") return say(phrases.sayWhat("reply", id));
  return {
    ...say(phrases.replied),
    changes: [saidOn(spoken, phrases.whyReplied(id), "waiting")],
    tellings: [
      {
        audience: "keepers",
        blocks: [
          text(phrases.askerReplies(record.askerName, id)),
          strong(words),
          aside(phrases.howToAnswer(id)),
          keepersChoices(id),
        ],
      },
    ],
  };
}

function saidOn({ scene, id, words }: Spoken, why: string, stands: HandedOver["stands"]): RecordChange {
  const { speaker, at } = scene;
  return changedRecord(handedOverKind, id, why, (before) =>
    isOpen(before)
      ? { ...before, stands, sayings: [...before.sayings, { by: speaker.id, name: speaker.name, at, words }] }
      : undefined,
  );
}

/** Words that end in an ellipsis are completed by whoever presses them. */
function keepersChoices(id: string): Block {
  const choices = [
    { id: "answer", label: phrases.answerLabel, say: `answer ${id}: …` },
    { id: "ask-back", label: phrases.askBackLabel, say: `ask back ${id}: …` },
    { id: "close", label: phrases.closeLabel, say: `close ${id} because …` },
  ];
  return { kind: "choices", choices };
}

function replyChoice(id: string): Block {
  return { kind: "choices", choices: [{ id: "reply", label: phrases.replyLabel, say: `reply ${id}: …` }] };
}

function toAsker({ conversation, asker }: HandedOver, blocks: readonly Block[]) {
  return { audience: "person", conversation, person: asker, blocks } as const;
}

/** Whether keepers may still say something to it. */
export function isOpen({ stands }: HandedOver): boolean {
  return stands === "waiting" || stands === "asked-back";
}

/** The line of a handed-over case in the keepers' queue. */
export function queueLine(scene: CommunityScene, id: string, record: HandedOver): string {
  const knowledge = knowledgeOfPart(scene, record);
  const part = (knowledge && findPart(knowledge, record.part)?.name) ?? phrases.partUnknown;
  const date = dayInWords(record.at);
  const mark = record.stands === "asked-back" ? phrases.askedBackMark : "";
  return phrases.queueLine(id, record.askerName, part, date, mark);
}

function numberOf({ case: id }: HandedOver): string {
  return id.replace("case-", "");
}
