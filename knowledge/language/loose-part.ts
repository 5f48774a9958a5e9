// Whether a clause tells that the part is by itself: said to be loose, offered or come to its owner without a car. A part that
// was only taken off the speaker's own car and lies on the bench is not. What is sold, found or bought must be the part:
// clubs also sell trailers and find coins. Everyday English of clubs and advertisements, no source.

import type { MessageView } from "./message-view.ts";
import { isOtherThing } from "./other-things.ts";
import { isUnreal } from "./unreal-cues.ts";

const onCar =
  /\b(?:(?<!\bnot )on (?:my|the) car|still (?:on|fitted|bolted|attached)|came (?:on|with) (?:my|the) car)\b/;

/** Said of nothing but a part. "Parts" stands for every name of one. */
const outright = /\bloose (?!(?:in|at|on|by) )(?:\w+ )?(?:one|parts?|two|set|item)\b/;
/** Said outright, of whatever is spoken of. */
const plainly =
  /^(?:\w+ )?loose$|^(?:its |it is |it was )?(?:off|from) (?:e ?bay|the bay|an? (?:auto ?jumble|swap ?meet|boot ?sale|breakers?|donor))\b|\b(?:a|one|bought|found|got|have|its|it is|are|theyre) loose\b(?! (?:in|at|on|when|after|now|again|screws?|bolts?|nuts?|wires?|threads?|change|ends?|fit))|\b(?:two|set) (?:of )?loose\b|\boff an? (?:parts |donor |scrap(?:ped)? |dead |old )?(?:car|scrapper|wreck)\b|\bfrom an? (?:parts car|donor|scrapper|wreck)\b|\boff any car\b|\b(?:off|out of|from) an? (?:donor|scrap(?:ped)?|dead|breakers?) (?:shell|car|body)\b|\bno idea which car\b|\bnever (?:a|any) car (?:with|for|to go with) (?:it|them)\b|\bbought (?:it|them|this|these) (?:loose|alone)\b|\bnot (?:on|fitted to|attached to|off) (?:a|any|the|my) car\b|\b(?:theres |there is |with |have |has )?no car (?:to go|attached|with (?:it|them|this)|for (?:it|them)|a?round (?:it|them)|around (?:it|them)|any ?more)\b|\bdont (?:have|own|even have) (?:a|any|the) car(?! (?:here|with|at|in|to hand|nearby|handy|around|today|yet|any ?more|tonight))|\bwithout (?:a |the |any )?car\b|\bnever (?:been )?(?:fitted|on a car)\b/;

/** Where parts by themselves are sold and kept. */
const market =
  /\b(?:swap ?meets?|auto ?jumbles?|boot sale|flea market|(?:on |from |off |an )?e ?bay|for sale (?:ad|ads|advert|listing|online)|classifieds?|online auction|auction (?:site|listing)|marketplace|spare (?:one|parts?)|from a (?:breaker|breakers|scrapyard|scrap yard|seller)|at a (?:swap|jumble|show|meet)|off a (?:breaker|stall|bloke)|(?:sat|sitting|been|stood|lying|lay|kept|its|it is|was) (?:\w+ ){0,2}on (?:the|my|a) shelf|at the jumble|listing|stall|off the bay|swap table|new old stock|(?<!\ba )nos|in its (?:original |old |own |first |works |factory |dealer )?(?:box|wrapper|packaging|bubble wrap)|(?<!\b[a-z] |\bthrew |\bthrown )in a box (?:of|under|with))\b/;

/** Offered for money. */
const offered =
  /\b(?:for sale|(?<!anyone |anybody |who is |whos |is |he is |hes )selling|sold as|collection only|up for grabs|been offered|was offered|offered (?:me )?(?:a|an|this|one|these|some)|(?:asking|wants?|want) (?:silly money|too much|a fortune|(?:about |around |only |just )?\w+ (?:quid|pounds|euros?|bucks|dollars))|(?:quid|pounds|euros?|bucks|dollars) (?:for (?:it|them|this|these|the (?:two|set|lot))|posted|delivered|plus post\w*|ono|the (?:two|set|lot))|\d+ posted|(?:thinking of|about to|before i|should i|shall i|worth) buy(?:ing)?|brand new (?:\w+ ){0,2}(?:in|from)|the ad (?:says|reads|claims)|(?:seller|vendor|guy|bloke|chap|fellow|man) (?:claims|wants|is asking)|(?:parts?|it|one) arrive[sd]? (?:on )?(?:today|tomorrow|\w+day|this|next))\b/;

