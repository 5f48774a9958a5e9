// What a message may say of states, before anybody weighs it: by which finder, and where; and what asks on and so tells nothing.
import { describe, expect, test } from "vitest";
import type { LearntWords } from "../../../knowledge/handbook/schema.ts";
import { candidateOfAnswer, gatherObservations } from "../../../knowledge/language/gather-observations.ts";
import { readIntents } from "../../../knowledge/language/read-intents.ts";
import { readShortAnswer, type ShortAnswer } from "../../../knowledge/language/short-answers.ts";
import { silent } from "../../support/tarn-lexicon.ts";
import { mirrorLexicon, mirrorView } from "../../support/tarn-mirror.ts";

/** Rows of "message (what it is about, where not the mirror) -> what comes of it". */
const rows = (table: string): readonly (readonly [string, string, string])[] =>
  table
    .trim()
    .split("\n")
    .map((line) => {
      const [, text = "", about = "mirror", expected = ""] =
        /^\s*(.+?)(?: \(([\w -]*)\))? ->\s*(.*)$/.exec(line) ?? [];
      return [text, about, expected];
    });

describe("what is found is kept with how it was found and where it stands", () => {
  test.each(
    rows(`
      two screws, stalk straight -> name two 0-1; name straight 2-3
      It is chromed, no screws -> name chromed 2-2; name none 3-4
      stalk: straight -> loose straight 1-1
      The screws, three -> loose three 2-2
      three, of the screws -> carried three 1-3
      the housing has body colour -> named painted 0-4
      Has screws -> presence not none 1-1
      the screws are there -> presence not none 1-1
      I see no fixing screws -> presence none 2-4
      The stalk is not chromed -> name not chromed 3-4
      It has two screws, the screws are there -> name two 2-3
      hello there ->
    `),
  )("%s", (text, about, expected) => {
    const { candidates } = gatherObservations(mirrorView(text, about));
    const found = candidates.map(
      ({ finder, isDenied, state, from, to }) => `${finder} ${isDenied ? "not " : ""}${state} ${from}-${to}`,
    );
    expect(found.join("; ")).toBe(expected);
  });
  test("a word that fits two features alike is kept apart", () => {
    expect(gatherObservations(mirrorView("plastic"))).toMatchObject({
      candidates: [],
      undecided: [{ from: 0, to: 0 }],
    });
    expect(gatherObservations(mirrorView("chromed")).undecided).toEqual([]);
  });
});

describe("what follows a question in its sentence, without a verb of its own, goes on asking", () => {
  test.each(
    rows(`
      why chromed ->
      how chromed ->
      where chromed ->
      why chromed then ->
      why chromed here mate -> chromed
      chromed why -> chromed
      what chromed -> chromed
      anyway chromed -> chromed
      Is it chromed, no screws? ->
      Is it early, chromed, with no screws? ->
      Has it two screws, chromed? ->
      Has it got two screws, chromed? ->
      Is it what it looks, chromed? ->
      Is it early, looks chromed? -> chromed
      Anyone know, chromed, two screws? ->
      Is it early, chromed, with no screws -> chromed none
      Is it early, chromed, it has no screws? -> chromed none
      Is it early, chromed, mine, with no screws? -> chromed none
      Is it early? Chromed, with no screws -> chromed none
      Is it early? Chromed, with no screws? -> chromed none
      Chromed, is it early? -> chromed
      Which is it, chromed, with no screws? -> chromed none
      Has it two screws, chromed. Right? -> two chromed
      Is it early chromed, two screws -> chromed two
    `),
  )("%s", (text, about, expected) => {
    const { candidates } = gatherObservations(mirrorView(text, about));
    expect(candidates.map(({ state }) => state).join(" ")).toBe(expected);
  });
});

function answerTo(text: string, about: string): ShortAnswer | undefined {
  const view = mirrorView(text, about);
  return readShortAnswer(view, readIntents(view), []);
}

