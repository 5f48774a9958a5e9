// What a clause says of the history of the car or the part: replaced, documented, one owner's, not known. What was replaced must
// be the part: owners replace seals and bulbs as well. Everyday English of clubs, no source.
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { MessageView } from "./message-view.ts";

/** A clause comes as its folded words: a pair is two there. */
const grades: readonly (readonly [ProvenanceGrade, RegExp])[] = [
  [
    "known-replaced",
    /\b(?:(?:fitted|put|bought|got) (?:\w+ ){0,2}(?:new|replacement) (?:one|ones|two|set|parts?)|(?:is|its|are|theyre|was|were) (?:\w+ )?(?:a )?replacements?|not the (?:one|ones|parts?) (?:it|the car) (?:left|came|was|started)|not original to (?:the|this|my) car|came off (?:another|a different) car|fitted later|isnt the original|not the original one|from a donor|hit (?:\w+ ){0,4}and replaced|^(?:and |then |was |were |got |been )*(?:replaced|renewed|swapped|changed) (?:in|after|around|about|when|because|following|by)\b|^and (?:was |were |got )?(?:replaced|renewed|swapped)|^(?:and |was |were )*fitted (?:in )?(?:19|20)?\d\d after\b|off a donor)\b/,
  ],
  [
    "documented-from-new",
    /\b(?:documented(?! restoration)|every (?:receipt|bill|invoice|bit of paper)|(?:all|have) (?:the |its )?(?:receipts|bills|invoices)|full (?:history|documentation|paper ?work|file|records)|history (?:file )?(?:is )?complete (?:from|since) new|complete (?:history|documentation|paperwork|records)|all (?:the )?(?:paperwork|papers|bills|invoices|receipts|records) (?:from|since) new|history (?:file )?from new|build (?:sheet|card|record) (?:\w+ ){0,4}(?:matches|with|and)|works record|paper trail|wrote (?:it all|everything) down|kept (?:every|all) (?:of )?(?:the |his |her |its )?(?:bills?|receipts?|invoices?|papers?|paperwork))\b/,
  ],
  [
    "one-owner",
    /\b(?:one owner(?! before)|only owner|one family|first owner|original owner|one lady owner|one gentleman owner|one careful owner|owned (?:it|her|the car|this car|this|mine)? ?(?:from|since) new|had (?:it|her|the car|this car|this|mine) (?:from|since) new|mine (?:from|since) new|in (?:the|our|my) family (?:from|since) new|bought (?:it|her|the car|this|this car|mine)? ?(?:brand )?new|from new by (?:my|the same))\b/,
  ],
  [
    "history-unknown",
    /\b(?:(?:unknown|no|zero|little|not much|patchy|without any|without) (?:known |real |documented )?(?:history|provenance|paperwork|papers|paper work|documentation)|history (?:of (?:the|this|my|it) ?(?:car |part )?)?(?:is |was |completely |totally |all )*(?:unknown|lost|a mystery|a blank|patchy|not known)|(?:dont|do not) (?:know|have) (?:\w+ ){0,3}history|no idea (?:of|about|what|on) (?:\w+ ){0,2}(?:history|past)|no idea (?:about |of |what )?(?:\w+ )?before (?:that|then|me)\b|barn ?find|(?:nobody|no one|noone) knows (?:\w+ )?(?:where|what|who|how|if)|no idea (?:what|who|if|where|whether) (?:\w+ )?(?:was|were|had|happened|it|did)|know nothing (?:about|of)|nothing known (?:about|of))\b/,
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
  if (isChanged(text)) return "known-replaced";
  return grades.find(([, cue]) => cue.test(text))?.[0];
}

function isChanged(text: string): boolean {
  const found = changed.exec(text);
  if (found === null || /\bin my (?:life|time)\b/.test(text)) return false;
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
