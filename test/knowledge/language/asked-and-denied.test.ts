// Which clauses ask, and what a "no" governs: by wordings, with what only looks like a question or like a denial beside them. Everyday English.
import { describe, expect, test } from "vitest";
import { isQuestion, isTagged } from "../../../knowledge/language/asking-clauses.ts";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { negationsIn } from "../../../knowledge/language/negation.ts";
import type { Spotted } from "../../../knowledge/language/spot-terms.ts";
import { stancesOf } from "../../../knowledge/language/stance.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { wordings } from "../../support/wordings.ts";

/** "asks, tells" for the clauses of a text. */
function kinds(text: string): string {
  const clauses = clausesOf(tokenise(text));
  return clauses.map((clause, at) => (isQuestion(clause, clauses, at) ? "asks" : "tells")).join(", ");
}

describe("a clause", () => {
  test.each([
    [
      "asks",
      `{,and ,so ,ok ,while I'm here ,and so }is it rough
      {does,can,should} {it,the edge} {matter,show}
      {what,why,how} {does it say,is it}
      is {the,a} edge {better than,wide enough or} that
      {how,where} {do I look,does it end}
      where the paint came off?
      I wonder if it is rough
      rough?
      which of these days has a lip with three
      which of those days is with it`,
    ],
    [
      "tells",
      `{where,when,how} {the,it,its,my,you,youd,there,theres,they,some,someone,something} paint came off it is cream
      {does it matter,is it normal,should I worry} that it is rough
      which spoiler is {this,mine} with the rough inside
      what is this with the rough inside
      it is rough
      has notches
      is rough
      {right,correct,yes,ok,legit,thoughts,makes sense}?`,
    ],
    [
      "tells, tells",
      `it has a lip, {which,whose,where} edge is wide\nit is rough, {right,correct,eh,innit}?\nrough? {yes,yep,correct}\nwhich spoiler is this with the rough inside, three screws`,
    ],
    [
      "asks, tells",
      `which one comes without it, three screws\nis it real, three screws\nthe long thin steel ball joint? yes`,
    ],
    [
      "tells, asks",
      `it has a lip, {which,where} is it?\nwhich spoiler is this with the rough inside. Is it so?\nit is rough, what is it`,
    ],
    ["asks, asks", `is it rough, isn't it?\nwhich is it. Which one?`],
  ] as const)("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, kinds(text)])
        .filter(([, kind]) => kind !== expected),
    ).toEqual([]);
  });
  test("of one question word asks where it is short, and where a mark stands behind it however long it is", () => {
    const long = "what a nice foot that is with nothing wrong on any side of it at all";
    const twelve = long.split(" ").slice(0, 12).join(" ").replace(" with", " and then");
    expect(kinds("how nice of them all to say so there")).toBe("asks");
    expect(kinds("how nice of them all to say so there on the very first page of it")).toBe("tells");
    expect(kinds("how nice of them all to say so there on the very first page of it?")).toBe("asks");
    expect(twelve.split(" ").length).toBeGreaterThan(11);
  });
  test("that wants a nod is known by its tag", () => {
    const tagged = (text: string): boolean => {
      const clauses = clausesOf(tokenise(text));
      return isTagged(clauses, 0);
    };
    expect(tagged("it is rough, right?")).toBe(true);
    expect(tagged("it is rough, right")).toBe(false);
    expect(tagged("it is rough, rightly so?")).toBe(false);
    expect(tagged("it is bright?")).toBe(false);
    expect(tagged("it is rough. Right?")).toBe(false);
    expect(tagged("what is it, eh?")).toBe(false);
    expect(tagged("is it rough, eh?")).toBe(false);
    expect(tagged("it is what, eh?")).toBe(true);
  });
});