/** Come to its owner: what stands between the verb and the place must be the part or a word for it. */
const come =
  /\b(?<verb>bought|got|found|won|scored|grabbed|acquired|snagged|rescued|purchased|collected|picked(?: up)?|came)\b(?<what>(?: (?!and\b|but\b|with\b)\w+){0,8}?) (?<place>(?:up|off|from|at|on|in|out of|for|online|second ?hand|used|behind|under|beneath|inside|beside|among|amongst)\b(?: \w+){0,5})/g;
const meansPart = /\bparts?\b/;
const pronoun =
  /^(?: (?:up|both|all|two|half))*(?: (?:it|this|these|them|one|some|that|mine|both)(?: one| two)?)?$/;
/** A part like the one spoken of, not the one that was lost. */
const oneOfKind = /\b(?:one|some|these|this)\b/;
/** Whoever pays need not say where; what was got or came must come from where parts are sold. */
const paid = /^(?:bought|acquired|purchased|picked)/;
const seller =
  /^(?:off|from|at|on|in|out of) (?:an? |the |some |his |her |my )?(?:\w+ ){0,3}?(?:auto ?jumble|jumble|swap ?meet|boot ?sale|boot fair|car boot|farm sale|house clearance|flea market|breakers?|scrap ?yard|junk ?yard|salvage|skip|facebook|marketplace|ebay|bay|auction|classifieds?|dealers?|trader|seller|stall|estate sale|garage sale|parts fair|swap table|scrapper)\b/;
/** "Found a mirror in the barn", not "the mirror": that one was known. */
const unknownYet = /^ (?:an?|one|two|three|four|some|this|these|both)\b/;
/** What "bought from a stall" is said of, where it is said: not "my wheel came out of a skip", which is on a car again. */
const subject =
  /^(?:and |so |then |was |were |also |originally )*$|(?:^|\b)(?<!\bmy (?:\w+ )?)(?:it|this|they|them|these|both|one|ones|parts?|was|were|is|are|been)(?: \w+ly)? $/;
/** "Bought it in 80": when, not where. */
const sometime =
  /^(?:in|on|at|for) (?:\d|(?:the |last |this |early |late )*(?:january|february|march|april|may|june|july|august|september|october|november|december|spring|summer|autumn|winter|\w+day|sixties|seventies|eighties|nineties)\b)/;
const somewhere =
  /^(?:in|at|on|behind|under|beneath|inside|beside|among|amongst) (?:an?|the|my|his|her|our|their)\b/;
/** "Found it behind the Volvo": what was known and only lay there. */
const mislaid = /^ (?:it|them|mine|that|both)\b/;
const hidden = /^(?:behind|under|beneath|inside|beside|among)/;
const boughtPart =
  /\b(?:just bought|i bought|ive bought|have bought) (?:a|an|this|these|one|two|some)(?: \w+){0,4}? (?:parts?)\b|\bjust bought (?:one|this|these)$/;

/** "None for sale", "the car is for sale": nothing is offered by itself. */
const notOffered =
  /\b(?:not|none|no|never|isnt|arent|any|anything|anyone|one|ones|is|are|was|were|car|house|up|come|came|something|nothing|much|parts) (?:up )?for sale\b/g;
/** Under way or thought of, and a part by itself all the same. */
const arriving = /\b(?:buying\b|(?:should|shall) i buy\b|(?:parts?|it|one) arrive[sd]?\b)/;
const spareWheel = /\bspare (?:\w+ )?(?:wheels?|tyres?|tires?)\b/;
/** Seen and left. */
const leftThere =
  /\b(?:left (?:it|them) (?:on|with|there|where|behind|at)|walked away|(?:didnt|did not) buy|passed on (?:it|them))\b|^(?:and |so |but )?i passed$/;

const bareNoCar = /^(?:and |but |so |parts? )?no car(?: yet)?$/;

