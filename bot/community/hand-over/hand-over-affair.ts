/** "ask a keeper", "keepers' queue", "answer ID: …", "ask back ID: …", "reply ID: …", "close ID because …". */

import { findPart } from "../../conversation/knowledge.ts";
import { quoted } from "../../conversation/phrases/grammar.ts";
import type { Block } from "../../reply.ts";
import { aside, strong, text } from "../../text-blocks.ts";
import type { Affair, CommunityScene, Handled } from "../affair.ts";
import { dayInWords } from "../day-in-words.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/hand-over.ts";
import { notForYou } from "../phrases/keepers.ts";
import { changedRecord, type RecordChange } from "../record-change.ts";
import { say } from "../say.ts";
import { requestAbout, spoken } from "../spoken.ts";
import { askedOfKeepers, keepersChoices } from "./ask-keepers.ts";
import { type HandedOver, handedOverKind, isOpen, knowledgeOfPart } from "./handed-over.ts";

export const handOverAffair: Affair = {
  name: "hand-over",
  hear(scene) {
    const said = spoken(scene.message);
    if (said === undefined) return undefined;
    const asked = askedOfKeepers(scene, said);
    if (asked !== undefined) return asked;
    for (const { verb, handle } of verbs) {
      const request = requestAbout(said, verb);
      if (request !== undefined) return about(scene, request.id, request.words, handle);
    }
    return undefined;
  },
};

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
      toAsker(record, [text(phrases.keeperAnswers(scene.speaker.name, matterOf(record))), strong(words)]),
    ],
  };
}

function askBack(spoken: Spoken): Handled {
  const { scene, id, words, record } = spoken;
  const lead = text(phrases.keeperAsks(scene.speaker.name, matterOf(record)));
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

function replyChoice(id: string): Block {
  return { kind: "choices", choices: [{ id: "reply", label: phrases.replyLabel, say: `reply ${id}: …` }] };
}

function toAsker({ conversation, asker }: HandedOver, blocks: readonly Block[]) {
  return { audience: "person", conversation, person: asker, blocks } as const;
}

/** The line of a handed-over case in the keepers' queue. */
export function queueLine(scene: CommunityScene, id: string, record: HandedOver): string {
  const knowledge = knowledgeOfPart(scene, record);
  const unnamed = record.case === null ? quoted(record.notes) : phrases.partUnknown;
  const part = (knowledge && findPart(knowledge, record.part)?.name) ?? unnamed;
  const date = dayInWords(record.at);
  const mark = record.stands === "asked-back" ? phrases.askedBackMark : "";
  return phrases.queueLine(id, record.askerName, part, date, mark);
}

function matterOf({ case: id }: HandedOver): string {
  return id === null ? phrases.question : phrases.caseNumber(id.replace("case-", ""));
}
