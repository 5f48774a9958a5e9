// Whose car is spoken of, where it was sold, what became of a part and whether it is by itself: each wording with and without the words that
// may be left out, and what only resembles it. Everyday English of clubs and advertisements, no source.
import { describe, expect, test } from "vitest";
import { marketsSold } from "../../../knowledge/language/car-adjectives.ts";
import { gradeIn } from "../../../knowledge/language/car-history.ts";
import { layOut } from "../../../knowledge/language/lay-out.ts";
import { compileLexicon } from "../../../knowledge/language/lexicon.ts";
import { readDemo } from "../../support/read-demo.ts";
import { carFindingInWords, carInWords } from "../../support/reading-in-words.ts";
import { tarnHandbook, tarnToday } from "../../support/tarn-lexicon.ts";
import { wordings } from "../../support/wordings.ts";

const car = (text: string, about = ""): readonly string[] => carInWords(readDemo(text, about));

describe("a clause tells of the car or the part", () => {
  test.each([
    [
      "known-replaced",
      `{,and ,was ,and was }fitted {,in }{79,1979} after a crash
      {,and ,then ,was ,were ,got }{replaced,renewed} {in,after,by,once}
      and {,was ,were ,got }{replaced,swapped}
      i replaced the {,old ,very tired old }part
      {the part,it,the lot} was changed`,
    ],
    [
      "documented-from-new",
      `kept {every,all} {,of }{,the ,his ,its }{bill,bills,receipt,receipts,invoice,invoices,paper,papers,paperwork}
      {receipt,receipts} for {everything,every part,each single part} since
      history {,file }{,is }complete since new
      build {sheet,card,record} {,is here and }matches`,
    ],
    [
      "one-owner",
      `bought {,it ,the car }{,brand ,from }new
      {owned,had} {it,the car,mine} {from,since} new
      owned from new`,
    ],
    [
      "history-unknown",
      `no idea {,about ,of ,what }{,really }before {that,then,me}
      history {,of the ,of this ,of the car ,of my part ,of it }{,is ,was ,is all ,is totally }{unknown,lost,patchy,not known}
      {barn find,barnfind}{, car}
      no {idea,clue} {of,about,on} {,its ,the real }{history,past}
      {don't know,do not have} {,much of the ,the }history`.replaceAll("don't", "dont"),
    ],
  ] as const)("%s", (grade, table) => {
    expect(
      wordings(table)
        .map((text) => [text, gradeIn(text)])
        .filter(([, found]) => found !== grade),
    ).toEqual([]);
  });
  test("and nothing where another thing was changed, or another was found in the barn", () => {
    const none = `cleaned and replaced
      the fitted 69 after a fashion
      i {replaced,have replaced} the {seal,old door seal}
      the seal was changed
      it was changed in my {life,time}
      {off,from,of} {,a ,an ,the ,my }{barn find,barnfind}
      barn find {part,parts}
      he's owned it from new`.replaceAll("he's", "hes");
    expect(
      wordings(none)
        .map((text) => [text, gradeIn(text)])
        .filter(([, found]) => found !== undefined),
    ).toEqual([]);
  });
});

