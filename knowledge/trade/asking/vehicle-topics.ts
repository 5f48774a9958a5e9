// Questions about the car itself: dated rules, wires, paint, provenance, spreads, cautions.
import { formatInterval, parseDateText } from "../../calendar/date-text.ts";
import { CAUTION_TAIL } from "../cautions.ts";
import { datedRulesFor, highStopLampRule, unRegulationFor } from "../dated-rules.ts";
import { readPaintSystems, readProvenanceGrades, readSmallRunSpreads } from "../provenance.ts";
import { CAUTIONS } from "../tables/cautions.ts";
import { basisOf, type TradeReading } from "../trade-reading.ts";
import {
  BROWN_TRAP,
  findWireColour,
  readEarthColours,
  readTerminal,
  readWireColour,
  readWireStandard,
} from "../wiring-colours.ts";
import { type TopicReader, topicAnswer } from "./trade-question.ts";

const HIGH_STOP_WORDS = {
  none: "not yet allowed for in the rule",
  allowed: "allowed, not required",
  required: "required",
  open: "the date lies across a border of the rule: the day of manufacture decides",
} as const;

/** What the high stop lamp rule asks of a car whose day or month of building the question gives ("1985-08-31"). */
function builtReadings(lower: string): readonly TradeReading[] {
  const date = /\b\d{4}(?:-\d{2}){0,2}\b/.exec(lower)?.[0] ?? "";
  const built = parseDateText(date);
  const isHighStop = datedRulesFor(lower).some((rule) =>
    rule.requirement.sign.startsWith("centre high stop"),
  );
  if (built === undefined || !isHighStop) return [];
  return [
    {
      reading: `US passenger car made ${formatInterval(built)}: ${HIGH_STOP_WORDS[highStopLampRule(built)]}`,
      why: "made on or after 1 September 1985 means required, whatever the model year",
      basis: "FMVSS 108; NHTSA 86-3.1 and 86-4.17",
    },
  ];
}

/** "when did high level brake lights become compulsory". */
export const datedRuleTopic: TopicReader = (question) => {
  const asks =
    /\bwhen\b|since|earliest|\b(?:19|20)\d\d\b|compulsory|required|mandatory|introduced|\bfirst\b|what year|how early|how late|before \d{4}|in \d{4}/;
  if (!question.isAsking || !question.mayBeAnswered) return undefined;
  const regulation = unRegulationFor(question.lower);
  const asksWhat =
    regulation !== undefined &&
    (/\bwhat|mean|explain|\bfor\b/.test(question.lower) || question.lower.split(" ").length <= 3);
  if (!asksWhat && !asks.test(question.lower)) return undefined;
  const readings = [
    ...builtReadings(question.lower),
    ...datedRulesFor(question.lower),
    ...(regulation === undefined ? [] : [regulation]),
  ];
  return topicAnswer("dated rule", readings, {
    cannotSay:
      "A rule's start gives a not-before for what carries the sign. It gives no not-after, and small makers were often exempt.",
    lookNext: "Look for a date of manufacture on the part itself: it outweighs any rule.",
  });
};

/** What is said of wires: in "two wires, a black plastic shell" no wire is black. */
function wireClauses(lower: string): string {
  const clauses = lower.split(/[.,;:?!](?:\s|$)/);
  const ofWires = clauses.filter((clause) =>
    /\b(?:wires?|wiring|loom|harness|cables?|earth|ground|live|lucas)\b/.test(clause),
  );
  return ofWires.join(", ");
}