describe("a short answer is a candidate at its telling word, else of the whole message", () => {
  test.each(
    rows(`
      none (mirror screws) -> nod none 1-0
      no (mirror stamp) -> nod unstamped 1-0
      yes (mirror stamp) -> nod stamped 1-0
      yes (mirror screws) -> nod not none 1-0
      nope, no way (mirror screws) -> nod none 3-2
      three (mirror screws) -> word three 0-0
      well, three (mirror screws) -> word three 1-1
      it is chromed (mirror housing) -> word chromed 2-2
      b (mirror housing) -> place
      second (mirror housing) -> place
      not chromed (mirror housing) -> word
    `),
  )("%s", (text, about, expected) => {
    const answer = answerTo(text, about);
    if (answer === undefined) throw new Error("it is no answer");
    const found = candidateOfAnswer(mirrorView(text, about), answer);
    const place = found && `${found.isDenied ? "not " : ""}${found.state} ${found.from}-${found.to}`;
    expect([answer.by, place].filter(Boolean).join(" ")).toBe(expected);
    if (found !== undefined) expect(found).toMatchObject({ part: "mirror", finder: answer.by });
  });

  const view = mirrorView("well, chromed", "mirror housing");
  const finding = {
    part: "mirror",
    feature: "housing",
    value: { kind: "state", state: "chromed" },
    certainty: 1,
    words: "well, chromed",
  } as const;
  test("its clause is that of its word; what comes near is said by the whole message", () => {
    expect(candidateOfAnswer(view, { finding, by: "word" })).toMatchObject({ clause: 1, from: 1, to: 1 });
    expect(candidateOfAnswer(view, { finding, by: "nearness" })).toMatchObject({ clause: 0, from: 2, to: 1 });
    const other = { ...finding, value: { kind: "state", state: "painted" } } as const;
    expect(candidateOfAnswer(view, { finding: other, by: "word" })).toMatchObject({ from: 2, to: 1 });
  });
  test("an answer of no part is none, nor is a size, nor one that denies in a part nobody knows", () => {
    const among = { kind: "weighed-states", weights: { two: 1 } } as const;
    const ferret = { ...finding, part: "ferret", value: among };
    expect(candidateOfAnswer(view, { finding: ferret, by: "word" })).toBeUndefined();
    expect(candidateOfAnswer(view, { finding: { ...finding, part: null }, by: "word" })).toBeUndefined();
    const value = { kind: "measurement", value: 9, halfWidth: 1, unit: "mm", instrument: "rule" } as const;
    const size = { ...finding, feature: "reach", value };
    expect(candidateOfAnswer(view, { finding: size, by: "figure" })).toBeUndefined();
    expect(
      candidateOfAnswer(view, { finding: { ...size, feature: "screws" }, by: "figure" }),
    ).toBeUndefined();
  });
});

/** "Glint" speaks for chromed and "curl" for a bent stalk. */
const learnt: LearntWords = {
  messages: 3,
  words: ["glint", "curl"],
  telling: silent,
  tellingAtAll: silent,
  spokenOf: {},
  parts: {
    mirror: {
      housing: { chromed: { bias: -2, weights: "0 500" } },
      stalk: { bent: { bias: -2, weights: "1 500" } },
    },
  },
};
const lexicon = mirrorLexicon(learnt);

describe("what is heard beside a short answer", () => {
  const housing = (by: ShortAnswer["by"]): ShortAnswer => ({
    finding: {
      part: "mirror",
      feature: "housing",
      value: { kind: "state", state: "painted" },
      certainty: 1,
      words: "",
    },
    by,
  });
  const heard = (text: string, answer?: ShortAnswer) =>
    gatherObservations(mirrorView(text, "mirror housing", lexicon), answer).candidates.map(
      ({ finder, state }) => `${finder} ${state}`,
    );
  test("without an answer all is heard", () => {
    expect(heard("glint and a curl")).toEqual(["heard chromed", "heard bent"]);
  });
  test("of the feature that is answered nothing is", () => {
    expect(heard("glint and a curl", housing("word"))).toEqual(["heard bent"]);
    expect(heard("curl", housing("word"))).toEqual(["heard bent"]);
    expect(heard("curl it", housing("nearness"))).toEqual(["heard bent"]);
  });
  test("a place among the answers, or a bare nod, is nothing else besides", () => {
    expect(heard("such a long curl to it", housing("place"))).toEqual([]);
    expect(heard("curl it", housing("nod"))).toEqual([]);
    expect(heard("curl", housing("nod"))).toEqual([]);
    expect(heard("such a curl", housing("nod"))).toEqual(["heard bent"]);
  });
  test("nothing is heard of what names told", () => {
    expect(heard("chromed, a glint, a curl")).toEqual(["name chromed", "heard bent"]);
    expect(heard("The housing painted, a curl")).toEqual(["loose painted", "heard bent"]);
  });
});