describe("a part", () => {
  const isLoose = (text: string): boolean => car(text, "door-mirror").includes("loose");
  test("is by itself when it came from where parts are sold, without a car or for money", () => {
    const loose = `it is off {ebay,e bay,the bay,an autojumble,an auto jumble,a swapmeet,a swap meet,a bootsale,a boot sale,a breaker,a breakers,a donor}
      {,rather }loose
      off a {,parts ,donor ,scrap ,scrapped ,dead ,old }{car,scrapper,wreck}
      from a {parts car,donor,scrapper,wreck}
      {off,out of,from} a {donor,scrap,scrapped,breaker,breakers} shell
      no car {round it,around it,with it,for it,anymore,any more,to go with it,attached}
      {,there's ,with }no car to go with it
      without {,a ,the ,any }car
      never {,been }fitted
      {,and ,but ,so }no car{, yet}
      mirror {been,it was} {,nicely ,nicely wrapped }on a shelf
      got it {at,from,off} {,a ,the ,his }breaker
      got it at a {swapmeet,swap meet,autojumble,auto jumble,bootsale,boot sale,boot fair,farm sale,flea market,breakers,scrapyard,scrap yard,junkyard,junk yard,skip,auction,classified,classifieds,dealer,dealers,trader,stall,swap table}
      got it from {an honest ,a very nice ,the good old local }dealer
      it {,only ,apparently }came from a dealer
      the {,plastic }mirror came from a dealer
      {,and ,so ,then ,also ,originally ,so then }came from a dealer
      bought {,it ,both ,this one }{used,secondhand,second hand}
      {bought,acquired,purchased,picked up} it from Dave
      picked it up off Dave
      found {one,a mirror} in {a,the,my} shed
      {I bought,just bought} a {,old ,very fine old }mirror
      just bought {one,this,these}
      been offered {a,an,this} old mirror
      mirror, {asking,want,wants} {,about }40 {quid,pounds,euro,euros}
      {the mirror,it} {arrive,arrives,arrived} {,on }tomorrow, the mirror I mean`;
    expect(wordings(loose).filter((text) => !isLoose(text))).toEqual([]);
  });
  test("is not, where it is loose on its car, was bought some day, or somebody else says so", () => {
    const onCar = `it is loose {in its socket,at the foot,on one side,again,now}
      a loose {end,ends,screw,screws,bolt,bolts,nut,nuts,wire,wires,thread,threads,fit}
      don't {have,own} a car {here,at hand,to hand,anymore,any more}
      no car keys
      got it {at home,from a friend,on the club night}
      my {,old }mirror came {out of a skip,from a dealer}
      the {brush,polish} came from a dealer
      bought it {in 80,on monday,in may,in the last summer,in early november,for the eighties}
      picked at it from the side
      found it in the shed
      just bought one of his hats
      the spare {,road }{wheel,wheels,tyre,tyres,tire,tires} is on a shelf by the mirror
      the chap I bought it from {said,says,told me,reckons,reckoned,claims,claimed,swore,swears} never
      it is a nos
      who is selling a mirror
      the mirror at the autojumble. {,so ,but }I passed
      mirror {none,not,is} for sale`;
    expect(wordings(onCar).filter(isLoose)).toEqual([]);
  });
});

describe("the car is the speaker's own", () => {
  test.each([
    [
      "trim touring",
      `{,and ,but ,so }{its,it's,it is,mine is,mine's,my car is,the car's,car is} a Touring so I guess it should be wood
      {my,our} Touring
      I have a Touring`,
    ],
    ["model shrike-ii", "{,Proud ,New proud }Mk2 owner checking in"],
    [
      "trim standard",
      "{mine's,mine is,car's,car is,my car was,my car really is} {,just ,only }a {,bog }{standard,base,basic} one",
    ],
    [
      "market continent",
      `{sold new,delivered,delivered new,supplied,supplied new,exported,registered new,first sold,first registered} {,here }{in,to} {,the }Netherlands
      car {,was ,went }new to Holland
      {car,mine,it,this} {,really ,may have }{is,was} a Dutch one
      Dutch {papers,title,documents,log book,logbook,number plates,registration papers}
      Dutch {delivered,supplied}`,
    ],
    ["market america", "sold new in the {States,United States,USA}\na US one it's a US one"],
  ] as const)("%s", (expected, table) => {
    expect(
      wordings(table)
        .map((text) => [text, car(text)])
        .filter(([, found]) => !found?.includes(expected)),
    ).toEqual([]);
  });
});

