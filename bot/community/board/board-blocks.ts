/** The open-questions board as blocks: by part, what was missing, what is believed, how answers turned out. */
import { featureById } from "../../../knowledge/index.ts";
import { findPart } from "../../conversation/knowledge.ts";
import { carLabels as labels } from "../../conversation/phrases/understood.ts";
import type { Block } from "../../reply.ts";
import type { CommunityScene } from "../affair.ts";
import * as phrases from "../phrases/board.ts";
import { askedKind, QuestionAsked } from "./question-asked.ts";

const mostLines = 12;

const carLabels: ReadonlyMap<string, string> = new Map(
  Object.entries(labels).map(([aspect, label]) => [`car.${aspect}`, label]),
);

export function boardBlocks(scene: CommunityScene): readonly Block[] {
  const asked = (scene.found.get(askedKind.kind) ?? []).flatMap(({ state }) =>
    state === null ? [] : [QuestionAsked.parse(state)],
  );
  if (asked.length === 0) return [{ kind: "text", text: phrases.boardEmpty }];
  const right = asked.filter(({ received }) => received === "right").length;
  const wrong = asked.filter(({ received }) => received === "wrong");
  return [
    { kind: "list", lead: phrases.boardLead(asked.length), items: byPart(scene, asked) },
    ...listOf(phrases.missingLead, missing(scene, asked)),
    ...listOf(phrases.misbeliefsLead, misbeliefs(scene, asked)),
    ...(right + wrong.length === 0
      ? []
      : listOf(phrases.receivedLead(right, wrong.length), wrongByPart(scene, wrong))),
  ];
}

function listOf(lead: string, items: readonly string[]): readonly Block[] {
  return items.length === 0 ? [] : [{ kind: "list", lead, items: items.slice(0, mostLines) }];
}

function byPart(scene: CommunityScene, asked: readonly QuestionAsked[]): readonly string[] {
  return counts(asked.map(({ handbook, part }) => ({ handbook, id: part }))).map(({ key, count }) => {
    const own = asked.filter(({ handbook, part }) => handbook === key.handbook && part === key.id);
    const standing = (stands: QuestionAsked["stands"]) => own.filter((one) => one.stands === stands).length;
    return phrases.boardLine(
      partName(scene, key.handbook, key.id),
      count,
      standing("answered"),
      standing("left-open"),
    );
  });
}

/** What could not be told, and of cases left open what would have told their kinds apart. */
function missing(scene: CommunityScene, asked: readonly QuestionAsked[]): readonly string[] {
  const features = asked.flatMap(({ handbook, part, cannotTell, wouldTell, stands }) =>
    [...new Set([...cannotTell, ...(stands === "left-open" ? wouldTell : [])])].map((feature) => ({
      handbook,
      id: `${part} ${feature}`,
    })),
  );
  return counts(features).map(({ key, count }) => {
    const [part = "", feature = ""] = key.id.split(" ");
    const kind = findPart(known(scene, key.handbook), part);
    const name = (kind && featureById(kind, feature)?.name) ?? carLabels.get(feature) ?? feature;
    return phrases.missingLine(partName(scene, key.handbook, part), name, count);
  });
}

function misbeliefs(scene: CommunityScene, asked: readonly QuestionAsked[]): readonly string[] {
  const stated = asked.flatMap((one) =>
    one.misbeliefs.map(({ part, misbelief }) => ({ handbook: one.handbook, id: `${part} ${misbelief}` })),
  );
  return counts(stated).map(({ key, count }) => {
    const [part = "", id = ""] = key.id.split(" ");
    const claim = findPart(known(scene, key.handbook), part)?.misbeliefs.find((one) => one.id === id)?.claim;
    return phrases.misbeliefLine(claim ?? id, count);
  });
}

function wrongByPart(scene: CommunityScene, wrong: readonly QuestionAsked[]): readonly string[] {
  return counts(wrong.map(({ handbook, part }) => ({ handbook, id: part }))).map(({ key, count }) =>
    phrases.wrongLine(partName(scene, key.handbook, key.id), count),
  );
}

interface Key {
  readonly handbook: string;
  readonly id: string;
}

/** How often each turns up, the most often first, ties by handbook and id. */
function counts(keys: readonly Key[]): readonly { readonly key: Key; readonly count: number }[] {
  const found = new Map<string, { key: Key; count: number }>();
  for (const key of keys) {
    const name = `${key.handbook} ${key.id}`;
    const entry = found.get(name) ?? { key, count: 0 };
    found.set(name, { key, count: entry.count + 1 });
  }
  return [...found]
    .sort(([one, { count }], [other, { count: of }]) => of - count || (one < other ? -1 : 1))
    .map(([, entry]) => entry);
}

function known({ loaded, knowledge }: CommunityScene, handbook: string) {
  return loaded.find((one) => one.handbook.cover.id === handbook) ?? knowledge;
}

function partName(scene: CommunityScene, handbook: string, part: string): string {
  return findPart(known(scene, handbook), part)?.name ?? part;
}
