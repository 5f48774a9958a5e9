/** The errand of recording what was seen: one question after the other, none that the case has answered, the whole shown before it is kept. */
import { z } from "zod";
import type { Block } from "../../reply.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import * as phrases from "../phrases/observations.ts";
import { changedRecord, newRecord, type RecordChange } from "../record-change.ts";
import { isRequest, leavesIt, spoken } from "../spoken.ts";
import { type Draft, nextStep, sightingOf, steppedBack } from "./draft.ts";
import type { Observation, Sighting } from "./observation.ts";
import { observationKind } from "./observations-view.ts";
import { answeredStep, knowledgeFor } from "./step-answers.ts";
import { observingErrand, stepPrefix } from "./step-names.ts";
import { sightingBlock, stepQuestion } from "./step-questions.ts";

/** Puts the next question, with what is told so far before the last one. */
export function askNext(scene: CommunityScene, draft: Draft, remark?: string): Handled {
  const step = nextStep(draft);
  const told: readonly Block[] = step === "confirm" ? [sightingBlock(scene, draft, phrases.draftLead)] : [];
  const aside: readonly Block[] = remark === undefined ? [] : [{ kind: "text", text: remark, tone: "aside" }];
  return {
    blocks: [...aside, ...told, stepQuestion(scene, draft, step)],
    errand: { person: scene.speaker.id, affair: observingErrand, state: z.json().parse(draft) },
  };
}

/** Takes the answer to the open step; undefined when the message is about something else. */
export function resumeDraft(scene: CommunityScene, before: Draft): Handled | undefined {
  const step = nextStep(before);
  const said = answerTo(scene, step);
  if (said === undefined) return undefined;
  const draft = step === "photographs" ? before : withPhotographs(scene, before);
  // Photographs alone answer no other step; they are kept, and its question is put again.
  if (said === "" && step !== "photographs") {
    return askNext(scene, draft, phrases.photographsKept(draft.photographs.length));
  }
  if (leavesIt(said)) {
    return { blocks: [{ kind: "text", text: phrases.nothingRecorded }], errand: null };
  }
  if (isRequest(said, /^(?:(?:go )?back|undo)$/u)) return askNext(scene, steppedBack(draft));
  if (step === "confirm")
    return isRequest(said, /^(?:record[ -]it|yes|yes please)$/u) ? record(scene, draft) : undefined;
  const answered = answeredStep(scene, draft, step, said);
  return answered === undefined ? askNext(scene, draft, phrases.notRead(said)) : askNext(scene, answered);
}

/** Of more photographs of one part nobody looks at the last. */
const mostPhotographs = 40;

/** Photographs that came with the answer to another step. */
function withPhotographs({ message: { photographs = [] } }: CommunityScene, draft: Draft): Draft {
  if (photographs.length === 0) return draft;
  return { ...draft, photographs: [...draft.photographs, ...photographs].slice(0, mostPhotographs) };
}

/** Words, or the id that was pressed for this step; photographs alone are an answer where they are asked for. */
function answerTo(scene: CommunityScene, step: string): string | undefined {
  const { answer, photographs = [] } = scene.message;
  if (answer === undefined) return spoken(scene.message) ?? (photographs.length > 0 ? "" : undefined);
  if (answer.feature !== `${stepPrefix}${step}`) return undefined;
  if ("state" in answer) return answer.state;
  return "reading" in answer ? answer.reading : phrases.cannotTell;
}

function record(scene: CommunityScene, draft: Draft): Handled | undefined {
  const saw = sightingOf(draft);
  if (saw === undefined) return undefined;
  const { editing } = draft;
  const id = editing ?? scene.newId("observation");
  const text = editing === null ? phrases.recorded(id) : phrases.editedAgain(id);
  const lead = phrases.newObservation(scene.speaker.name, id);
  return {
    blocks: [{ kind: "text", text }],
    errand: null,
    changes: [editing === null ? recorded(scene, id, saw) : edited(scene, id, saw)],
    tellings: [{ audience: "keepers", blocks: [sightingBlock(scene, saw, lead), keepersChoices(id)] }],
  };
}

function recorded(scene: CommunityScene, id: string, saw: Sighting): RecordChange {
  const { speaker, at, message } = scene;
  const observation: Observation = {
    by: speaker.id,
    byName: speaker.name,
    at,
    conversation: message.conversation,
    edition: knowledgeFor(scene, saw).handbook.edition,
    saw,
    stands: "waiting",
    kinds: [],
    reason: null,
    isRuledAsBuilt: false,
    sayings: [],
  };
  return newRecord(observationKind, id, phrases.whyRecorded(id), observation);
}

/** What is changed waits for a keeper again, whatever was made of it before. */
function edited(scene: CommunityScene, id: string, saw: Sighting): RecordChange {
  const { speaker, at } = scene;
  const { edition } = knowledgeFor(scene, saw).handbook;
  return changedRecord(observationKind, id, phrases.whyEdited(id), (before) =>
    before.by === speaker.id && before.stands !== "withdrawn"
      ? { ...before, at, edition, saw, stands: "waiting" as const, kinds: [], reason: null }
      : undefined,
  );
}

/** What a keeper can do with an observation, as words. */
export function keepersChoices(id: string): Block {
  const says = [
    `observation ${id}`,
    `accept observation ${id}`,
    `decline observation ${id} because …`,
    `ask about observation ${id}: …`,
  ];
  const label = (say: string) => say.replace(/(?<=\w) observation .*/u, "");
  return {
    kind: "choices",
    choices: says.map((say) => ({ id: say.replaceAll(" ", "-"), label: label(say), say })),
  };
}
