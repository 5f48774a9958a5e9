import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { changeInWords } from "../../../bot/index.ts";
import { changesBetween } from "../../../knowledge/editions/changes-between.ts";
import { touchedBy } from "../../../knowledge/editions/handbook-change.ts";
import { loadHandbook } from "../../../knowledge/handbook/load-handbook.ts";
import type { Handbook } from "../../../knowledge/handbook/schema.ts";
import { arbitraryTells } from "../../support/arbitrary-claims.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";

function handbookWith(file: string, from: string, to: string): Handbook {
  const before = carefulHandbook[file] ?? "";
  if (!before.includes(from)) throw new Error(`${file} has no ${from}`);
  const loaded = loadHandbook(carefulFiles({ [file]: before.replace(from, () => to) }));
  if (!loaded.ok) throw new Error(loaded.problems.map(({ message }) => message).join());
  return loaded.handbook;
}

const handle = "parts/door-handle.yaml";
const original = handbookWith(handle, "", "");

const changes: readonly (readonly [string, string, string, string])[] = [
  [
    handle,
    "lever: { flat: always, sources: [measured] }",
    "lever: { flat: usually, sources: [measured] }",
    "The Early flat handle now “usually” has Flat (Lever); until now “always”.",
  ],
  [
    handle,
    "lever: { round: always }",
    "lever: { round: always, hooked: rarely }",
    "The Round handle now “rarely” has Hooked (Lever); nothing was said before.",
  ],
  [
    handle,
    "lever: { flat: usually, hooked: sometimes }",
    "lever: { flat: usually }",
    "The Trade copy is no longer said to have Hooked (Lever); until now “sometimes”.",
  ],
  [
    handle,
    "lever: { round: always }",
    "lever: { round: 9 of 9 }",
    "The Round handle has Round (Lever) on 9 of 9; until now “always”.",
  ],
  [
    handle,
    "mean: 132, spread: 0.5",
    "mean: 133, spread: 0.5",
    "The Length of the Late flat handle is now 133 ± 0.5 mm; until now 132 ± 0.5 mm.",
  ],
  [
    handle,
    "      length: { mean: 132, spread: 0.5 }\n",
    "",
    "The Length of the Late flat handle is no longer given; until now 132 ± 0.5 mm.",
  ],
  [
    handle,
    "from: 1973-01, to: 1975-12",
    "from: 1973-03, to: 1975-12",
    "The Late flat handle was fitted 1973-03 to 1975-12; until now the handbook said 1973-01 to 1975-12.",
  ],
  [
    handle,
    "to: 1979-12, models: [tarn-two], end: exact",
    "to: 1979-12, trims: [sport], share: 0.5, end: exact",
    "The Round handle was fitted 1976-01 to 1979-12 (sport; share 0.5); until now the handbook said 1976-01 to 1979-12 (tarn-two).",
  ],
  [
    handle,
    "name: Trade copy",
    "name: Cheap copy",
    "The variant called Trade copy is now called Cheap copy, Door handle.",
  ],
  [
    handle,
    "Take the handle off and",
    "Off with the handle, and",
    "The feature Foundry mark, Door handle: check changed.",
  ],
  [
    handle,
    "summary: Flat lever, long",
    "summary: Long",
    "The variant Early flat handle, Door handle: summary changed.",
  ],
  [
    handle,
    "      - { id: bare, name: Bare }",
    "      - { id: bare, name: Bare }\n      - { id: crown, name: Crown }",
    "New state: Crown, Door handle.",
  ],
  [handle, "how: Two nuts.", "how: Two nuts and a washer.", "What fits what changed, Door handle."],
  [
    handle,
    "summary: The outside handle of either door.",
    "summary: The handle.",
    "The part kind Door handle: summary changed.",
  ],
  [
    handle,
    "A handle without a star is a copy.",
    "No star, no handle.",
    "The misbelief called A handle without a star is a copy. is now called “No star, no handle.”, Door handle.",
  ],
  ["cars.yaml", "1977: 70", "1977: 71", "The yearly production changed."],
  ["cars.yaml", "name: Sport", "name: Sports", "The trim called Sport is now called Sports."],
  ["cars.yaml", "serial: 500", "serial: 501", "The serial scheme changed."],
  [
    "sources.yaml",
    "Works ledger of the Tarn",
    "Works ledger",
    "The source works ledger: description changed.",
  ],
  ["handbook.yaml", "completeness: good", "completeness: fair", "The cover changed."],
];

