// What stands in a message and is not there to be read of the part in hand: addresses and turns of phrase, what would be, what one should do, what
// was once owned, what all of a kind have. Everyday English of clubs and advertisements, no source.
import { describe, expect, test } from "vitest";
import { blankNoise } from "../../../knowledge/language/blank-noise.ts";
import { goesOn, isElsewhere, isOfKind, isUnreal } from "../../../knowledge/language/unreal-cues.ts";
import { wordings } from "../../support/wordings.ts";

describe("what is no statement is blanked where it stands", () => {
  const words = (shown: string): string => blankNoise(shown).text.replaceAll(/ +/g, " ").trim();
  test.each([
    ["code", "a ```two screws\nor three``` b", "a b"],
    ["code that never ends", "a ```two screws", "a"],
    ["code of one line", "a `two` b `three\nfour` c", "a b `three\nfour` c"],
    ["an address", "a https://wexcombe.example/two-screws b", "a b"],
    ["an address", "a http://wexcombe.example b WWW.wexcombe.example/3 c", "a b c"],
    ["a mail address", "a first.last@wexcombe.example b", "a b"],
    ["a mail address in brackets", "a (me@wexcombe.example) b", "a b"],
    ["a mail address in pointed brackets", "a <me@wexcombe.example> b", "a b"],
    ["somebody's name and a topic", "a @two_screws #three-four b", "a b"],
    ["somebody's name in signs", "a <@1234> <:screw:> b", "a b"],
    ["a masked number with the letters before it", "a, WS-\u2022\u2022\u2022\u2022 x; b", "a, x; b"],
    ["a masked number with letters in it", "a, \u2022a\u2022 x; b", "a, x; b"],
    ["a masked number alone", "a;\u2022\u2022\u2022;b", "a; ;b"],
    ["no dots before a figure", "a \u2022 8, \u2022\u2022 8 b", "a \u2022 8, \u2022\u2022 8 b"],
    ["miles", "a 40,000 miles, 50k miles, 1 mile, 60 k miles, 5miles b", "a , , , , b"],
    ["a metric thread", "an M6 x 20 mm, m8, M10x30, M12s, M4 x25mm, M3 x 200, m6x20 b", "an , , , , , , b"],
    ["no metric thread", "M20 M13 M2 m66 M6x", "M20 M13 M2 m66 M6x"],
    [
      "one word between signs",
      `it is the "wood" of a "film" here and "so" on`,
      `it is the of a here and "so" on`,
    ],
    ["one word between signs", `its "rough" it "hairy" this "wide" third "dot"`, "its it this third"],
  ])("%s: %s", (_, shown, expected) => {
    expect(words(shown)).toBe(expected);
    expect(blankNoise(shown).text).toHaveLength(shown.length);
  });
  test("a line quoted from somebody else is known as theirs", () => {
    expect(blankNoise("a\n> two screws\n >three\nb > c").quoted).toEqual([
      { start: 2, end: 14 },
      { start: 15, end: 22 },
    ]);
  });
  test.each([
    `{rough,roughly} {idea,guess}
    rough {edge,edges,ride,patch}
    {smooth,plain} {sailing,wrong}
    {all,turn,turned,look,looked,looking,shop,shopped,shopping,next} round
    round {here,the corner,about,up}
    from square one
    fair and square
    early {days,bird}
    {sharp,open} {eye,eyes,mind}
    on the other hand,
    {hit,struck} {steel,wood}
    {steel,steeled} myself
    {mark my words,question mark,question marks,on your mark,on your marks}
    {screw,screwed} {up,it}
    cast {an eye,doubt}
    {to,like} {a,an} mirror{, finish, shine}
    mirror {finish,polish,polished,polishing,shine}
    milk {float,floats,bottle,bottles,round,rounds,can,cans,churn,churns,man}
    {paint,painting} {a,me a} picture
    touch wood
    in the rough {part,patch}
    {give,gives} {me,no}`,
  ])("a trade word that is used for something else", (table) => {
    expect(wordings(table).filter((saying) => words(`so, ${saying} so`) !== "so, so")).toEqual([]);
    expect(wordings(table).filter((saying) => words(`so, ${saying.toUpperCase()} so`) !== "so, so")).toEqual(
      [],
    );
  });
  test.each([
    ["no mark I can find here", "no mark here"],
    ["no mark that we could see here", "no mark here"],
    ["no marks which I can spot", "no marks"],
    ["the mark that I can see", "the mark that I can see"],
    ["white as milk", "white"],
    ["white as a fresh plum", "white"],
    ["white as an egg shell now", "white now"],
    ["smooth as glass now", "smooth now"],
    ["smooth as rocks now as rock", "smooth now"],
    ["as a plum", "as a plum"],
    ["as milk", "as milk"],
    ["sold as a {pair,spare,set} here", "same"],
    ["a thorough idea", "a thorough idea"],
    ["the steel is rough", "the steel is rough"],
  ])("%s leaves: %s", (table, expected) => {
    for (const text of wordings(table)) expect(words(text)).toBe(expected === "same" ? text : expected);
  });
});

