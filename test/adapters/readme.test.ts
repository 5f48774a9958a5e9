import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openHandbook } from "../../adapters/handbooks.ts";
import { memoryStore } from "../../adapters/store/memory.ts";
import { renderReply } from "../../adapters/terminal/render.ts";
import { typedAgainst } from "../../adapters/terminal/typed-choice.ts";
import { communityMemories, knowledgeOf, type Reply, receiver } from "../../bot/index.ts";
import { clockFrom } from "../support/community-talk.ts";
import { commandLine, root, run, shrike } from "./program.ts";

const readmeFile = join(root, "README.md");
/** The text of the fenced block that holds `words`. */
function block(words: string): string {
  const found = readFileSync(readmeFile, "utf8")
    .split("```")
    .find((piece, index) => index % 2 === 1 && piece.includes(words));
  if (found === undefined) throw new Error(`README.md has no block with ${words}`);
  return found.trim();
}

/** What the program says to `typed`, as a person at a terminal sees it, without what may be done next and the edition. */
async function conversation(typed: readonly string[], more: object = {}): Promise<string> {
  const { handbook } = await openHandbook(shrike);
  const known = [knowledgeOf(handbook)];
  const log = { info: () => undefined, warn: () => undefined, error: () => undefined };
  const store = memoryStore();
  const memories = communityMemories(store);
  const surroundings = { knowledge: () => known, store, memories, clock: clockFrom(), log };
  const receive = receiver({ ...surroundings, platform: "terminal", secretKey: "of the example" });
  const pieces: string[] = [];
  let last: Reply | undefined;
  for (const line of typed) {
    last = await receive({ conversation: "terminal", from: "you", ...more, ...typedAgainst(line, last) });
    const blocks = last.blocks.filter(({ kind }) => kind !== "choices" && kind !== "edition");
    const lines = renderReply({ ...last, blocks }, { width: 80, colour: false });
    pieces.push(`> ${line}`, lines.join("\n"));
  }
  return pieces.join("\n\n");
}

// After a change of words or of the handbook: README=write npx vitest run test/adapters/readme.test.ts, and read it.
for (const [what, words, more] of [
  ["the conversation", "> which rear spoiler", {}],
  ["the pinned answer of an owner", "> pin for the question", { name: "The owner", standing: "owner" }],
] as const) {
  test(`${what} in the README is what the program says`, async () => {
    const written = block(words);
    const typed = written.split("\n").flatMap((line) => (line.startsWith("> ") ? [line.slice(2)] : []));
    expect(typed.length).toBeGreaterThan(1);
    const said = await conversation(typed, more);
    if (process.env.README === "write")
      writeFileSync(
        readmeFile,
        readFileSync(readmeFile, "utf8").replace(written, () => said),
      );
    else expect(written).toBe(said);
  });
}

test("the script example in the README runs, and its second answer is understood", async () => {
  const lines = [...block("converse --handbook").matchAll(/'(\{.*?\})'/gu)].map(([, line = ""]) => line);
  expect(lines).toHaveLength(2);
  const { status, out } = await run(
    commandLine,
    ["converse", "--handbook", shrike, "--json"],
    `${lines.join("\n")}\n`,
  );
  expect(status).toBe(0);
  const [, second = ""] = out.split("\n");
  expect(JSON.parse(second).understood).toEqual([expect.objectContaining({ state: "rough" })]);
});

test("the answer to when it changed is what the command says, as far as it is shown", async () => {
  const typed = block("witness-mark -- changeover").replace(/^npm run -s witness-mark -- /u, "");
  const written = block("The change of the door mirror");
  const { status, out } = await run(commandLine, typed.split(/\s+/u), "", { folder: root });
  expect(status).toBe(0);
  const shown = `${out.slice(0, out.indexOf("\n\nSightings\n"))}\n…`;
  if (process.env.README === "write")
    writeFileSync(
      readmeFile,
      readFileSync(readmeFile, "utf8").replace(written, () => shown),
    );
  else expect(written).toBe(shown);
});

test("the README begins with its title and one paragraph that states the job", () => {
  const [title, paragraph, next] = readFileSync(readmeFile, "utf8").split("\n\n");
  expect(title).toBe("# witness-mark");
  expect(paragraph).toMatch(/^witness-mark helps/u);
  expect(next).toMatch(/^## /u);
});
