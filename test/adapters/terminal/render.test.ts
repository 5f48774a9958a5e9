import { readFileSync } from "node:fs";
import { stripVTControlCharacters } from "node:util";
import { expect, test } from "vitest";
import { renderReply } from "../../../adapters/terminal/render.ts";
import { textWidth } from "../../../adapters/terminal/wrap.ts";
import { choice, everything, groove, reply, thickness } from "./replies.ts";

function page(width: number): readonly string[] {
  const file = new URL(`pages/reply-${width}-columns.txt`, import.meta.url);
  return readFileSync(file, "utf8").trimEnd().split("\n");
}

test.each([80, 40])("a reply with every kind of block reads as on the kept page of %i columns", (width) => {
  expect(renderReply(everything, { width, colour: false })).toEqual(page(width));
});

test("no line is wider than the page, but for a path", () => {
  for (let width = 24; width <= 100; width++) {
    for (const line of renderReply(everything, { width, colour: false })) {
      if (line.includes("/")) continue;
      expect(textWidth(line)).toBeLessThanOrEqual(width);
    }
  }
});

test("colour changes no letter and no column", () => {
  const plain = renderReply(everything, { width: 80, colour: false });
  const coloured = renderReply(everything, { width: 80, colour: true });
  expect(coloured.map(stripVTControlCharacters)).toEqual(plain);
  expect(coloured).not.toEqual(plain);
});

test("without colour there is not one escape", () => {
  expect(renderReply(everything, { width: 80, colour: false }).join("\n")).not.toContain("\u001b");
});

test("a drawing is named where it lies for this person", () => {
  const picture = reply({
    kind: "picture",
    path: "drawings/foot.svg",
    svg: "<svg/>",
    alternative: "The foot",
  });
  const locate = (path: string) => `books/shrike/${path}`;
  expect(renderReply(picture, { width: 80, colour: false, locate })).toEqual([
    "[picture] The foot",
    "  books/shrike/drawings/foot.svg",
  ]);
});

test("a table too wide for the page becomes a short record a row", () => {
  const table = reply({
    kind: "table",
    caption: "The mirrors",
    head: ["mirror", "what it looks like"],
    rows: [["first type", "cast alloy, two screws"]],
  });
  expect(renderReply(table, { width: 26, colour: false })).toEqual([
    "The mirrors",
    "  first type",
    "    what it looks like:",
    "    cast alloy, two screws",
  ]);
});

test("words quoted from a member cannot steer the terminal", () => {
  const quoted = reply({ kind: "text", text: "you wrote \u001b[2J\u001b]0;gone\u0007here" });
  expect(renderReply(quoted, { width: 80, colour: true })).toEqual(["you wrote here"]);
});

test("without a question the things to do next carry the numbers", () => {
  const done = reply({ kind: "choices", choices: [choice("car", "tell me about the car")] });
  expect(renderReply(done, { width: 80, colour: false })).toEqual(["  1  tell me about the car"]);
});

test("a reply without blocks is no line", () => {
  expect(renderReply(reply(), { width: 80, colour: true })).toEqual([]);
});

test("where a measurement is asked for, no number stands before what else can be said", () => {
  expect(renderReply(reply(thickness), { width: 80, colour: false })).toEqual([
    "How thick is the glass?",
    "     [no glass] [cannot tell] [why this?] [how do I check?]",
  ]);
});

test("answers that are counts have no numbers before them", () => {
  const answers = [choice("two", "two screws"), choice("three", "three screws")];
  const lines = renderReply(reply({ ...groove, answers }), { width: 80, colour: false });
  expect(lines).toContain("  -  two screws");
  expect(lines.join("\n")).not.toMatch(/^ *\d {2}/mu);
});
