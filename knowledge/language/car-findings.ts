// What a message says of the car: model, trim and market by name, how well its history is known, whether the part
// is loose. Somebody else's car is left aside; a question may still tell of the speaker's own.
import type { ProvenanceGrade } from "../evidence/car-description.ts";
import type { CarFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";
import type { Spotted } from "./spot-terms.ts";

const grades: readonly (readonly [ProvenanceGrade, RegExp])[] = [
  [
    "known-replaced",
    /\b(?:(?:i|we|he|she|po|previous owner|dad|my dad|they|garage|was|were|been|have|had|has)(?: \w+){0,3} (?:replaced|swapped|changed|renewed)(?! hands)|(?:fitted|put|bought|got) (?:\w+ ){0,2}(?:new|replacement) (?:one|ones|pair|set|spoiler|mirrors?|wheels?)|(?:is|its|are|theyre|was|were) (?:\w+ )?(?:a )?replacements?|not the (?:one|ones) (?:it|the car) (?:left|came|was)|not original to (?:the|this|my) car|came off (?:another|a different) car|fitted later|isnt the original|not the original one|from a donor|off a donor)\b/,
  ],
  [
    "documented-from-new",
    /\b(?:documented (?:from new|history|since new|car|all its life)|fully documented|full (?:history|documentation|paper ?work|paper trail|file|records)(?: from new)?|complete (?:history|documentation|paperwork|records)|all (?:the )?(?:paperwork|papers|bills|invoices|receipts|records) (?:from|since) new|history (?:file )?from new|build (?:sheet|card|record) (?:\w+ ){0,4}(?:matches|with|and)|works record|paper trail)\b/,
  ],
  [
    "one-owner",
    /\b(?:one owner|one family(?: owned| ownership)?|first owner|original owner|one lady owner|one gentleman owner|one careful owner|owned (?:it|her|the car|this car|this|mine)? ?(?:from|since) new|had (?:it|her|the car|this car|this|mine) (?:from|since) new|mine (?:from|since) new|in (?:the|our|my) family (?:from|since) new|bought (?:it|her|the car|this|this car|mine)? ?(?:brand )?new|from new by (?:my|the same))\b/,
  ],
  [
    "history-unknown",
    /\b(?:(?:unknown|no|zero|little|not much|patchy|without any|without) (?:known |real |documented )?(?:history|provenance|paperwork|papers|paper work|documentation)|history (?:is |was |completely |totally |all )*(?:unknown|lost|a mystery|a blank|patchy|not known)|(?:dont|do not) (?:know|have) (?:\w+ ){0,3}history|no idea (?:of|about|what|on) (?:\w+ ){0,2}history|barn ?find|know nothing (?:about|of)|nothing known (?:about|of))\b/,
  ],
];

const loose =
  /\b(?:loose (?:one|part|spoiler|mirrors?|wheels?|item|steering)|(?:a|one|pair|bought|found|got|have|its|it is|are|theyre) loose|(?:two|pair|set) (?:of )?loose|off (?:the|a|any) car|not (?:on|fitted to|attached to) (?:a|any|the|my) car|on (?:the|my) (?:work ?)?bench|on the kitchen table|in a box|in my hands?|swap ?meets?|auto ?jumbles?|boot sale|flea market|(?:on |from |off |an )?e ?bay|for sale (?:ad|ads|advert|listing|online)|classifieds?|online auction|auction (?:site|listing)|marketplace|dont (?:have|own|even have) (?:a|the|any) car|no car (?:yet|to go with|attached)|without a car|spare (?:one|spoiler|mirrors?|wheels?)|from a (?:breaker|breakers|scrapyard|scrap yard|seller)|bought (?:one|a|this|it|these|them) (?:\w+ ){0,4}(?:online|secondhand|second hand|used)|at a (?:swap|jumble|show|meet)|off a (?:breaker|stall|bloke)|on the shelf|shelf in|at the jumble|part on its own|by itself|listing|stall)\b/;
const onCar =
  /\b(?:on (?:my|the) (?:car|shrike)|still (?:on|fitted|bolted|attached)|came (?:on|with) (?:my|the) car)\b/;
const marketCue =
  /\b(?:market|spec|specification|car|cars|export|exported|delivered|version|model|shrike|trim|lhd|rhd|sold new|new in|supplied|destined|home|import|imported|built for)\b/;

/** Model, trim, market, grade and looseness; the last said of each, in the order said. */
export function readCar(view: MessageView): readonly CarFinding[] {
  const named = view.spotted.flatMap((spotted) => namedCar(view, spotted));
  const told = view.clauses.flatMap((clause, at) => {
    const aside = view.stances[at]?.aside;
    if (aside === "another-car" || aside === "hearsay") return [];
    return historyIn(view, clause, aside === "question");
  });
  return lastOfKind([...named, ...told]);
}

function historyIn(
  view: MessageView,
  clause: MessageView["clauses"][number],
  isAsked: boolean,
): readonly CarFinding[] {
  const words = wordsBetween(view, clause.from, clause.to);
  const found: CarFinding[] = [];
  const grade = isAsked ? undefined : grades.find(([, cue]) => cue.test(clause.text))?.[0];
  const isDenied =
    /\b(?:never|not|hasnt|havent|wasnt|isnt)(?: \w+){0,3} (?:been |was |a )?(?:replaced|swapped|changed|renewed|replacements?)\b/.test(
      clause.text,
    );
  if (grade !== undefined && !(grade === "known-replaced" && isDenied))
    found.push({ about: "grade", grade, words });
  if (loose.test(clause.text) && !onCar.test(clause.text)) found.push({ about: "loose-part", words });
  return found;
}

function namedCar(view: MessageView, spotted: Spotted): readonly CarFinding[] {
  const at = view.clauseOf[spotted.from] ?? 0;
  const aside = view.stances[at]?.aside;
  if (aside === "another-car" || aside === "hearsay") return [];
  const words = wordsBetween(view, spotted.from, spotted.to);
  const found = new Map<string, CarFinding>();
  for (const meaning of spotted.phrase.meanings) {
    if (meaning.kind !== "model" && meaning.kind !== "trim" && meaning.kind !== "market") continue;
    if (meaning.kind === "market" && !marketCue.test(view.clauses[at]?.text ?? "")) continue;
    if (isDeniedBefore(view, spotted.from)) continue;
    found.set(meaning.kind, { about: meaning.kind, id: meaning.id, words });
  }
  return [...found.values()];
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
