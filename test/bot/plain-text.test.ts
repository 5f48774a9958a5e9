// A reply as plain text: every kind of block, in the order given.
import { describe, expect, test } from "vitest";
import { type Block, plainText, type Reply } from "../../bot/index.ts";
import { talk } from "../support/talking.ts";

const { reply } = talk("hello");
const said = (...blocks: readonly Block[]): string => plainText({ ...reply, blocks } satisfies Reply);

describe("plain text", () => {
  test("shows what was read with its doubt, and the remarks below", () => {
    expect(
      said({
        kind: "understood",
        lead: "I read",
        items: [
          { label: "part", value: "rear spoiler" },
          { label: "tips", value: "rounded tips", doubt: "you think" },
        ],
        remarks: ["A remark."],
      }),
    ).toBe("I read – part: rear spoiler; tips: rounded tips (you think).\nA remark.");
  });

  test("sets evidence out by the side it speaks for", () => {
    expect(
      said({
        kind: "evidence",
        first: "the First spoiler",
        rival: "the Second spoiler",
        items: [
          { words: "tips: square", bans: 1.2, strength: "strong", sources: "yard photographs" },
          { words: "mark: none", bans: -0.1, strength: "weak", sources: "" },
        ],
      }),
    ).toBe(
      "Speaks for the First spoiler rather than the Second spoiler:\n  - tips: square (strong) [yard photographs]\nSpeaks for the Second spoiler rather than the First spoiler:\n  - mark: none (weak)",
    );
  });

  test("aligns the columns of a table", () => {
    expect(
      said({ kind: "table", caption: "Two", head: ["kind", "when"], rows: [["First spoiler", "1978"]] }),
    ).toBe("Two\n  kind           when\n  First spoiler  1978");
  });

  test("marks cautions, shows sources with their grade, pictures by their words, choices in brackets", () => {
    expect(
      said(
        { kind: "cautions", lines: ["Mind the glass."] },
        { kind: "sources", items: [{ short: "survey", citation: "A survey", grade: "B" }] },
        { kind: "picture", path: "a.svg", svg: "<svg/>", alternative: "Drawing: tips" },
        { kind: "choices", choices: [{ id: "a", label: "case 2", say: "case 2" }] },
        { kind: "edition", text: "Shrike, edition 1" },
        { kind: "standing", lead: "Nothing", items: [] },
      ),
    ).toBe(
      "! Mind the glass.\n  [survey] A survey (grade B)\n(Drawing: tips)\n[case 2]\n(Shrike, edition 1)",
    );
  });
});
