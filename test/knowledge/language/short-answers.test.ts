// Answers of a word or two to the question just asked: by a word of a state, a nod, a place among the answers, a figure.
import { describe, expect, test } from "vitest";
import { readDemo } from "../../support/read-demo.ts";
import { valueInWords } from "../../support/reading-in-words.ts";
import { wordings } from "../../support/wordings.ts";

/** "rough", with how sure the speaker is where that is not fully. */
function answer(text: string, about: string): string {
  return readDemo(text, about)
    .findings.map(
      ({ value, certainty }) => `${valueInWords(value)}${certainty === 1 ? "" : ` (${certainty})`}`,
    )
    .join(", ");
}

const questions: readonly (readonly [string, readonly (readonly [string, string])[]])[] = [
  [
    "rear-spoiler inside-finish",
    [
      [
        "rough",
        "first{, one, one please}\n{a,1,number 1,rough,the rough one}\nhairy\nrough {than,not} smooth\nless rough than smooth\nnot smooth or painted\nfibres like hair",
      ],
      ["smooth", "{second,b,2,option b,number 2,the second one please,smooth}"],
      ["painted", "{last,third,the last one,c,3,painted}\nneither rough nor smooth"],
      ["smooth|painted", "{not,isn't} rough\nsmooth or painted"],
      ["rough|smooth", "not painted"],
      ["rough (0.75)", "I think rough\nit looks rough"],
      ["rough (0.5)", "maybe rough\nrough maybe"],
      [
        "",
        `{yes,no,nope,none,nothing,both,either,mix,half,d,z,4,0,one,fourth,no idea,not sure}
        why rough
        {why,how,where} rough?
        {,so }is {,a ,the very }rough good?
        {is,does} it matter that rough or smooth?
        a bit of {both,each}
        {in between,half and half,mixture of both}
        {would be,should be like} rough
        the seller says rough
        my mate has a rough one
        looking for a rough one`,
      ],
    ],
  ],
  [
    "door-mirror screws",
    [
      ["two", "{two,2,there are two,yes two,it is two}"],
      ["three", "{three,3}"],
      ["five-holes", "{the third,c}"],
      ["three|five-holes|clamp", "not two"],
      ["", "{yes,no,none,nope,nothing,1,no sir,two?,9}"],
    ],
  ],
  [
    "rear-spoiler drain-notches",
    [
      ["notches", "{yes,yep,yes there are,notches}"],
      ["plain", "{no,none,nope,no sir,nothing there,no notches,plain,n,no mate}"],
      ["notches (0.5)", "yes?"],
      ["", "{can't tell,how do I check,the seller says yes}"],
    ],
  ],
  [
    "rear-spoiler width",
    [
      ["47±0.5 in", "47 inches"],
      ["1180±0.5 mm", "1180 mm{, with calipers, on a good day}"],
      ["1180±0.5 ?", "1180{, by tape}"],
      ["1181±1 ?", "{between 1180 and 1182,1180 or 1182}"],
      ["47±0.5 ? (0.5)", "47?"],
      // A unit of another kind of size.
      ["", "420 kg"],
      ["", "{yes,no,would be 47,the seller says 47,my mate's is 47}"],
    ],
  ],
  [
    "door-mirror casting-mark",
    [
      ["diamond-b|register-r|blurred", "{yes,yep}"],
      ["no-mark", "{no,none,nope}"],
    ],
  ],
  [
    "door-mirror casting-date",
    [
      ["not-there", "none"],
      ["", "{yes,no,nope,nah,no sir,no sorry}"],
    ],
  ],
];
describe.each(questions)("to the question of %s", (about, rows) => {
  test.each(rows)("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, answer(text, about)])
        .filter(([, found]) => found !== expected),
    ).toEqual([]);
  });
});

test("a message of more than fourteen words is no short answer, and of more than eight no bare figure", () => {
  expect(answer("b and so it goes on and on and on and on and on till", "rear-spoiler inside-finish")).toBe(
    "",
  );
  expect(answer("1180", "rear-spoiler")).toBe("");
});

test("it is known what it was told by", () => {
  const finding = readDemo("1180 mm with calipers", "rear-spoiler width").findings[0];
  expect(finding).toMatchObject({ part: "rear-spoiler", feature: "width", words: "1180 mm" });
  expect(finding?.value).toMatchObject({ instrument: "caliper" });
});
