/** The errand of pinning: the draft is shown, narrowed or widened in words, and kept when its keeper says so. */
import { z } from "zod";
import {
  formatInterval,
  type Interval,
  monthAndYear,
  parseDateText,
  readMessage,
} from "../../../knowledge/index.ts";
import type { CaseFacts } from "../../conversation/case.ts";
import { caseInHand } from "../../conversation/conversation.ts";
import { goalWords } from "../../conversation/phrases/goals.ts";
import { listed } from "../../conversation/phrases/grammar.ts";
import type { Block, Choice } from "../../reply.ts";
import type { CommunityScene, Handled } from "../affair.ts";
import { knowledgeFor } from "../observations/step-answers.ts";
import * as phrases from "../phrases/pins.ts";
import { newRecord } from "../record-change.ts";
import { isRequest, leavesIt, spoken } from "../spoken.ts";
import { Pin, pinKind, standingPins } from "./pin.ts";
import { disputedHere } from "./pin-dispute.ts";
import { scopesMeet } from "./pin-scope.ts";
import { namesOf } from "./scope-words.ts";

export const pinningErrand = "pins";

/** Begins a draft, and says how it is changed. */
export function showDraft(scene: CommunityScene, draft: Pin): Handled {
  return shownDraft(scene, draft, { how: true });
}

function shownDraft(
  scene: CommunityScene,
  draft: Pin,
  { remark, how }: { readonly remark?: string; readonly how: boolean },
): Handled {
  const { speaker } = scene;
  const items = [
    { label: phrases.labelWords, value: draft.text },
    { label: phrases.labelScope, value: scopeInWords(scene, draft) },
    ...(draft.says.length === 0
      ? []
      : [{ label: phrases.labelSays, value: kinds(scene, draft, draft.says) }]),
    ...(draft.sources.length === 0 ? [] : [{ label: phrases.labelSources, value: draft.sources.join("; ") }]),
    ...(draft.review === null ? [] : [{ label: phrases.labelReview, value: formatInterval(draft.review) }]),
  ];
  return {
    blocks: [
      ...(remark === undefined ? [] : [{ kind: "text", text: remark, tone: "aside" } as const]),
      { kind: "understood", lead: phrases.draftLead, items, remarks: [] },
      ...(how ? [{ kind: "text", text: phrases.draftHow, tone: "aside" } as const] : []),
      { kind: "choices", choices: choicesFor(scene, draft) },
    ],
    errand: { person: speaker.id, affair: pinningErrand, state: z.json().parse(draft) },
  };
}

/** What the draft's keeper said next; undefined when it is not about the draft. */
export function resumePinning(scene: CommunityScene, state: unknown): Handled | undefined {
  const said = spoken(scene.message);
  if (said === undefined) return undefined;
  // One that another version of this program began is left lying.
  const begun = Pin.safeParse(state);
  if (!begun.success) return undefined;
  const draft = begun.data;
  if (isRequest(said, /^(?:keep it|pin it|yes|yes please)$/u)) return keep(scene, draft);
  if (leavesIt(said) || isRequest(said, /^no$/u)) {
    return { blocks: [{ kind: "text", text: phrases.notPinned }], errand: null };
  }
  const changed = changedDraft(scene, draft, said);
  if (changed === undefined) return undefined;
  return changed === "not read"
    ? shownDraft(scene, draft, { remark: phrases.draftNotRead(said), how: true })
    : shownDraft(scene, changed, { how: false });
}

function keep(scene: CommunityScene, draft: Pin): Handled {
  const id = scene.newId("pin");
  const meets = standingPins(scene.memory.pins)
    .filter(([, other]) => scopesMeet(draft.scope, other.scope))
    .map(([other]) => other);
  const dispute = disputedHere(scene, draft);
  const lines = [
    phrases.pinned(id),
    ...(meets.length === 0 ? [] : [phrases.overlapsWith(meets)]),
    ...(dispute === undefined ? [] : [dispute]),
  ];
  return {
    blocks: lines.map((text): Block => ({ kind: "text", text })),
    errand: null,
    changes: [newRecord(pinKind, id, phrases.whyPinned(id, draft.text), { ...draft, at: scene.at })],
  };
}

function changedDraft(scene: CommunityScene, draft: Pin, said: string): Pin | "not read" | undefined {
  const { scope } = draft;
  const widest = { built: null, models: [], trims: [], markets: [] } as const;
  if (isRequest(said, /^for all cars$/u)) return { ...draft, scope: { ...scope, ...widest, variants: [] } };
  if (isRequest(said, /^for any question$/u)) return { ...draft, scope: { ...scope, goal: null } };
  if (isRequest(said, /^only for cars like this one$/u))
    return { ...draft, scope: { ...scope, ...carOf(scene) } };
  const [, verb, words = ""] = /^(only for|sources?:|says|review by|words:)\s*(.+)$/iu.exec(said) ?? [];
  switch (verb?.toLowerCase()) {
    case "only for":
      return narrowed(scene, draft, words);
    case "source:":
    case "sources:":
      return {
        ...draft,
        sources: words
          .split(";")
          .map((one) => one.trim())
          .filter((one) => one !== ""),
      };
    case "says": {
      const says = variantsIn(scene, draft, words);
      return says.length === 0 ? "not read" : { ...draft, says };
    }
    case "review by": {
      const review = reviewDate(words);
      return review === undefined ? "not read" : { ...draft, review };
    }
    case "words:":
      return { ...draft, text: words };
    default:
      return undefined;
  }
}