describe("what changed between two editions, in words", () => {
  test.each(changes)("%s: %s → %s", (file, from, to, words) => {
    expect(changesBetween(original, handbookWith(file, from, to)).map(changeInWords)).toContain(words);
  });

  test("nothing, when only comments and line breaks differ, or the month of the edition", () => {
    expect(
      changesBetween(original, handbookWith(handle, "features:\n", "features: # all of them\n\n")),
    ).toEqual([]);
    expect(changesBetween(original, handbookWith("handbook.yaml", "2024-03", "2024-04"))).toEqual([]);
  });

  test("nothing, when the claims of a variant stand in another order", () => {
    const turned = handbookWith(
      handle,
      '      lever: { flat: always, sources: [measured] }\n      foundry-mark: { star: usually, bare: sometimes, sources: [measured] }\n      button: { steel: "nearly always, 9 of 9", sources: [measured] }\n',
      '      button: { steel: "nearly always, 9 of 9", sources: [measured] }\n      foundry-mark: { star: usually, bare: sometimes, sources: [measured] }\n      lever: { flat: always, sources: [measured] }\n',
    );
    expect(changesBetween(original, turned)).toEqual([]);
  });

  test.each([
    [handle, "A handle without a star is a copy.", "No star, no handle.", "is now called"],
    ["sources.yaml", "short: works ledger", "short: the ledger", "is now called"],
    [handle, "      length: { mean: 132, spread: 0.5 }\n", "", "is no longer given"],
    [
      handle,
      "lever: { flat: always, sources: [measured] }",
      "lever: { flat: always, sources: [ledger] }",
      "The variant Early flat handle, Door handle: sources changed.",
    ],
  ])("one thing is told once: %s: %s → %s", (file, from, to, words) => {
    const told = changesBetween(original, handbookWith(file, from, to)).map(changeInWords);
    expect(told).toEqual([expect.stringContaining(words)]);
  });

  test("a variant more, and one less the other way round", () => {
    const block =
      (carefulHandbook[handle] ?? "").match(/ {2}- id: copy[\s\S]*?coil: always \}\n/u)?.[0] ?? "";
    const less = handbookWith(handle, block, "");
    expect(changesBetween(less, original).map(changeInWords)).toEqual([
      "New variant: Trade copy, Door handle.",
    ]);
    expect(changesBetween(original, less).map(changeInWords)).toEqual([
      "Variant removed: Trade copy, Door handle.",
    ]);
  });

  test("from any edition to itself there is no change, and from one to another the touched variants are the changed ones", () => {
    const [part] = original.parts;
    if (part === undefined) throw new Error("no part");
    const ids = original.sources.map(({ id }) => id);
    const withTells = (tells: readonly object[]): Handbook => ({
      ...original,
      parts: [
        {
          ...part,
          variants: part.variants.map((variant, index) => ({ ...variant, tells: { ...tells[index] } })),
        },
      ],
    });
    fc.assert(
      fc.property(arbitraryTells(part, ids), arbitraryTells(part, ids), (one, other) => {
        const [before, after] = [withTells(one), withTells(other)];
        expect(changesBetween(before, before)).toEqual([]);
        const changed = part.variants.filter(
          (_, index) => JSON.stringify(one[index]) !== JSON.stringify(other[index]),
        );
        const touched = new Set(changesBetween(before, after).map((change) => touchedBy(change)?.variant));
        for (const variant of touched) expect(changed.map(({ id }) => id)).toContain(variant);
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  test("words that were learnt anew are one change, whatever is in them, and touch no part", () => {
    const silent = { bias: 0, weights: "" };
    const learnt = (messages: number, words: readonly string[]): Handbook => ({
      ...original,
      learntWords: {
        messages,
        words: [...words],
        telling: silent,
        tellingAtAll: { bias: 0, weights: "" },
        spokenOf: {},
        parts: {},
      },
    });
    const said = (older: Handbook, newer: Handbook) => changesBetween(older, newer).map(changeInWords);
    expect(said(original, learnt(40, ["crook"]))).toEqual(["Learnt words: learnt anew from 40 messages."]);
    expect(said(learnt(40, ["crook"]), learnt(1, ["crook", "curl"]))).toEqual([
      "Learnt words: learnt anew from one message.",
    ]);
    expect(said(learnt(40, ["crook"]), original)).toEqual(["Learnt words: there are none any more."]);
    expect(said(learnt(40, ["crook"]), learnt(40, ["crook"]))).toEqual([]);
    expect(changesBetween(original, learnt(40, [])).map(touchedBy)).toEqual([undefined]);
  });

  test("says which part kind and variant it touches", () => {
    const touched = (file: string, from: string, to: string) =>
      changesBetween(original, handbookWith(file, from, to)).map(touchedBy);
    expect(touched(handle, "mean: 132", "mean: 133")).toEqual([
      { part: "door-handle", variant: "flat-late" },
    ]);
    expect(touched(handle, "summary: The outside handle of either door.", "summary: The handle.")).toEqual([
      { part: "door-handle", variant: undefined },
    ]);
    expect(touched("cars.yaml", "1977: 70", "1977: 71")).toEqual([undefined]);
  });
});
