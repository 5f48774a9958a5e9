// The wordings that turn a clause: what is wanted, how sure somebody is, whose word and whose car it is. Each list is everyday
// English, with and without the words that may be left out; a clause comes as its folded words.
import { describe, expect, test } from "vitest";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { findToldMarks } from "../../../knowledge/language/clock-marks.ts";
import * as cues from "../../../knowledge/language/cue-words.ts";
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
import { maskSerials } from "../../../knowledge/language/serials.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { goesOn, isElsewhere, isOfKind, isUnreal } from "../../../knowledge/language/unreal-cues.ts";

const folded = (text: string): string =>
  clausesOf(tokenise(text))
    .map((clause) => clause.text)
    .join(" ");
const lines = (text: string): readonly string[] => text.trim().split(/\s*\n\s*/);

function expectAll(pattern: RegExp, yes: string, no = "the edge is square"): void {
  expect(lines(yes).filter((text) => !pattern.test(folded(text)))).toEqual([]);
  expect(lines(no).filter((text) => pattern.test(folded(text)))).toEqual([]);
}

describe("what is wanted of the part", () => {
  const goalOf = (text: string) => goalPatterns.find(([, pattern]) => pattern.test(folded(text)))?.[0];
  const asked: readonly (readonly [string, string])[] = [
    [
      "what-should-it-have",
      `what should my car have
      which mirrors should a 1981 Shrike have had
      what would it come with
      what did they fit to it at the works
      which foot came on the early car
      which is correct for my car
      what belongs on a 79
      what goes on a Mk II
      should my car have three screws
      should the base have a lip
      what does my car need
      what mirrors did the S have
      what should be fitted
      what ought to go on
      what is it supposed to have
      meant to have two
      what's the correct mirror for my S
      what is the right one for a 79
      what should I look for`,
    ],
    [
      "genuine",
      `is it genuine
      legit
      is this the real deal
      is it real
      are these repros
      is this one a copy
      is that an original
      original or repro
      factory or a later copy
      oem or not
      repro or the original
      copy or genuine
      real or not
      have I been had
      been sold a pup
      did I get ripped off`,
    ],
    [
      "right-for-car",
      `right for my car
      is it the correct type for a 1981 S
      wrong for this car
      right for the year
      does it match
      do these go with the car
      would it really suit
      does it belong on my car
      period correct
      was it fitted at the works
      did it leave the works
      did my car come with this
      original to the car
      is it right
      is it the wrong type
      are they the right ones
      the correct version
      fits the year
      right kind`,
    ],
    [
      "which-variant",
      `which one is it
      what type of mirror is this
      what version do I have
      which is it
      what have i got
      which type
      help me identify it
      please identify this
      ID this
      id please
      need help identifying
      what is it
      what are they
      which one I have
      work out which
      tell me what
      know what this is
      what's this
      name that
      any idea what
      can anyone tell me what`,
    ],
  ];
  test.each(asked)("%s", (goal, phrases) => {
    expect(lines(phrases).filter((text) => goalOf(text) !== goal)).toEqual([]);
  });
  test("nothing where something is stated", () => {
    for (const text of [
      "the edge is square",
      "three screws",
      "it came off my car",
      "width 420 mm",
      "a good foot",
    ]) {
      expect([text, goalOf(text)]).toEqual([text, undefined]);
    }
  });
});

