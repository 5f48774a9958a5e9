// One spelling for words that are one word, and words that may stand for each other. Spellings are those of British and American usage, numbers and
// verbs those of any grammar; words of other languages and of one meaning from memory.
import { describe, expect, test } from "vitest";
import {
  baseForms,
  foldWord,
  irregularForms,
  numberOf,
  stemWord,
} from "../../../knowledge/language/fold-word.ts";
import { englishFor } from "../../../knowledge/language/foreign-words.ts";
import { synonymsOf } from "../../../knowledge/language/thesaurus.ts";

const numbers = "one two three four five six seven eight nine ten eleven twelve".split(" ");

describe("small numbers", () => {
  test("have one word, however they are written", () => {
    expect(numbers.map((_, at) => foldWord(String(at + 1)))).toEqual(numbers);
    expect(numbers.slice(0, 9).map((_, at) => foldWord(`0${at + 1}`))).toEqual(numbers.slice(0, 9));
    expect(numbers.map(numberOf)).toEqual(numbers.map((_, at) => at + 1));
    expect(["ii", "iii", "iv", "vi", "i", "v"].map(foldWord)).toEqual([
      "two",
      "three",
      "four",
      "six",
      "i",
      "v",
    ]);
    expect(["1st", "2nd", "3rd", "4th", "5th", "6th", "7th"].map(foldWord)).toEqual([
      "first",
      "second",
      "third",
      "fourth",
      "fifth",
      "sixth",
      "7th",
    ]);
  });
});

test.each([
  ["w/", "with"],
  ["w/o", "without"],
  ["p/n", "partnumber"],
  ["&", "and"],
  ["+", "and"],
  ["mk", "mark"],
  ["cond", "condition"],
  ["a dozen", "twelve"],
  ["alluminum", "aluminum"],
  ["alluminium", "aluminum"],
  ["sole", "one"],
  ["dual", "two"],
  ["double", "two"],
  ["pair", "two"],
  ["photo", "photograph"],
  ["pics", "photograph"],
  ["frp", "fiberglass"],
  ["fiberglas", "fiberglass"],
])("%s is %s", (written, folded) => {
  expect(foldWord(written)).toBe(folded);
});

test.each(
  "calu allyson repair pairs topics telephoto telephotos singles console twins redouble triplex atriple dinner inners router outers xgrp grps"
    .split(" ")
    .map((word) => [word]),
)("%s is itself", (word) => {
  expect(foldWord(word)).toBe(word);
});

test("a plural is its singular", () => {
  expect(["batteries", "screws", "lenses", "buzzes", "axes"].map(stemWord)).toEqual([
    "battery",
    "screw",
    "lense",
    "buzz",
    "ax",
  ]);
});

test.each([
  "sweep swept sweeping",
  "stick stuck sticking",
  "hide hidden",
  "bind bound",
  "grind ground",
  "saw sawn sawed",
  "weave woven",
  "spring sprung",
  "sink sunk sunken",
  "shear sheared shorn",
  "sew sewn sewed",
  "lay laid",
  "bend bent bends",
  "wind wound",
])("the forms of one strong verb stand for each other: %s", (line) => {
  const forms = line.split(" ");
  for (const form of forms) expect(irregularForms(form)).toEqual(forms.filter((other) => other !== form));
});

test("short words are no inflections of shorter ones", () => {
  expect(baseForms("used")).not.toContain("us");
  expect(baseForms("doing")).not.toContain("do");
  expect(baseForms("shiny")).not.toContain("shin");
  expect(baseForms("irish")).not.toContain("ir");
  expect(baseForms("fittings")).not.toContain("fittings");
});