describe("what is not at hand", () => {
  const kinds = (text: string): string =>
    [
      isUnreal(text) && "unreal",
      isOfKind(text) && "kind",
      isElsewhere(text) && "elsewhere",
      goesOn(text) && "goes on",
    ]
      .filter((kind) => kind !== false)
      .join(", ");
  test.each([
    [
      "unreal",
      `it would be round
      if {a,an} one breaks
      {,so ,well }say {it,there} is one
      {,just ,and }ask {him,them}
      dont {,ever ,you }{sand,buy} it
      {,please }look {,out }for three
      {pro tip,protip,walk away}
      the {,only ,best }{way,test} {to,is} so
      it {give,gives} it {,all }away
      it came as {,a }standard
      where would it be`,
    ],
    [
      "unreal, goes on",
      `{,and ,but }if {your,yours,someone} has one
      {turn,turns} up {,early }{tomorrow,monday}
      {i,we} {,will ,shall ,will be }{check,checking} it tomorrow
      i {,will }measure it {one evening soon,tonight}
      once {it,the part,the parts} {turn,turns,arrive,arrives,come,comes,get,gets}
      {winter,winters} plan
      to be painted`,
    ],
    [
      "",
      `i would {say,not call}
      where {it,the old long number} would {be,have been,sit}
      {a,the} {part,hidden part} would {live,go}
      where {it,the old long number} {should,ought to} be
      i measure it
      i say it is so
      ask ed
      they say it is so
      the magnet would not {stick,hold}
      it is the page
      once the paint is off`,
    ],
    [
      "elsewhere, goes on",
      `the {photo,photos,photograph,picture,pictures,pic,pics,image,images,shot,shots} {,here }{is,was} {,so ,too }{blurred,blurry,dark,rough}
      is what {you,he} {,are ,is }{say,said,saying}
      that is the question
      {i,we} {,recently }{sold,scrapped} it
      {my,our} {previous,old} {,blue ,big blue }{part,car,one}
      {parts,one,ones} at the {meet,show}
      {,probably }not mine
      page {12,two}
      in post 12
      in 1979 you got two
      {my,the} {,old ,neighbours }{boat,kayak}
      my {,left }{ear,ears,knee,knees,hip,hips,elbow,elbows,neck}`,
    ],
    [
      "kind",
      `my {favourite,favorite,favourites}
      your {,own }{part,parts}
      {i,you} {,really ,do }hate the one
      {i,we} {,have }never seen one
      a {third,few} {,more }{had,was} so
      on the {early,genuine} {one,ones,part,parts,car,cars}
      the {early,late} {one,ones,cars,batch,batches} of them had two
      {pros of,cons and}
      {advantage,advantages,downside,downsides} of
      {what,whats,what is} the difference
      the {club,clubs,register,registers} view
      the {rumour,rumor} goes
      theres {,also }a {rumour,rumor}
      soft letters {mean,means,indicate,indicates,prove,proves} a copy
      lines {are signs,are a sign,is a sign} of
      it {tell,tells} you`,
    ],
    [
      "",
      `{that,this,which,it} {,only ,really }{mean,means,indicate,indicates,prove,proves} a copy
      i mean the edge
      it is by means of a screw
      it proves to be so
      feed my boat
      like my boat
      the boat told me
      it is not mine
      i say it is so and not mine
      the title page two`,
    ],
  ])("%s", (expected, table) => {
    expect(
      wordings(table)
        .filter((text) => kinds(text) !== expected)
        .map((text) => [text, kinds(text)]),
    ).toEqual([]);
  });
});