describe("what is wanted of us", () => {
  const plainOf = (text: string) => plainIntents.find(([, pattern]) => pattern.test(folded(text)))?.[0];
  const asked: readonly (readonly [string, string])[] = [
    [
      "start-over",
      "start over\nstart again\nbegin again\nfrom the beginning\nclear it all\nclear everything\nreset\nforget everything\nforget all of it\nwipe the slate\nscrap it all",
    ],
    [
      "undo",
      "undo\ntake that back\ntake it back\ngo back\ngo back one\ngo back a step\nstep back\nback\ncancel that\nstrike that\nthe previous answer was wrong",
    ],
    [
      "list-cases",
      "list my cases\nshow me all my cases\nshow open cases\nwhat cases do I have\nwhat questions are open\nmy cases\nmy open cases\nhow many cases",
    ],
    [
      "new-case",
      "new case\nnew part\nanother part please\ndifferent part\nstart a new case\nstart another case\nnext part\nopen a case\nsomething else now",
    ],
    [
      "what-do-you-know",
      "what do you know\nwhat do you know about it\nwhat have you got\nwhat have I told you\nwhat is known\nso far\nwhere do we stand\nwhere does it stand\nwhere are we\nsummary\nsummarise\nrecap\nsum up\nstatus\nshow me the facts\nshow ranking",
    ],
    [
      "photographs",
      "what photos should I take\nwhich pictures\nany pictures\nhow many photos\nphotos do you want\nask the seller for photos\nask for pictures\nwhat should I ask\nwhat to photograph\nphotograph list",
    ],
    [
      "what-fits",
      "what fits\nwhich one would fit without drilling\nwill it fit\nanything bolt straight on\nwithout new holes\ninterchange\ninterchangeable\nbolts straight on\nsame holes\ndirect swap",
    ],
    [
      "where-from-here",
      "where do I go from here\nwhere can we look\nwhat next\nwhat now\nwhat should I do next\nwhat would settle it\nwhat else can I check\nwhat can I do now\nwhat's next\nnext step\nnext steps\nhow can I be sure\nhow do we find out for sure",
    ],
    [
      "sources",
      "sources\nsource\nwhere did you get that\nwho says\nwho says so\nreference\nreferences\ncite\non what basis\nwhat's your source\nsays who\nevidence for that\nhow do you know\nhow do you know this\nprove it\nback that up",
    ],
    [
      "price",
      "price\nwhat is it worth\nvalue\nhow much is it\nhow much can I ask\nwhat should I charge for it\ncost\ngoing rate\npay for\noverpriced\nover priced\nfetch\nquid\ntoo much",
    ],
    [
      "help",
      "help\nplease help\nhelp me please\nhello help\nwhat can you do\nhow does this work\nhow do you work\nhow do I use it\ninstructions\nwho are you",
    ],
    [
      "why",
      "why\nbut why\nwhy this\nwhy is that\nwhy do you ask\nwhy does that matter\nwhy do you need to know that\nwhy not\nwhat's the point\nwhat reason\nhow does that help\nwhat does that prove",
    ],
    [
      "yes",
      "yes\noh yes\nyep\nit is\nthey are\nthat's right\nsure\nexactly\nyes it is\nyes they are\nyes two\nof course",
    ],
    [
      "no",
      "no\noh no\nnope\nit isn't\nnot at all\nnone\nno it doesn't\nno sign of it\nnot that i can see\nno sorry",
    ],
    [
      "small-talk",
      "thanks\nthank you\ncheers\nhello\ngood morning\nbye\nsee you\nlovely\nhow are you\ncongratulations",
    ],
  ];
  test.each(asked)("%s", (kind, phrases) => {
    expect(lines(phrases).filter((text) => plainOf(text) !== kind)).toEqual([]);
  });
  test("nothing where something is told", () => {
    const told =
      "the edge is square\nundo the two screws\nyes but it is round\nno screws at all here\ncome back later\nthe help page is long\nit says why";
    expect(lines(told).map((text) => [text, plainOf(text)])).toEqual(
      lines(told).map((text) => [text, undefined]),
    );
  });
  test("a word back that nothing can be told", () => {
    expectAll(
      cannotTell,
      "can't tell\ncannot say\ncouldn't tell\nunable to see\ndunno\ndon't know\nno idea\nnot a clue\nnot sure\nhaven't looked\nhaven't got it here\ncan't see\ncan't really see it\ncouldn't quite reach it\ncan't see it from here\ncan't see if\ncan't make out which\nhard to tell\npass\nskip\nskip this\nnext question\ndon't remember\nwho knows\nneed to take it off\nwould have to remove it\ntoo dirty to read\nillegible",
      "not sure but round\ncan see it\nhard to tell apart\nI pass the shop\nskip the first one please",
    );
  });
  test("how something is looked at", () => {
    expectAll(
      howToCheck,
      "how do I check\nhow can you tell\nhow to measure\nhow is it measured\nwhere do I look\nwhere exactly look\nwhere is it\nwhere are the dots\nwhat am I looking for\nwhat does it look like\nwhat does a good edge look like\nwhat do you mean\nshow me how\nexplain\nwhat is a lip\nwhat's the edge\nhow do I do that\nmeasured where\nmeasure from where",
      "it is measured\nI looked where it was",
    );
  });
  test("something taken back", () => {
    expectAll(
      withdraw,
      "forget what I said\nignore that\nforget about the screws\ndisregard my last answer\nremove what I told you\ndelete that\nscrap the last answer\ndrop my previous reading\nnever mind\nnevermind\nthat was wrong\nit was a mistake\nI was wrong about the edge\nI made a mistake about that",
      "that was rough\nremove the screws",
    );
  });
  test("two things set beside each other, and all of a kind listed", () => {
    expectAll(
      compare,
      "compare them\ncomparison\ndifference between\ndifferences between\ntell them apart\ntell a copy from a real one\nversus\nvs\ndistinguish\nwhat separates them",
    );
    expectAll(
      listVariants,
      "list variants\nshow me all the versions\nlist every type\nwhat versions are there\nhow many types of mirror were there\nwhich kinds exist\nwhat parts do you know\nwhat are the types\nwhat are the different versions",
      "two types\nwhat a kind man",
    );
    expect(switchCase.exec(folded("case 2"))?.groups?.number).toBe("two");
    expect(switchCase.exec(folded("question no 13"))?.groups?.number).toBe("13");
    expect(switchCase.exec(folded("go back to the second"))?.groups?.ordinal).toBe("second");
    expect(switchCase.exec(folded("switch to case third"))?.groups?.ordinal).toBe("third");
    expect(switchCase.test(folded("in any case"))).toBe(false);
  });
});

