/** What was learnt, for whoever collects messages: how much there was to learn from, and of what there is too little. */
import {
  type Handbook,
  isOftenTold,
  leastTimes,
  type PartKind,
  stateKey,
  type TaughtMessage,
  timesTold,
} from "../../../knowledge/index.ts";

/** Of a state that fewer messages tell little more is known than its names; common practice, no source. */
const fewMessages = 5;

/** Before it is learnt from them, because that takes a while. */
export function messagesAsText(messages: readonly TaughtMessage[]): readonly string[] {
  const told = messages.reduce((sum, each) => sum + each.told.length, 0);
  const telling = messages.filter((each) => each.told.length > 0).length;
  return [
    `${counted(messages.length, "message", "messages")}: ${counted(telling, "tells", "tell")} ${counted(told, "state", "states")}, ` +
      `${counted(messages.length - telling, "tells", "tell")} none`,
    "learning …",
  ];
}

/** A line for each part kind, and under one that was learnt the states that few messages tell. */
export function learntAsText({ parts }: Handbook, messages: readonly TaughtMessage[]): readonly string[] {
  const times = timesTold(messages);
  return parts.flatMap((part) => partAsText(part, times));
}

function partAsText(part: PartKind, times: ReadonlyMap<string, number>): readonly string[] {
  const states = statesOf(part).map((state) => ({ ...state, told: times.get(state.key) ?? 0 }));
  if (states.length === 0) return [];
  const told = states.reduce((sum, each) => sum + each.told, 0);
  const sizes = `${part.id}: ${counted(states.length, "state", "states")}, told ${told === 1 ? "once" : `${told} times`}`;
  const isLearnt = isOftenTold(
    states.map(({ key }) => key),
    times,
  );
  if (!isLearnt) {
    return [
      `${sizes}; too few to learn from (${leastTimes * states.length} are needed), read by names as before`,
    ];
  }
  const few = states.filter((each) => each.told < fewMessages);
  if (few.length === 0) return [`${sizes}; learnt, each from ${fewMessages} messages or more`];
  return [
    `${sizes}; learnt, but little of those told in fewer than ${fewMessages} messages:`,
    ...few.map(({ feature, state, told: times }) => `  ${feature}: ${state} ${times}`),
  ];
}

function statesOf({ id: part, features }: PartKind) {
  return features.flatMap((feature) =>
    feature.kind !== "states"
      ? []
      : feature.states.map(({ id: state }) => ({
          feature: feature.id,
          state,
          key: stateKey({ part, feature: feature.id, state }),
        })),
  );
}

function counted(count: number, one: string, many: string): string {
  return `${count} ${count === 1 ? one : many}`;
}
