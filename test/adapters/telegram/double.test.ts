// The double is only worth something if it refuses what the platform refuses: each of these would pass a lenient one.
import { Api, GrammyError, InputFile } from "grammy";
import { afterAll, beforeAll, expect, test } from "vitest";
import { readHtml } from "../../doubles/telegram/html-entities.ts";
import { openTelegramDouble, type TelegramDouble } from "../../doubles/telegram/index.ts";

let double: TelegramDouble;
let api: Api;

beforeAll(async () => {
  double = await openTelegramDouble();
  api = new Api(double.token, { apiRoot: double.root });
  double.people.person(1, "Ina");
  double.people.privateChat(1);
});

afterAll(() => double.close());

async function refusal(call: Promise<unknown>): Promise<string> {
  return call.then(
    () => "taken",
    (failure: unknown) => (failure instanceof GrammyError ? failure.description : `${failure}`),
  );
}

const html = { parse_mode: "HTML" } as const;
const button = (data: string) => ({
  reply_markup: { inline_keyboard: [[{ text: "x", callback_data: data }]] },
});

test("parameters that are unknown, missing or of another type are refused, and noted", async () => {
  expect(await refusal(api.raw.sendMessage({ chat_id: 1 } as never))).toContain("text is required");
  expect(await refusal(api.raw.sendMessage({ chat_id: 1, text: "a", colour: 1 } as never))).toContain(
    "no parameter colour",
  );
  expect(await refusal(api.raw.sendMessage({ chat_id: 1, text: 5 } as never))).toContain("String is needed");
  expect(await refusal(api.raw.setMyCommands({ commands: [{ command: "a" }] } as never))).toContain(
    "description is required",
  );
  expect(double.violations).toHaveLength(4);
});

test("texts are held to the platform's lengths, after their entities are read", async () => {
  expect(await refusal(api.sendMessage(1, "x".repeat(4097)))).toContain("too long");
  expect(await refusal(api.sendMessage(1, `<b>${"&lt;".repeat(4096)}</b>`, html))).toBe("taken");
  expect(await refusal(api.sendMessage(1, "<b> </b>", html))).toContain("empty");
  const photo = new InputFile(Buffer.from("picture"));
  expect(await refusal(api.sendPhoto(1, photo, { caption: "x".repeat(1025) }))).toContain(
    "caption is too long",
  );
  expect(await refusal(api.sendMediaGroup(1, [{ type: "photo", media: photo }]))).toContain("album");
});

test.each(["a < b", "<b>open", "<b><i>crossed</b></i>", "<script>x</script>", "</b>"])(
  "%s is no HTML that the platform reads",
  async (text) => {
    expect(await refusal(api.sendMessage(1, text, html))).toContain("can't parse entities");
  },
);

test("HTML is read into text and entities with offsets in UTF-16 units", () => {
  expect(readHtml('🔧 <b>a &amp; <i>b</i></b> <a href="https://x.example">c</a> &unknown;')).toEqual({
    ok: true,
    text: "🔧 a & b c &unknown;",
    entities: [
      { type: "bold", offset: 3, length: 5 },
      { type: "italic", offset: 7, length: 1 },
      { type: "text_link", offset: 9, length: 1, url: "https://x.example" },
    ],
  });
});

test("button data has 1 to 64 bytes", async () => {
  expect(await refusal(api.sendMessage(1, "a", button("x".repeat(64))))).toBe("taken");
  expect(await refusal(api.sendMessage(1, "a", button("ü".repeat(33))))).toContain("BUTTON_DATA_INVALID");
  expect(await refusal(api.sendMessage(1, "a", button("")))).toContain("BUTTON_DATA_INVALID");
});

test("what is not there, not the bot's, or the same already cannot be edited", async () => {
  const { message_id: own } = await api.sendMessage(1, "a");
  const { id: theirs } = double.people.say(1, 1, "mine");
  expect(await refusal(api.editMessageText(1, own, "a"))).toContain("not modified");
  expect(await refusal(api.editMessageText(1, theirs, "b"))).toContain("can't be edited");
  expect(await refusal(api.editMessageText(1, 99_999, "b"))).toContain("not found");
  expect(await refusal(api.editMessageText(1, own, "b"))).toBe("taken");
});

test("an update stays until an offset past it is asked for, and a second poller ends the first", async () => {
  double.world.updates = [];
  double.people.say(1, 1, "one");
  const [first] = await api.getUpdates({ timeout: 0 });
  expect(await api.getUpdates({ timeout: 0 })).toEqual([first]);
  expect(await api.getUpdates({ timeout: 0, offset: (first?.update_id ?? 0) + 1 })).toEqual([]);
  const waiting = refusal(api.getUpdates({ timeout: 5 }));
  await expect.poll(() => api.getUpdates({ timeout: 0 })).toEqual([]);
  expect(await waiting).toContain("Conflict");
});

test("a plain group is told apart from the supergroup it became", async () => {
  double.people.group(-5, "Small", { type: "group" });
  double.people.join(-5, 1);
  double.people.upgrade(-5, -1005);
  expect(await refusal(api.sendMessage(-5, "a"))).toContain("upgraded to a supergroup");
  expect(await refusal(api.sendMessage(-1005, "a"))).toBe("taken");
});
