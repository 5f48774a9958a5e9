// Whose car a name or a date is of: any car of a question, somebody else's, or one that was only seen. Everyday English, no source.
import type { Goal } from "../evidence/goal.ts";
import { goalPatterns } from "./intents.ts";
import type { MessageView } from "./message-view.ts";

const own =
  /\b(?:my|mine|our|i (?:have|ve|own|got|bought)|ive|im|this|these(?! days)|it|its|here|got|picked|it s|they)\b/;

/** "Is it true that …": "it" is nothing of the speaker's. */
const expletive = /\bis it (?:true|right that|correct that|possible|normal|worth|legal|safe|hard|easy)\b/;
const behalf = /\b(?:on behalf of|for (?:a|my) (?:friend|mate|brother|cousin|neighbou?r))\b/;

function isOfCar(goal: Goal): boolean {
  return goal === "right-for-car" || goal === "what-should-it-have";
}

/** "Six screws for a 1981 car?": a question in which nothing is the speaker's own is about any car. */
export function isAnyCar(view: MessageView, at: number): boolean {
  if (view.stances[at]?.aside !== "question" || isOwnCarTold(view, at)) return false;
  if (view.clauses.some(({ text }) => behalf.test(text))) return true;
  if (view.context.part !== undefined && !view.clauses.some(({ text }) => expletive.test(text))) return false;
  const asksForOwn = goalPatterns.some(
    ([goal, pattern]) => isOfCar(goal) && view.clauses.some((clause) => pattern.test(clause.text)),
  );
  return !asksForOwn && !view.clauses.some((clause) => own.test(clause.text.replace(expletive, "")));
}

/** "WTB a dash. Car is a 1979 S": only the part is wanted. */
function isOwnCarTold(view: MessageView, at: number): boolean {
  const clause = view.clauses[at];
  return clause?.isAsked === false && /^(?:my |the |our )?(?:car is|cars) an?\b/.test(clause.text);
}

const people =
  "(?:mates?|friends?|brothers?|sisters?|cousins?|neighbou?rs?|colleagues?|uncles?|aunts?|nephews?|boss|laws?|chaps?|blokes?|guys?|fellows?|lads?|clubmates?|somebody elses?|someone elses?)";
const theirs = new RegExp(
  String.raw`\b(?:his|her|their|your|whose|another|someone elses|somebody elses)(?: \w+)? $|\b(?:my|an?|the|our|some) (?:\w+ ){0,2}${people} $`,
);
const belongsToThem = new RegExp(
  String.raw`^ (?:of|belonging to|from) (?:my|an?|the|our|some) (?:\w+ )?${people}\b`,
);
/** "A chap on the next stand had a padded dash in a Mk1". */
const theyHad = new RegExp(
  String.raw`\b(?:an?|the|some|that|my) (?:\w+ )?${people} (?:\w+ ){0,6}(?:had|has|got|runs?|drives?|owns?) `,
);
const onlySeen =
  /\b(?:seen|saw|spotted|followed|passed|met|(?:look(?:ed)?|went to look|have a look|had a look) at|viewed|remember|behind|next to|beside) (?:\w+ ){0,3}$/;
/** "Wheels off a dead base model": where the part comes from. */
const donor = /\b(?:off|from) an? (?:dead|scrapped|broken|crashed|scrap|donor) $/;
const takenHome = /\b(?:bought|mine now|took it home|got it home)\b/;
const ofKind =
  /^ (?:ones|owners?|people|drivers?|club|crowd|brochure|cars|thing)\b|^ \w+s (?:have|had|were|are|came)\b|\bthe (?:rest|others)\b|^ in the (?:magazine|brochure|picture|photo\w*|advert|book|museum|paper)\b|\bis the one i(?:d| would)\b/;

/** Whether a car named by the tokens `from` to `to` is somebody else's, one that was only seen, or all of a kind. */
export function isOthersCar(view: MessageView, from: number, to: number): boolean {
  const clause = view.clauses[view.clauseOf[from] ?? 0];
  if (clause === undefined) return false;
  const wordsOf = (first: number, last: number): string =>
    view.tokens
      .slice(first, last)
      .map(({ folded }) => folded)
      .join(" ");
  const before = `${wordsOf(clause.from, from)} `;
  const after = ` ${wordsOf(to + 1, clause.to + 1)}`;
  // "Mk2 owner checking in".
  if (
    view.tokens[to + 1]?.folded === "owner" &&
    /^ ?(?:\w+ ){0,2}$/.test(before) &&
    !/\b(?:an?|the|any|other) $/.test(before)
  )
    return false;
  if (isPlural(view, to) || ofKind.test(after)) return true;
  if (donor.test(before) || theirs.test(before) || belongsToThem.test(after) || theyHad.test(before))
    return true;
  // "Had the wing of a Mk1 on his Mk2".
  if (/\bon (?:his|her|their) \w+/.test(after)) return true;
  return onlySeen.test(before) && !view.clauses.some(({ text }) => takenHome.test(text));
}

/** "Mk1s"; "my Touring's dash" is one. */
function isPlural(view: MessageView, at: number): boolean {
  const { folded: word = "", start = 0, end = 0 } = view.tokens[at] ?? {};
  if (/['\u2019]/.test(view.shown.slice(start, end))) return false;
  return word.length > 3 && word.endsWith("s");
}
