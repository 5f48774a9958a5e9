// What a question is worth when it stands alone, on tables small enough to reckon by hand.
import { describe, expect, test } from "vitest";
import {
  afterAnswers,
  betweenClasses,
  byInformation,
  byInformationPerEffort,
} from "../../../bot/conversation/question-worth.ts";
import type { QuestionTable } from "../../../knowledge/index.ts";

// Two classes at even odds; "sure" tells them apart, "half" is right three times in four, "idle" says nothing.
const table: QuestionTable = {
  lambda: 60,
  hypotheses: [
    { id: "a1", prior: 0.25, class: "a" },
    { id: "a2", prior: 0.25, class: "a" },
    { id: "b", prior: 0.5, class: "b" },
  ],
  questions: [
    {
      id: "idle",
      cost: 1,
      answers: ["x", "y"],
      likelihood: new Float64Array([0.5, 0.5, 0.5, 0.5, 0.5, 0.5]),
      cannotTell: 0,
    },
    {
      id: "half",
      cost: 1,
      answers: ["x", "y"],
      likelihood: new Float64Array([0.75, 0.25, 0.75, 0.25, 0.25, 0.75]),
      cannotTell: 0,
    },
    {
      id: "sure",
      cost: 8,
      answers: ["x", "y"],
      likelihood: new Float64Array([1, 0, 1, 0, 0, 1]),
      cannotTell: 0.5,
    },
  ],
};

describe("worth of a question", () => {
  test("is the information about the class, less for those who cannot tell, and nothing useless is listed", () => {
    // 1 bit halved by "cannot tell"; 1 − H(1/4) = 0.1887218755 bit for three right in four.
    const worths = byInformation(table).map(({ question, bits }) => [question.id, bits]);
    expect(worths).toEqual([
      ["sure", expect.closeTo(0.5, 10)],
      ["half", expect.closeTo(0.1887218755, 9)],
    ]);
  });

  test("per effort the cheap look comes first", () => {
    expect(byInformationPerEffort(table).map(({ question }) => question.id)).toEqual(["half", "sure"]);
  });

  test("each answer foretells the class that would then stand first", () => {
    const [, half] = table.questions;
    if (half === undefined) throw new Error("the table has a second question");
    expect(afterAnswers(table, half)).toEqual([
      { answer: "x", probability: 0.5, class: "a", classProbability: 0.75 },
      { answer: "y", probability: 0.5, class: "b", classProbability: 0.75 },
    ]);
  });

  test("between two classes all others are out, and the two are even", () => {
    const three: QuestionTable = {
      ...table,
      hypotheses: [...table.hypotheses, { id: "c", prior: 9, class: "c" }],
    };
    const masses = betweenClasses(three, ["a", "b"]).hypotheses.map(({ prior }) => prior);
    expect(masses).toEqual([0.5, 0.5, 1, 0]);
  });
});

describe("questions of one worth", () => {
  const [, half] = table.questions;
  if (half === undefined) throw new Error("the table has a second question");
  const alike = (id: string, cost = 1) => ({ ...half, id, cost });

  test("stand by their cost, and then by their ids, whatever the order they come in", () => {
    const mixed = { ...table, questions: [alike("c"), alike("a"), alike("b", 3), alike("a")] };
    expect(byInformation(mixed).map(({ question }) => question.id)).toEqual(["a", "a", "c", "b"]);
    expect(byInformationPerEffort(mixed).map(({ question }) => question.id)).toEqual(["a", "a", "c", "b"]);
  });

  test("that nobody can answer are not listed", () => {
    expect(byInformation({ ...table, questions: [{ ...half, cannotTell: 1 }] })).toEqual([]);
  });
});

describe("answers foretold", () => {
  const [, half] = table.questions;
  if (half === undefined) throw new Error("the table has a second question");

  test("leave out one that cannot be given, and stand by their names when equally likely", () => {
    const never = {
      ...half,
      answers: ["x", "y", "z"],
      likelihood: new Float64Array([0.5, 0.5, 0, 0.5, 0.5, 0, 0.5, 0.5, 0]),
    };
    expect(afterAnswers(table, never).map(({ answer }) => answer)).toEqual(["x", "y"]);
  });

  test("are none when nothing is possible any more", () => {
    const empty = { ...table, hypotheses: table.hypotheses.map((one) => ({ ...one, prior: 0 })) };
    expect(afterAnswers(empty, half)).toEqual([]);
  });
});
