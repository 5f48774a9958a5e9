/** Parts on a restorer's bench: invented, few, and named so that words are shared between parts and between features. Compiled in a moment. */
import { monthInterval } from "../../knowledge/calendar/interval.ts";
import { type Handbook, PartKind } from "../../knowledge/handbook/schema.ts";
import { layOut } from "../../knowledge/language/lay-out.ts";
import { compileLexicon, type Lexicon } from "../../knowledge/language/lexicon.ts";
import type { MessageView } from "../../knowledge/language/message-view.ts";
import {
  dateFeature,
  measurementFeature,
  stateFeature,
  variant,
  type WrittenFeature,
} from "./small-handbook.ts";

export const benchToday = monthInterval(2024, 6);

/** `states`: id to its name and what else it is called, parted by bars. */
function states(
  id: string,
  names: string,
  written: Readonly<Record<string, string>>,
  rest: { readonly none?: string } = {},
): WrittenFeature {
  const [name = "", ...also] = names.split(" | ");
  return stateFeature(id, [], {
    name,
    also,
    states: Object.entries(written).map(([state, called]) => {
      const [first = "", ...others] = called.split(" | ");
      return { id: state, name: first, also: others };
    }),
    ...rest,
  });
}

const steeringWheel = PartKind.parse({
  id: "steering-wheel",
  name: "Steering wheel",
  also: ["helm", "wheel"],
  summary: "What the driver holds.",
  features: [
    states("rim", "Rim covering | rim", {
      leather: "Leather | hide",
      foam: "Foam | foam rim | foam wheel | padded foam | padded rim",
      wood: "Walnut | walnut rim | walnut with a spread grain",
      sleeve: "Sleeve | steering wheel glove",
    }),
    states("spokes", "Spokes | number of spokes", {
      two: "Two spokes",
      three: "Three spokes",
      four: "Four spokes",
    }),
    states("finish", "Spoke finish | finish of the spokes", {
      silver: "Silver spokes",
      black: "Black spokes",
    }),
    states("stamp", "Maker's stamp | stamp | hub stamp | stamp on the back | maker's mark", {
      corvane: "CORVANE stamp | corvane in a wreath",
      rivaden: "Rivaden stamp | tiny rivaden letters",
      none: "No stamp | unstamped",
    }),
    states("push", "Horn push | push", {
      bird: "Bird with spread wings",
      crest: "Crest of the works | crest | crest of the old works gate",
      rough: "Rough push",
    }),
    measurementFeature("diameter", { name: "Diameter", also: ["width", "wheel width"] }),
    measurementFeature("weight", {
      name: "Weight",
      also: ["mass", "weight on the bathroom scales"],
      unit: "kg",
      instrument: "kitchen-scale",
    }),
  ],
  variants: [
    variant("early", { name: "Early wheel", also: ["first wheel"], origin: "production" }),
    variant("copy", { name: "Cheap copy", also: ["leather copy", "banjo"], origin: "reproduction" }),
  ],
});

const roadWheel = PartKind.parse({
  id: "road-wheel",
  name: "Road wheel",
  also: ["alloy wheel", "wheel"],
  summary: "What the tyre sits on.",
  features: [
    states("pattern", "Spoke pattern | pattern", { eight: "Eight spokes", slots: "Slotted disc | slots" }),
    states("back", "Spoke backs | backs of the spokes | back", {
      hollow: "Hollow backs | hollowed | hollow",
      ribbed: "Ribbed backs | rib down the middle",
      rough: "Rough backs",
      turned: "Machined backs",
    }),
    states("lip", "Lip | outer lip", {
      polished: "Polished lip | polished",
      turned: "Machined lip | machined rim",
      painted: "Painted lip | painted",
    }),
    states("size", "Size mark | size", { narrow: "Five inch", wide: "Six inch" }),
    dateFeature("cast-date", { name: "Cast date", none: "no cast date" }),
    measurementFeature("load", { name: "Weight", also: ["mass"], unit: "kg", instrument: "kitchen-scale" }),
  ],
  variants: [
    variant("slotted", { name: "Slotted wheel", origin: "production" }),
    variant("plain-wheel", { name: "Eight spoke wheel", also: ["early wheel"], origin: "production" }),
  ],
});