describe("the car is nobody's that asks", () => {
  test("but any car's of a question, another's, or one that was only seen", () => {
    const others = `for {a,my} {friend,mate,brother,cousin,neighbour,neighbor}: are three screws right on a 1981 S?
      on behalf of my club: are three screws right on a 1981 S?
      are three screws right on a 1981 S?
      is it {true,possible} that a 1981 S has three?
      {had a look at,looked at,saw,spotted,followed,remember} {,a ,a very nice }Touring
      {a,the,any,other} Mk2 owner has one
      Mk2 {owners,people,drivers,ones,cars} have three
      the Mk2 in the {photo,photos,photograph,magazine,brochure}
      Mk2 mirrors {have,had,were,are} three
      wheels off a {dead,scrapped,broken,crashed} Mk2
      {his,her,their,your,another} {,old }Touring
      {my,a,the} {,old ,very good }{friend,mate,brother,neighbour}'s Touring
      the Touring {of,belonging to,from} my {,old }{friend,mate}
      a {,nice }chap {,with a hat }{had,has,owns} a Touring
      had the wing of a Mk1 on his Mk2
      {not,isn't,no,wasn't} {,a ,the }Touring`;
    expect(
      wordings(others)
        .map((text) => [text, car(text).filter((line) => !line.startsWith("history"))])
        .filter(([, found]) => (found ?? []).length > 0),
    ).toEqual([]);
  });
  test("and models set beside each other are of no car, unless one is said to be the speaker's", () => {
    const models = (text: string) => car(text).filter((line) => line.startsWith("model"));
    expect(models("the Mk1 has two and the Mk2 three")).toEqual([]);
    expect(models("the Mk1 has two. My Mk2 has three")).toEqual(["model shrike-ii"]);
    expect(models("my Mk1 has two, the Mk2 three")).toEqual(["model shrike"]);
    expect(models("does it bolt onto a Mk2?")).toEqual([]);
    expect(models("I have a Mk1, a Mk2 is dearer")).toContain("model shrike");
    expect(models("the Shrike Mk2 has three")).toEqual(["model shrike-ii"]);
  });
});

describe("a country stands for the market whose cars its adjective names", () => {
  const countries: Readonly<Record<string, readonly string[]>> = {
    holland: ["dutch"],
    netherlands: ["dutch"],
    germany: ["german"],
    france: ["french"],
    belgium: ["belgian"],
    switzerland: ["swiss"],
    austria: ["austrian", "european"],
    italy: ["italian", "european"],
    spain: ["spanish", "european"],
    denmark: ["danish", "european"],
    sweden: ["swedish", "european"],
    norway: ["norwegian", "european"],
    finland: ["finnish", "european"],
    europe: ["european"],
    england: ["english", "british", "uk"],
    britain: ["british", "uk"],
    scotland: ["scottish", "british", "uk"],
    wales: ["welsh", "british", "uk"],
    ireland: ["irish"],
    uk: ["uk", "british"],
    america: ["american", "us"],
    usa: ["us", "american"],
    states: ["us", "american"],
    canada: ["canadian"],
    japan: ["japanese"],
    australia: ["australian"],
  };
  const soldIn = (text: string, name: string, also: readonly string[] = []): readonly string[] => {
    const handbook = tarnHandbook();
    const [home] = handbook.cars.markets;
    const markets = home === undefined ? [] : [{ ...home, id: "abroad", name, also: [...also] }];
    const lexicon = compileLexicon({ ...handbook, cars: { ...handbook.cars, markets } });
    return marketsSold(layOut(text, lexicon, { today: tarnToday }).view).map((each) =>
      each.about === "market" ? `${each.id}: ${each.words}` : each.about,
    );
  };
  test.each(Object.entries(countries))("%s: %s", (country, adjectives) => {
    const said = `my car was sold new in ${country}`;
    for (const adjective of adjectives)
      expect([adjective, soldIn(said, `${adjective} cars`)]).toEqual([adjective, [`abroad: ${said}`]]);
  });
  test("in any of the words for cars behind it, in capitals and with a hyphen too", () => {
    const names = wordings("Dutch {car,cars,spec,market,model,version,trim,supplied,import,export,vehicle}");
    const said = "Dutch papers";
    expect([...names, "DUTCH-Car", "Dutch  car"].filter((name) => soldIn(said, name).length === 0)).toEqual(
      [],
    );
    expect(soldIn(said, "abroad", ["over the sea", "Dutch market"])).toEqual(["abroad: Dutch papers"]);
    expect(
      ["Dutch", "Dutch carriage", "scar Dutch", "old Dutch cars", "Dutch oscar"].map((name) =>
        soldIn(said, name),
      ),
    ).toEqual([[], [], [], [], []]);
  });
  test("of the last country said in a clause, and of no other's car", () => {
    expect(soldIn("sold new in Spain, the car has Dutch papers", "Dutch cars")).toEqual([
      "abroad: the car has Dutch papers",
    ]);
    expect(soldIn("his car was sold new in Holland", "Dutch cars")).toEqual([]);
    expect(soldIn("the seller says it was sold new in Holland", "Dutch cars")).toEqual([]);
    expect(soldIn("a Dutch Tarn", "Dutch cars")).toEqual(["abroad: a Dutch Tarn"]);
    expect(soldIn("Dutch, a Tarn", "Dutch cars")).toEqual([]);
    expect(soldIn("a Dutch handle", "Dutch cars")).toEqual([]);
    expect(soldIn("my mate has a Dutch Tarn", "Dutch cars")).toEqual([]);
  });
});