test.each([
  "hairy furry fuzzy whiskery whisker fibrous fluffy bristly prickly shaggy",
  "coarse bumpy lumpy",
  "flexible bendy floppy springy rubbery",
  "stiff rigid",
  "hacksawed hacksaw jigsawed",
  "sanded filed linished",
  "glued bonded",
  "philips pozidriv cross",
  "symbol pictogram icon",
  "wrinkle crinkle crackle",
  "swirled swirly",
  "notch cutout scallop",
  "rib ridge",
  "domed bulged convex",
  "glossy shiny",
  "blurred smudged fuzzy",
  "chrome plated",
  "aluminum alloy duralumin",
  "plastic polymer thermoplastic",
  "polyurethane urethane pu",
  "vinyl leathercloth rexine",
  "nylon delrin acetal",
  "walnut veneer",
  "plywood ply",
  "molding mold",
  "circle ring",
  "square box",
  "diamond lozenge",
  "screw bolt",
  "nut locknut",
  "stitching seam",
  "toggle flick",
  "mastic sealant silicone",
  "crayon chalk wax",
  "pencil biro",
  "scooped hollow dished",
  "slotted oval",
  "washer shim",
  "undercoating underseal",
  "indicator flasher",
  "fender wing",
  "trunk boot",
  "dash fascia",
  "gauge dial clock",
  "decal sticker label",
  "fake imitation",
  "soft melted mushy",
  "crisp sharp",
  "clip snap",
  "allen hex",
  "slotted flathead",
  "tapper tek",
  "fiber strand",
  "flowcoat topcoat",
  "polished buffed",
  "vane blade fin",
  "spongy foam",
  "magnetic ferrous",
  "wooden timber",
  "leather hide",
  "rocker tumbler",
  "kilometer kmh kph",
  "rough raspy",
  "smooth silky",
  "painted oversprayed",
  "undrilled unpierced",
  "engraved recessed incised",
  "embossed raised proud",
  "bolt fastener fixing",
  "spoke arm",
  "hole aperture",
  "number digit numeral",
  "letter character",
  "narrow slim",
  "wide broad",
  "round curved",
  "square squared",
  "even regular",
  "uneven irregular",
  "rusty corroded",
  "underside bottom",
  "rear back",
  "printed stencilled",
  "cloth fabric",
  "stitched sewn",
  "dull matt",
  "white cream",
  "welded weld",
  "rivet riveted",
  "wire cable",
  "groove channel",
  "tooth spline",
  "logo emblem badge",
  "says reads",
  "seam joint",
])("words of one meaning stand for each other: %s", (line) => {
  const words = line.split(" ");
  for (const word of words)
    expect(synonymsOf(word, word)).toEqual(expect.arrayContaining(words.filter((other) => other !== word)));
  expect(synonymsOf(words[0] ?? "", "")).not.toContain(words[0]);
});

test("a word is asked for as it stands first, and then by its stem; most words have none", () => {
  expect(synonymsOf("rivets", "rivet")).toEqual(["riveted"]);
  expect(synonymsOf("riveted", "rivet")).toEqual(["rivet"]);
  expect(synonymsOf("constructor", "constructor")).toEqual([]);
});

test.each([
  ["screw", "schraube vis tornillo"],
  ["bolt", "bolzen boulon perno"],
  ["stud", "stehbolzen goujon"],
  ["nut", "mutter ecrou tuerca"],
  ["hole", "loch trou agujero"],
  ["spoke", "speiche branche razza"],
  ["rim", "kranz aro"],
  ["wheel", "felge roue rueda"],
  ["leather", "leder cuir piel"],
  ["wood", "holz bois madera"],
  ["foam", "schaum mousse"],
  ["plastic", "kunststoff plastique"],
  ["steel", "stahl acier blech"],
  ["alloy", "leichtmetall lega"],
  ["aluminum", "alu alluminio"],
  ["glass", "glas verre vidrio"],
  ["mirror", "spiegel retroviseur espejo"],
  ["smooth", "glatt lisse"],
  ["rough", "rau rugueux"],
  ["black", "schwarz noir negro"],
  ["white", "weiss blanc"],
  ["gray", "grau gris"],
  ["silver", "silber argent plata"],
  ["painted", "lackiert peint"],
  ["glued", "geklebt colle"],
  ["clamp", "klemme pince"],
  ["width", "breite largeur"],
  ["length", "lange longueur"],
  ["weight", "gewicht poids"],
  ["thickness", "dicke epaisseur"],
  ["height", "hohe hauteur"],
  ["round", "rund redondo"],
  ["square", "eckig carre"],
  ["flat", "plat plano"],
  ["curved", "gewolbt bombe"],
  ["hollow", "hohl creux"],
  ["stitch", "naht couture"],
  ["mark", "zeichen marque"],
  ["narrow", "schmal etroit"],
  ["wide", "breit ancho"],
  ["ball", "kugel bille"],
  ["nylon", "nilon"],
  ["switch", "schalter interrupteur"],
  ["dial", "anzeige cadran"],
  ["rib", "rippe nervure"],
  ["crayon", "kreide craie"],
  ["none", "keine aucun ninguna"],
])("%s in the neighbours' tongues: %s", (english, words) => {
  expect(words.split(" ").filter((word) => englishFor(word) !== english)).toEqual([]);
  expect(englishFor(`${english}x`)).toBeUndefined();
});
