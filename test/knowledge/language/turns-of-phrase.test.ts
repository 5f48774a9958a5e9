// Turns of phrase that sound like another's word or another's car and are neither; questions that describe the part while they ask; how far a doubt, a
// guess or a closing word reaches; and what denies nothing. Everyday English of clubs and advertisements, no source.
import { describe, expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { hearsayCues, otherCarCues, wishCues } from "../../../knowledge/language/cue-words.ts";
import { negationsIn } from "../../../knowledge/language/negation.ts";
import type { Spotted } from "../../../knowledge/language/spot-terms.ts";
import { stancesOf } from "../../../knowledge/language/stance.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { isElsewhere } from "../../../knowledge/language/unreal-cues.ts";
import { wordings } from "../../support/wordings.ts";

/** Each clause: how sure, or what it is set aside as, and whether it describes what it asks about. */
function meant(text: string): string {
  return stancesOf(clausesOf(tokenise(text)), () => false)
    .map(({ aside, certainty, mayTell }) => {
      const describes = aside !== undefined && mayTell ? " that describes" : "";
      return `${aside ?? certainty}${describes}`;
    })
    .join(", ");
}

test.each([
  [
    "1",
    `so says {the hub,its spoke,my ruler,the rule,my rule,the caliper,my calipers,the scale,the scales}
    the {log book,logbook,build sheet,certificate,works record} {gives,shows,says} three screws
    {with,through,under} {the,a} {,old }{part,torch,lens,magnifier,glasses} {I,we} {,can ,could }read an R
    using my torch I read an R
    by an old lamp I read an R
    says {I,we} {may,can} keep it
    {nobody,no one,noone,none} {,else }{,has ,had }ever owned it
    the only owner {it,the car,this part} {,has ,had }ever had
    while {the,my} wife {was,is,were} {out,away,in bed,at work,at her mothers,at his club}
    my late {fathers,mother in laws} car has three
    {fathers,dads,grandads} old car has three
    a stamp {,that ,which }{I,we} {can't,couldn't,cannot} {,quite ,really }{read,make out,decipher}
    someone {has ,had ,}{wrote,written,signed} {RB,it}
    {someone,some hero,some previous owner} {,before me ,else }{,has ,had }{been at,put,cut,gone over,sanded} {the,an,over} edge`,
  ],
  [
    "hearsay",
    `so says {the old label,he}
    with the good old torch I read that
    someone wrote {that,to,back,me} it is so
    someone wrote on {here,the forum} three screws
    someone wrote in {the,his,an,a} {ad,thread} three screws
    someone {told,said} the edge is rough`,
  ],
  [
    "another-car",
    `none of them ever owned it
    an owner it ever had
    my {wife,husband,friend} has a rough one
    someone {posted,sold} the edge is rough
    it is like mine that I sold`,
  ],
  ["hearsay, 1", "he says it is late, the {log book,certificate} {gives,says} three screws"],
  ["hearsay, hearsay", "bloke reckons early. {,And ,Also }{says,said,reckons,claims,adds,thinks} two screws"],
  ["hearsay, 1, 1", "bloke reckons early. Two screws it says on the stamp, says the label"],
  ["1, 1", "I saw it early. Says two screws\nrough inside, it is"],
  ["0.75, 0.75", "rough inside, {I think,I do think so}\n{I think,I do think so}, rough inside"],
  ["1, 0.75", "rough inside, as I think it is so"],
  ["0.75, 1", "as I think it is so, rough inside"],
  ["question, 0.75", "look for three, it is rough"],
  ["question, question that describes", "if {anyone,he} has one, it is rough\nonce it arrives, it is rough"],
])("%s", (expected, table) => {
  expect(
    wordings(table)
      .map((text) => [text, meant(text)])
      .filter(([, kind]) => kind !== expected),
  ).toEqual([]);
});

describe("a question", () => {
  test.each([
    [
      "question that describes",
      "does the rough one with three screws count?\nwhat {,old ,old green }mirror {have,did} I {got,have,buy,bought}",
    ],
    [
      "question that describes, question that describes",
      `does the rough one with three screws count, square edge
      can it be rough, square?
      {whether,why} {it is,is it} genuine, three screws
      which mirror is it of those, three screws`,
    ],
    [
      "question that describes, 1",
      "{what,which} {,old ,old green }mirror {have,did,do} I {got,bought}, three screws",
    ],
    ["question, 1", "is it genuine {for the car,on my old 1981 car,}, three screws"],
    [
      "question",
      `{,so ,and so ,but }{is it,are they,was this,were mine,is its edge} rough?
      does the edge {that I sold,of my boat} matter?
      which edge would it be?
      can't see which edge is better than it?`,
    ],
    [
      "question, question",
      "looking for a rough one, two screws\nhad a dream, is the edge better than it?\nhad a dream. is the edge better than it?",
    ],
    ["question, question that describes", "I want one, is the edge square?"],
    ["question that describes, question, question", "is the edge better than the lip, I want one, square"],
    ["question, question, question", "is it the early one? I want one, square"],
    ["question, 1, question that describes", "had a dream. my edge is square. is the edge better than it?"],
    [
      "question, another-car, question",
      "had a dream. my {wife,husband,friend} had a rough one. three screws",
    ],
  ])("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, meant(text)])
        .filter(([, kind]) => kind !== expected),
    ).toEqual([]);
  });
});

