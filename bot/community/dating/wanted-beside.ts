/** Beside the answer about somebody's own car: that it is one of those wanted, and whether what they told may be noted. */
import { type PartKind, type Report, variantById } from "../../../knowledge/index.ts";
import type { Case } from "../../conversation/case.ts";
import { caseInHand, pinsShown } from "../../conversation/conversation.ts";
import { findPart } from "../../conversation/knowledge.ts";
import type { StepTaken } from "../../conversation/step.ts";
import type { Beside, CommunityScene } from "../affair.ts";
import { reaches } from "../keepers/standing.ts";
import * as phrases from "../phrases/dating.ts";
import { nameOf } from "./changeover-chart.ts";
import { tallyOfPart } from "./part-asked.ts";
import { type WantedOfChange, wantedOf } from "./wanted-cars.ts";

/** Marks the case in which it was offered, so that it is offered once. */
const mark = "car wanted";

export function wantedBeside(
  scene: CommunityScene,
  { conversation: after, reply }: StepTaken,
): Beside | undefined {
  const kept = caseInHand(after, scene.speaker.id);
  if (kept === undefined || !reply.summary.done || !isOwnCar(scene, kept)) return undefined;
  if (pinsShown(scene.conversation, kept.id).includes(mark)) return undefined;
  const part = findPart(scene.knowledge, kept.facts.part);
  if (part === undefined || hasRecorded(scene, kept)) return undefined;
  const { handbook } = scene.knowledge;
  const change = wantedOf(handbook, part, tallyOfPart(scene, scene.knowledge, part)).find((one) =>
    isWanted(part, kept, one),
  );
  if (change === undefined) return undefined;
  const { old, new: fresh } = change.succession;
  return {
    last: [
      { kind: "text", text: phrases.offer(nameOf(part, old), nameOf(part, fresh)) },
      { kind: "choices", choices: [{ id: "note-it", label: phrases.noteIt, say: phrases.noteIt }] },
    ],
    shown: { case: kept.id, marks: [mark] },
  };
}

/** Somebody's own car, its build date to the month, and something seen on a part that did not come to it later. */
function isOwnCar({ speaker }: CommunityScene, { owner, facts: { car, reports } }: Case): boolean {
  const { built, isLoosePart, grade } = car;
  if (owner !== speaker.id || !reaches(speaker.standing, "contributor")) return false;
  if (built === undefined || built.to - built.from >= 1.5) return false;
  const isLater = ({ value }: Report) =>
    value.kind === "date" && value.readings.every(({ interval }) => interval.from >= built.to);
  const isReplaced = isLoosePart === true || grade === "known-replaced" || reports.some(isLater);
  return !isReplaced && reports.some(({ value }) => value.kind !== "cannot-tell");
}

function hasRecorded({ memory, speaker }: CommunityScene, { facts, handbook }: Case): boolean {
  const { car, part } = facts;
  return [...(memory.observations.byPerson.get(speaker.id) ?? [])].some((id) => {
    const saw = memory.observations.byId.get(id)?.saw;
    return saw?.handbook === handbook && saw.part === part && saw.car.built?.from === car.built?.from;
  });
}

/** Built in one of the months, and of a trim and market that both kinds were fitted to. */
function isWanted(part: PartKind, { facts: { car } }: Case, { succession, wanted }: WantedOfChange): boolean {
  const { built } = car;
  if (built === undefined) return false;
  const meets = wanted.some((month) => built.from < month.built.to && built.to > month.built.from);
  const agrees = (allowed: readonly string[], known: string | undefined) =>
    allowed.length === 0 || known === undefined || allowed.includes(known);
  return (
    meets &&
    [succession.old, succession.new].every((id) =>
      variantById(part, id)?.fitted.some(
        ({ models, trims, markets }) =>
          agrees(models, car.model) && agrees(trims, car.trim) && agrees(markets, car.market),
      ),
    )
  );
}