describe("how sure somebody is", () => {
  test("half", () => {
    expectAll(
      cues.maybeCues,
      "maybe\nperhaps\nmight be round\nmay have two\ncould be\nhard to say\nnot sure\nnot really sure\nnot at all certain\nnot 100\nnot one 100\nnot hundred\nnot a hundred\ncan't be sure\nkind of\nsort of\nI guess\nat a guess\nwho knows\nif I had to guess\nfrom memory\nif I remember\nas far as I recall",
      "it is round\nguessed before\nthe memory of it",
    );
  });
  test("three quarters", () => {
    expectAll(
      cues.thinksCues,
      "I think\nI do think\nthinking\ndon't think\nlooks like\nlooks round\nlook a bit square looks more round\nappears\nappear appeared\nseems\nseemed\nprobably\nlikely\nI reckon\npretty sure\nalmost certain\nfeels like\nas far as I know\nas far as I can see\nfrom what I can tell\nmore or less\nmust be",
      "it is round\nlooked at it",
    );
  });
});

describe("whose word, whose car, and what was seen", () => {
  test("somebody else's word", () => {
    expectAll(
      cues.hearsayCues,
      "apparently\nsupposedly\naccording to the seller\nso he says\nI was told\nI have been assured\ntold me\nreckons\nadvertised as\nlisted as\nsold as\nsold to me as\nselling it as\nthe advert\nad\ndescribed as\nadvert says\nadvertisement says\nads say\nlisting states\nthe book says\ncatalogue lists\nI heard that\nI read somewhere\nword is\nthey say\nsays it is\nsaid it\nseller says\nthe seller told me\nprevious owner said\nmy mate once told\nneighbour says\nbloke at the show says\nhe is adamant\nclub confirms",
      "according to the build plate\naccording to my tape\nthe dial says so it is round\nit is round",
    );
  });
  test("somebody else's car, or all of a kind", () => {
    expectAll(
      cues.otherCarCues,
      "my mate has one\nmy mates car\nmy brother's car\nmy other car\nanother car\nother cars\nsomeone else's\nhis has two\nearly ones\nthe genuine ones\noriginals\nthey all\nshould have two\nshould also have\nsupposed to have\nI used to have\nI had one\nmy last car\nthe one on my other\nin the brochure\nmuseum car\ntheir car\nthe article about the show\nused to own\nsomeone posted\nsaw one at\nthe one on ebay\nbrochure picture\nfriend of mine\ncompared to\nunlike my\nusually\nnormally",
      "mine has two\nI had a look\nI had a good look\nmy car has two",
    );
  });
  test("the speaker's own eyes again", () => {
    expectAll(
      cues.ownEyesCues,
      "mine\nthis one\nI see\nI can see\nI measure\nI measured\nI count\nI counted\nI notice\nI noticed\nI've got\nI make it\non mine\non my car\nwhat I have\nin fact\nlooking at it\nthe one I have",
      "he says",
    );
  });
  test("something wished for or planned", () => {
    expectAll(
      cues.wishCues,
      "WTB a foot\nwanted\nlooking for\nlooking to buy\nin search of\nneed a foot\nwant to buy\nordered a foot\njust ordered two\non order\nto do list\ntodo list\njob for\njobs for winter\nwould love\nplan to\ngoing to fit\nintend to\nintending to\nthinking of\nwould like\nswap for\nswap it for\ndream of\nI want one\nlet's say\nimagine\nI will fit\nwe'll paint\nwish I\nhope it\nif only",
      "wanted to know\nI want to know\nordered by date\nlooking at it",
    );
    expectAll(
      cues.fictionCues,
      "wtb\nwanted\nich suche\nsuche\nlooking for a foot\nhad a dream\nlet's imagine\njust kidding",
    );
  });
  test("nothing, because it was not there to be seen", () => {
    expectAll(
      cues.neverSeenCues,
      "haven't seen it\nhave not actually seen it yet\nnever touched one myself\nhaven't collected it yet\nnot been to see it yet\nhaven't held it\nnot arrived yet\nhasn't turned up\nstill in the post",
      "seen it",
    );
    expectAll(
      cues.unseenCues,
      "can't get behind\ncannot really see if\ncouldn't reach\nunable to check\ndidn't look\nhaven't looked\nhaven't measured\nhaven't measure it\ncan't turn it\nno way to tell",
      "looked at it\ncan't make out any",
    );
    expectAll(
      cues.thanksCues,
      "thanks for the\nthank you for all\ncheers about that\nthanks very much for your help",
      "thanks mate",
    );
  });
  test("a question inside a statement", () => {
    expectAll(
      cues.embeddedQuestionCues,
      "wonder if\nwondering whether\nask me what\ntell me which\ntell which\nhow do I\nhow to tell\nif it is\nand if the\nwhat if it\nwhether\nin case\nunless\nwhat about\nplease compare\ncompare\ndifference between\ndifferences between\nlet me know if\nor not",
      "if it helps\nif that helps\nif you want\nif I remember",
    );
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
    ["it would be round", "unreal"],
    ["i would say it is round", ""],
    ["the magnet would not stick", ""],
    ["where the number would be", ""],
    ["id love one", "unreal"],
    ["if someone had one", "unreal, goes on"],
    ["pretend it is round", "unreal"],
    ["say it is round", "unreal"],
    ["so say they are", "unreal"],
    ["next job is the foot", "unreal, goes on"],
    ["will check tomorrow", "unreal, goes on"],
    ["i will check it tomorrow", "unreal, goes on"],
    ["arriving on monday", "unreal, goes on"],
    ["coming tomorrow", "unreal, goes on"],
    ["itll say so", ""],
    ["ill fit it", "unreal, goes on"],
    ["one day", "unreal, goes on"],
    ["about to paint", "unreal, goes on"],
    ["look for three screws", "unreal"],
    ["look out for cracks", "unreal"],
    ["please look for cracks", "unreal"],
    ["dont ever sand it", "unreal"],
    ["make sure it is square", "unreal"],
    ["you will find two", "unreal"],
    ["you should check", "unreal"],
    ["the best way to tell", "unreal"],
    ["ask the seller", "unreal"],
    ["never seen one painted", ""],
    ["i sold it", "elsewhere, goes on"],
    ["i recently scrapped it", "elsewhere, goes on"],
    ["i never said that", "elsewhere, goes on"],
    ["my old part", "elsewhere, goes on"],
    ["my previous blue car", "elsewhere, goes on"],
    ["the one i looked at", "elsewhere, goes on"],
    ["the part that i saw", "elsewhere, goes on"],
    ["the gel coat on my boat", "elsewhere, goes on"],
    ["my left ear", "elsewhere, goes on"],
    ["my old bad knee", "elsewhere, goes on"],
    ["my favourite", "kind"],
    ["another had a smear", "kind"],
    ["a second more was bad", "kind"],
    ["a genuine one", "kind"],
    ["anything with three", "kind"],
    ["the early ones had two", "kind"],
    ["soft letters mean a copy", "kind"],
    ["that means a copy", ""],
    ["it tells you the year", "kind"],
    ["if anyone has one", "unreal, goes on"],
    ["and if he has one", "unreal, goes on"],
    ["the edge is square", ""],
  ])("%s: %s", (text, expected) => {
    expect(kinds(text)).toBe(expected);
  });
  test("is not judged by one small word where a clause runs on and on", () => {
    const long = `it would be ${"and so on ".repeat(7)}`.trim();
    expect(long.split(" ").length).toBeGreaterThan(22);
    expect([isUnreal(long), isUnreal(long.split(" ").slice(0, 22).join(" "))]).toEqual([false, true]);
  });
});