/** "brown wire is what", "terminal 15". */
export const wiringTopic: TopicReader = (question) => {
  const isWire =
    /\bbs ?au ?7|\bwires?\b|\bwiring\b|\bloom\b|\bharness\b|\bcables?\b|what colou?r is (?:the )?(?:earth|ground)\b|live or earth/.test(
      question.lower,
    );
  const terminal =
    /\bterminal (?:is |no\.? |number )?(\d{1,2}[ab]?|[bd][+-]|df)(?![\w])/.exec(question.lower)?.[1] ??
    /\b(\d{2}[ab]?|[bd][+-]|df)(?![\w.]).{0,16}\b(?:starter|solenoid|relay|coil|alternator|dynamo|regulator)\b/.exec(
      question.lower,
    )?.[1] ??
    /^what(?:'s| is|s) ([bd][+-])/.exec(question.lower)?.[1];
  if (!question.mayBeAnswered || !question.isAsking || !(isWire || terminal !== undefined)) return undefined;
  const colour = findWireColour(wireClauses(question.lower));
  const named =
    terminal === undefined ? [] : readTerminal(/^[bd]/.test(terminal) ? terminal.toUpperCase() : terminal);
  const isEarth = colour === undefined && /\bearth\b|\bground\b/.test(question.lower);
  const standard = /\bbs ?au ?7|lucas|british/.test(question.lower)
    ? "BS AU 7"
    : /\bdin\b|german/.test(question.lower)
      ? "DIN 72551"
      : undefined;
  const all = standard !== undefined && !isEarth ? readWireStandard(standard) : [];
  const colours = colour === undefined ? all : readWireColour(colour);
  return topicAnswer("wiring", [...named, ...colours, ...(isEarth ? readEarthColours() : [])], {
    cannotSay: BROWN_TRAP,
    lookNext:
      "Find out which country made the loom, then follow the wire to the fuse or earth with a lamp tester.",
    cautions: ["battery"],
  });
};

/** "which paint systems are there, when was cellulose used". */
export const paintTopic: TopicReader = (question) => {
  const isAbout =
    /\bpaint(?:s|ed)? (?:systems?|types?|was|were)|cellulose|two[- ]pack|\b2k\b|acrylic lacquer|base ?coat|clear ?coat|gel ?coat|alkyd|water-?borne/.test(
      question.lower,
    );
  const asks =
    /\bwhen\b|period|\bera\b|\bused\b|years?|which paint|what paint|how (?:can|do) (?:i|you) tell|tell .{0,20} apart|what(?:'s|s| is) (?:2k|two[- ]pack|(?:nitro)?cellulose|alkyd|acrylic)/.test(
      question.lower,
    );
  if (!question.isAsking || !question.mayBeAnswered || !isAbout || !asks) return undefined;
  if (/what colou?r|\bthe gel ?coats?\b/.test(question.lower)) return undefined;
  return topicAnswer("paint", readPaintSystems(question.lower).slice(0, 10), {
    cannotSay:
      "Works and owners resprayed; a plate names what was ordered. On glass fibre a magnetic or eddy gauge reads nothing: an ultrasonic one is needed.",
    lookNext:
      "Read the layers at an edge under trim, from metal or gel coat outward, and compare with a hidden place.",
    cautions: ["lead-paint", "isocyanate"],
  });
};

/** "what counts as provenance". */
export const provenanceTopic: TopicReader = (question) => {
  const isAbout =
    /provenance|what (?:counts|weighs) (?:most|as (?:\w+ )?(?:proof|evidence|original))|how (?:much|strong|good) .{0,24}(?:evidence|proof)|grades? of evidence|(?:best|strongest|better) (?:evidence|proof)|evidence (?:of|for) originality|(?:count|weigh) as (?:evidence|proof)|build sheets?\b.{0,20}better/.test(
      question.lower,
    );
  if (!question.isAsking || !question.mayBeAnswered || !isAbout) return undefined;
  return topicAnswer("provenance", readProvenanceGrades(), {
    cannotSay:
      "The chances are suggestions for keepers, not measurements; two witnesses who read the same page are one witness.",
    lookNext: "Ask for the maker's own record of this chassis, then for dated photographs of this car.",
  });
};

/** "how much do hand lay-up panels vary". */
export const spreadTopic: TopicReader = (question) => {
  const isAbout =
    /how (?:much|far|long).{0,60}(?:vary|varies|differ|spread|shrink|smaller|tolerance|lead time|last)|tolerance|lead time|shrink|mould life|running change|batch size|cop(?:y|ies) .{0,16}smaller|how many pulls/.test(
      question.lower,
    );
  if (!question.isAsking || !question.mayBeAnswered || !isAbout) return undefined;
  return topicAnswer("small-run spread", readSmallRunSpreads(question.lower), {
    cannotSay: "These are plausible ranges of the trade, not limits: one part outside them proves nothing.",
    lookNext: "Measure two or three known parts the same way before judging one.",
  });
};

const HAZARDS: readonly (readonly [RegExp, string])[] = [
  [/glass[- ]?fib|\bgrp\b|fibreglass|fiberglass|gel ?coat/, "grp-dust"],
  [/polyester|\bresin\b|laminat/, "styrene"],
  [/catalyst|\bmekp\b|hardener/, "catalyst"],
  [/(?:two|2)[- ]?pack|\b2k\b|isocyanate/, "isocyanate"],
  [/old paint|\bstrip(?:ping)? (?:the )?paint|sand(?:ing)? .{0,12}paint|lead paint/, "lead-paint"],
  [/lead[- ]load|body lead|lead filler/, "lead-filler"],
  [/asbestos|underseal|brake (?:dust|shoes?|pads?|lin)|clutch (?:lin|plate)/, "asbestos"],
  [/burnt|burned|fire damage|charred/, "fluoro-seal"],
  [/petrol tank|fuel tank|gas tank/, "petrol-tank"],
  [/under (?:the|my) car|jack(?:ing|ed)?\b/, "under-car"],
  [/air ?bag|pretensioner/, "airbag"],
  [/refrigerant|air[- ]con/, "refrigerant"],
  [/coil spring|torsion/, "spring"],
  [/remov\w+ .{0,20}(?:glass|windscreen)/, "glass"],
  [/radium|luminous dial|glowing dial/, "radium"],
  [/magnesium/, "magnesium"],
  [/solvent|acetone|thinners?/, "solvent"],
  [/old (?:seat )?belts?/, "belt"],
];

/** "is it safe to sand old paint", "what mask for glass fibre". */
export const cautionTopic: TopicReader = (question) => {
  const asks =
    /^(?:can|may|should) i (?:sand|weld|cut|strip|burn|grind|blow|drill|heat)\b|\bsafe(?:ly|ty)?\b|danger|hazard|precaution|\bmask\b|respirator|\bgloves\b|what should i wear|toxic|poison|asbestos|\bok to\b|lead paint matter/.test(
      question.lower,
    );
  if (!question.isAsking || !asks) return undefined;
  const wanted = HAZARDS.filter(([pattern]) => pattern.test(question.lower)).map(([, id]) => id);
  const rows = CAUTIONS.filter((row) => wanted.includes(row.id));
  const readings = rows.map((row) => ({
    reading: row.line,
    why: `before ${row.beforeStep}`,
    basis: basisOf(row),
  }));
  return topicAnswer("safety", readings, {
    cannotSay: `I cannot see the part or the place. ${CAUTION_TAIL}`,
    lookNext: "If in doubt leave the step to somebody equipped for it.",
    cautions: wanted,
  });
};
