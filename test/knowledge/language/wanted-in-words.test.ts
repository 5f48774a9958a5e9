// What is wanted, in the many ways it is said: with none, one or several words in the places where people put them, in the singular and the
// plural. Everyday English of clubs and advertisements, no source.
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
const first = <Kind>(table: readonly (readonly [Kind, RegExp])[], text: string): Kind | undefined =>
  table.find(([, pattern]) => pattern.test(folded(text)))?.[0];
const goalOf = (text: string) => first(goalPatterns, text);
const plainOf = (text: string) => first(plainIntents, text);

describe("what a person wants of the part", () => {
  test.each([
    [
      "what-should-it-have",
      `{what,which} {,mirrors ,sort of mirrors }should {,it ,my old car }have
      what did the works wear
      what would they have left
      what ought they have fitted
      which {,mirror ,old mirror }{belong,belongs} {,best }on a 79
      what came with
      what came {,from new }on the car
      should my {,old ,early green }car have three
      what {,kind of ,mirror }does {my,the} {,early ,old green }car {need,have,take}
      what {,mirror ,kind of mirror }{should,would,ought to} {go on,be fitted}
      {whats,what is} {,the }{correct,right,proper} {,mirror ,sort of mirror }{for,on} my car
      what should I {,be }{look,fit,buy}`,
    ],
    [
      "genuine",
      `is it {,a }{real,fake,repro,reproduction,copy,replica,remake,original,pukka}
      are they {,really }{fakes,repros,reproductions,copies,originals,replicas,remakes}
      is a real one
      is the original
      factory or {,one of }{,the }{,later }{remake,remakes,copies,repros}
      original or {,a ,a later }{repro,copy,fake,not}
      copy or {,is it ,is it a }{genuine,real}
      been {had,done}`,
    ],
    [
      "right-for-car",
      `{right,wrong,suitable,ok} {,type ,sort of }{for,to} {my,a,mine}{, early car}
      right for {car,year}
      is right for the year
      {does,will,are} {it,these,the mirror,the mirrors} {,really ,ever }{match,belong,go with,suit}
      it {belong,belongs} on my car
      did {it,my mirror,my mirrors,the car} {,really ,ever }{leave,come} {,a long way ,in 1981 }{with it,from new,on it}
      like what {it,she} left {,the }works
      is it {,the }{right,correct,wrong}
      are they {,the }{right,correct,wrong}
      the wrong {one,type,kind,version}
      it {fit,fits} the {year,date,car}`,
    ],
    [
      "which-variant",
      `{which,what} {one,type,mirror,old mirror} {,of mirror ,of the mirrors }{is,do,have} {this,I,mine}
      not sure {which,which one,which type,which of them,which of the mirrors}
      {what,which} {,mirror ,a }have I got
      {identify,identified,identifying,identification}
      id {this,please,on}
      please ID this
      {help,need} {,me ,an }ID
      need {,some }identification`,
    ],
  ] as const)("%s", (goal, table) => {
    expect(wordings(table).filter((text) => goalOf(text) !== goal)).toEqual([]);
  });

  test.each([
    ["which of them has a lip"],
    ["a misidentified mirror"],
    ["the bright one"],
    ["it was fitted"],
    ["avoid this"],
    ["an inauthentic smile"],
    ["the genuineness"],
    ["the whatsit should have"],
    ["a paid one"],
  ])("is not heard in words that only look like it: %s", (text) => {
    expect(goalOf(text)).toBeUndefined();
  });
});

