/**
 * The words of a check: what must never be advised, because it spoils the part or hurts the person, and what needs a caution
 * before it. Common practice of restorers and the safety pages that knowledge/trade/tables/cautions.ts names.
 */
import type { PartKind } from "../handbook/schema.ts";
import { type Margin, note } from "./remark.ts";

interface Harm {
  readonly words: RegExp;
  readonly why: string;
  readonly instead: string;
}

/** A verb of advice, and no noun: "scratch the paint", but not "look for a scratch" nor "it is cut off square". */
const advised = String.raw`(?<!\b(?:an?|the|any|each|every|this|that|no|deep|fine|long|is|are|was|were|be|been|being) )`;

const harms: readonly Harm[] = [
  {
    words:
      /\bburn(?:ing)? (?:it|an?|the|off|through|some)\b|\bflame(?![ -](?:red|orange|cut|shaped))|\bcigarette lighter\b|\blit match\b|\b(?:with|of|using) matches\b|\bhot needle\b|\bsoldering iron\b/iu,
    why: "fire or heat spoils the part, and the smoke of old resins and paints is poison",
    instead: "ask for weight, a knock with the knuckle, or a look at a broken edge",
  },
  {
    words:
      /\bacetone\b|\bthinners\b|\b(?:cellulose|paint|lacquer) thinner\b|\b(?:with|in|into|using|some|of) (?:brake fluid|petrol)(?![ -](?:tank|cap|flap|filler|gauge|pump|pipe|line|door|engine|car|reservoir|bottle|level))|\bpaint stripper\b|\btrichlor\w*/iu,
    why: "solvents dissolve plastics, paint and print, and their vapour burns",
    instead: "soap, water and a soft brush show a mark as well",
  },
  {
    words: new RegExp(
      String.raw`\b(?:dry[- ])?sand(?:ing)? (?:it|the|down|back|through|an?|off)\b|${advised}\bgrind(?:ing)? (?:it|the|off|away|down|back|an?|through|into)\b|\bwire brush(?! (?:marks?|finish|scratches))\b|${advised}\bscour(?:ing)? (?:it|the|off|away|an?)\b|\bscouring pad\b`,
      "iu",
    ),
    why: "the evidence goes with the surface, and the dust is harmful",
    instead: "look where the surface is bare anyhow: inside, under a trim, at an edge",
  },
  {
    words: new RegExp(
      [
        String.raw`${advised}\b(?:scrap(?:e|ing)|scratch(?:ing)?) (?:it|the|an?|at|off|away|some|through|into|down|lightly|gently)\b`,
        String.raw`${advised}\bfil(?:e|ing) (?:it|an?|the|off|down|away)\b(?! (?:photograph|picture|note|report|copy))`,
        String.raw`${advised}\b(?:drill(?:ing)? (?:an?|into|through|it)|cut (?:an?|into|off)|chip (?:an?|off)|break off|prise hard)\b`,
        String.raw`\b(?:with|using|use|take) an? (?:\w+ )?hammer\b|${advised}\bhammer (?:it|the|on|at|against)\b`,
      ].join("|"),
      "iu",
    ),
    why: "it leaves a scar on the part",
    instead: "use raking light, a mirror, a magnet or a thin feeler",
  },
  {
    words: /\btaste|\blick\b|\binhal\w+|\bsniff\w*/iu,
    why: "old parts carry lead, asbestos and worse",
    instead: "leave smell and taste out of it",
  },
];

/** What stands before the advice and turns it round; some words do so within their clause alone: "if there is no mark, scratch …". */
const forbidding =
  /\b(?:do not|don't|never|must not|may not|should not|avoid)\b|\b(?:no|not|nothing|without|instead of|rather than)\b[^,;:]*$/iu;

const needs: readonly { readonly words: RegExp; readonly caution: string }[] = [
  { words: /\bair ?bags?\b|\bpretensioner/iu, caution: "airbag" },
  {
    words:
      /\b(?:connector|wiring|loom|terminal|fuse box|plug)s?\b.*\b(?:pull(?:ed)?|off(?!-)|unplug(?:ged)?|undone?|undo|apart)\b|\b(?:pull|unplug|undo|disconnect)\b.*\b(?:connector|wire|loom|terminal|plug)s?\b|\bmains\b/iu,
    caution: "battery",
  },
  {
    words:
      /\b(?:under|beneath|underneath) the (?:car|machine|chassis|caravan|van)\b|\bjack(?:ed)? up\b|\baxle stand/iu,
    caution: "under-car",
  },
  { words: /\bluminous\b|\bradium\b/iu, caution: "radium" },
  { words: /\basbestos\b|\bbrake dust\b/iu, caution: "asbestos" },
];

const shortest = 3;

export function remarkCheckTexts(margin: Margin, part: PartKind): void {
  for (const [index, { id, check, cautions }] of part.features.entries()) {
    const path = ["features", index, "check"];
    for (const sentence of check.split(/(?<=[.;!?])\s+/u)) {
      const harm = harms.find(({ words }) => isAdvised(sentence, words));
      if (harm !== undefined) noteHarm(margin, sentence, harm, path);
    }
    const missing = needs.filter(({ words, caution }) => words.test(check) && !cautions.includes(caution));
    for (const { caution } of missing) {
      note(margin, {
        severity: "doubt",
        code: "check-uncautioned",
        path,
        message: `the check of ${id} can hurt and carries no caution`,
        mend: `add cautions: [${caution}]; it is then shown before the step`,
      });
    }
    if (check.split(/\s+/u).length >= shortest) continue;
    note(margin, {
      severity: "wish",
      code: "check-unclear",
      path,
      message: `"${check}" does not say how to look at ${id}`,
      mend: "say where, with what light or tool, and what to compare with",
    });
  }
}

function isAdvised(sentence: string, words: RegExp): boolean {
  const found = words.exec(sentence);
  return found !== null && !forbidding.test(sentence.slice(0, found.index));
}

function noteHarm(margin: Margin, sentence: string, harm: Harm, path: readonly (string | number)[]): void {
  const [found = ""] = harm.words.exec(sentence) ?? [];
  note(margin, {
    severity: "doubt",
    code: "check-harmful",
    path,
    message: `the check says "${found}": ${harm.why}`,
    mend: harm.instead,
  });
}
