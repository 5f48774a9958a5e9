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

const harms: readonly Harm[] = [
  {
    words: /\b(?:burn(?:ing)?|flame|cigarette lighter|lit match|matches|hot needle|soldering iron)\b/iu,
    why: "fire or heat spoils the part, and the smoke of old resins and paints is poison",
    instead: "ask for weight, a knock with the knuckle, or a look at a broken edge",
  },
  {
    words: /\b(?:acetone|thinners?|brake fluid|paint stripper|petrol|trichlor\w*)\b/iu,
    why: "solvents dissolve plastics, paint and print, and their vapour burns",
    instead: "soap, water and a soft brush show a mark as well",
  },
  {
    words:
      /\b(?:dry[- ]sand\w*|sand(?:ing)? (?:it|the|down|back|through|a)|grind\w*|wire brush|scour\w*)\b/iu,
    why: "the evidence goes with the surface, and the dust is harmful",
    instead: "look where the surface is bare anyhow: inside, under a trim, at an edge",
  },
  {
    words:
      /\b(?:scrap(?:e|ing)|scratch(?:ing)?|file (?:it|a|the|off)|filing|drill(?:ing)? (?:a|into|through|it)|cut (?:a|into|off)|chip (?:a|off)|break off|prise hard|hammer)\b/iu,
    why: "it leaves a scar on the part",
    instead: "use raking light, a mirror, a magnet or a thin feeler",
  },
  {
    words: /\btaste|\blick\b|\binhal\w+|\bsniff\w*/iu,
    why: "old parts carry lead, asbestos and worse",
    instead: "leave smell and taste out of it",
  },
];

const forbidding = /\b(?:do not|don't|never|no|not|without|instead of|rather than|nothing)\b/iu;

const needs: readonly { readonly words: RegExp; readonly caution: string }[] = [
  { words: /\bair ?bags?\b|\bpretensioner/iu, caution: "airbag" },
  {
    words:
      /\b(?:connector|wiring|loom|terminal|fuse box|plug)s?\b.*\b(?:pull|off|unplug|undo|part)\b|\b(?:pull|unplug|undo|disconnect)\b.*\b(?:connector|wire|loom|terminal|plug)s?\b|\bmains\b/iu,
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
      const harm = harms.find(({ words }) => words.test(sentence));
      if (harm !== undefined && !forbidding.test(sentence)) noteHarm(margin, sentence, harm, path);
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
