// What each finder brings forward of a sentence: states by their names, by a loose word, by a noun carried on, by what a feature is said to be like,
// and features said to be there or not; each with the words it was found in. Whether it is the speaker's own word is weighed afterwards.
import { describe, expect, test } from "vitest";
import { observeCarriedNouns } from "../../../knowledge/language/carried-nouns.ts";
import { observeLooseWords } from "../../../knowledge/language/loose-words.ts";
import type { MessageView } from "../../../knowledge/language/message-view.ts";
import { observeNamedFeatures } from "../../../knowledge/language/named-features.ts";
import { negationsOf, type Observation, observeStates } from "../../../knowledge/language/observations.ts";
import { observePresence } from "../../../knowledge/language/presence.ts";
import { benchView } from "../../support/bench-lexicon.ts";

/** "not rim leather (not leather)", with the part where it is none in particular and the clause where it is not the first. */
function inWords(view: MessageView, found: readonly Observation[]): readonly string[] {
  return found.map(({ part, feature, state, isDenied, clause, from, to }) => {
    const words = view.tokens.slice(from, to + 1).map(({ folded }) => folded);
    const where = clause === 0 ? "" : ` ${clause}`;
    return `${isDenied ? "not " : ""}${part === null ? "any " : ""}${feature} ${state} (${words.join(" ")})${where}`;
  });
}

/** All that is found, with the name of the finder before it. */
function found(text: string, about: string): string {
  const view = benchView(text, about);
  const negations = negationsOf(view);
  const { observations: named, undecided } = observeStates(view, negations);
  return Object.entries({
    name: inWords(view, named),
    several: undecided.map(({ phrase }) => phrase.stems.join(" ")),
    loose: inWords(view, observeLooseWords(view, negations, named)),
    presence: inWords(view, observePresence(view, negations, named)),
    carried: inWords(view, observeCarriedNouns(view, negations, named)),
    near: inWords(view, observeNamedFeatures(view, named)),
  })
    .flatMap(([finder, those]) => those.map((one) => `${finder}: ${one}`))
    .join("; ");
}

