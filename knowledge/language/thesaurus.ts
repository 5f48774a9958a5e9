// Words of one meaning that restorers use for each other, from memory. Asked only for a word that the handbook does
// not hold itself, and only answered with words that it does hold: no handbook has to list every whisker.

const groups: readonly string[] = [
  "hairy furry whiskery whisker fibrous fluffy bristly prickly shaggy",
  "coarse bumpy lumpy knobbly",
  "flexible bendy squidgy squashy squishy floppy springy rubbery pliable",
  "stiff rigid unyielding inflexible",
  "sawn hacksawed hacksaw hacked sawed sawcut jigsawed",
  "sanded rasped filed linished ground",
  "glued stuck bonded adhered siliconed",
  "crosshead cross-head phillips philips phillip pozidriv pozidrive pozi posidriv posidrive cross",
  "symbol pictogram icon pictograph",
  "wrinkle wrinkly wrinkled crinkle crinkly crinkled crackle crackled",
  "swirled swirl swirly swirling",
  "notch cutout scallop scalloped notched",
  "rib ridge ribbed spine",
  "domed bulged bulging bulge convex bombe",
  "glossy shiny gleaming slick",
  "blurred blur blurry smudged smudgy smeared fuzzy indistinct illegible",
  "chromed chrome chromium plated",
  "aluminum alloy duralumin dural",
  "plastic polymer thermoplastic",
  "polyurethane urethane pu pur",
  "leatherette vinyl leathercloth rexine vynide naugahyde",
  "nylon delrin acetal",
  "walnut veneer mahogany burr",
  "plywood ply",
  "moulding molding mold",
  "circle ring ringed circular",
  "square box boxed",
  "diamond lozenge rhombus",
  "screw bolt setscrew",
  "nut locknut nyloc",
  "stitching stitch sewing seam",
  "toggle flick flip",
  "mastic sealant sikaflex tigerseal silicone",
  "crayon chalk wax grease",
  "pencil biro",
  "scooped hollow hollowed dished",
  "elongated slotted oval oblong",
  "washer shim",
  "undercoating underseal waxoyl undersealed",
  "indicator flasher repeater blinker",
  "fender wing",
  "trunk boot",
  "dash dashboard fascia facia binnacle",
  "gauge dial instrument clock",
  "decal sticker label",
  "fake imitation faux",
  "engraved recessed sunken incised intaglio",
  "embossed raised proud",
];

const byWord: ReadonlyMap<string, readonly string[]> = new Map(
  groups.flatMap((group) => {
    const words = group.split(" ");
    return words.map((word) => [word, words.filter((other) => other !== word)] as const);
  }),
);

/** Other words for a folded word or its stem, nearest first; empty when none is listed. */
export function synonymsOf(folded: string, stem: string): readonly string[] {
  return byWord.get(folded) ?? byWord.get(stem) ?? [];
}
