/** What is left of a record when somebody is taken out of it: pure, for every version there ever was. */

import { z } from "zod";
import type { Case, CaseFacts } from "../../conversation/case.ts";
import { Conversation, forgotten, readConversation } from "../../conversation/conversation.ts";
import { HandedOver } from "../hand-over/handed-over.ts";
import { Keepers } from "../keepers/keepers-record.ts";
import { WaitingNotices } from "../notices/notices.ts";
import { Observation } from "../observations/observation.ts";
import { nobody } from "../person/person-record.ts";
import { toldByKeeper } from "../phrases/keepers.ts";
import { someone } from "../phrases/privacy.ts";
import { Pin } from "../pins/pin.ts";

/** A conversation without somebody's cases, facts and words; undefined when nothing readable is left. */
export function conversationWithout(person: string, state: unknown): Conversation | undefined {
  const conversation = readConversation(state);
  if (conversation === undefined) return undefined;
  const gone = new Set(conversation.cases.filter(({ owner }) => owner === person).map(({ id }) => id));
  const cases = conversation.cases.filter(({ id }) => !gone.has(id)).map((kept) => caseWithout(person, kept));
  const inHand = Object.fromEntries(
    Object.entries(conversation.inHand).filter(([who, id]) => who !== person && !gone.has(id)),
  );
  const { latest, errands = [], people = [], shown = [] } = conversation;
  const { lastGone } = (gone.size === 0 ? undefined : forgotten(conversation)) ?? conversation;
  return Conversation.parse({
    version: conversation.version,
    cases,
    inHand,
    latest: latest !== null && gone.has(latest) ? (cases.at(-1)?.id ?? null) : latest,
    errands: errands.filter((errand) => errand.person !== person),
    people: people.filter((one) => one !== person),
    shown: shown.filter((one) => !gone.has(one.case)),
    ...(lastGone === undefined ? {} : { lastGone }),
  });
}

function caseWithout(person: string, kept: Case): Case {
  const without = (facts: CaseFacts): CaseFacts => ({
    ...facts,
    reports: facts.reports.filter(({ by }) => by !== person),
  });
  return { ...kept, facts: without(kept.facts), history: kept.history.map(without) };
}

/** A sighting that others go by stays, and says nothing of who saw it; one that counts for nobody goes. */
export function sightingWithout(state: unknown): Observation | undefined {
  const parsed = Observation.safeParse(state);
  if (!parsed.success || parsed.data.stands !== "accepted") return undefined;
  const { saw } = parsed.data;
  const { maskedSerial: _, serialDigest: __, ...car } = saw.car;
  return {
    ...parsed.data,
    by: nobody,
    byName: someone,
    conversation: nobody,
    reason: null,
    sayings: [],
    saw: {
      ...saw,
      car,
      reports: saw.reports.map((report) => ({ ...report, by: nobody, words: "" })),
      photographs: [],
      links: [],
      credit: false,
    },
  };
}

/** What somebody said about an observation of another's stays, without the name. */
export function observationWithout(person: string, state: unknown): Observation | undefined {
  const parsed = Observation.safeParse(state);
  return parsed.success
    ? { ...parsed.data, sayings: sayingsWithout(person, parsed.data.sayings) }
    : undefined;
}

function sayingsWithout<Saying extends { readonly by: string; readonly name: string }>(
  person: string,
  sayings: readonly Saying[],
): readonly Saying[] {
  return sayings.map((one) => (one.by === person ? { ...one, by: nobody, name: someone } : one));
}

const Held = z.looseObject({ by: z.array(z.string()) });

/** Whether the photograph is somebody's. */
export function isHeldBy(person: string, state: unknown): boolean {
  return Held.safeParse(state).data?.by.includes(person) ?? false;
}

/** A photograph that others have sent too stays theirs. */
export function photographWithout(person: string, state: unknown): unknown {
  const parsed = Held.safeParse(state);
  if (!parsed.success) return undefined;
  const by = parsed.data.by.filter((holder) => holder !== person);
  return by.length === 0 ? undefined : { ...parsed.data, by };
}

/** A pinned answer stays, because others go by it; the name goes. */
export function pinWithout(person: string, state: unknown): Pin | undefined {
  const parsed = Pin.safeParse(state);
  if (!parsed.success) return undefined;
  return parsed.data.author === person
    ? { ...parsed.data, author: nobody, authorName: someone }
    : parsed.data;
}

export function keepersWithout(person: string, state: unknown): Keepers | undefined {
  const parsed = Keepers.safeParse(state);
  if (!parsed.success) return undefined;
  const { roles, invitations } = parsed.data;
  const named = (by: string) => (by === person ? nobody : by);
  return {
    roles: roles.filter((role) => role.person !== person).map((role) => ({ ...role, by: named(role.by) })),
    invitations: invitations.map((one) => ({ ...one, by: named(one.by) })),
  };
}

/** What others said to it goes too: it is about their case. What they said to others' cases stays, without the name. */
export function handedOverWithout(person: string, state: unknown): HandedOver | undefined {
  const parsed = HandedOver.safeParse(state);
  if (!parsed.success || parsed.data.asker === person) return undefined;
  return { ...parsed.data, sayings: sayingsWithout(person, parsed.data.sayings) };
}

/** What was to be told to somebody who is gone, or is about them, is told to nobody; what they said to others is, without the name. */
export function noticesWithout(
  { person, names }: { readonly person: string; readonly names: readonly string[] },
  ids: readonly string[],
  state: unknown,
): WaitingNotices | undefined {
  const parsed = WaitingNotices.safeParse(state);
  if (!parsed.success) return undefined;
  const isAbout = (notice: WaitingNotices["waiting"][number]) => {
    const words = JSON.stringify(notice.blocks);
    return (
      (notice.to.audience === "person" && notice.to.person === person) || ids.some((id) => words.includes(id))
    );
  };
  const kept = parsed.data.waiting.filter((notice) => !isAbout(notice));
  return WaitingNotices.parse({ waiting: toldByNobody(names, kept) });
}

/** What a keeper told, told by somebody who has left: it begins with the name. */
function toldByNobody(names: readonly string[], kept: unknown): unknown {
  const inJson = (name: string) => JSON.stringify(toldByKeeper(name)).slice(0, -1);
  const text = names.reduce(
    (said, name) => said.replaceAll(inJson(name), inJson(someone)),
    JSON.stringify(kept),
  );
  return JSON.parse(text);
}

const Transcript = z.looseObject({ turns: z.array(z.unknown()) });

/** A page of somebody else's: what a keeper of these names told stays without the name, and turns in which `tells` finds something go. */
export function transcriptWithout(
  names: readonly string[],
  tells: (kept: unknown) => boolean,
  state: unknown,
): unknown {
  const parsed = Transcript.safeParse(state);
  if (!parsed.success) return state;
  const turns = parsed.data.turns.map((turn) => toldByNobody(names, turn)).filter((turn) => !tells(turn));
  return { ...parsed.data, turns };
}