describe("TITLE", () => {
  test.each([
["two screws","door-mirror","name: screws two (two screws)"],
["not two screws","door-mirror","name: not screws two (not two screws)"],
["the rim is leather","steering-wheel","name: rim leather (leather)"],
["leather","steering-wheel","name: rim leather (leather)"],
["leather","",""],
["it is plastic","door-mirror","name: housing plastic (plastic)"],
["the joint is plastic","door-mirror","name: joint nylon (plastic)"],
["the housing is plastic","door-mirror","name: housing plastic (plastic)"],
["plastic","door-mirror joint","several: plastic"],
["plastic","door-mirror housing","name: housing plastic (plastic)"],
["the joint is alloy","door-mirror","name: joint soft (alloy)"],
["the joint is square","door-mirror",""],
["the groove is square","door-mirror","name: groove square (groove is square)"],
["square","door-mirror",""],
["square","door-mirror groove","name: groove square (square)"],
["round","door-mirror groove","name: groove round (round)"],
["round joint","door-mirror",""],
["square joint","door-mirror",""],
["steel joint, alloy shell","door-mirror","name: joint steel (steel); name: housing alloy (alloy) 1"],
["no mark no unmarked","door-mirror","name: mark none (no mark); name: not mark none (no unmarked)"],
["no no mark","door-mirror","name: mark none (no no mark)"],
["never unmarked","door-mirror","name: not mark none (never unmarked)"],
["no mark","door-mirror","name: mark none (no mark)"],
["not unmarked","door-mirror","name: not mark none (not unmarked)"],
["it has no logo no unmarked","door-mirror","name: not mark none (no logo no unmarked)"],
["joint. It is plastic","door-mirror","name: housing plastic (plastic) 1"],
["joint, plastic","door-mirror","name: housing plastic (plastic) 1"],
["plastic, joint","door-mirror","name: housing plastic (plastic)"],
["the joint, you see, is plastic","door-mirror","name: housing plastic (plastic) 2"],
["plastic ball","door-mirror","name: joint nylon (plastic ball)"],
["plastic on the ball","door-mirror","name: joint nylon (plastic on the ball)"],
["plastic and the ball is what it is","door-mirror","name: joint nylon (plastic and the ball)"],
["ball, plastic","door-mirror","name: housing plastic (plastic) 1"],
["polished","road-wheel","name: lip polished (polished)"],
["painted","road-wheel","name: lip painted (painted)"],
["rough edge","front-wing",""],
["wide","front-wing",""],
["narrow","front-wing",""],
["the flange is wide","front-wing","name: flange wide (flange is wide)"],
["wide inner flange","front-wing","name: flange wide (wide)"],
["wide","front-wing flange","name: flange wide (wide)"],
["wide","front-wing edge",""],
["sawn","front-wing flange","name: edge sawn (sawn)"],
["sawn","front-wing","name: edge sawn (sawn)"],
["smooth","front-wing edge",""],
["filed smooth","front-wing","name: edge ground (filed smooth)"],
["hollow","road-wheel","name: back hollow (hollow)"],
["hollow lip","road-wheel","name: back hollow (hollow)"],
["hollow pattern","road-wheel",""],
["polished pattern","road-wheel",""],
["polished back","road-wheel",""],
["polished mark","road-wheel","name: lip polished (polished)"],
["polished, back","road-wheel","name: lip polished (polished)"],
["hollowed backs","road-wheel","name: back hollow (hollowed backs)"],
["three","door-mirror screws",""],
["it isn't no mark","door-mirror","name: not mark none (isnt no mark)"],
["it is not no mark","door-mirror","name: not mark none (not no mark)"],
["grey primer","","name: any paint primer (gray primer)"],
["primer","",""],
["the paint is primer","","name: any paint primer (primer)"],
["grey primer, not enamel","","name: any paint primer (gray primer)"],
["alloy joint","door-mirror",""],
["alloy, joint","door-mirror","name: housing alloy (alloy)"],
["alloy glass","door-mirror","name: housing alloy (alloy)"],
["alloy glasses","door-mirror","name: housing alloy (alloy)"],
["alloy lamp glass","door-mirror","name: housing alloy (alloy)"],
["curved glass","door-mirror","name: glass curved (curved glass)"],
["alloy ball joint","door-mirror","name: joint soft (alloy ball)"],
["alloy","door-mirror joint","several: alloy"],
["alloy","door-mirror groove","name: housing alloy (alloy)"],
["tinted","door-mirror","several: tinted"],
["tinted glass","door-mirror","name: glass flat (tinted)"],
["tinted sticker","door-mirror","name: sticker foil (tinted)"],
["sticker, glass, tinted","door-mirror","name: sticker foil (tinted) 2"],
["glass, sticker, tinted","door-mirror","name: sticker foil (tinted) 2"],
["sticker. tinted. heated","door-mirror","several: tinted"],
["heated, it is tinted","door-mirror","several: tinted"],
["outer, sticker, tinted","door-mirror","name: sticker foil (tinted) 2"],
["the sticker is near the heated glass which is tinted","door-mirror","name: glass flat (tinted)"],
["tinted","door-mirror glass","name: glass flat (tinted)"],
["sticker: tinted","door-mirror glass","name: glass flat (tinted) 1"],
["the groove of the glass is round","door-mirror",""],
["round","door-mirror",""],
["is it an early one? polished","road-wheel","name: lip polished (polished) 1"],
["is the lip original? polished","road-wheel","name: lip polished (polished) 1"],
["which lip is it, polished or painted?","road-wheel","name: lip polished (polished) 1; name: lip painted (painted) 1"],
["which back has it? polished","road-wheel back",""],
["bird","steering-wheel",""],
["a bird that has spread out","steering-wheel","loose: push bird (bird)"],
["a bird is on the push","steering-wheel","loose: push bird (bird); near: push bird (a bird is on the push)"],
["says corvane","steering-wheel","loose: stamp corvane (corvane)"],
["it says corvane on it","steering-wheel","loose: stamp corvane (corvane)"],
["corvane","steering-wheel",""],
["there is a corvane","steering-wheel","loose: stamp corvane (corvane)"],
["with a corvane","steering-wheel","loose: stamp corvane (corvane)"],
["stamp: corvane","steering-wheel","loose: stamp corvane (corvane) 1; carried: stamp corvane (corvane) 1"],
["the stamp is corvane","steering-wheel","name: stamp corvane (stamp is corvane)"],
["rivaden letters","steering-wheel","loose: stamp rivaden (rivaden)"],
["hub, rivaden","steering-wheel","loose: stamp rivaden (rivaden) 1"],
["hub rivaden","steering-wheel","loose: stamp rivaden (rivaden)"],
["has a lozenge","door-mirror",""],
["mark: lozenge","door-mirror","loose: mark lozenge (lozenge) 1; carried: mark lozenge (lozenge) 1"],
["no lozenge","door-mirror","presence: mark none (no lozenge)"],
["mark, no lozenge","door-mirror","loose: mark none (no lozenge) 1; presence: mark none (no lozenge) 1"],
["the mark is no lozenge","door-mirror","loose: mark none (no lozenge); presence: mark none (no lozenge)"],
["the mark is not a lozenge","door-mirror","loose: not mark lozenge (not a lozenge)"],
["without a lozenge mark","door-mirror","name: not mark lozenge (without a lozenge mark)"],
["tips: round groove","door-mirror","name: groove round (round groove) 1"],
["groove: round","door-mirror","name: groove round (round) 1"],
["the groove is not round but square","door-mirror","name: not groove round (not round); name: groove square (square) 1"],
["not round groove","door-mirror","name: not groove round (not round groove)"],
["three","door-mirror",""],
["screws: three","door-mirror","loose: screws three (three) 1; carried: screws three (three) 1"],
["screws? I count three","door-mirror",""],
["two screws. I count three","door-mirror","name: screws two (two screws)"],
["two screws, three","door-mirror","name: screws two (two screws); loose: screws three (three) 1"],
["the screws number three","door-mirror","loose: screws three (three); near: screws three (the screws number three)"],
["cast in the housing","door-mirror",""],
["housing, cast","door-mirror",""],
["housing: cast in it","door-mirror",""],
["spokes, silver","steering-wheel","carried: finish silver (silver) 1"],
["three spokes, silver","steering-wheel","name: spokes three (three spokes); carried: finish silver (silver) 1"],
["three spokes all silver","steering-wheel","name: spokes three (three spokes)"],
["three spokes, not silver","steering-wheel","name: spokes three (three spokes)"],
["three spokes. Silver","steering-wheel","name: spokes three (three spokes)"],
["three spokes, both painted silver","steering-wheel","name: spokes three (three spokes)"],
["the spokes, very nice silver","steering-wheel","carried: finish silver (very nice silver) 1"],
["the edge looks chewed","front-wing","loose: edge sawn (chewed); near: edge sawn (the edge looks chewed)"],
["the edge looks as if chewed by some saw","front-wing","name: edge sawn (chewed by some saw)"],
["from the edge it looks chewed","front-wing","loose: edge sawn (chewed)"],
["the edge isn't chewed","front-wing","loose: not edge sawn (isnt chewed)"],
["the edge and flange look chewed","front-wing","loose: edge sawn (chewed) 1"],
["the mark is there","door-mirror","presence: not mark none (mark)"],
["has drain notches","door-mirror","presence: notches notches (drain notches)"],
["drain notches present","door-mirror","presence: notches notches (drain notches)"],
["no drain notches","door-mirror","name: notches plain (no drain notches)"],
["drain notches: none","door-mirror","presence: notches plain (drain notches none) 1"],
["there is a mark","door-mirror","presence: not mark none (mark)"],
["mark missing","door-mirror","presence: mark none (mark missing)"],
["sticker is gone","door-mirror","presence: sticker not-there (sticker is gone)"],
["it has a sticker","door-mirror",""],
  ])("%s (of %s): %s", (text, about, expected) => {
    expect(found(text, about)).toBe(expected);
  });
});