const mirror = PartKind.parse({
  id: "door-mirror",
  name: "Door mirror",
  also: ["wing mirror"],
  summary: "The mirror on the door.",
  features: [
    states("screws", "Screws | base screws | number of screws", {
      two: "Two screws",
      three: "Three screws",
      clamp: "Clamp | clamped",
    }),
    states("housing", "Housing | shell | mirror shell | housing material", {
      alloy: "Cast alloy | alloy",
      plastic: "Moulded plastic | plastic",
    }),
    states("joint", "Joint | ball joint", {
      steel: "Steel ball | steel",
      nylon: "Nylon ball | nylon | plastic ball",
      soft: "Ball of alloy",
    }),
    states("notches", "Drain notches | notches in the edge", {
      notches: "Has drain notches | notched",
      plain: "No drain notches | plain edge",
    }),
    states("mark", "Casting mark | mark | mark inside | maker's mark | lozenge stamp", {
      lozenge: "Lozenge with B | lozenge mark",
      ring: "Letter R in a ring | R mark",
      none: "No mark | unmarked",
    }),
    states("groove", "Groove | groove round the glass", {
      round: "Round groove | round",
      square: "Square groove | square | milled groove",
      rough: "Rough groove | rough | chipped | badly chipped",
    }),
    states(
      "sticker",
      "Sticker",
      { paper: "Paper | paper sticker | chipped | badly chipped", foil: "Foil | foil sticker | tinted" },
      { none: "no sticker" },
    ),
    states("glass", "Mirror glass | outer glass | heated glass", {
      flat: "Flat glass | flat | tinted",
      curved: "Curved glass | convex glass | round",
      cut: "Square cut glass",
    }),
    measurementFeature("arm", { name: "Arm length", also: ["length", "arm"] }),
  ],
  variants: [
    variant("two-screw", { name: "Two screw mirror", also: ["lozenge mirror"], origin: "production" }),
    variant("three-screw", { name: "Three screw mirror", origin: "production" }),
  ],
});

const wing = PartKind.parse({
  id: "front-wing",
  name: "Front wing",
  also: ["fender"],
  summary: "The panel over the front wheel.",
  features: [
    states("flange", "Flange | inner flange", {
      narrow: "Narrow flange | narrow",
      wide: "Wide flange | wide",
    }),
    states("paint", "Paint | coat", { primer: "Grey primer | primer | etch coat", top: "Top coat | enamel" }),
    states("edge", "Edge", {
      sawn: "Sawn edge | sawn | chewed by a saw",
      ground: "Ground edge | filed smooth",
      rough: "Rough edge",
    }),
  ],
  variants: [
    variant("narrow-wing", { name: "Narrow wing", origin: "production" }),
    variant("wide-wing", { name: "Wide wing", origin: "production" }),
  ],
});

const spoiler = PartKind.parse({
  id: "spoiler",
  name: "Spoiler",
  also: ["boot wing", "lip"],
  summary: "The moulding on the boot lid.",
  features: [
    states("skin", "Skin", { smooth: "Smooth spoiler | smooth", rough: "Rough spoiler | hairy inside" }),
    states("paint", "Paint | coat", { primer: "Grey primer | primer", top: "Top coat | enamel | etch coat" }),
    states("fixing", "Fixing", { studs: "Four studs | studs", screws: "Six screws" }),
  ],
  variants: [
    variant("first", { name: "First spoiler", origin: "production" }),
    variant("second", { name: "Second spoiler", origin: "production" }),
  ],
});

export const benchHandbook: Handbook = {
  cover: {
    format: 1,
    id: "bench",
    name: "Bench book",
    summary: "Parts on a bench.",
    completeness: "good",
    edited: "2020-12",
  },
  edition: "bench",
  cars: {
    models: [
      { id: "shrike", name: "Wexcombe Shrike", also: [], from: "1977-01", to: "1981-12" },
      { id: "shrike-two", name: "Wexcombe Shrike Two", also: [], from: "1982-01", to: "1984-12" },
    ],
    trims: [],
    markets: [{ id: "valley", name: "Valleyland market", also: [] }],
    production: {},
  },
  sources: [],
  drawings: new Map(),
  parts: [steeringWheel, roadWheel, mirror, wing, spoiler],
};

const compiled = compileLexicon(benchHandbook);

export function benchLexicon(): Lexicon {
  return compiled;
}

/** `about`: "part" or "part askedFeature". */
export function benchView(text: string, about = ""): MessageView {
  const [part = "", askedFeature = ""] = about.split(" ");
  return layOut(text, compiled, {
    today: benchToday,
    ...(part === "" ? {} : { part }),
    ...(askedFeature === "" ? {} : { askedFeature }),
  }).view;
}