describe("all that is told of the car, in whose words", () => {
  const told = (text: string, about: string): string =>
    readDemo(text, about)
      .car.map((each) => `${carFindingInWords(each)} "${each.words}"`)
      .join(", ");
  test.each([
    ["", "are three screws correct for a 1981 S?", 'trim s "S", built 1981 "1981"'],
    ["", "are three screws usual on a 1981 S?", ""],
    ["", "what screws should a 1981 S have?", 'trim s "S", built 1981 "1981"'],
    ["", "a Mk2 driver has three", ""],
    ["", "three screws, as on Tourings", ""],
    ["", "put the dash of a Touring on his boat", ""],
    ["", "I think that every Mk2 owner has one", ""],
    ["", "a Touring should have wood", ""],
    ["", "early cars should have wood, it's a Touring", 'trim touring "Touring"'],
    ["", "Selling a set of four: 8 spoke light alloy", 'loose "Selling a set of four"'],
    ["", "8 spoke light alloy", ""],
    ["road-wheel", "Selling a set of four: 8 spoke light alloy", ""],
    ["", "Selling a set of four", ""],
    ["", "the spare road wheel was on a shelf by the mirror", ""],
    ["", "the mirror was on a shelf by the spare", 'loose "the mirror was on a shelf by the spare"'],
    ["", "mirror for sale?", ""],
    ["", "mirror for sale", 'loose "mirror for sale"'],
    ["", "found the mirror in a shed", ""],
    ["", "found a mirror in a shed", 'loose "found a mirror in a shed"'],
    ["", "got it at a swap meet", ""],
    ["door-mirror", "got it at a swap meet", 'loose "got it at a swap meet"'],
    ["", "the mirror is nice. got it at a swap meet", 'loose "got it at a swap meet"'],
    [
      "",
      "Car's a Mk2, and it is the 1983 model of them, British",
      'market home "British", model shrike-ii "Mk2", model year 1983 "1983"',
    ],
    ["", "My car is blue and very nice to drive. British", ""],
    ["", "My car is blue and very nice to drive, British", 'market home "British"'],
    ["", "the mirror is blue and very nice to see, British", ""],
    ["", "any S has two screws", ""],
    ["", "on these S is missing", ""],
    ["", "Standard Shrike, home", 'market home "home", trim standard "Standard Shrike"'],
    [
      "",
      "Standard Shrike, home, the mirror is round and nice",
      'market home "home", trim standard "Standard Shrike"',
    ],
    ["", "home, mirror", ""],
    ["", "1981, home", 'market home "home", built 1981 "1981"'],
    ["", "1949, home", ""],
    ["", "bought a Shrike mirror at the autojumble", 'loose "bought a Shrike mirror at the autojumble"'],
    ["door-mirror", "mine is a base one", ""],
    ["", "mine is a base one", 'trim standard "mine is a base one"'],
    ["", "mirror here. mine is a base one", ""],
    ["", "The car, standard one", 'trim standard "standard one"'],
    ["", "The car. standard one", ""],
    ["", "The mirror, standard one", ""],
    [
      "",
      "car is right hand drive, a standard one",
      'trim standard "a standard one", market home "right hand drive"',
    ],
    ["", "his car is a base one", ""],
    ["", "is my car a base one?", ""],
    ["", "the seller says my car is a base one", ""],
    ["", "one owner. bought it from Dave, a mirror", 'one-owner "one owner", loose "bought it from Dave"'],
    ["", "one owner, says the seller", ""],
    ["", "replaced, claims the seller", ""],
    ["", "it was replaced, claims the seller", ""],
    ["", "it was replaced. claims are cheap", 'known-replaced "it was replaced"'],
    ["", "was it replaced?", ""],
    ["", "I wonder if it was replaced", ""],
    ["", "how do I know if it was replaced", ""],
    ["", "no idea what was done before, says he", 'history-unknown "no idea what was done before"'],
    ["", "his was replaced", ""],
    ["", "replaced in 1981, and then documented", 'documented-from-new "and then documented"'],
    ["", "documented, full history, replaced in 1981", 'known-replaced "replaced in 1981"'],
    ["", "it was never replaced", ""],
    ["", "touring the country", ""],
    ["", "S here, UK car", 'trim s "S", market home "UK car"'],
    ["", "S of course, 1980 model", 'trim s "S", model year 1980 "1980"'],
    ["", "S there, UK car", 'market home "UK car"'],
    ["", "S, two screws", ""],
    ["", "Touring", 'trim touring "Touring"'],
    ["", "touring", 'trim touring "touring"'],
    ["", "Touring. six screws", 'trim touring "Touring"'],
    ["", "on the '80 S", 'trim s "S", built 1980 "\'80"'],
    ["", "built S", 'trim s "S"'],
    ["", "Mark II S", 'trim s "Mark II S", model shrike-ii "Mark II S"'],
    ["", "home market S", 'trim s "S", market home "home market"'],
    ["", "it's not an S", ""],
    ["", "it isn't the Touring", ""],
    ["", "no Touring here", ""],
    ["", "Mk2 Touring", 'trim touring "Touring", model shrike-ii "Mk2"'],
    ["", "a Mk1 Touring", 'trim touring "Touring", model shrike "Mk1"'],
    ["", "Shrike", ""],
    ["", "my Shrike", ""],
    ["", "Shrike S", 'trim s "Shrike S"'],
    ["", "home market car", 'market home "home market"'],
    ["", "my home has two", ""],
    ["", "home market", 'market home "home market"'],
    ["", "a home car, a continental car", 'market continent "continental car"'],
    ["", "built 1980 for export", 'built 1980 "1980"'],
    ["", "Mk1, Mk2", 'model shrike-ii "Mk2"'],
    ["", "Mk1 and Mk2", 'model shrike-ii "Mk2"'],
    ["", "Mk1. Mk2", 'model shrike-ii "Mk2"'],
    ["", "mark so I", ""],
    ["", "letters S R", ""],
    ["", "bought a Shrike at the autojumble with a mirror", ""],
    ["", "bought this nice old Shrike at the autojumble with a mirror", ""],
    ["", "picked up a Mk2 at the swap meet, with a mirror", 'model shrike-ii "Mk2"'],
    ["", "at the autojumble, a mirror beside a Shrike", 'loose "at the autojumble"'],
    ["", "a mirror from the swap meet for my Shrike", 'loose "a mirror from the swap meet for my Shrike"'],
    ["", "his two mirrors were sold with his home market car", ""],
    ["", "a mate of mine has an S", ""],
    ["", "my mate's S", ""],
    ["", "seen an S at the lights", ""],
    ["", "seen an S at the lights, bought it and took it home", 'trim s "S"'],
    ["", "Dutch, Mk2, 1983", 'market continent "Dutch", model shrike-ii "Mk2", built 1983 "1983"'],
    ["", "American, Mk2, the mirror is round and the foot is square", 'model shrike-ii "Mk2"'],
    ["", "three screws, American", ""],
    ["", "Mk2, is it British?", 'model shrike-ii "Mk2"'],
    ["", "my Mk2 and his Mk1", 'model shrike-ii "Mk2"'],
    ["", "as a rule a Touring has wood", ""],
    ["", "did only the Touring get wood?", ""],
    ["", "did only the Touring get wood, as mine?", 'trim touring "Touring"'],
    ["", "an S R number", ""],
    ["", "an S I think", 'trim s "S"'],
    ["", "it was replaced, the plate says so", 'known-replaced "it was replaced"'],
    ["", "is it right for me, full history from new?", 'documented-from-new "full history from new"'],
    ["", "full history from new?", ""],
    ["", "is it documented?", ""],
    ["", "is it right, how do I tell if it is documented?", ""],
    ["", "home", ""],
    ["", "1981", 'built 1981 "1981"'],
    ["", "one owner, bought from Dave with a mirror", 'one-owner "one owner"'],
    ["", "the mirror was bought from Dave, one owner", 'one-owner "one owner"'],
    ["", "mirror bought from Dave, new tyres too", 'loose "mirror bought from Dave"'],
    ["", "new tyres, they were changed", 'known-replaced "they were changed"'],
    ["", "new tires, they were changed", 'known-replaced "they were changed"'],
    ["", "the wheels were changed", 'known-replaced "the wheels were changed"'],
    ["", "the tyres were changed", ""],
    ["", "the tires and wheels were changed", 'known-replaced "and wheels were changed"'],
    ["", "his wheels were changed", ""],
    ["", "Shrike Tourings get three", ""],
    ["", "Shrike Touring gets three", 'trim touring "Shrike Touring"'],
    ["", "The mirror is plastic. It sat on the shelf", ""],
    ["", "The mirror is plastic. Selling, cheap", ""],
    ["", "The mirror is plastic. It is for sale here", ""],
    ["", "The mirror is plastic. 40 quid posted", 'loose "40 quid posted"'],
    ["", "The mirror sat on the shelf", 'loose "The mirror sat on the shelf"'],
    ["", "It sat on the shelf", ""],
    ["door-mirror", "It sat on the shelf", ""],
    ["", "trailer mirror for sale", ""],
    ["", "a trailer, mirror for sale", 'loose "mirror for sale"'],
    ["", "Selling a set of four: steel", ""],
    ["", "Selling a set of four: steel, 8 spoke", 'loose "Selling a set of four"'],
    ["", "Selling: rough", ""],
    ["", "Selling: hacksaw cut groove", ""],
    ["", "one owner, it came off a stall. a mirror", 'one-owner "one owner"'],
    ["", "a part, bought at a show", ""],
    ["", "no car, mirror", 'loose "no car"'],
    ["", "mirror. no car", 'loose "no car"'],
    ["", "it is loose", ""],
    ["", "mirror, it is loose", 'loose "it is loose"'],
    ["", "mirror. It is loose", 'loose "It is loose"'],
    ["", "loose mirror on the car", ""],
    ["", "loose mirror, not on the car", 'loose "not on the car"'],
  ] as const)("(%s) %s", (about, text, expected) => {
    expect(told(text, about)).toBe(expected);
  });
});