/** Whether the clause tells that the part is loose. `texts`: the clauses with every name of a part as "part". */
export function tellsLoose(view: MessageView, at: number, texts: readonly string[]): boolean {
  const text = texts[at] ?? "";
  const clause = view.clauses[at];
  if (clause === undefined || onCar.test(text) || texts.some((each) => leftThere.test(each))) return false;
  if (isUnreal(text) && !arriving.test(text)) return false;
  if (outright.test(text)) return true;
  if (plainly.test(text)) return isSpokenOf(view);
  // "First time poster, no car yet" has no part either.
  if (bareNoCar.test(text)) return view.context.part !== undefined || isNamed(view, clause.sentence, true);
  return isTraded(view, text, clause);
}

/** Offered, bought, or lying where parts are sold. */
function isTraded(view: MessageView, text: string, clause: MessageView["clauses"][number]): boolean {
  if (clause.isAsked && /\bfor sale\b/.test(text)) return false;
  // Every car carries a spare wheel.
  const said = spareWheel.test(clause.text) ? "" : text;
  const isOffered = offered.test(text.replace(notOffered, ""));
  if (
    (isOffered || market.test(said)) &&
    isNamed(view, clause.sentence, isOffered && !/\b(?:selling|for sale)\b/.test(text))
  )
    return true;
  return boughtPart.test(text) || comesToOwner(view, text);
}

/** Whether anything names the part: the message or the case in hand. */
function isSpokenOf(view: MessageView): boolean {
  return view.context.part !== undefined || isMentioned(view);
}

function isMentioned(view: MessageView): boolean {
  return view.mentioned.some((part) => part !== undefined);
}

/** Whether the sentence names a part that is no trailer's; before a bare price ("£180 posted") the one before may. */
function isNamed(view: MessageView, sentence: number, isPrice: boolean): boolean {
  return view.spotted.some(({ from }, at) => {
    const where = view.clauses[view.clauseOf[from] ?? 0]?.sentence ?? -1;
    const isNear = where === sentence || (isPrice && where === sentence - 1);
    const before = view.tokens[from - 1];
    const isAnothers =
      before !== undefined && isOtherThing(before.stem) && view.tokens[from]?.breakBefore === "none";
    return isNear && !isAnothers && (view.mentioned[at] !== undefined || isImplied(view, at));
  });
}

/** "Selling a set of four: 8 spoke light alloy": words that only the part has, where nothing names any. */
function isImplied(view: MessageView, at: number): boolean {
  const spotted = view.spotted[at];
  const part = view.partOf[view.clauseOf[spotted?.from ?? 0] ?? 0];
  if (spotted === undefined || part === undefined || view.context.part !== undefined || isMentioned(view))
    return false;
  return (
    !spotted.phrase.isGeneral && spotted.phrase.meanings.every((each) => "part" in each && each.part === part)
  );
}

function comesToOwner(view: MessageView, text: string): boolean {
  return Array.from(text.replace(toldBy, "").matchAll(come)).some(({ groups, index }) => {
    const { verb = "", what = "", place = "" } = groups ?? {};
    if (!isWhereSold(verb, what, place)) return false;
    if (meansPart.test(what)) return verb !== "found" || unknownYet.test(what);
    const before = text.replace(toldBy, "").slice(0, index);
    if (!pronoun.test(what) || (what === "" && !(verb !== "found" && subject.test(before)))) return false;
    const isNamedHere = meansPart.test(before) || isMentioned(view);
    return isNamedHere || (view.context.part !== undefined && (verb !== "found" || oneOfKind.test(what)));
  });
}

/** "The chap I bought it from said never": who said it, not where it came from. */
const toldBy =
  /\b(?:bought|got) (?:it|this|them|mine) (?:from|off) (?:said|says|told|tells|reckon\w*|sw(?:ore|ears)|claim\w*)\b/g;

function isWhereSold(verb: string, what: string, place: string): boolean {
  if (seller.test(place)) return true;
  if (verb === "found") return somewhere.test(place) && !(mislaid.test(what) && hidden.test(place));
  // "Picked up", not "picked at the paint".
  const isTaken = !verb.startsWith("picked") || verb.endsWith("up") || place.startsWith("up");
  return paid.test(verb) && isTaken && !sometime.test(place);
}
