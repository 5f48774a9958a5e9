// Words of one meaning that restorers use for each other, from memory. Asked only for a word that the handbook does
// not hold itself, and only answered with words that it does hold: no handbook has to list every whisker.

const groups: readonly string[] = [
  "hairy furry fuzzy whiskery whisker fibrous fluffy bristly prickly shaggy",
  "coarse bumpy lumpy knobbly",
  "flexible bendy squidgy squashy squishy floppy springy rubbery pliable",
  "stiff rigid unyielding inflexible",
  "sawn hacksawed hacksaw hacked sawed sawcut jigsawed",
  "sanded rasped filed linished ground",
  "glued stuck bonded adhered siliconed",
  "crosshead cross-head phillips philips phillip pozidriv pozidrive pozi posidriv posidrive cross",
  "symbol pictogram icon pictograph picture",
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
  "soft melted mushy woolly doughy",
  "crisp sharp defined",
  "clip clipped snap snapped popped pop",
  "allen hex hexagon",
  "slotted flathead flat-head",
  "tapper selftapper tek",
  "fiber strand filament",
  "flowcoat topcoat flow-coat",
  "polished buffed burnished mopped",
  "vane blade fin",
  "spongy foam",
  "magnetic ferrous",
  "wooden wood timber",
  "leather hide cowhide",
  "rocker tumbler",
  "kilometer kmh kph",
  "rough fibery raspy",
  "smooth glassy silky sleek",
  "painted oversprayed overpainted",
  "undrilled unpierced",
  "engraved recessed sunken incised intaglio",
  "embossed raised proud upstanding",
  "screw bolt fixing fastener fastening capscrew machinescrew",
  "spoke arm",
  "hole opening aperture perforation",
  "number figure digit numeral",
  "letter initial character",
  "narrow slim skinny slender",
  "wide broad fat generous",
  "round rounded curved radiused",
  "square squared",
  "even regular uniform consistent equal equidistant",
  "uneven irregular random haphazard unequal erratic",
  "rusty rusted corroded rust",
  "underside underneath bottom beneath",
  "rear back backside",
  "printed stenciled stencilled",
  "cloth fabric textile",
  "stitched sewn",
  "dull matt matte",
  "white cream ivory",
  "welded weld",
  "rivet riveted",
  "wire cable lead flex",
  "groove channel gutter",
  "tooth teeth spline",
  "logo emblem badge crest insignia",
  "says reads spells",
  "seam join joint",
];

const byWord: ReadonlyMap<string, readonly string[]> = wordsByGroup();

/** A word of several groups stands for the words of all of them. */
function wordsByGroup(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, Set<string>>();
  for (const group of groups.map((words) => words.split(" "))) {
    for (const word of group) {
      const others = group.filter((other) => other !== word);
      found.set(word, new Set([...(found.get(word) ?? []), ...others]));
    }
  }
  return new Map(Array.from(found, ([word, others]) => [word, [...others]]));
}

/** Other words for a folded word or its stem, nearest first; empty when none is listed. */
export function synonymsOf(folded: string, stem: string): readonly string[] {
  return byWord.get(folded) ?? byWord.get(stem) ?? [];
}