describe("marks that are told in words", () => {
  const told = (text: string) => findToldMarks(text).map(({ written, form }) => `${form}: ${written}`);
  test.each([
    ["arrow at 5, centre 80", ["clock: arrow at 5, centre 80"]],
    ["the arrow points to 5 and in the middle it says 80", ["clock: arrow at 5, centre 80"]],
    ["clock at may, year 80", ["clock: arrow at 5, centre 80"]],
    ["dial: number 11, 79 in centre", ["clock: arrow at 11, centre 79"]],
    ["pointer on the 3rd, inner 81", ["clock: arrow at 3, centre 81"]],
    ["the hand is at five, 1980", ["clock: arrow at 5, centre 80"]],
    ["arrow at twelfth, middle 8 | 0", ["clock: arrow at 12, centre 80"]],
    ["80 in the middle, pointing to 5", ["clock: arrow at 5, centre 80"]],
    ["centre reads 80 with the arrow at june", ["clock: arrow at 6, centre 80"]],
    ["79 and the fifth pip is missing", ["clock: arrow at 5, centre 79"]],
    ["missing pip is 5, year 79", ["clock: arrow at 5, centre 79"]],
    ["pointing at 5 and 80", ["clock: arrow at 5, centre 80"]],
    ["two dots before a 1", ["glass-dots: two dots before 1"]],
    ["3 dots to the left of the figure 8", ["glass-dots: 3 dots before 8"]],
    ["one dot after 7", ["glass-dots: 7 with one dots after"]],
    ["8 with 3 dots", ["glass-dots: 8 with 3 dots after"]],
    ["8 and 3 dots before", ["glass-dots: 3 dots before 8"]],
    ["..8", ["glass-dots: ..8"]],
    ["8 ...", ["glass-dots: 8 ..."]],
    ["**8", ["glass-dots: ..8"]],
    ["8.", []],
    ["arrow at 13, centre 80", []],
    ["no arrow here", []],
  ])("%s", (text, expected) => {
    expect(told(text)).toEqual(expected);
  });
  test("no more than twenty of one message are kept", () => {
    expect(findToldMarks("..8 ; ".repeat(30))).toHaveLength(20);
  });
});

