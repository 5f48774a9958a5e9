// What somebody wants, said as shortly and as long-windedly as it is said: the words that may be left out are left out once and put in once,
// and what only resembles a wish is none. Everyday English, no source; a clause comes as its folded words.
import { describe, expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import {
  cannotTell,
  compare,
  goalPatterns,
  howToCheck,
  listVariants,
  plainIntents,
  switchCase,
  withdraw,
} from "../../../knowledge/language/intents.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { wordings } from "../../support/wordings.ts";

const folded = (text: string): string =>
  clausesOf(tokenise(text))
    .map((clause) => clause.text)
    .join(" ");
const goalOf = (text: string) => goalPatterns.find(([, pattern]) => pattern.test(folded(text)))?.[0];
const plainOf = (text: string) => plainIntents.find(([, pattern]) => pattern.test(folded(text)))?.[0];

describe("of the part", () => {
  test.each([
    [
      "what-should-it-have",
      `{what,which} {,early ,very early little }{should,would,did} {,a ,the late }{have,had}
      should {my,a,the} {,late ,very late }{have,car have}
      what is {correct,right} {,of these }on it
      which {,foot ,early foot }belongs {,best }to it
      what {came,come,was fitted} {,new }on it
      what {,on earth ,sort }does my {,early ,late S }{need,want}
      what {,foot ,sort of foot }ought to {be,go} on it
      what's {,the }{right,correct} {,kind ,kind of foot }for my car
      what should I {,be }{look,buy,fit}`,
    ],
    [
      "genuine",
      `{repro,copy,fake} or {,an old ,nearly }{oem,original}
      {works,factory,original,oem} or {,one of ,one of the ,the ,a ,late }{remake,remakes,copies,repros}
      {works,factory} or {,an old }fake
      are they {,all ,really }remakes
      it is a {replica,remake,copy,repro,reproduction}
      these are {,the ,nice }{replicas,originals,reproductions}`,
    ],
    [
      "right-for-car",
      `{right,suitable,wrong} {,size ,size most }{for,to} mine
      {do,does,will} {it,the foot} {,really }match
      {belong,belongs} on a mark two
      what {it,she,the car} left {,the }{works,factory} wearing
      did it {,really }leave {,in one piece }with one
      {fit,fits} the date`,
    ],
    [
      "which-variant",
      `which
      which one
      which of {them,the mirrors}
      {what,which} {,foot }{have,'ve} I got
      {what,which} mark {,of car ,of foot do }are these
      {help,need} {,some ,an }{id,identification}
      help identifying
      ID please`,
    ],
  ] as const)("%s", (goal, table) => {
    expect(
      wordings(table)
        .map((text) => [text, goalOf(text)])
        .filter(([, found]) => found !== goal),
    ).toEqual([]);
  });
  test("and nothing where the words only resemble it", () => {
    const none = `no id needed
      which of the mirrors fell
      he knows which one fell
      should haven
      the copyist
      she left it where it was
      what it weighs left me cold`;
    expect(
      wordings(none)
        .map((text) => [text, goalOf(text)])
        .filter(([, found]) => found !== undefined),
    ).toEqual([]);
  });
});

describe("of us", () => {
  test.each([
    ["list-cases", "my cases\nmy open cases\n{list,show} {,me }{,all ,the }my cases\nlist open questions"],
    ["new-case", "open a {,new }case\nstart {a,another} {,new }case"],
    ["what-do-you-know", "show {,me }{,the }{facts,ranking,case}"],
    [
      "photographs",
      `ask {,him for ,the man for two }{photos,pictures}
      {any,which,more} {,good ,good big }{photo,photos,photograph,pictures}
      {photo,photos,picture,pictures} to take`,
    ],
    [
      "what-fits",
      `interchange
      interchangeable
      fit the {,same ,existing ,old }holes
      {bolt,bolts} straight {on,up}
      without {drilling,any drilling}`,
    ],
    ["where-from-here", "next {step,steps}"],
    ["sources", "{citation,citations,source,sources,reference}\nhow do you know{, that, this}"],
    ["price", "{a pound is,pounds is} a lot\n{overpriced,over priced}"],
    [
      "help",
      `{,please ,hi ,hello ,hey }help{, me}{, please}
      how do {you,I use} {,that ,this new }bot
      how do you work`,
    ],
    [
      "why",
      `{,but ,and ,so ,ok ,okay }why{, this, is that, ask, not, so}
      why do you need{, that, to know that}
      why this question
      what{,'s, is} {,the }{point,reason,relevance}`,
    ],
    ["small-talk", "{thank heavens,thanks,ta}\n{congrats,congratulations}"],
    ["undo", "undo\nback"],
  ] as const)("%s", (kind, table) => {
    expect(
      wordings(table)
        .map((text) => [text, plainOf(text)])
        .filter(([, found]) => found !== kind),
    ).toEqual([]);
  });
  test("and nothing where something is told", () => {
    const none = `undo {,the ,each of the ,both of the old }{bolt,bolts,nut,nuts,stud,studs,screw,screws,clip,clips,cap,caps,fixing,fixings,fastener,fasteners}
      the {back,backs} came off
      it came back
      it is no help to me
      I know why
      why the edge is square
      tell me why this is so
      how do you know him
      no doubt why it fell off
      not the yes I wanted`;
    expect(
      wordings(none)
        .map((text) => [text, plainOf(text)])
        .filter(([, found]) => found !== undefined),
    ).toEqual([]);
  });
});

describe("and what is answered or taken back", () => {
  test.each([
    [
      "it cannot be told",
      cannotTell,
      `need to {take,get} {it,the} {,door ,lamp }off
      would have to {take,remove} it
      pass
      skip{, it, this, that}
      {can't,cannot,couldn't} {,really ,quite ,even }{see,reach,measure,look}{, it, from here, it from here}
      can't {,really ,properly }{see,make out,tell} {if,whether,how} it is
      hard to {say,tell,see}
      not sure`,
      `hard to {say,see} it was not
      I {pass,skip} that shop
      found in a skip behind the shop
      not sure but round
      I need to get it`,
    ],
    [
      "how it is looked at",
      howToCheck,
      `{measure,measured} {,from }where
      where from
      what does {it,that,the,a} {,good edge ,edge }look like`,
      "where it came from\nthe measure is where I left it",
    ],
    [
      "it is taken back",
      withdraw,
      `{never mind,nevermind}
      {disregard,forget,ignore} {,all ,all of }{what I said,that,my answer}
      {drop,delete,remove,scrap} {my,the} {,last ,previous }{reading,answer,fact}
      {delete,scrap,drop} that{, one, answer, fact}
      disregard`,
      "they disregarded him\ndisregard for others\nscrap that was heavy\ndrop that foot on the floor",
    ],
    [
      "two are set beside each other",
      compare,
      `{differ,differs} from
      {difference,differences} between
      tell {,a ,an ,the ,them ,one }{,very late ,late }{apart,from}`,
      "they differ\na difference",
    ],
    [
      "all of a kind are listed",
      listVariants,
      `{show,list} {,me }{,all ,all the ,the }{,old ,late }{variant,version,type,kind,variants,versions,types,kinds}
      what {are,were} the {,different ,various ,possible }{variant,version,variants,versions,types,options}
      how many {,early ,early little }{variant,version,types,kinds}{, of mirror, of early mirror} are there`,
      "show me the door\nwhat are the odds",
    ],
  ] as const)("%s", (_, pattern, yes, no) => {
    expect(wordings(yes).filter((text) => !pattern.test(folded(text)))).toEqual([]);
    expect(wordings(no).filter((text) => pattern.test(folded(text)))).toEqual([]);
  });
  test("a case is named by its number or its place", () => {
    const named = (text: string) => {
      const groups = switchCase.exec(folded(text))?.groups;
      return groups?.number ?? groups?.ordinal;
    };
    expect(
      ["case 2", "case no 41", "number 3", "back to 41", "go straight to the first", "switch to case 12"].map(
        named,
      ),
    ).toEqual(["two", "41", "three", "41", "first", "twelve"]);
  });
});
