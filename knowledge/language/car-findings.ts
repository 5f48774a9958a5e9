// What a message says of the car: model, trim and market by name, how well its history is known, whether the part
// is loose. Somebody else's car is left aside; a question may still tell of the speaker's own.
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { Goal } from "../evidence/goal.ts";
import { commonWords } from "./common-words.ts";
import { embeddedQuestionCues } from "./cue-words.ts";
import { goalPatterns } from "./intents.ts";
import type { CarFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import { stemsOf } from "./name-stems.ts";
import type { Spotted } from "./spot-terms.ts";

/** A clause comes as its folded words: a pair is two there. */
const grades: readonly (readonly [ProvenanceGrade, RegExp])[] = [
  [
    "known-replaced",
    /\b(?:(?:i|we|he|she|po|previous owner|dad|my dad|they|garage|was|were|been|have|had|has)(?: \w+){0,3} (?:replaced|swapped|changed|renewed)(?! hands)|(?:fitted|put|bought|got) (?:\w+ ){0,2}(?:new|replacement) (?:one|ones|two|set|spoiler|mirrors?|wheels?)|(?:is|its|are|theyre|was|were) (?:\w+ )?(?:a )?replacements?|not the (?:one|ones) (?:it|the car) (?:left|came|was)|not original to (?:the|this|my) car|came off (?:another|a different) car|fitted later|isnt the original|not the original one|from a donor|hit (?:\w+ ){0,4}and replaced|^and (?:was |were |got )?(?:replaced|renewed|swapped)|off a donor)\b/,
  ],
  [
    "documented-from-new",
    /\b(?:documented(?! restoration)|every (?:receipt|bill|invoice|bit of paper)|(?:all|have) (?:the |its )?(?:receipts|bills|invoices)|full (?:history|documentation|paper ?work|file|records)|history (?:file )?(?:is )?complete (?:from|since) new|complete (?:history|documentation|paperwork|records)|all (?:the )?(?:paperwork|papers|bills|invoices|receipts|records) (?:from|since) new|history (?:file )?from new|build (?:sheet|card|record) (?:\w+ ){0,4}(?:matches|with|and)|works record|paper trail)\b/,
  ],
  [
    "one-owner",
    /\b(?:one owner|only owner|one family|first owner|original owner|one lady owner|one gentleman owner|one careful owner|owned (?:it|her|the car|this car|this|mine)? ?(?:from|since) new|had (?:it|her|the car|this car|this|mine) (?:from|since) new|mine (?:from|since) new|in (?:the|our|my) family (?:from|since) new|bought (?:it|her|the car|this|this car|mine)? ?(?:brand )?new|from new by (?:my|the same))\b/,
  ],
  [
    "history-unknown",
    /\b(?:(?:unknown|no|zero|little|not much|patchy|without any|without) (?:known |real |documented )?(?:history|provenance|paperwork|papers|paper work|documentation)|history (?:is |was |completely |totally |all )*(?:unknown|lost|a mystery|a blank|patchy|not known)|(?:dont|do not) (?:know|have) (?:\w+ ){0,3}history|no idea (?:of|about|what|on) (?:\w+ ){0,2}history|barn ?find|(?:nobody|no one|noone) knows (?:\w+ )?(?:where|what|who|how|if)|no idea (?:what|who|if|where|whether) (?:\w+ )?(?:was|were|had|happened|it|did)|know nothing (?:about|of)|nothing known (?:about|of))\b/,
  ],
];

const loose =
  /\b(?:loose (?:one|part|spoiler|mirrors?|wheels?|item|steering)|(?:a|one|bought|found|got|have|its|it is|are|theyre) loose|(?:two|set) (?:of )?loose|off (?:the|an?|any|my) (?:parts |donor |scrap(?:ped)? |old )?car|not (?:on|fitted to|attached to) (?:a|any|the|my) car|(?:it|this|one|them|these|part|spoiler|mirrors?|wheels?|is|sat|sitting|here|lying) (?:\w+ )?on (?:the|my) (?:work ?)?bench|on the kitchen table|in a box (?:of|under|with)|in my hands?|swap ?meets?|auto ?jumbles?|boot sale|flea market|(?:on |from |off |an )?e ?bay|for sale (?:ad|ads|advert|listing|online)|classifieds?|online auction|auction (?:site|listing)|marketplace|dont (?:have|own|even have) (?:a|any|the) car(?! (?:here|with|at|in|to hand|nearby|handy|around|today|yet|any ?more|tonight))|no car (?:yet|to go with|attached)|without a car|spare (?:one|spoiler|mirrors?|wheels?)|from a (?:breaker|breakers|scrapyard|scrap yard|seller)|bought (?:one|a|this|it|these|them) (?:\w+ ){0,4}(?:online|secondhand|second hand|used)|at a (?:swap|jumble|show|meet)|off a (?:breaker|stall|bloke)|on the shelf|shelf in|at the jumble|part on its own|by itself|listing|stall|found (?:it|this|these|them|one|a|some) (?:\w+ ){0,3}?(?:in|at|on) (?:a|the|an)|(?:for sale|(?:spoiler|mirrors?|wheels?|wings?|dash|panel|it|one) arrive[sd]? (?:on )?(?:today|tomorrow|\w+day|this|next)|(?<!anyone |anybody |who is |whos |is |he is |hes )selling|sold as|collection only)|off the bay|swap table|picked (?:this|it|these|them|one|up|a) (?:\w+ ){0,3}?(?:up|at|from|for)|just bought (?:a|this|these|one)|i bought a|bought (?:both |it |them |these |this |one )?(?:from|off) |both bought (?:from|off))\b/;
/** Bought, offered or advertised by itself: however far the seller stands behind the verb. */
const traded =
  /\b(?:(?:bought|got|found|won|scored|grabbed|acquired|snagged|rescued|purchased|collected|came) (?:\w+ ){0,7}?(?:off|from|at|on|in) (?:a |an |the |some |his |her |my )?(?:\w+ ){0,2}?(?:autojumble|jumble|swap ?meet|boot ?sale|car boot|farm sale|house clearance|flea market|breakers?|scrap ?yard|junk ?yard|salvage|skip|facebook|marketplace|ebay|bay|auction|classifieds?|dealers?|trader|seller|stall|estate sale|garage sale|parts fair)|(?:asking|wants?|want) (?:silly money|too much|a fortune|(?:about |around |only |just )?\w+ (?:quid|pounds|euros?|bucks|dollars))|(?:quid|pounds|euros?|bucks|dollars) (?:for (?:it|them|this|these|the (?:two|set|lot))|posted|delivered|plus post\w*|ono|the (?:two|set|lot))|\d+ posted|up for grabs|been offered|was offered|offered (?:me )?(?:a|an|this|one|these|some)|(?:thinking of|about to|before i|should i|shall i|worth) buy(?:ing)?|new old stock|(?<!\ba )nos|in its (?:\w+ )?(?:box|wrapper|packaging|bubble wrap)|brand new (?:\w+ ){0,2}(?:in|from)|never (?:been )?fitted|the ad (?:says|reads|claims)|(?:seller|vendor|guy|bloke|chap|fellow|man) (?:claims|wants|is asking))\b/;
const onCar =
  /\b(?:(?<!\bnot )on (?:my|the) car|still (?:on|fitted|bolted|attached)|came (?:on|with) (?:my|the) car)\b/;
const marketCue =
  /\b(?:market|spec|specification|car|cars|export|exported|delivered|version|model|trim|lhd|rhd|sold new|new in|supplied|destined|home|import|imported|built for)\b/;

/** Model, trim, market, grade and looseness; the last said of each, in the order said. */
export function readCar(view: MessageView): readonly CarFinding[] {
  const named = [
    ...trimsByWord(view),
    ...marketsByWord(view),
    ...view.spotted.flatMap((spotted) => namedCar(view, spotted)),
  ];
  const told = view.clauses.flatMap((clause, at) => {
    const aside = view.stances[at]?.aside;
    if (aside === "another-car") return [];
    const isOwnClause = clause.join === "sentence" || embeddedQuestionCues.test(clause.text);
    return historyIn(view, clause, aside === "hearsay" || (aside === "question" && isOwnClause));
  });
  return lastOfKind([...named, ...told]);
}

function historyIn(
  view: MessageView,
  clause: MessageView["clauses"][number],
  isUncertain: boolean,
): readonly CarFinding[] {
  const words = wordsBetween(view, clause.from, clause.to);
  const found: CarFinding[] = [];
  const said = grades.find(([, cue]) => cue.test(clause.text))?.[0];
  // "No idea what was done before" asks nothing.
  const grade = isUncertain && said !== "history-unknown" ? undefined : said;
  const isDenied =
    /\b(?:never|not|hasnt|havent|wasnt|isnt)(?: \w+){0,3} (?:been |was |a )?(?:replaced|swapped|changed|renewed|replacements?)\b/.test(
      clause.text,
    );
  if (grade !== undefined && !(grade === "known-replaced" && isDenied))
    found.push({ about: "grade", grade, words });
  if (isLoose(clause) && !isCarBought(view, clause)) found.push({ about: "loose-part", words });
  return found;
}

/** "Just bought a Shrike that stood in a barn": the car changed hands, not a part by itself. */
function isCarBought(view: MessageView, { from, to }: MessageView["clauses"][number]): boolean {
  return view.spotted.some((spotted) => {
    if (spotted.from < from || spotted.to > to) return false;
    if (!spotted.phrase.meanings.some(({ kind }) => kind === "model")) return false;
    const next = view.tokens[spotted.to + 1];
    if (next !== undefined && spotted.to < to && isPartWord(view, next.folded)) return false;
    const before = wordsBetween(view, from, spotted.from - 1).toLowerCase();
    return /\b(?:bought|got|acquired|purchased|inherited|found|rescued|picked up)(?: \w+){0,4}$/.test(before);
  });
}

function isLoose({ text, isAsked }: MessageView["clauses"][number]): boolean {
  if (onCar.test(text)) return false;
  if (traded.test(text)) return true;
  if (isAsked && /\bfor sale\b/.test(text)) return false;
  return loose.test(text.replace(notOffered, ""));
}

/** "None for sale", "the car is for sale": nothing is offered by itself. */
const notOffered =
  /\b(?:not|none|no|never|isnt|arent|any|anything|anyone|one|ones|is|are|was|were|car|house|up|come|came|something|nothing|much|parts) (?:up )?for sale\b/g;

/** "A Mark II Touring", "an S", "the '80 S": a trim's own word, in a name's place and with a capital. */
function trimsByWord(view: MessageView): readonly CarFinding[] {
  const { models, trims } = view.lexicon.handbook.cars;
  const family = new Set(models.flatMap(({ name }) => stemsOf(name)));
  const own = trims.flatMap((trim) => {
    const words = stemsOf(trim.name).filter((stem) => !family.has(stem));
    const [word] = words;
    return words.length === 1 && word !== undefined && !/^(?:standard|base)$/.test(word)
      ? [{ id: trim.id, word }]
      : [];
  });
  return view.tokens.flatMap((token, at) => {
    const trim = own.find(({ word }) => word === token.stem);
    const aside = view.stances[view.clauseOf[at] ?? 0]?.aside;
    if (trim === undefined || aside === "hearsay" || aside === "another-car") return [];
    if (!isNamePlace(view, at) || isAnyCar(view, view.clauseOf[at] ?? 0)) return [];
    if (isDeniedBefore(view, at)) return [];
    return [{ about: "trim" as const, id: trim.id, words: wordsBetween(view, at, at) }];
  });
}

const shortestList = 2;
/** Words of a clause in a list that is an answer about the car. */
const mostWords = 4;

/** "Home, June 1980, Shrike S": in a list about the car, a market is said by its one word. */
function marketsByWord(view: MessageView): readonly CarFinding[] {
  const { clauses } = view;
  const isList = clauses.length >= shortestList && clauses.every(({ from, to }) => to - from < mostWords);
  const namesCar =
    trimsByWord(view).length > 0 ||
    clauses.some(({ text }) => /\b(?:19[5-9]\d|[6-9]\d)\b/.test(text)) ||
    view.spotted.some(({ phrase }) =>
      phrase.meanings.some(({ kind }) => kind === "model" || kind === "trim"),
    );
  if (!isList || !namesCar || view.stances.some(({ aside }) => aside !== undefined)) return [];
  return clauses.flatMap(({ from, to }) => {
    const said = view.tokens[from];
    const market = view.lexicon.handbook.cars.markets.find(({ name }) => {
      const [word = ""] = name.toLowerCase().split(/[^a-z]+/, 1);
      return said !== undefined && word.length > 3 && said.folded.startsWith(word.slice(0, 7));
    });
    if (from !== to || market === undefined) return [];
    return [{ about: "market" as const, id: market.id, words: wordsBetween(view, from, to) }];
  });
}

function isNamePlace(view: MessageView, at: number): boolean {
  const token = view.tokens[at];
  const [before, after] = [view.tokens[at - 1], view.tokens[at + 1]];
  if (token === undefined) return false;
  // A short or everyday word names a trim only with its capital.
  const isPlainly = token.folded.length > 4 && !commonWords.has(token.folded);
  if (!isPlainly && !/[A-Z]/.test(view.shown.charAt(token.start))) return false;
  const isAfterName =
    before !== undefined &&
    (/^(?:a|an|the|my|model|year|trim|\d{2,4})$/.test(before.folded) || modelEndsAt(view, at - 1));
  const isAlone =
    token.folded.length > 1 && token.breakBefore !== "none" && (after?.breakBefore ?? "sentence") !== "none";
  if (after !== undefined && after.breakBefore === "none" && isPartWord(view, after.folded)) return false;
  return token.breakBefore === "none" ? isAfterName : isAlone;
}

function modelEndsAt(view: MessageView, at: number): boolean {
  return (view.phrasesAt.get(at) ?? []).some((each) =>
    each.phrase.meanings.some((one) => one.kind === "model"),
  );
}

function isPartWord(view: MessageView, word: string): boolean {
  return [...view.lexicon.parts.values()].some((part) => part.nameWords.has(word));
}

function namedCar(view: MessageView, spotted: Spotted): readonly CarFinding[] {
  const at = view.clauseOf[spotted.from] ?? 0;
  const aside = view.stances[at]?.aside;
  if (aside === "another-car" || aside === "hearsay" || isAnyCar(view, at)) return [];
  if (isAmongLetters(view, spotted)) return [];
  const words = wordsBetween(view, spotted.from, spotted.to);
  const found = new Map<string, CarFinding>();
  for (const meaning of spotted.phrase.meanings) {
    if (meaning.kind !== "model" && meaning.kind !== "trim" && meaning.kind !== "market") continue;
    if (meaning.kind === "market" && !marketCue.test(view.clauses[at]?.text ?? "")) continue;
    if (isDeniedBefore(view, spotted.from) || isFamilyName(view, spotted, meaning)) continue;
    found.set(meaning.kind, { about: meaning.kind, id: meaning.id, words });
  }
  return [...found.values()];
}

/** "An S R and some digits": letters of a mark. */
function isAmongLetters(view: MessageView, { to }: Spotted): boolean {
  const [last, next] = [view.tokens[to], view.tokens[to + 1]];
  return last?.folded.length === 1 && next?.folded.length === 1 && next.isCapital && next.folded !== "i";
}

const own =
  /\b(?:my|mine|our|i (?:have|ve|own|got|bought)|ive|im|this|these(?! days)|it|its|here|got|picked|it s|they)\b/;

function isOfCar(goal: Goal): boolean {
  return goal === "right-for-car" || goal === "what-should-it-have";
}

/** "Six screws for a 1981 car?": a question in which nothing is the speaker's own is about any car. */
export function isAnyCar(view: MessageView, at: number): boolean {
  if (view.stances[at]?.aside !== "question" || view.context.part !== undefined) return false;
  const asksForOwn = goalPatterns.some(
    ([goal, pattern]) => isOfCar(goal) && view.clauses.some((clause) => pattern.test(clause.text)),
  );
  return !asksForOwn && !view.clauses.some((clause) => own.test(clause.text));
}

/** "Shrike" stands in the names of every model: it names the make of car, not one model of it. */
function isFamilyName(view: MessageView, spotted: Spotted, meaning: { readonly kind: string }): boolean {
  if (meaning.kind !== "model") return false;
  const { models } = view.lexicon.handbook.cars;
  const holds = (name: string): boolean => {
    const stems = new Set(stemsOf(name));
    return spotted.phrase.stems.every((stem) => stems.has(stem));
  };
  return models.length > 1 && models.every((model) => [model.name, ...model.also].some(holds));
}

function isDeniedBefore(view: MessageView, from: number): boolean {
  const before = view.tokens
    .slice(Math.max(0, from - 3), from)
    .map((token) => token.folded)
    .join(" ");
  return /\b(?:not|isnt|no|wasnt)(?: an?| the)?$/.test(before);
}

function lastOfKind(car: readonly CarFinding[]): readonly CarFinding[] {
  return car.filter((finding, at) => !car.slice(at + 1).some((later) => later.about === finding.about));
}
