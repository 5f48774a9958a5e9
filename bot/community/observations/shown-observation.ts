/** Observations as they are listed, and one of them whole. */
import { formatInterval, identify, sayProbability } from "../../../knowledge/index.ts";
import { findPart } from "../../conversation/knowledge.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import { oldestFirst } from "../oldest-first.ts";
import * as phrases from "../phrases/observations.ts";
import { acceptingChanges } from "./accepting-changes.ts";
import type { Observation } from "./observation.ts";
import { knowledgeFor } from "./step-answers.ts";
import { sightingBlock } from "./step-questions.ts";

const mostListed = 30;
const mostKinds = 3;

/** For keepers those that wait, then one's own; for others one's own. */
export function listObservations(scene: CommunityScene): Handled {
  const own = oldestFirst(
    [...scene.memory.observations.byId].filter(([, { by }]) => by === scene.speaker.id),
  );
  const isKeeper = reaches(scene.speaker.standing, "keeper");
  const blocks = [
    ...(isKeeper ? waitingBlocks(scene) : []),
    ...(own.length === 0 ? [] : [listOf(scene, phrases.ownLead, own)]),
  ];
  const none: Block = { kind: "text", text: isKeeper ? phrases.noneWaiting : phrases.noneRecorded };
  return { blocks: blocks.length === 0 ? [none] : blocks, isPrivate: true };
}

/** Those that wait for a keeper, the oldest first; nothing when there are none. */
export function waitingBlocks(scene: CommunityScene): readonly Block[] {
  const waiting = [...scene.memory.observations.byId].filter(([, { stands }]) => stands === "waiting");
  return waiting.length === 0
    ? []
    : [listOf(scene, phrases.waitingLead(waiting.length), oldestFirst(waiting))];
}

function listOf(
  scene: CommunityScene,
  lead: string,
  observations: readonly (readonly [string, Observation])[],
): Block {
  return {
    kind: "list",
    lead,
    items: observations.slice(0, mostListed).map(([id, one]) => lineOf(scene, id, one)),
  };
}

function lineOf(scene: CommunityScene, id: string, { saw, byName, stands }: Observation): string {
  const part = findPart(knowledgeFor(scene, saw), saw.part)?.name ?? saw.part;
  const built = saw.car.built === undefined ? "" : formatInterval(saw.car.built);
  return phrases.line(id, part, built, byName, phrases.stands[stands]);
}

/** One observation: for its author and keepers whole; for others when it is accepted, without what was said about it. */
export function showObservation(scene: CommunityScene, id: string): Handled {
  const observation = scene.memory.observations.byId.get(id);
  const isKeeper = reaches(scene.speaker.standing, "keeper");
  const isOwn = observation?.by === scene.speaker.id;
  if (observation === undefined || !(isKeeper || isOwn || observation.stands === "accepted")) {
    return { blocks: [{ kind: "text", text: phrases.noSuchObservation(id) }] };
  }
  const { saw, stands, reason } = observation;
  const name = isKeeper || isOwn || saw.credit ? observation.byName : phrases.byMember;
  const told = isKeeper || isOwn ? observation.sayings : [];
  const dialogue: readonly Block[] =
    told.length === 0
      ? []
      : [
          {
            kind: "list",
            lead: phrases.dialogueLead,
            items: told.map((one) => phrases.dialogue(one.name, one.words)),
          },
        ];
  const declined: readonly Block[] =
    reason === null ? [] : [{ kind: "text", text: phrases.declinedBecause(reason), tone: "aside" }];
  return {
    blocks: [
      sightingBlock(scene, saw, phrases.observationLead(id, name, phrases.stands[stands])),
      ...declined,
      ...factsSay(scene, saw),
      ...(isKeeper ? sameCar(scene, id, observation) : []),
      ...(isKeeper && stands === "waiting" ? acceptingChanges(scene, id, observation) : []),
      ...photographs(saw, name),
      ...dialogue,
      ...choices(id, observation, isKeeper, isOwn),
    ],
    // Its author and keepers see what others do not: who saw it, and what was said about it.
    isPrivate: stands !== "accepted" || isKeeper || isOwn,
  };
}

/** Other observations of the same car, told by the digest of its serial number. */
function sameCar({ memory }: CommunityScene, id: string, { saw }: Observation): readonly Block[] {
  const { bySerial, byId } = memory.observations;
  const others = [...(bySerial.get(saw.car.serialDigest ?? "") ?? [])].filter((other) => other !== id).sort();
  if (others.length === 0) return [];
  const named = others.map((other) => {
    const one = byId.get(other);
    const isSamePart = one?.saw.part === saw.part;
    return phrases.sameCarLine(
      other,
      one?.byName ?? "",
      one === undefined ? "" : phrases.stands[one.stands],
      isSamePart,
    );
  });
  return [{ kind: "list", lead: phrases.sameCarLead, items: named }];
}

function factsSay(scene: CommunityScene, saw: Observation["saw"]): readonly Block[] {
  const compiled = knowledgeFor(scene, saw).compiled(saw.part);
  if (compiled === undefined || saw.reports.length === 0) return [];
  const { ranking } = identify(compiled, { car: saw.car, goal: "which-variant", reports: saw.reports });
  const kinds = ranking
    .slice(0, mostKinds)
    .map(({ name, probability }) => `${name}, ${sayProbability(probability)}`);
  return [{ kind: "text", text: phrases.factsSay(kinds.join("; ")) }];
}

function photographs({ photographs: ids }: Observation["saw"], name: string): readonly Block[] {
  return ids.map((photograph, at) => ({
    kind: "photograph",
    photograph,
    alternative: phrases.photograph(at + 1, name),
  }));
}

function choices(id: string, { stands }: Observation, isKeeper: boolean, isOwn: boolean): readonly Block[] {
  const says = [
    ...(isKeeper && stands === "waiting"
      ? [`accept observation ${id}`, `decline observation ${id} because …`, `ask about observation ${id}: …`]
      : []),
    ...(isOwn && stands !== "withdrawn" ? [`edit observation ${id}`, `withdraw observation ${id}`] : []),
  ];
  const label = (say: string) => say.replace(/ observation .*/u, "");
  if (says.length === 0) return [];
  return [
    {
      kind: "choices",
      choices: says.map((say) => ({ id: say.replaceAll(" ", "-"), label: label(say), say })),
    },
  ];
}
