// What a clause says of the history of the car or the part: replaced, documented, one owner's, not known. What was replaced must
// be the part: owners replace seals and bulbs as well. Everyday English of clubs, no source.
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { MessageView } from "./message-view.ts";

/** A clause comes as its folded words: a pair is two there. */
const grades: readonly (readonly [ProvenanceGrade, RegExp])[] = [
  [
    "known-replaced",
    /\b(?:(?:fitted|put|bought|got) (?:\w+ ){0,2}(?:new|replacement) (?:one|ones|two|set|parts?)|(?<!\bof (?:them|these|those) )(?:is|its|are|theyre|was|were) (?:\w+ )?(?:a )?replacements?|(?:have|fitted|got|is|its) the replacement part|the old (?:one|part) went (?:in|after|when)\b|not the (?:one|ones|parts?) (?:it|the car) (?:left|came|was|started)|not original to (?:the|this|my) car|came off (?:another|a different) car|fitted later|isnt the original|not the original one|from a donor|hit (?:\w+ ){0,4}and replaced|^(?:and |then |was |were |got |been )*(?:replaced|renewed|swapped|changed) (?:in|after|around|about|when|because|following|by|once|twice)\b|^and (?:was |were |got )?(?:replaced|renewed|swapped)|^(?:and |was |were )*fitted (?:in )?(?:19|20)?\d\d after\b|off a donor(?! (?:shell|car|body)))\b/,
  ],
  [
    "documented-from-new",
    /\b(?:documented(?! restoration)|every (?:receipt|bill|invoice|mot|bit of paper)|receipts? for (?:everything|(?:every|each) (?:\w+ )?\w+) since|(?:all|have) (?:the |its )?(?:receipts|bills|invoices)|full (?:history|documentation|paper ?work|file|records)|history (?:file )?(?:is )?complete (?:from|since) new|complete (?:history|documentation|paperwork|records)|all (?:the )?(?:paperwork|papers|bills|invoices|receipts|records) (?:from|since) new|history (?:file )?from new|build (?:sheet|card|record) (?:\w+ ){0,4}(?:matches|with|and)|works record|paper trail|wrote (?:it all|everything) down|kept (?:every|all) (?:of )?(?:the |his |her |its )?(?:bills?|receipts?|invoices?|papers?|paperwork))\b/,
  ],
  [
    "one-owner",
    /\b(?:one owner(?! before)|only owner|one family|first owner|original owner|one lady owner|one gentleman owner|one careful owner|owned by (?:one|the same) (?:lady|gentleman|man|woman|family|owner|chap)|(?<!\b(?:hes|shes|he has|she has) )owned (?:it|her|the car|this car|this|mine)? ?(?:from|since) new|(?<!\b(?:hes|shes|he has|she has) )had (?:it|her|the car|this car|this|mine) (?:from|since) new|mine (?:from|since) new|in (?:the|our|my) family (?:from|since) new|bought (?:it|her|the car|this|this car|mine)? ?(?:brand |from )?new|from new by (?:my|the same))\b/,
  ],
  [
    "history-unknown",
    /\b(?:(?:unknown|no|zero|little|not much|patchy|without any|without) (?:known |real |documented )?(?:history|provenance|paperwork|papers|paper work|documentation)|history (?:of (?:the|this|my|it) ?(?:car |part )?)?(?:is |was |completely |totally |all )*(?:unknown|lost|a mystery|a blank|patchy|not known)|(?:dont|do not) (?:know|have) (?:\w+ ){0,3}history|no (?:idea|clue) (?:of|about|what|on|as to) (?:\w+ ){0,2}(?:history|past)|(?:only god|god only|heaven|lord|who) knows what (?:was|came|happened) before|what (?:was|came|happened) before (?:only god|god only|heaven) knows|(?:nobody|no one|noone) knows (?:anything|the history|(?:its|the cars) (?:past|history|story))|no idea (?:about |of |what )?(?:\w+ )?before (?:that|then|me)\b|(?<!\b(?:of|from|off|my) (?:an? |the |my )?)barn ?find(?! parts?\b)|(?:nobody|no one|noone) knows (?:\w+ )?(?:where|what|who|how|if)|no idea (?:what|who|if|where|whether) (?!made\b)(?:\w+ )?(?:was|were|had|happened|it|did)|know nothing (?:about|of)|nothing known (?:about|of))\b/,
  ],
];

/** Somebody changed something, or something was changed. */
const changed =
  /\b(?<who>(?:i|we|he|she|po|previous owner|dad|my dad|they|garage|was|were|been|have|had|has))(?: \w+){0,3} (?:replaced|swapped|changed|renewed)(?! hands)(?<object>(?: \w+){0,5})/;
const passive = /^(?:was|were|been|have|had|has)$/;
const determined = /^ ?(?:the|my|his|her|our|its|an?|all|some|both|two|three|four)\b/;
const thePart =
  /\b(?:parts?|it|them|this|that|these|those|one|ones|thing|whole|lot|original|originals|set|two|everything)\b/;

/** The history that a clause tells. `text`: its words, every name of a part as "part". */
export function gradeIn(text: string): ProvenanceGrade | undefined {
  if (unknownChange.test(text)) return "history-unknown";
  if (isChanged(text)) return "known-replaced";
  const grade = grades.find(([, cue]) => cue.test(text))?.[0];
  return grade === "known-replaced" && notTold.test(text) ? undefined : grade;
}

/** "No idea what's been changed": nothing was, for all that is known. */
const unknownChange =
  /\b(?:no idea|no clue|couldnt say|cant say|could not say|nobody knows) (?:if|whether|what|whats) (?:\w+ ){0,4}(?:changed|swapped|replaced|renewed)\b/;
/** "They get swapped", "must have been fitted later": so it goes, or so it is concluded. */
const notTold = /\bget (?:swapped|changed|replaced)\b|\bmust(?: have|ve) been\b/;

function isChanged(text: string): boolean {
  const found = changed.exec(text);
  if (found === null || notTold.test(text) || /\bin my (?:life|time)\b/.test(text)) return false;
  const { who = "", object = "" } = found.groups ?? {};
  if (determined.test(object)) return thePart.test(object);
  const subject = text.slice(0, found.index).trim();
  // "Things have changed" says of nothing that it was replaced.
  if (/^(?:have|had|has)$/.test(who) && !/ been /.test(found[0])) return thePart.test(object);
  return !passive.test(who) || !determined.test(subject) || thePart.test(subject);
}

const denied =
  /\b(?:never|not|hasnt|havent|wasnt|isnt)(?: \w+){0,3} (?:been |was |a )?(?:replaced|swapped|changed|renewed|replacements?)\b/;
const vouched = /^(?:and )?(?:swears|claims|says|reckons|insists|assures)\b/;

/** The history that the clause tells as its speaker's own knowledge. `isUncertain`: somebody's word, or asked. */
export function historyIn(
  view: MessageView,
  texts: readonly string[],
  at: number,
  isUncertain: boolean,
): ProvenanceGrade | undefined {
  const text = texts[at] ?? "";
  const grade = gradeIn(text);
  const [clause, next] = [view.clauses[at], view.clauses[at + 1]];
  // "One owner before me who kept every bill and swears nothing was changed".
  const isVouched = next?.sentence === clause?.sentence && vouched.test(next?.text ?? "");
  // "No idea what was done before" asks nothing.
  if ((isUncertain || isVouched) && grade !== "history-unknown") return undefined;
  return grade === "known-replaced" && denied.test(text) ? undefined : grade;
}