describe("a chassis number", () => {
  const cars = {
    models: [{ id: "shrike", name: "Wexcombe Shrike", also: [], from: "1977-01", to: "1984-12" }],
    trims: [],
    markets: [],
    production: {},
    serials: {
      form: "WS-####",
      anchors: [
        { serial: 100, built: "1978-03", source: "x" },
        { serial: 500, built: "1980-06", source: "x" },
      ],
    },
  } as unknown as Parameters<typeof maskSerials>[1];
  const masked = (text: string) => maskSerials(text, cars).text;
  test.each([
    ["my car is WS-1234 here", "my car is WS-•••• here"],
    ["ws1234", "ws••••"],
    ["WS 123", "WS •••"],
    ["XWS-1234", "XWS-1234"],
    ["WS-12345", "WS-12345"],
    ["chassis number is 1174", "chassis number is ••••"],
    ["chassis no. 1174", "chassis no. ••••"],
    ["serial: #0887", "serial: #••••"],
    ["commission AB 12345", "commission AB •••••"],
    ["car number 1234", "car number ••••"],
    ["car 1234", "car 1234"],
    ["chassis 1981", "chassis 1981"],
    ["chassis number ending in 4711", "chassis number ending in ••••"],
    ["chassis 12", "chassis 12"],
  ])("%s is shown as %s", (text, expected) => {
    expect(masked(text)).toBe(expected);
  });
  test("tells the time between the documented cars on either side of it, where it lies among them", () => {
    const interval = (text: string) => maskSerials(text, cars).serials[0]?.interval;
    expect(interval("WS-0300")).toEqual({ from: 12 * 1978 + 2, to: 12 * 1980 + 6 });
    expect(interval("WS-0100")).toEqual({ from: 12 * 1978 + 2, to: 12 * 1978 + 3 });
    expect(interval("WS-0050")).toEqual({ from: 12 * 1977, to: 12 * 1978 + 3 });
    expect(interval("WS-0700")).toEqual({ from: 12 * 1980 + 5, to: 12 * 1985 });
    expect(interval("WS-0750")).toEqual({ from: 12 * 1980 + 5, to: 12 * 1985 });
    expect(interval("WS-0751")).toBeUndefined();
    expect(interval("WS-0000")).toBeUndefined();
    const without = { ...cars, serials: undefined } as typeof cars;
    expect(maskSerials("chassis 1174", without).serials).toEqual([{ masked: "••••" }]);
  });
  test("is the same car with its letters or without, with noughts in front or without", () => {
    const digests = ["WS-0300", "ws 300", "chassis 0300"].map(
      (text) => maskSerials(text, cars, (serial) => `<${serial}>`).serials[0]?.digest,
    );
    expect(digests).toEqual(["<300>", "<300>", "<300>"]);
  });
});
