/** "accept", "decline … because", "ask about", "withdraw", "edit observation ID" and the reply to a keeper's question. */
import type { Block } from "../../reply.ts";
import { aside, strong, text } from "../../text-blocks.ts";
import type { CommunityScene, Handled, Telling } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { nobody } from "../person/person-record.ts";
import { notForYou } from "../phrases/keepers.ts";
import * as phrases from "../phrases/observations.ts";
import { changedRecord, type RecordChange } from "../record-change.ts";
import { say } from "../say.ts";
import { requestAbout } from "../spoken.ts";
import { draftFrom } from "./draft.ts";
import { kindsOf } from "./kinds-of.ts";
import type { Observation } from "./observation.ts";
import { observationKind } from "./observations-view.ts";
import { askNext } from "./observing.ts";
import { knowledgeFor } from "./step-answers.ts";
import { askForWords } from "./words-wanted.ts";

interface Review {
  readonly scene: CommunityScene;
  readonly id: string;
  readonly words: string;
  readonly observation: Observation;
}

interface Verb {
  readonly verb: string;
  readonly who: "keeper" | "author";
  readonly handle: (review: Review) => Handled;
}

const verbs: readonly Verb[] = [
  { verb: "accept observation", who: "keeper", handle: accept },
  { verb: "decline observation", who: "keeper", handle: decline },
  { verb: "ask about observation", who: "keeper", handle: ask },
  { verb: "withdraw observation", who: "author", handle: withdraw },
  {
    verb: "edit observation",
    who: "author",
    handle: ({ scene, id, observation }) => askNext(scene, draftFrom(id, observation)),
  },
];

/** Undefined when the words ask for nothing of this. */
export function review(scene: CommunityScene, said: string): Handled | undefined {
  for (const { verb, who, handle } of verbs) {
    const request = requestAbout(said, verb);
    if (request !== undefined) return reviewed(scene, request.id, request.words, who, handle);
  }
  const replied = requestAbout(said, "reply(?: to)?");
  // Handed-over cases are replied to in the same words.
  if (replied === undefined || !scene.memory.observations.byId.has(replied.id)) return undefined;
  return reviewed(scene, replied.id, replied.words, "author", reply);
}

function reviewed(
  scene: CommunityScene,
  id: string,
  words: string,
  who: Verb["who"],
  handle: Verb["handle"],
): Handled {
  if (who === "keeper" && !reaches(scene.speaker.standing, "keeper")) return say(notForYou("keeper"));
  const observation = scene.memory.observations.byId.get(id);
  if (observation === undefined) return say(phrases.noSuchObservation(id));
  if (who === "author" && observation.by !== scene.speaker.id) return say(phrases.onlyAuthor);
  if (observation.stands === "withdrawn") return say(phrases.already(id, phrases.stands.withdrawn));
  return handle({ scene, id, words, observation });
}

function accept(one: Review): Handled {
  const { scene, id, observation } = one;
  if (observation.stands === "accepted") return say(phrases.already(id, phrases.stands.accepted));
  return {
    ...say(phrases.accepted(id)),
    changes: [
      changed(one, phrases.whyAccepted(id), () => ({
        stands: "accepted",
        reason: null,
        edition: knowledgeFor(scene, observation.saw).handbook.edition,
        kinds: kindsOf(scene, observation.saw),
      })),
    ],
    tellings: toAuthor(observation, [text(phrases.toldAccepted(scene.speaker.name, id))]),
  };
}

function decline(one: Review): Handled {
  const { scene, id, words, observation } = one;
  if (observation.stands === "declined") return say(phrases.already(id, phrases.stands.declined));
  if (words === "") return askForWords(scene, { verb: "decline observation", id }, phrases.whyDecline(id));
  return {
    ...say(phrases.declined(id)),
    changes: [changed(one, phrases.whyDeclined(id, words), () => ({ stands: "declined", reason: words }))],
    tellings: toAuthor(observation, [text(phrases.toldDeclined(scene.speaker.name, id, words))]),
  };
}

function ask(one: Review): Handled {
  const { scene, id, words, observation } = one;
  if (observation.by === nobody) return say(phrases.authorHasLeft(id));
  if (words === "")
    return askForWords(scene, { verb: "ask about observation", id }, phrases.whatToAsk(observation.byName));
  const blocks = [
    text(phrases.toldAsked(scene.speaker.name, id)),
    strong(words),
    aside(phrases.howToReply(id)),
  ];
  return {
    ...say(phrases.asked(observation.byName)),
    changes: [changed(one, phrases.whyAsked(id), saying(one))],
    tellings: toAuthor(observation, blocks),
  };
}

function reply(one: Review): Handled {
  const { scene, id, words, observation } = one;
  if (words === "") return askForWords(scene, { verb: "reply", id }, phrases.whatToReply);
  return {
    ...say(phrases.replied),
    changes: [changed(one, phrases.whyReplied(id), saying(one))],
    tellings: [
      { audience: "keepers", blocks: [text(phrases.toldReplied(observation.byName, id)), strong(words)] },
    ],
  };
}

function withdraw(one: Review): Handled {
  const { id } = one;
  return {
    ...say(phrases.withdrawn(id)),
    changes: [changed(one, phrases.whyWithdrawn(id), () => ({ stands: "withdrawn" }))],
  };
}

/** What was said meanwhile by somebody else stays. */
function saying({ scene, words }: Review) {
  const { speaker, at } = scene;
  return ({ sayings }: Observation): Partial<Observation> => ({
    sayings: [...sayings, { by: speaker.id, name: speaker.name, at, words }],
  });
}

/** The change of an observation that still is what was looked at. */
function changed(
  { id, observation }: Review,
  why: string,
  change: (before: Observation) => Partial<Observation>,
): RecordChange {
  return changedRecord(observationKind, id, why, (before) =>
    before.stands === observation.stands && before.at === observation.at
      ? { ...before, ...change(before) }
      : undefined,
  );
}

/** Nobody is told of a sighting whose author is erased. */
function toAuthor({ conversation, by }: Observation, blocks: readonly Block[]): readonly Telling[] {
  return by === nobody ? [] : [{ audience: "person", conversation, person: by, blocks }];
}