describe("what a person wants of us", () => {
  test.each([
    ["start-over", "{start over,begin again,from the beginning,clear everything,reset,forget it all}"],
    [
      "undo",
      `undo {,the last answer,what I said about it}
      {take that back,go back,go back one,step back,revert,cancel that,back}`,
    ],
    ["list-cases", "{list,show} {,me }{,please }{my,all,all my,open,all my open} {cases,questions}"],
    [
      "new-case",
      `{new,different} {case,question,part}
      another case {now,please}
      start {a,another} {,new }case
      open a {,new }case
      {next part,something else now}`,
    ],
    [
      "what-do-you-know",
      `what {do you know,have you got,did you note,have i said,do you make of it,is known,are the facts}
      show {,me }{,the }{facts,ranking,case}
      {so far,where do we stand,where does it stand,where are we,summary,summarise,recap,sum up,status}`,
    ],
    [
      "photographs",
      `{what,which,any,how many,more} {,good ,of the old }{photograph,photographs,photos,picture,pictures,snaps,shots,images}
      {photos,picture,pictures,shots} {should,to,that would}
      ask {,him for ,the seller for ,the old man for }{photos,picture,pictures}
      what should I {ask,photograph}
      photograph {list,checklist}`,
    ],
    [
      "what-fits",
      `{what,which,will,does} {,it ,the later mirror }{fit,bolt on,swap}
      {interchange,interchangeable,direct fit,same holes}
      {bolt,bolts} straight on
      fit the {,same ,old }holes
      without {drilling,new holes,cutting}`,
    ],
    [
      "where-from-here",
      `where {do,can} {i,we} {go,turn,look}
      what {next,now,should I do,do i do,else can I check,can I do now,would settle it}
      {next step,next steps,whats next}
      how {do,can} {i,we} be sure`,
    ],
    [
      "sources",
      `{source,sources,reference,references,citation,citations,cite}
      where {did,do} you get
      {who says,says who,prove it,back that up}
      how do you know {,that,this}`,
    ],
    [
      "price",
      `{price,worth,valuation,cost,costs,bargain,quid,too much,overpriced,over priced}
      {pound,pounds} is
      how much {is,for} it
      how much can I {ask,charge}`,
    ],
    [
      "help",
      `{,please ,hello ,hey }help {,me }{,please}
      how do {you,i use} {,all of ,it ,one }{work,this,bot}
      {what can you do,instructions,commands,who are you}`,
    ],
    [
      "why",
      `{,but ,so }why {,this,that,not,is that,do you want,do you want to know,do you need,do you need it,do you need that now,this one}
      tell me why {this,do you ask,would you}
      then why this question
      {what,whats,what is} {,the }point`,
    ],
    ["yes", "{,oh ,well }{yes,yep,aye,true,ja} {,it is,they are,mate,thanks mate}"],
    ["no", "{,oh ,well }{no,nope,none,nein} {,it isnt,sorry,at all,thanks mate}"],
    ["small-talk", "{thank,thanks,cheers,hello,good morning,congratulations}"],
  ] as const)("%s", (kind, table) => {
    expect(wordings(table).filter((text) => plainOf(text) !== kind)).toEqual([]);
  });

  test.each([
    [
      "undo the {,two ,two old rusty }{stud,studs,bolt,bolts,nut,nuts,screw,screws,clip,clips,cap,caps,fixing,fixings,fastener,fasteners}",
    ],
    ["it came back"],
    ["the resetting"],
    ["how do you know {Dave,that man}"],
    ["why {this one,that one,not,so} then it broke"],
    ["tell me why {this one broke,not}"],
    ["please help {him,me out}"],
    ["so help"],
    ["yes and no"],
    ["it is yes"],
    ["no but yes"],
    ["it says no"],
    ["the whole shebang"],
    ["the shelf"],
    ["a worthy one"],
    ["the costume"],
    ["dishonest"],
    ["a resource"],
  ])("is not heard in words that only look like it: %s", (table) => {
    expect(wordings(table).map((text) => [text, plainOf(text)])).toEqual(
      wordings(table).map((text) => [text, undefined]),
    );
  });

  test.each([
    [
      "cannotTell",
      cannotTell,
      `can't {,really }see {,it,that from here,inside} | couldn't {,really }check {if,which} | need to {take,get} {it,the} {,lower }off | {hard to tell,pass,skip,skip it} | no clue`,
    ],
    [
      "howToCheck",
      howToCheck,
      `what does {it,the} {,edge ,good cast edge }look like | how {can,do} I {tell,see} | {measure,measured} {,from }where | explain`,
    ],
    [
      "withdraw",
      withdraw,
      `{forget,ignore} {,all about ,all ,again }{that,the,my} | {delete,drop} {that,that one,that answer} | scrap my {,last ,previous }{answer,reading} | {never mind,nevermind,disregard} | it was a mistake`,
    ],
    [
      "compare",
      compare,
      `{difference,differences} between | {differ,differs} from | tell {,a ,them }{,copy ,good copy }{from,apart} | versus`,
    ],
    [
      "listVariants",
      listVariants,
      `{list,show} {,me }{,all ,all the ,every }{,known }{variant,variants,version,versions,type,types,kind,kinds} | {what,which,how many} {,known ,of the }{variant,variants,version,versions,types,kinds} {,of mirror ,of the old mirror }are there | what {are,were} the {,different }{variant,variants,version,versions,types,kinds,options}`,
    ],
  ] as const)("%s, in every wording", (_, pattern, table) => {
    const said = wordings(table.replaceAll(" | ", "\n"));
    expect(said.filter((text) => !pattern.test(folded(text)))).toEqual([]);
  });

  test.each([
    ["cannotTell", cannotTell, `can't see it {working,on my car} | compass | I skip it now | the pass road`],
    [
      "withdraw",
      withdraw,
      `remove that lid | disregarded | forgetting about | disregard him | drop my {first ,}car`,
    ],
    ["compare", compare, `incomparable | compares`],
    ["listVariants", listVariants, `enlist variants | what a {version,type} | typeset`],
  ] as const)("%s, and in no other", (_, pattern, table) => {
    const said = wordings(table.replaceAll(" | ", "\n"));
    expect(said.filter((text) => pattern.test(folded(text)))).toEqual([]);
  });

  test.each([
    ["case 2", "two", undefined],
    ["case no 13", "13", undefined],
    ["question 125", "125", undefined],
    ["go to first", undefined, "first"],
    ["go back to the second", undefined, "second"],
    ["switch to case third", undefined, "third"],
    ["change it to 13", undefined, "13"],
    ["switch to the 125", undefined, "125"],
    ["showcase 2", undefined, undefined],
  ])("%s is another case", (text, number, ordinal) => {
    const groups = switchCase.exec(folded(text))?.groups;
    expect([groups?.number, groups?.ordinal]).toEqual([number, ordinal]);
  });
});
