// How sure somebody is, whose word and whose car it is, in the many ways it is said: persons and verbs in the singular and the plural, with none,
// one or several words between. Everyday English of clubs and advertisements, no source.
import { expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import {
  cueWords,
  embeddedQuestionCues,
  fictionCues,
  hearsayCues,
  maybeCues,
  neverSeenCues,
  otherCarCues,
  thinksCues,
  unseenCues,
  wishCues,
} from "../../../knowledge/language/cue-words.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { wordings } from "../../support/wordings.ts";

const folded = (text: string): string =>
  clausesOf(tokenise(text))
    .map((clause) => clause.text)
    .join(" ");

test.each([
  [
    "thinksCues",
    thinksCues,
    `{I think,I do think,thinking,I thought,I don't believe} | {look,looks} round | looked to | {appear,appears,appeared,seem,seems,seemed,seemingly} so`,
  ],
  [
    "maybeCues",
    maybeCues,
    `not {,really ,at all }sure | not {,one }100 | not {,a }hundred | if I {remember,recall}`,
  ],
  [
    "hearsayCues",
    hearsayCues,
    `{rumour,rumor,rumoured} has it
    so {he,she,they} {say,says,said,told}
    according to {the man,my mate,its owner,the buyer}
    {been,was,were} {told,promised}
    {told,tells,telling} me
    {assure,assures,assured} me
    {swear,swears,swore,insist,insists,insisted,claim,claims,claimed,claiming} so
    {selling,flogging} {it,the mirror} as
    {,and }{,the ,his ,an }{advert,ad,listing,seller}
    sold {,to me }as
    {advert,adverts,advertisement,advertisements,ad,ads,listing,book,list} {list,lists,give,gives,show,shows,say,says,quote,quotes,state,states,call,calls,read,reads,said,has}
    {everyone,people,they all} {,always }{say,says,tell,tells,think,thinks,reckon,reckons}
    {I,I've} {heard,read} that
    {says,said} {,that }{it,the man}
    {he,she} {remembers,recalled}
    the {part,parts,car,cars,one,ones} {,that }{he,they} {want,wants,wanted,ask,sells,offered,have}
    a quote
    {someone,folk,folks,member,members,others} {,here ,on the page }{say,says,said,told,reckon}
    father in law {think,thinks,say,says,said,reckons}
    {seller,bloke} {,in ,in a white van }{say,says,said,reckon,reckons,think,thinks}
    the {mate,neighbour,neighbor,club} {,here }{call,calls,called,believe,believes,believed,state,stated,confirm,confirms,replies,replied,answers,answered,guaranteed,wrote,thought,emailed,is sure,was adamant}`.replace(
      "says,said} {,that }{it,the clock maker,the man}",
      "says,said} {,that }{it,the man}",
    ),
  ],
  [
    "otherCarCues",
    otherCarCues,
    `my {mate,mates,friend,friends,brother,brothers,neighbour,neighbours,neighbor,neighbors,son,sons,wife,husband} {,old ,early green }{has,had,car,part,parts,one}
    {my,some,every} other {car,one,owner,member}
    other {cars,owners,members}
    {someone,somebody} {else,elses} car
    they would {,all }have
    he would show
    I had {a,two} {green ,}one
    {his,their} {,green }{part,parts,car} is
    {,I ,we }sold {the,that} one
    {someone,a bloke} {,here ,on the club page }{had,posted}
    saw {one,some} {,last week ,go by }{at,with}
    the one on {the photograph,a stand}
    show {car,cars,picture,photo,photographs}
    all {,of }the {,many }{early,early green} ones I saw
    {every,any} {early ,}{car,green car} I
    seen {two,many} {,other }cars
    the neighbours car has
    {similar to,as,like} {the,an} {,early ,early green }{one,ones,type}
    the {early,blue} {one,ones} was
    {they,these} {,do }{all,usually} have
    all {,the ,of the }mirrors`,
  ],
  ["wishCues", wishCues, `hypothetical | hypothetically | {I,we} will fit | lets suppose`],
  ["fictionCues", fictionCues, `wanted two feet | {,ich }{suche,brauche} | iso`],
  [
    "neverSeenCues",
    neverSeenCues,
    `{haven't,never} {,actually ,even }{seen,held} it yet | haven't seen {it,them} | not arrived yet`,
  ],
  [
    "unseenCues",
    unseenCues,
    `couldn't {,quite }{look,looked,measure,measured,turn it,turned it,make out which}`,
  ],
  [
    "embeddedQuestionCues",
    embeddedQuestionCues,
    `{wonder,wondering,wondered,ask,asking,asked,know,knowing,tell,tell me} {if,which}
    {,what }if {it,the} is
    {and,but,so} if the foot is
    {difference,differences} between
    {,please ,can you }compare
    is it round or not`,
  ],
] as const)("%s hears each of its wordings", (_, pattern, table) => {
  const said = wordings(table.replaceAll(" | ", "\n"));
  expect(said.filter((text) => !pattern.test(folded(text)))).toEqual([]);
});

test.each([
  ["thinksCues", thinksCues, `overlooks round | it disappears | the steam is rough`],
  ["maybeCues", maybeCues, `a notable one | mightily bent`],
  [
    "hearsayCues",
    hearsayCues,
    `according to {the,its} build
    according to the {build,works,factory,log,plate,dial,stamp,clock,mark,label,sticker,glass,date,register,ledger,record,records,paperwork,document,documents,certificate,v5}
    according to my {tape,caliper,calipers,ruler,scale,scales,vernier}
    {says,said} the {clock,dial,stamp,label,mark,glass,plate,sticker}
    I {remembered,recalled}
    if I recalled
    the advert fell off it
    by the seller
    a quoted figure
    in the dealer box
    his head is round
    an overheard word`,
  ],
  [
    "otherCarCues",
    otherCarCues,
    `my friend was the first owner
    I would show
    I had {a,another} {,good ,quick }{look,feel,measure}
    the one on {the,a} {bench,car,shelf,box,garage}
    the one on the photo {I took,above,below}
    the one on the photographs above
    {its,thats,heres} car is
    {todays,wheres} car has
    the {left,right,front} {one,ones} was
    all {my,these,four,three,round,black} {holes,screws}
    all of {it,mine} is
    it is sold the same day`,
  ],
  ["wishCues", wishCues, `wanted to {know,ask} | ordered by size | I {want,need} to {know,ask,check}`],
  ["fictionCues", fictionCues, `it is wanted | isobar`],
  ["neverSeenCues", neverSeenCues, `haven't seen {it done,them work}`],
  ["unseenCues", unseenCues, `can't make out {any,a,an} mark`],
  [
    "embeddedQuestionCues",
    embeddedQuestionCues,
    `if {it helps,that helps,you ask,you like,I recall} | not or nothing | or not at all | incomparable | as if it`,
  ],
] as const)("%s hears nothing in words that only look like it", (_, pattern, table) => {
  const said = wordings(table.replaceAll(" | ", "\n"));
  expect(said.filter((text) => pattern.test(folded(text)))).toEqual([]);
});

const numbers = "one two three four five six seven eight nine ten eleven twelve first second third";

test.each([
  [
    "negations",
    "no not never without neither nor none nothing nowhere lacks lacking lack missing isnt arent wasnt werent dont doesnt didnt hasnt havent hadnt cant cannot couldnt wont wouldnt aint isn zero absent sans devoid minus",
  ],
  [
    "parting",
    `and or but then than versus vs instead rather idea clue doubt question problem need luck chance point joy no not without ${numbers}`,
  ],
  [
    "contrast",
    "but though although however whereas while yet except otherwise nevertheless still anyway only",
  ],
  [
    "polar",
    "is are was were am do does did has have had can could should would will shall may might isnt arent any anyone anybody",
  ],
  [
    "interrogative",
    "is are do has can should what which who whose whom where when why how whats hows any anyone",
  ],
] as const)("%s are these words, and the names of things are none", (name, list) => {
  expect(list.split(" ").filter((word) => !cueWords[name].has(word))).toEqual([]);
  expect(["", "foot", "edge", "rough", "screw"].filter((word) => cueWords[name].has(word))).toEqual([]);
});
