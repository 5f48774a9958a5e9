/** A pressed button to the bot and its reply into the message that was pressed. What nobody offered changes nothing. */
import type { CallbackQuery } from "grammy/types";
import { type Found, pressedIn } from "./buttons.ts";
import type { Door } from "./door.ts";
import { patiently } from "./patiently.ts";
import { buttonHasLapsed } from "./phrases.ts";
import { type Place, placeOf } from "./places.ts";
import { changeShown, keyOf, type Shown, shownIn, withBoard } from "./shown.ts";
import { saidBy, speakerOf } from "./speaker.ts";
import { tellReply } from "./tell.ts";
import { troubleOf } from "./trouble.ts";

export async function hearPress(door: Door, query: CallbackQuery): Promise<void> {
  const { message } = query;
  if (message === undefined) return acknowledge(door, query, buttonHasLapsed);
  const place = await placeOf(door.records, message, query.from.id);
  const shown = await shownIn(door.store, place.conversation);
  const found =
    pressedIn(shown, query.data ?? "") ?? begunBy(shown, keyOf(place.conversation, nameOf(query)));
  if (found === undefined) return acknowledge(door, query, buttonHasLapsed);
  const board = await adopted(door, place, found, message.message_id);
  const { pressed } = found;
  const reply = await door.bot.receive({
    ...(await saidBy(door, place, speakerOf(query.from, undefined))),
    ...board.saidIn,
    id: nameOf(query),
    case: board.case,
    ...("say" in pressed ? { text: pressed.say } : { answer: pressed.answer }),
  });
  await acknowledge(door, query);
  await tellReply(door, {
    place,
    person: query.from.id,
    message: nameOf(query),
    reply,
    after: message.message_id,
    said: { by: "pressing", board },
    ...(board.saidIn === undefined ? {} : { saidIn: board.saidIn }),
  });
}

function nameOf({ id }: CallbackQuery): string {
  return `press:${id}`;
}

/**
 * A press that is heard once more, because its answer could not be shown: what it pressed has given its place to that answer. The bot goes by
 * the name of the press and gives its first reply, whatever is said.
 */
function begunBy({ boards }: Shown, key: string): Found | undefined {
  const board = boards.find((one) => one.key === key);
  return board === undefined ? undefined : { board, pressed: { say: "" } };
}

/** A message whose number was lost on the way is known again once somebody presses it. */
async function adopted(door: Door, place: Place, { board }: Found, message: number): Promise<Found["board"]> {
  if (board.messages.includes(message)) return board;
  const known = { ...board, messages: [message], isSent: true };
  await changeShown(door.store, place.conversation, "found again", (shown) => withBoard(shown, known));
  return known;
}

/** The press stops turning; one that waited too long needs no answer any more. */
async function acknowledge({ api }: Door, { id }: CallbackQuery, text?: string): Promise<void> {
  try {
    await patiently(() => api.answerCallbackQuery(id, text === undefined ? {} : { text }));
  } catch (failure) {
    if (troubleOf(failure).kind === "other" && !`${failure}`.includes("query")) throw failure;
  }
}