describe("a denial", () => {
  /** The words under a negation, each stretch by itself. `terms`: words that the handbook holds. */
  function denied(text: string, terms: readonly string[] = []): readonly string[] {
    const tokens = tokenise(text);
    const phrasesAt = new Map<number, readonly Spotted[]>(
      tokens.flatMap(({ folded }, at) =>
        terms.includes(folded) ? [[at, [{ from: at, to: at } as Spotted]]] : [],
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
  }
  test.each([
    ["no mark on it", [], ["no mark on it"]],
    ["there is no mark", [], ["no mark"]],
    ["rough and not square", [], ["not square"]],
    ["no lip but three screws", [], ["no lip"]],
    ["no mark it has two screws", ["mark"], ["no mark"]],
    ["no mark it has two screws", [], ["no mark it has two screws"]],
    ["no lip no mark", ["lip"], ["no lip", "no mark"]],
    ["no lip not rough", ["lip"], ["no lip", "not rough"]],
    ["no lip just paint", ["lip"], ["no lip"]],
    ["rough, no", [], []],
    ["no", [], []],
    ["none", [], ["none"]],
    ["no rough", ["no"], []],
    ["part no 12", [], []],
    ["chassis no x12", [], []],
    ["part no good", [], []],
    ["part no mark", [], ["no mark"]],
    ["there no 12", [], ["no twelve"]],
    ["6 no. screws", [], []],
    ["six no mark", [], []],
    ["it is not sure", [], []],
    ["cannot see whether it is rough", [], []],
    ["can not find", [], []],
    ["cannot find a mark", [], ["cannot find a mark"]],
    ["did not really see behind it", [], []],
    ["did not see a mark", [], ["not see a mark"]],
  ] as const)("%s (%s)", (text, terms, expected) => {
    expect(denied(text, terms)).toEqual(expected);
  });
  test("that is only a turn of phrase denies nothing", () => {
    const phrases = `{not,isn't,wasn't} the one {that,which} I had
      not one{, of them, hundred}
      {not,never,isn't} {sure,so sure,clear,only,just,yet,been,from,for sale,in a position,in the position}
      no {idea,doubt,clue,question,more than,way of,good,luck,record,records,history,thanks,it,its,they,this}
      nothing {else,to,wrong,special}
      {don't,cannot,couldn't,do not,could not} {know,recall,make out,read,get to,get a look,reach,look,check,measure,believe him,have a clue,have the tool,have the tools,have the car,have time}
      {haven't,have not} {looked,checked,been,a clue,got it,got the car}
      missing {some,out}
      minus {two,one}
      zero {idea,to}
      neither {do,of us}
      without {,taking ,the ,a }{drilling,doubt}
      without any paperwork
      {cannot,couldn't,don't} {,really ,even }{see,find,feel} {if,whether,behind,it,the back,the figure,the figures,the date}
      {cannot,couldn't} {,really }see`;
    expect(
      wordings(phrases)
        .map((text) => [text, denied(text)])
        .filter(([, words]) => (words?.length ?? 0) > 0),
    ).toEqual([]);
  });
  test("is one all the same in words that only look so", () => {
    const real = `{isn't,not} the one I had
      not one {plug,slot}
      {not,never} {rough,clearly square,frombled}
      no {ideal,mark,goods}
      nothing {rough,tosses}
      {don't,cannot} {show,have a lip,make out any,make out a mark,have the toolx}
      {haven't,have not} {notches,gothic}
      missing lip
      without {a lip,lip}
      {cannot,couldn't} {,really }{see,find} {a lip,any}
      x cannot see now`;
    expect(wordings(real).filter((text) => denied(text).length === 0)).toEqual([]);
  });
});

describe("how a clause is meant", () => {
  const meant = (text: string): string =>
    stancesOf(clausesOf(tokenise(text)), () => false)
      .map(({ aside, certainty }) => aside ?? String(certainty))
      .join(", ");
  test.each([
    [
      "question, 1",
      `{,ok so }{which,what} {,old ,sort of green }mirror {is,are} {it,this,mine}, three screws
      what did I {get,buy}, three screws
      {is,are} {it,these,my} {,old green ,mirrors }{genuine,right,a copy,copy,a repro,a reproduction,fake}{, for the car, on my 1981 car}, three screws`,
    ],
    ["question, question", `which mirror is it of those, three screws`],
    ["hearsay, hearsay", "bloke reckons it is early. {,And ,Also }{says,reckons,thinks} it is rough"],
    ["1, 1", "it is rough. {So says the label,Reckoning}"],
    [
      "1",
      `{someone,some idiot,some previous owner} {,before me }{,has ,had }{painted,cut,sanded} {the,a,an,all} inside
      {someone,laminator} {,has }{wrote,written,signed} AB in {pencil,the corner,his hand}
      rough {as if,like a,like an,like the,like some,like something} thing that would bite
      a stamp {,that ,which }I {can't,cannot} {,quite ,really }{read,make out}`,
    ],
    ["hearsay", "{someone,somebody} {wrote that it is so,wrote in his advert it says so,told me}"],
    ["0.75, 0.75", "rough inside, I think"],
    ["0.5, 0.5", "maybe, rough inside"],
    ["1, 0.75", "rough inside, I think it is a wide lip"],
    ["0.75, 1", "I think it is a wide lip, rough inside"],
    ["1, 0.75", "rough inside. I think"],
    ["0.5, 1", "maybe. Rough inside"],
    ["1, 1", "rough inside, a lip"],
  ] as const)("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, meant(text)])
        .filter(([, kind]) => kind !== expected),
    ).toEqual([]);
  });
});
