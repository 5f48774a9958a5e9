// Which part is spoken of: named outright, by a short name, by a nickname, by what only one part has; what is only a place, an aid or a figure on the
// part; and how the subject runs on from clause to clause. Parts of the bench book; common sense of the trade, no source.
import { describe, expect, test } from "vitest";
import { type PartView, partMentions, partsByClause } from "../../../knowledge/language/active-part.ts";
import { clausesOf } from "../../../knowledge/language/clauses.ts";
import { findPhrases, longestFirst } from "../../../knowledge/language/spot-terms.ts";
import { tokenise } from "../../../knowledge/language/tokens.ts";
import { lookUpOnce } from "../../../knowledge/language/vocabulary.ts";
import { benchLexicon, benchToday } from "../../support/bench-lexicon.ts";

const lexicon = benchLexicon();

function viewOf(text: string, part: string): PartView {
  const tokens = tokenise(text);
  const clauses = clausesOf(tokens);
  return {
    lexicon,
    context: { today: benchToday, ...(part === "" ? {} : { part }) },
    tokens,
    clauses,
    clauseOf: clauses.flatMap((clause, at) => Array.from({ length: clause.to - clause.from + 1 }, () => at)),
    spotted: longestFirst(findPhrases(tokens, lexicon, new Set(), lookUpOnce(lexicon.vocabulary))),
  };
}

/** "wing: front-wing" for the words that name a part, in order. */
function namedIn(text: string, part: string): string {
  const view = viewOf(text, part);
  return partMentions(view)
    .flatMap((named, at) =>
      named === undefined ? [] : [`${view.spotted[at]?.phrase.stems.join(" ")}: ${named}`],
    )
    .join(", ");
}

/** The part of each clause, "-" for none. */
function spokenOf(text: string, part: string): string {
  return partsByClause(viewOf(text, part))
    .map((one) => one ?? "-")
    .join(", ");
}

