import type { Message, UserFromGetMe } from "grammy/types";
import { expect, test } from "vitest";
import { heardIn } from "../../../adapters/telegram/heard.ts";

const me = { id: 7, is_bot: true, first_name: "Mark", username: "mark_bot" } as UserFromGetMe;
const anna = { id: 1, is_bot: false, first_name: "Anna" };
const hans = { id: 2, is_bot: false, first_name: "Hans" };
const club = { id: -100, type: "supergroup", title: "Club" };

/** A message in the group by Anna; entities are found as the platform marks commands and names. */
function said(text: string, more: object = {}): Message {
  const entities = [...text.matchAll(/(?:^\/|@)[\w@]+/gu)].map(({ 0: found, index }) => ({
    type: found.startsWith("/") ? "bot_command" : "mention",
    offset: index,
    length: found.length,
  }));
  return { message_id: 9, date: 1, from: anna, chat: club, text, entities, ...more } as unknown as Message;
}

const heard = (message: Message, isSetAside = false) => heardIn(message, me, isSetAside);

test.each([
  ["chatter", said("nice weather")],
  ["another bot", said("@mark_bot hello", { from: { ...hans, is_bot: true } })],
  ["what was posted by way of a bot", said("@mark_bot hello", { via_bot: me })],
  ["a channel's post passed on", said("@mark_bot hello", { is_automatic_forward: true })],
  [
    "somebody who speaks as another channel",
    said("@mark_bot hello", { sender_chat: { id: -5, type: "channel", title: "C" } }),
  ],
  ["a command of another bot", said("/help@other_bot")],
  ["an answer to somebody else", said("two screws", { reply_to_message: { message_id: 3, from: hans } })],
  [
    "an answer to it that calls somebody else",
    said("@hans look", { reply_to_message: { message_id: 3, from: me } }),
  ],
  ["a lone sign in answer to it", said("?", { reply_to_message: { message_id: 3, from: me } })],
])("it is silent at %s", (_, message) => {
  expect(heard(message)).toBeUndefined();
});

test("where everything is for it, it hears all but what is between others", () => {
  expect(heard(said("two screws"), true)).toEqual({ text: "two screws", isOverheard: true });
  expect(
    heard(said("two screws", { reply_to_message: { message_id: 3, from: hans } }), true),
  ).toBeUndefined();
  expect(heard(said("@hans two screws"), true)).toBeUndefined();
  expect(heard(said("!"), true)).toBeUndefined();
});

test("its name is taken out of the words, wherever it stands and however it is written", () => {
  expect(heard(said("@Mark_Bot, two screws"))).toEqual({ text: "two screws" });
  expect(heard(said("two screws, what is it @mark_bot ?"))).toEqual({ text: "two screws, what is it ?" });
  const byId = { entities: [{ type: "text_mention", offset: 0, length: 4, user: me }] };
  expect(heard(said("Mark two screws", byId))).toEqual({ text: "Mark two screws" });
});

test("a command keeps what stands behind it", () => {
  expect(heard(said("/Pin@mark_bot two screws"))).toEqual({
    command: "pin",
    isNamed: true,
    text: "two screws",
  });
});

test("the message that opened a topic is not answered by what is written in it", () => {
  const opening = { message_id: 5, from: me, forum_topic_created: { name: "Mirrors", icon_color: 1 } };
  const inTopic = { is_topic_message: true, message_thread_id: 5, reply_to_message: opening };
  expect(heard(said("two screws", inTopic))).toBeUndefined();
  expect(heard(said("@mark_bot two screws", inTopic))).toEqual({ text: "two screws" });
});

test("a post that is asked about is somebody else's words, or the part of them that was marked", () => {
  const post = { message_id: 3, from: hans, text: "mirror with two screws, lovely car" };
  expect(heard(said("/ask", { reply_to_message: post }))?.quoted).toMatchObject({
    from: hans,
    text: post.text,
  });
  const marked = { reply_to_message: post, quote: { text: "two screws", position: 12 } };
  expect(heard(said("@mark_bot", marked))?.quoted?.text).toBe("two screws");
  expect(heard(said("@mark_bot", { reply_to_message: { message_id: 3, from: me, text: "Where" } }))).toEqual({
    text: "",
    inAnswerTo: 3,
  });
});
