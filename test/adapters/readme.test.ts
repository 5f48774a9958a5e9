import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { commandLine, root, run, shrike } from "./program.ts";

const readme = readFileSync(join(root, "README.md"), "utf8");

/** The text of the fenced block that holds `words`. */
function block(words: string): string {
  const found = readme.split("```").find((piece, index) => index % 2 === 1 && piece.includes(words));
  if (found === undefined) throw new Error(`README.md has no block with ${words}`);
  return found.trim();
}

test("the conversation in the README is what the program says", async () => {
  const lines = block("I read:").split("\n");
  const typed = lines.flatMap((line) => (line.startsWith("> ") ? [line.slice(2)] : []));
  const told = lines.filter((line) => line !== "" && !line.startsWith("> "));
  const { out } = await run(commandLine, ["chat", "--handbook", shrike], `${typed.join("\n")}\n`);
  const said = out.split("\n");
  const missing = told.filter((line) => !said.includes(line));
  expect(missing).toEqual([]);
});

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

test("the README begins with its title and one paragraph that states the job", () => {
  const [title, paragraph, next] = readme.split("\n\n");
  expect(title).toBe("# witness-mark");
  expect(paragraph).toMatch(/^witness-mark helps/u);
  expect(next).toMatch(/^## /u);
});