describe("a part is named and spoken of", () => {
  test.each([
    ["my steering wheel has three spokes", "", "steering wheel: steering-wheel", "steering-wheel"],
    ["the wheel has three spokes", "", "", "-"],
    ["the wheel has three spokes", "door-mirror", "", "door-mirror"],
    ["the wheel has three spokes", "road-wheel", "wheel: steering-wheel", "steering-wheel"],
    ["the wheel has a walnut rim and a horn push", "", "", "steering-wheel, steering-wheel"],
    ["the wheel has hollow backs and a slotted disc", "", "", "road-wheel, road-wheel"],
    ["the wheel, eight spokes, hollow backs", "", "", "road-wheel, road-wheel, road-wheel"],
    ["wheel with spokes", "", "", "-"],
    [
      "steering wheel: the rim is leather, the wheel has a stamp",
      "",
      "steering wheel: steering-wheel, wheel: steering-wheel",
      "steering-wheel, steering-wheel, steering-wheel",
    ],
    [
      "steering wheel. The wheel. The road wheel. The wheel",
      "",
      "steering wheel: steering-wheel, wheel: steering-wheel, road wheel: road-wheel, wheel: road-wheel",
      "steering-wheel, steering-wheel, road-wheel, road-wheel",
    ],
    ["the rim of the steering wheel", "", "steering wheel: steering-wheel", "steering-wheel"],
    ["the mark of the mirror", "", "mirror: door-mirror", "door-mirror"],
    ["the mark of the mirror", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["a mark", "steering-wheel", "", "steering-wheel"],
    [
      "the mirror with two screws. The wing has a narrow flange",
      "",
      "mirror: door-mirror, wing: front-wing",
      "door-mirror, front-wing",
    ],
    ["the wing has a narrow flange", "door-mirror", "wing: front-wing", "front-wing"],
    ["the wing has a narrow flange", "front-wing", "wing: front-wing", "front-wing"],
    ["the wheel", "steering-wheel", "wheel: steering-wheel", "steering-wheel"],
    ["the wheel", "road-wheel", "wheel: road-wheel", "road-wheel"],
    ["the wheel", "door-mirror", "", "door-mirror"],
    ["cheap copy", "door-mirror", "", "door-mirror"],
    ["cheap copy", "", "cheap copy: steering-wheel", "steering-wheel"],
    ["leather copy", "door-mirror", "", "door-mirror"],
    ["slotted wheel", "door-mirror", "slotted wheel: road-wheel", "road-wheel"],
    ["two screw mirror", "front-wing", "two screw mirror: door-mirror", "door-mirror"],
    ["lozenge mirror", "front-wing", "lozenge mirror: door-mirror", "door-mirror"],
    ["leather copy", "", "leather copy: steering-wheel", "steering-wheel"],
    ["mirror shell", "steering-wheel", "mirror shell: door-mirror", "door-mirror"],
    ["the shell", "steering-wheel", "", "steering-wheel"],
    ["mirror shell", "", "mirror shell: door-mirror", "door-mirror"],
    ["the horn push shows a bird with spread wings", "steering-wheel", "", "steering-wheel"],
    ["walnut rim and wing", "steering-wheel", "wing: front-wing", "front-wing, front-wing"],
    ["the walnut rim, wing", "steering-wheel", "wing: front-wing", "front-wing, front-wing"],
    ["the walnut rim shows a wing", "steering-wheel", "", "steering-wheel"],
    ["the walnut rim shows a front wing", "steering-wheel", "front wing: front-wing", "front-wing"],
    ["the rim shows a wing", "steering-wheel", "wing: front-wing", "front-wing"],
    ["corvane wing", "steering-wheel", "wing: front-wing", "front-wing"],
    ["the wing shows a walnut rim", "steering-wheel", "wing: front-wing", "front-wing"],
    ["the walnut rim shows a mirror", "steering-wheel", "", "steering-wheel"],
    ["the walnut rim shows the wheel", "steering-wheel", "wheel: steering-wheel", "steering-wheel"],
    ["mirror next to the wing has two screws", "", "mirror: door-mirror", "door-mirror"],
    ["two screws near the wing", "door-mirror", "", "door-mirror"],
    ["it sweeps round the wing", "door-mirror", "", "door-mirror"],
    ["it sits against my wing", "door-mirror", "", "door-mirror"],
    ["it came without a wing", "door-mirror", "", "door-mirror"],
    ["it came with no wing", "door-mirror", "", "door-mirror"],
    ["it came with the wing", "door-mirror", "wing: front-wing", "front-wing"],
    ["with the mirror I read CORVANE on the hub", "steering-wheel", "", "steering-wheel"],
    ["through my old mirror we could see", "steering-wheel", "", "steering-wheel"],
    ["in the mirror it is", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["over each wing", "door-mirror", "", "door-mirror"],
    ["wing near", "door-mirror", "wing: front-wing", "front-wing"],
    [
      "front wing: rough. Helm: rough",
      "",
      "front wing: front-wing, helm: steering-wheel",
      "front-wing, front-wing, steering-wheel, steering-wheel",
    ],
    [
      "mirror: alloy. wing: wide. mirror: plastic",
      "",
      "mirror: door-mirror, wing: front-wing, mirror: door-mirror",
      "door-mirror, door-mirror, front-wing, front-wing, door-mirror, door-mirror",
    ],
    ["mirror. wing", "", "mirror: door-mirror, wing: front-wing", "door-mirror, front-wing"],
    [
      "mirror, plastic. It is nice. wing, wide",
      "",
      "mirror: door-mirror, wing: front-wing",
      "door-mirror, door-mirror, door-mirror, front-wing, front-wing",
    ],
    ["walnut rim and six kilos", "", "", "-, -"],
    ["on the scales, weight and mass", "", "", "-, -, -"],
    ["weight", "", "", "-"],
    ["crest of the works, hollow backs", "", "", "-, -"],
    ["hollow backs and clamp", "", "", "-, -"],
    ["walnut rim, horn push", "", "", "steering-wheel, steering-wheel"],
    ["three spokes", "", "", "-"],
    ["leather", "", "", "-"],
    ["leather, foam", "", "", "-, -"],
    ["three spokes and three screws", "", "", "-, -"],
    ["number of screws", "", "", "door-mirror"],
    ["narrow flange", "", "", "-"],
    ["ring mark", "", "", "-"],
    ["letter R in a ring", "", "", "door-mirror"],
    ["lozenge with B", "", "", "-"],
    ["shrike", "", "", "-"],
    ["valleyland car", "", "", "-"],
    ["it looks like the wheel of a boat", "steering-wheel", "wheel: steering-wheel", "steering-wheel"],
    [
      "near the edge of the mirror the wing is rough",
      "door-mirror",
      "mirror: door-mirror, wing: front-wing",
      "door-mirror",
    ],
    ["the mirror is close to the wing", "door-mirror", "mirror: door-mirror", "door-mirror"],
    ["it goes up to its wing", "door-mirror", "", "door-mirror"],
    ["into the wing", "door-mirror", "", "door-mirror"],
    ["past wing", "door-mirror", "", "door-mirror"],
    ["it is beside both wing bolts", "door-mirror", "", "door-mirror"],
    ["with a mirror we could make out an R", "steering-wheel", "", "steering-wheel"],
    ["using my mirror I saw it", "steering-wheel", "", "steering-wheel"],
    ["by the new shiny mirror I saw it", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["with the mirror it reads", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["with the mirror I removed it", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    [
      "wing. helm. wing",
      "door-mirror",
      "wing: front-wing, helm: steering-wheel, wing: front-wing",
      "front-wing, steering-wheel, front-wing",
    ],
    ["steering wheel glove", "", "steering wheel glove: steering-wheel", "steering-wheel"],
    ["steering covering of the wheel", "", "", "-"],
    ["wheel horn push walnut rim", "road-wheel", "wheel: steering-wheel", "steering-wheel"],
    ["walnut rim of the wheel, horn push", "", "", "steering-wheel, steering-wheel"],
    ["three spokes on the wheel and a crest of the works", "", "", "steering-wheel, steering-wheel"],
    ["the wheel: hollow backs, walnut rim", "", "", "-, -, -"],
    ["hollow backs, walnut rim, horn push", "", "", "steering-wheel, steering-wheel, steering-wheel"],
    ["milled groove, bird with spread wings", "", "", "-, -"],
    ["milled groove, drain notches, bird with spread wings", "", "", "-, -, -"],
    ["weight, load weight, mass", "", "", "-, -, -"],
    ["rim down the middle", "", "", "-"],
    ["wheel and helm", "", "helm: steering-wheel", "steering-wheel, steering-wheel"],
    ["helm and wheel", "", "helm: steering-wheel, wheel: steering-wheel", "steering-wheel, steering-wheel"],
    [
      "helm, wheel, road wheel, wheel",
      "",
      "helm: steering-wheel, wheel: steering-wheel, road wheel: road-wheel, wheel: road-wheel",
      "steering-wheel, steering-wheel, road-wheel, road-wheel",
    ],
    ["alloy wheel, wheel", "", "alloy wheel: road-wheel, wheel: road-wheel", "road-wheel, road-wheel"],
    [
      "the alloy wheel has three spokes. the wheel",
      "",
      "alloy wheel: road-wheel, wheel: steering-wheel",
      "road-wheel, steering-wheel",
    ],
    ["alloy mirror", "road-wheel", "mirror: door-mirror", "door-mirror"],
    ["inner flange of the fender", "door-mirror", "fender: front-wing", "front-wing"],
    ["inner flange, wide", "door-mirror", "", "door-mirror, door-mirror"],
    ["inner flange, sawn edge", "", "", "front-wing, front-wing"],
    ["steering wheel glove", "door-mirror", "steering wheel glove: steering-wheel", "steering-wheel"],
    ["foam wheel", "door-mirror", "", "door-mirror"],
    ["foam wheel", "", "", "steering-wheel"],
    ["rough spoiler", "door-mirror", "", "door-mirror"],
    ["wheel width", "", "", "steering-wheel"],
    ["wheel width", "door-mirror", "", "door-mirror"],
    ["early wheel", "road-wheel", "early wheel: road-wheel", "road-wheel"],
    ["early wheel", "steering-wheel", "early wheel: steering-wheel", "steering-wheel"],
    ["early wheel", "door-mirror", "", "door-mirror"],
    ["early wheel", "", "", "-"],
    ["the wing", "spoiler", "wing: spoiler", "spoiler"],
    ["the spoiler. The wing", "", "spoiler: spoiler, wing: front-wing", "spoiler, front-wing"],
    [
      "the spoiler, smooth. The wing, wide",
      "",
      "spoiler: spoiler, wing: front-wing",
      "spoiler, spoiler, front-wing, front-wing",
    ],
    [
      "the wing is rough. The spoiler is good. The wing is hairy inside",
      "spoiler",
      "wing: spoiler, spoiler: spoiler, wing: spoiler",
      "spoiler, spoiler, spoiler",
    ],
    [
      "the wing is rough. The mirror is nice. The wing",
      "spoiler",
      "wing: spoiler, mirror: door-mirror, wing: front-wing",
      "spoiler, door-mirror, front-wing",
    ],
    ["the mirrors", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["the lip of the alloy wheel", "", "lip: road-wheel, alloy wheel: road-wheel", "road-wheel"],
    ["the lip of the wheel", "", "lip: spoiler", "spoiler"],
    ["the lip", "", "lip: spoiler", "spoiler"],
    ["the lip", "road-wheel", "lip: road-wheel", "road-wheel"],
    ["mirror, plastic. banjo", "", "mirror: door-mirror", "door-mirror, door-mirror, door-mirror"],
    ["banjo", "", "banjo: steering-wheel", "steering-wheel"],
    [
      "mirror. steering wheel. wheel. helm. wheel",
      "",
      "mirror: door-mirror, steering wheel: steering-wheel, wheel: steering-wheel, helm: steering-wheel, wheel: steering-wheel",
      "door-mirror, steering-wheel, steering-wheel, steering-wheel, steering-wheel",
    ],
    ["the hub stamp shows a wing", "steering-wheel", "", "steering-wheel"],
    ["maker's mark", "", "", "-"],
    ["hub stamp", "", "", "steering-wheel"],
    ["wide, narrow flange", "", "", "-, -"],
    ["three screws, clamp", "", "", "-, -"],
    ["groove, clamp", "", "", "-, -"],
    ["drain notches, clamp", "", "", "door-mirror, door-mirror"],
    ["weight on the bathroom scales", "", "", "-"],
    [
      "crest of the works, walnut rim, narrow flange",
      "",
      "",
      "steering-wheel, steering-wheel, steering-wheel",
    ],
    ["crest of the works, narrow flange", "", "", "-, -"],
    ["past the old wing", "door-mirror", "wing: front-wing", "front-wing"],
    ["past the wing", "door-mirror", "", "door-mirror"],
    ["toward the wing", "door-mirror", "", "door-mirror"],
    ["towards the wing", "door-mirror", "", "door-mirror"],
    ["without a good wing", "door-mirror", "wing: front-wing", "front-wing"],
    ["without any wing", "door-mirror", "", "door-mirror"],
    ["with no wing", "door-mirror", "", "door-mirror"],
    ["with the mirror off I saw it", "steering-wheel", "mirror: door-mirror", "door-mirror"],
    ["six screws", "", "", "-"],
    ["four studs", "", "", "-"],
    ["hairy inside, studs", "", "", "spoiler, spoiler"],
  ])("%s (of %s): %s; %s", (text, part, named, spoken) => {
    expect(namedIn(text, part)).toBe(named);
    expect(spokenOf(text, part)).toBe(spoken);
  });
});