/** The time by which something is to be looked at again; undefined: the words name none. */
export function reviewDate(words: string): Interval | undefined {
  return parseDateText(words) ?? monthAndYear(words);
}

/** The scope with what the words name: a build date, models, trims, markets, kinds. */
function narrowed(scene: CommunityScene, draft: Pin, words: string): Pin | "not read" {
  const read = readMessage(
    `my car: ${words}`,
    knowledgeFor(scene, draft.scope).lexicon,
    readingContext(scene, draft),
  );
  const ids = (about: "model" | "trim" | "market") =>
    read.car.flatMap((one) => (one.about === about ? [one.id] : []));
  const built = read.car.flatMap((one): readonly Interval[] =>
    (one.about === "built" || one.about === "model-year") && one.interval !== undefined ? [one.interval] : [],
  );
  const variants = variantsIn(scene, draft, words);
  const [first] = built;
  const last = built.at(-1);
  const span = first === undefined || last === undefined ? undefined : { from: first.from, to: last.to };
  const found = { models: ids("model"), trims: ids("trim"), markets: ids("market"), variants };
  if (span === undefined && Object.values(found).every((list) => list.length === 0)) return "not read";
  const { scope } = draft;
  return {
    ...draft,
    scope: {
      ...scope,
      built: span ?? scope.built,
      models: found.models.length > 0 ? found.models : scope.models,
      trims: found.trims.length > 0 ? found.trims : scope.trims,
      markets: found.markets.length > 0 ? found.markets : scope.markets,
      variants: variants.length > 0 ? variants : scope.variants,
    },
  };
}

function variantsIn(scene: CommunityScene, draft: Pin, words: string): readonly string[] {
  const { lexicon } = knowledgeFor(scene, draft.scope);
  const { variants } = readMessage(words, lexicon, readingContext(scene, draft));
  return [...new Set(variants.filter(({ part }) => part === draft.scope.part).map(({ variant }) => variant))];
}

function readingContext({ today }: CommunityScene, { scope }: Pin) {
  return { today, ...(scope.part === null ? {} : { part: scope.part }) };
}

/** What is known of the car in hand, as conditions. */
function carOf({
  conversation,
  speaker,
}: CommunityScene): Pick<Pin["scope"], "built" | "models" | "trims" | "markets"> {
  const car: CaseFacts["car"] = caseInHand(conversation, speaker.id)?.facts.car ?? {};
  const listOf = (id: string | undefined) => (id === undefined ? [] : [id]);
  return {
    built: car.built ?? null,
    models: listOf(car.model),
    trims: listOf(car.trim),
    markets: listOf(car.market),
  };
}

function choicesFor(scene: CommunityScene, { scope }: Pin): readonly Choice[] {
  const car = carOf(scene);
  const hasCar = car.built !== null || car.models.length + car.trims.length + car.markets.length > 0;
  const isOpen =
    scope.built === null && scope.models.length + scope.trims.length + scope.markets.length === 0;
  return [
    phrases.keepIt,
    ...(hasCar && isOpen ? [phrases.carsLikeThis] : []),
    ...(isOpen ? [] : [phrases.forAllCars]),
    ...(scope.goal === null ? [] : [phrases.forAnyQuestion]),
    phrases.leaveIt,
  ].map((say) => ({ id: say.replaceAll(" ", "-"), label: say, say }));
}

/** "rear spoiler; asked which kind it is; cars built 1980; Shrike S". */
export function scopeInWords(scene: CommunityScene, { scope }: Pick<Pin, "scope">): string {
  const { part, goal, built, question } = scope;
  const names = namesOf(scene, scope);
  const cars = [...(built === null ? [] : [phrases.scopeBuilt(formatInterval(built))]), ...names.cars];
  return [
    ...(part === null ? [] : [phrases.scopePart(names.part)]),
    ...(goal === null ? [] : [phrases.scopeGoal(goalWords[goal])]),
    ...(question === null ? [] : [phrases.scopeQuestion(question)]),
    ...(cars.length > 0 ? cars : part === null ? [] : [phrases.anyCar]),
    ...(scope.variants.length === 0 ? [] : [phrases.scopeKinds(listed(names.variants(scope.variants)))]),
  ].join("; ");
}

function kinds(scene: CommunityScene, { scope }: Pin, ids: readonly string[]): string {
  return listed(namesOf(scene, scope).variants(ids));
}
