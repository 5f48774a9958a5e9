// Whole conversations as members read them, kept as text and read by people. After a deliberate change: npx vitest run -u, then read the diff.
import { join } from "node:path";
import { expect, test } from "vitest";
import { labelsOn } from "./as-read.ts";
import { eachServed } from "./tested.ts";
import { transcriptOf } from "./transcript.ts";

const folder = join(import.meta.dirname, "transcripts");
const begin = eachServed();

async function expectKept(name: string, text: string): Promise<void> {
  await expect(text).toMatchFileSnapshot(join(folder, `${name}.txt`));
}

test("a question by slash command, answered by buttons, explained, taken back", async () => {
  const s = await begin();
  const t = transcriptOf(s);
  const { people } = s.double;
  await t.act("Ann: /ask which rear spoiler is this? hairy inside, square tips", () =>
    people.slash(s.ann, s.channel, "ask", {
      question: "which rear spoiler is this? hairy inside, square tips",
    }),
  );
  const form = await t.act("Ann opens the form", () => people.press(s.ann, t.last(), "in words …"));
  await t.act("Ann fills it in", () =>
    people.fill(form, {
      "About the car: built when, model, market": "built march 1979, home market",
    }),
  );
  await t.act("Ann: how do I check?", () => people.press(s.ann, t.last(), "how do I check?"));
  await t.act("Ann: why this?", () => people.press(s.ann, t.last(), "why this?"));
  const pressFirst = async () => {
    const [first = ""] = labelsOn(t.last());
    await t.act(`Ann presses: ${first}`, () => people.press(s.ann, t.last(), first));
  };
  await pressFirst();
  await t.act("Ann: undo", () => people.press(s.ann, t.last(), "undo"));
  for (let turn = 0; turn < 6 && !labelsOn(t.last()).includes("show the sources"); turn += 1)
    await pressFirst();
  await t.act("Ann: show the sources", () => people.press(s.ann, t.last(), "show the sources"));
  await expectKept("asked-by-slash-command", t.text());
});

test("a post of another member is read as the question, and both add to it", async () => {
  const s = await begin();
  const t = transcriptOf(s);
  const { people } = s.double;
  const post = await t.act("Bert writes: got a door mirror at a swap meet, cast alloy. legit?", () =>
    people.write(s.bert, s.channel, "got a door mirror at a swap meet, cast alloy. legit?"),
  );
  await t.act("Ann: Ask about this post", () => people.menu(s.ann, s.channel, "Ask about this post", post));
  await t.act("Ann: moulded plastic, by a mention", () =>
    people.mention(s.ann, s.channel, "no, it is moulded plastic", { replyTo: t.last() }),
  );
  await t.act("Bert: cannot tell", () => people.press(s.bert, t.last(), "cannot tell"));
  await expectKept("asked-from-a-post", t.text());
});

test("a direct message, and what a member asks in private", async () => {
  const s = await begin();
  const t = transcriptOf(s);
  const { people } = s.double;
  await t.act("Ann directly: is the door mirror right for my car?", () =>
    people.direct(s.ann, "is the door mirror right for my car?"),
  );
  await t.act("Ann directly: finished 2 november 1981", () =>
    people.direct(s.ann, "finished 2 november 1981"),
  );
  await t.act("Bert: /ask what does OTC mean?, privately", () =>
    people.slash(s.bert, s.channel, "ask", {
      question: "which road wheel is this? eight spokes",
      private: true,
    }),
  );
  await t.act("Bert: cannot tell", () => people.press(s.bert, t.last(), "cannot tell"));
  await t.act("Bert: /mine", () => people.slash(s.bert, s.channel, "mine"));
  await t.act("Bert: /help", () => people.slash(s.bert, s.channel, "help"));
  await expectKept("in-private", t.text());
});