describe("a closing word reaches back", () => {
  test.each([
    ["it is rough. he says so", "1, hearsay"],
    ["rough, he says it is so", "hearsay, hearsay"],
    ["rough, he says it is so there", "1, hearsay"],
    ["early ones had two, he says", "another-car, hearsay"],
    ["rough, he says, square", "hearsay, hearsay, hearsay"],
    ["rough, it has a lip there apparently", "hearsay, hearsay"],
    ["rough, it has a lip there apparently, square", "1, hearsay, hearsay"],
    ["rough, it has apparently a lip on there", "1, hearsay"],
    ["rough, it has a lip on it so he says", "hearsay, hearsay"],
    ["rough, it has a lip on it I was told", "hearsay, hearsay"],
    ["it is rough, wish I kept my old part", "1, question"],
    ["it is rough, I kept my old part", "another-car, another-car"],
    ["rough, square, wide, that was my previous one", "1, another-car, another-car, another-car"],
    ["maybe it is rather rough there, square, maybe it is rather wide there", "0.5, 1, 0.5"],
    ["maybe rough. maybe square", "0.5, 0.5"],
    ["maybe rough, maybe square", "question, question"],
    ["maybe rough or maybe wide, square", "question, 1"],
    ["it goes with it, or does it", "another-car, question that describes"],
    ["it goes with it, or does it not", "another-car, question that describes"],
    ["it goes with it, or does it end", "1, question that describes"],
  ])("%s: %s", (text, expected) => {
    expect(meant(text)).toBe(expected);
  });
});

describe("a denial", () => {
  const denied = (text: string, terms: readonly string[] = []): readonly string[] => {
    const tokens = tokenise(text);
    const phrasesAt = new Map(
      tokens.flatMap(({ folded }, at) =>
        terms.includes(folded) ? [[at, [{ from: at, to: at } as Spotted]] as const] : [],
      ),
    );
    return clausesOf(tokens).flatMap((clause) =>
      negationsIn(clause, tokens, phrasesAt).map(({ cue, to }) =>
        tokens
          .slice(cue, to + 1)
          .map(({ folded }) => folded)
          .join(" "),
      ),
    );
  };
  test.each([
    ["two without a mark", ["without a mark"]],
    ["counterpart no 12", ["no twelve"]],
    ["partly no 12", ["no twelve"]],
    ["part never 12", ["never twelve"]],
    ["part no rx 12", []],
    ["part no rx lip", ["no rx lip"]],
    ["part no abc 12", ["no abc twelve"]],
    ["it is not, sure as rain", ["not"]],
    ["minus two screws", []],
    ["minus a screw", ["minus a screw"]],
    ["did never look", ["never look"]],
    ["never do not look", ["never do not look"]],
  ])("%s: %j", (text, expected) => {
    expect(denied(text)).toEqual(expected);
  });
  test("governs all behind it until the speaker starts anew", () => {
    expect(denied("no lip of a square edge", ["lip"])).toEqual(["no lip of a square edge"]);
    expect(denied("no lip its square", ["lip"])).toEqual(["no lip"]);
  });
});

describe("a cue", () => {
  const folded = (text: string): string =>
    clausesOf(tokenise(text))
      .map((clause) => clause.text)
      .join(" ");
  test.each([
    ["hearsayCues", hearsayCues, "a caption\n{a,his} listing\nI read it was so\nsays the man"],
    [
      "otherCarCues",
      otherCarCues,
      "saw one standing there at\nseen two green cars\njohns car has\nall mirrors",
    ],
    ["wishCues", wishCues, "{im,still,really} after one\nafter {a,two} {,old ,old green }{part,parts,set}"],
  ] as const)("of %s is heard", (_, pattern, table) => {
    expect(wordings(table).filter((text) => !pattern.test(folded(text)))).toEqual([]);
  });
  test.each([
    [
      "hearsayCues",
      hearsayCues,
      `according to the {etched,etching,etchings} glass
      says the {caliper,calipers,rule,ruler,scale,scales,paper,papers,log book,logbook}
      I read {,it ,this }as an R
      do not quote me`,
    ],
    ["otherCarCues", otherCarCues, "saw it\nas car has\nit holds all mirrors"],
    [
      "wishCues",
      wishCues,
      "looks after one\nafter a wash\nthe day after a part\nafter a long cold wet dark part",
    ],
  ] as const)("of %s is not heard in words that only look like it", (_, pattern, table) => {
    expect(wordings(table).filter((text) => pattern.test(folded(text)))).toEqual([]);
  });
  test("of what is elsewhere is not heard of the car of somebody who is gone", () => {
    expect(wordings("my late {,old }{car,part}\nin post 12").filter((text) => !isElsewhere(text))).toEqual(
      [],
    );
    expect(wordings("my late {fathers,mother in laws} car\nin post 12 it is").filter(isElsewhere)).toEqual(
      [],
    );
  });
});
