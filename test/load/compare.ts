// What the store holds, beside what it must hold after what was said and answered: nothing lost, nothing twice, nothing nobody asked for.
import { caseInHand, readConversation } from "../../bot/conversation/conversation.ts";
import type { Store, Version } from "../../bot/index.ts";
import type { Member, Spoken } from "./crowd.ts";

/** What does not agree, a line each. Nobody may be speaking meanwhile. */
export async function differences(store: Store, members: readonly Member[]): Promise<readonly string[]> {
  const found: string[] = [];
  for (const member of members) {
    const history = await store.history("conversation", member.speaker.conversation);
    found.push(...messageDifferences(member, history), ...factDifferences(member, history.at(-1)?.state));
  }
  for (const kind of ["observation", "pin"] as const)
    found.push(...(await madeDifferences(store, members, kind)));
  return found;
}

function messageDifferences(member: Member, history: readonly Version[]): readonly string[] {
  const { spoken, speaker } = member;
  const where = speaker.conversation;
  const kept = history.map(({ message }) => message ?? "");
  const twice = kept.filter((id, index) => kept.indexOf(id) < index);
  const found = twice.map((id) => `${where}: ${id} was taken twice`);
  const answered = spoken.filter(({ isAnswered }) => isAnswered);
  // A page's messages have ids that only the program knows; the same form has the same one, so they can be counted.
  if (speaker.door === "web") {
    const isFit = kept.length >= answered.length && kept.length <= spoken.length;
    return isFit ? found : [...found, `${where}: ${kept.length} kept of ${answered.length} answered`];
  }
  const said = new Set(spoken.flatMap(({ ids }) => ids));
  const isKept = ({ ids }: Spoken) => ids.some((id) => kept.includes(id ?? ""));
  return [
    ...found,
    ...answered
      .filter((one) => !isKept(one))
      .map((one) => `${where}: "${one.saying.words}" was answered and is lost`),
    ...kept.filter((id) => !said.has(id)).map((id) => `${where}: ${id} was never said`),
  ];
}

function factDifferences({ spoken, speaker }: Member, state: unknown): readonly string[] {
  const facts = spoken.flatMap(({ saying, isAnswered }) => (isAnswered && saying.fact ? [saying.fact] : []));
  if (facts.length === 0) return [];
  const conversation = readConversation(state);
  const now = conversation === undefined ? undefined : caseInHand(conversation, speaker.person);
  const reports = now?.facts.reports ?? [];
  return facts.flatMap(([feature, told]) => {
    const states = reports.flatMap(({ feature: of, value }) =>
      of === feature && value.kind === "state" ? [value.state] : [],
    );
    // Said again because nobody answered, it may stand there more than once.
    return states.length > 0 && states.every((state) => state === told)
      ? []
      : [
          `${speaker.conversation}: ${feature} was told to be ${told} and is kept as ${states.join(", ") || "nothing"}`,
        ];
  });
}

/** Who made how many, counted by who wrote the first version. */
async function madeDifferences(
  store: Store,
  members: readonly Member[],
  kind: "observation" | "pin",
): Promise<readonly string[]> {
  const made = new Map<string, number>();
  for (const id of await store.ids(kind)) {
    const by = (await store.history(kind, id))[0]?.by ?? "";
    made.set(by, (made.get(by) ?? 0) + 1);
  }
  return members.flatMap(({ speaker, spoken }) => {
    const asked = spoken.filter(({ saying }) => saying.makes === kind);
    const least = asked.filter(({ isAnswered }) => isAnswered).length;
    const is = made.get(speaker.person) ?? 0;
    return is >= least && is <= asked.length
      ? []
      : [`${speaker.conversation}: ${is} of kind ${kind} kept, ${least} were acknowledged`];
  });
}
