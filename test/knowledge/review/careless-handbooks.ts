/** What historians get wrong in a handbook that loads, each as one change to a careful one, with the line to be named for it. */
import type { ReviewCode, Severity } from "../../../knowledge/review/remark.ts";

export interface CarelessHandbook {
  readonly slip: string;
  readonly file: string;
  /** The text that is replaced, the first time it stands in the file. */
  readonly from: string;
  readonly to: string;
  readonly code: ReviewCode;
  readonly severity: Severity;
  /** A piece of the line that must be named; without it, the first line of what was put in. */
  readonly line?: string;
  /** A piece that stands at the named column; without it the column is not looked at. */
  readonly at?: string;
  /** What the message or the mending must say. */
  readonly says?: string;
  /** Further changes to the same file, when one alone does not make the slip. */
  readonly besides?: readonly (readonly [from: string, to: string])[];
}

type Rest = Pick<CarelessHandbook, "line" | "says" | "at" | "besides">;

const make =
  (file: string, severity: Severity) =>
  (slip: string, from: string, to: string, code: ReviewCode, rest: Rest = {}): CarelessHandbook => ({
    slip,
    file,
    from,
    to,
    code,
    severity,
    ...rest,
  });
const doubt = make("parts/door-handle.yaml", "doubt");
const wish = make("parts/door-handle.yaml", "wish");
const carsDoubt = make("cars.yaml", "doubt");
const sourceDoubt = make("sources.yaml", "doubt");

const alike: readonly CarelessHandbook[] = [
  doubt(
    "two variants are described alike",
    "button: { brass: nearly always }\n      length: { mean: 132, spread: 0.5 }",
    "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }",
    "variants-alike",
    { line: "- id: flat-late", at: "flat-late", says: "no question can tell flat-late from flat-early" },
  ),
  doubt(
    "two variants differ in what nobody wrote down",
    `button: { steel: "nearly always, 9 of 9", sources: [measured] }
      length: { mean: 140, spread: 0.5, sources: [measured] }`,
    "length: { mean: 132, spread: 0.5, sources: [measured] }",
    "variants-alike",
    { line: "- id: flat-late", says: "say what is seen of button on flat-early (effort 1)" },
  ),
  doubt(
    "two variants differ in a mounting that no feature asks for",
    "button: { brass: nearly always }\n      length: { mean: 132, spread: 0.5 }",
    "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }",
    "variants-alike",
    {
      line: "- id: flat-late",
      says: "a new feature for the mounting (Two studs or Back plate)",
      besides: [
        [
          "    mounting: two-stud\n    material: cast zinc\n    fitted:\n      - { from: 1973",
          "    mounting: plate\n    fitted:\n      - { from: 1973",
        ],
      ],
    },
  ),
  doubt(
    "two variants differ in a material that no feature asks for",
    "button: { brass: nearly always }\n      length: { mean: 132, spread: 0.5 }",
    "button: { steel: nearly always }\n      length: { mean: 140, spread: 0.5 }",
    "variants-alike",
    {
      line: "- id: flat-late",
      says: "the material (cast zinc or bronze)",
      besides: [
        [
          "material: cast zinc\n    fitted:\n      - { from: 1973",
          "material: bronze\n    fitted:\n      - { from: 1973",
        ],
      ],
    },
  ),
  doubt(
    "a variant has no tells",
    `    tells:
      lever: { flat: usually, hooked: sometimes }
      foundry-mark: { bare: always }
      button: { steel: always }
      length: { mean: 138, spread: 0.8 }
      spring: { coil: always }
`,
    "",
    "variant-silent",
    { line: "- id: copy", at: "copy" },
  ),
];

const grounds: readonly CarelessHandbook[] = [
  doubt(
    "a claim rests on nothing",
    "lever: { flat: always, sources: [measured] }",
    "lever: { flat: always }",
    "claim-unsourced",
    { at: "lever", says: "what is said of lever" },
  ),
  doubt("a period rests on nothing", "1972-12, sources: [ledger] }", "1972-12 }", "claim-unsourced", {
    line: "1970-01, to: 1972-12 }",
    says: "its period",
  }),
  doubt(
    "a whole variant rests on nothing",
    "    sources: [measured]\n    tells:\n      lever: { round",
    "    tells:\n      lever: { round",
    "claim-unsourced",
    { line: "lever: { round: always }", says: "lever, foundry-mark, button, length and 1 more" },
  ),
  doubt(
    "a correction rests on nothing",
    "at that place.\n    sources: [measured]\n",
    "at that place.\n",
    "claim-unsourced",
    { line: "- id: star-or-fake" },
  ),
  make("sources.yaml", "wish")(
    "a source is named nowhere",
    "  - { id: measured",
    "  - { id: gossip, kind: hearsay, citation: Heard at a meeting, short: gossip, grade: D }\n  - { id: measured",
    "source-unused",
    { at: "gossip" },
  ),
  doubt(
    "a list is older than what it is named for",
    "from: 1976-01, to: 1979-12, models: [tarn-two], end: exact, sources: [ledger]",
    "from: 1976-01, to: 1979-12, models: [tarn-two], end: exact, sources: [list-1974]",
    "source-too-early",
    { at: "list-1974", says: "1974-05" },
  ),
  sourceDoubt(
    "a source is younger than the edition",
    'date: "2019"',
    'date: "2025"',
    "source-after-edition",
    {
      at: '"2025"',
    },
  ),
];

const claims: readonly CarelessHandbook[] = [
  doubt(
    "a word and its count disagree",
    '"nearly always, 9 of 9"',
    '"nearly always, 2 of 9"',
    "claim-word-and-count",
    { at: '"nearly always, 2 of 9"', says: "22 %" },
  ),
  doubt(
    "a rare thing was counted often",
    "star: usually, bare: sometimes, sources",
    'star: usually, bare: "rarely, 5 of 9", sources',
    "claim-word-and-count",
    { at: '"rarely' },
  ),
  doubt(
    "all states are rare",
    "star: usually, bare: sometimes, sources",
    "star: sometimes, bare: rarely, sources",
    "claim-short",
    { at: "foundry-mark", says: "36 %" },
  ),
  doubt(
    "all states are never",
    "star: usually, bare: sometimes }",
    "star: never, bare: never }",
    "claim-short",
    {
      at: "foundry-mark",
    },
  ),
  doubt(
    "always stands beside sometimes",
    "lever: { flat: always, sources: [measured] }",
    "lever: { flat: always, round: sometimes, sources: [measured] }",
    "claim-always-and-more",
    { at: "sometimes", says: "round sometimes" },
  ),
  doubt(
    "a feature is claimed that its condition rules out",
    "button: { not-there: always }",
    "button: { steel: usually }",
    "claim-against-condition",
    { at: "button", says: "lever is flat" },
  ),
  doubt(
    "a condition is turned about",
    "when: { lever: [flat] }",
    "when: { lever: [round] }",
    "claim-against-condition",
    { line: 'button: { steel: "nearly always', says: "flat-early never is" },
  ),
  wish(
    "a claim is made that a cause replaces",
    "      length: { mean: 132, spread: 0.5 }",
    "      spring: { coil: always }\n      length: { mean: 132, spread: 0.5 }",
    "claim-overruled",
    { at: "spring", says: "supplier" },
  ),
  doubt("a length is in centimetres", "mean: 132, spread: 0.5", "mean: 13.2, spread: 0.05", "claim-unit", {
    line: "mean: 13.2",
    at: "13.2",
    says: "10 times less",
  }),
  doubt("a length is in inches", "mean: 120, spread: 0.5", "mean: 4.72, spread: 0.02", "claim-unit", {
    at: "4.72",
    says: "25.4 times less",
  }),
  doubt("a length is in thousandths", "mean: 138, spread: 0.8", "mean: 138000, spread: 800", "claim-unit", {
    says: "1000 times more",
  }),
];

const periods: readonly CarelessHandbook[] = [
  doubt("a period ends too early", "to: 1972-12", "to: 1972-02", "period-gap", {
    at: "1972-02",
    says: "March to December 1972",
  }),
  doubt("a period begins too late", "from: 1973-01", "from: 1973-09", "period-gap", {
    line: "to: 1972-12",
    says: "January to August 1973",
  }),
  doubt(
    "nothing is known at the beginning",
    "from: 1970-01, to: 1972-12",
    "from: 1971-01, to: 1972-12",
    "period-gap",
    {
      at: "1971-01",
      says: "1970",
    },
  ),
  doubt("nothing is known at the end", "to: 1979-12, models", "to: 1979-03, models", "period-gap", {
    at: "1979-03",
    says: "April to December 1979",
  }),
  doubt("a market is left out", "models: [tarn-two], end", "markets: [home], end", "period-gap", {
    line: "from: 1973-01",
    says: "Export market",
  }),
  doubt("a trim is left out", "models: [tarn-two], end", "trims: [plain], end", "period-gap", {
    line: "from: 1973-01",
    says: "Sport",
  }),
  doubt("two variants are on the same cars for years", "to: 1972-12", "to: 1974-12", "period-overlap", {
    line: "from: 1973-01",
    says: "1973 to 1974",
  }),
  doubt("a later variant reaches far back", "from: 1973-01", "from: 1971-01", "period-overlap", {
    at: "{ from: 1971-01",
    says: "flat-early and flat-late",
  }),
  doubt(
    "three variants have half of the same cars each",
    "models: [tarn-two], end: exact",
    "models: [tarn-two], share: 0.5, end: exact",
    "period-overlap",
    {
      line: "models: [tarn-two], share: 0.5, end",
      says: "150 % of the same cars",
      besides: [
        ["from: 1970-01, to: 1972-12,", "from: 1976-01, to: 1979-12, share: 0.5,"],
        ["from: 1973-01, to: 1975-12,", "from: 1976-01, to: 1979-12, share: 0.5,"],
      ],
    },
  ),
  doubt(
    "one variant has two periods at once",
    "      - { from: 1970-01, to: 1972-12, sources: [ledger] }\n",
    "      - { from: 1970-01, to: 1972-12, sources: [ledger] }\n      - { from: 1972-06, to: 1972-11, sources: [ledger] }\n",
    "period-twice",
    { line: "1972-06" },
  ),
  doubt(
    "a period begins before its model",
    "from: 1976-01, to: 1979-12, models",
    "from: 1975-06, to: 1979-12, models",
    "period-beyond-model",
    {
      at: "1975-06",
      says: "1976 to 1979",
    },
  ),
  doubt(
    "a period outlasts production",
    "to: 1979-12, models: [tarn-two], end: exact",
    "to: 1981-12, models: [tarn-two], end: exact",
    "period-beyond-model",
    {
      at: "1981-12",
    },
  ),
  doubt("a copy is older than the car", "from: 1996-01", "from: 1966-01", "sale-before-production", {
    at: "1966-01",
  }),
  carsDoubt(
    "a serial was built after the last car",
    "built: 1978-06",
    "built: 1988-06",
    "built-outside-production",
    {
      at: "1988-06",
    },
  ),
  carsDoubt(
    "a serial was built before the first car",
    "built: 1970-01",
    "built: 1960-01",
    "built-outside-production",
    {
      at: "1960-01",
    },
  ),
  carsDoubt(
    "a trim outlasts its model",
    "models: [tarn-two], from: 1976-01, to: 1979-12",
    "models: [tarn-two], from: 1976-01, to: 1980-12",
    "period-beyond-model",
    {
      at: "1980-12",
    },
  ),
  carsDoubt(
    "a trim is older than its model",
    "models: [tarn-two], from: 1976-01",
    "models: [tarn-two], from: 1974-01",
    "period-beyond-model",
    {
      at: "1974-01",
    },
  ),
  make("cars.yaml", "wish")(
    "a year of production has no figure",
    "  1977: 70\n",
    "",
    "production-year-missing",
    {
      line: "production:",
      says: "1977",
    },
  ),
  carsDoubt(
    "a yearly figure has three noughts too many",
    "1979: 50",
    "1979: 50000",
    "production-year-strange",
    {
      at: "50000",
      says: "833 times",
    },
  ),
  carsDoubt("a yearly figure is a century off", "  1977: 70\n", "  1877: 70\n", "production-year-strange", {
    says: "1877",
  }),
];

const features: readonly CarelessHandbook[] = [
  doubt(
    "most owners cannot tell",
    "    when: { lever: [flat] }",
    "    unsure: 0.7\n    when: { lever: [flat] }",
    "feature-uncheckable",
    {
      at: "0.7",
      says: "70 %",
    },
  ),
  doubt(
    "the part is taken apart for a guess",
    "    effort: 1\n    photograph: false\n    tools: [magnet]",
    "    effort: 8\n    unsure: 0.5\n    photograph: false\n    tools: [magnet]",
    "feature-uncheckable",
    { line: "unsure: 0.5", says: "effort 8" },
  ),
  doubt(
    "a feature is never claimed",
    "causes:\n",
    `  - { id: hinge, kind: states, name: Hinge, question: Which hinge?, check: Look at the hinge from above., effort: 1, photograph: true, states: [{ id: open, name: Open }, { id: shut, name: Shut }] }
causes:
`,
    "feature-unasked",
    { at: "hinge" },
  ),
  wish(
    "a tell needs dismantling where a photograph would do",
    "look inside in raking light.\n    effort: 4",
    "look inside in raking light.\n    effort: 7",
    "feature-dear",
    {
      line: "effort: 7",
      at: "7",
      says: "lever (effort 1)",
    },
  ),
  wish(
    "a state is on no variant",
    "{ id: bare, name: Bare }",
    "{ id: bare, name: Bare }\n      - { id: crown, name: Crown }",
    "state-unseen",
    {
      line: "crown",
      at: "crown",
    },
  ),
  wish(
    "a state is never seen anywhere",
    "lever: { flat: usually, hooked: sometimes }",
    "lever: { flat: usually, hooked: never }",
    "state-unseen",
    {
      line: "id: hooked",
      says: "never seen",
    },
  ),
  wish("a state is claimed no more", "lever: { round: always }", "lever: { flat: always }", "state-unseen", {
    line: "id: round, name",
  }),
  doubt("a look is no better than a coin", "    misread: 0.05", "    misread: 0.45", "state-muddled", {
    at: "misread",
    says: "star and bare",
  }),
  doubt(
    "two states are taken for each other",
    "    misread: 0.05",
    "    misread:\n      - { is: star, said: bare, rate: 0.45 }\n      - { is: bare, said: star, rate: 0.45 }",
    "state-muddled",
    { at: "misread" },
  ),
];

const whole: readonly CarelessHandbook[] = [
  doubt(
    "a feature's condition is met by no variant",
    "when: { lever: [flat] }",
    "when: { lever: [hooked] }",
    "feature-never-applies",
    { at: "[hooked]", says: "which no variant is", besides: [["hooked: sometimes", "round: sometimes"]] },
  ),
  wish(
    "a feature is the same on all",
    "spring: { leaf: always }",
    "spring: { coil: always }",
    "feature-same-everywhere",
    {
      line: "- id: foundry-mark",
      at: "foundry-mark",
      besides: [
        [
          "foundry-mark: { star: usually, bare: sometimes, sources: [measured] }",
          "foundry-mark: { bare: always }",
        ],
        ["foundry-mark: { star: usually, bare: sometimes }", "foundry-mark: { bare: always }"],
        ["foundry-mark: { not-there: always }", "foundry-mark: { bare: always }"],
      ],
    },
  ),
];

const words: readonly CarelessHandbook[] = [
  doubt("two features share a word", "also: [casting mark]", "also: [lever shape]", "words-collide", {
    at: "lever shape",
    says: "lever and foundry-mark",
  }),
  doubt(
    "two features share a word but for its case",
    "also: [casting mark]",
    "also: [LEVER-shape]",
    "words-collide",
  ),
  doubt("two states share a word", "also: [round lever]", "also: [flat lever]", "words-collide", {
    at: "flat lever]",
  }),
  doubt("two variants share a word", "also: [second handle]", "also: [first handle]", "words-collide", {
    says: "flat-early and flat-late",
  }),
  doubt(
    "a variant is called like the part",
    "also: [second handle]",
    "also: [outside handle]",
    "words-collide",
    {
      says: "the part kind itself",
    },
  ),
  doubt("two mountings share a name", "name: Back plate", "name: Two studs", "words-collide", {
    at: "Two studs",
  }),
  carsDoubt("two models share a name", "name: Tarn Two", "name: Tarn", "words-collide", { at: "Tarn," }),
  carsDoubt("two markets share a name", "name: Export market", "name: Home market", "words-collide"),
  wish("two states are one slip apart", "also: [hooked lever]", "also: [roand lever]", "words-near", {
    says: "round lever",
  }),
  wish(
    "two variants are one slip apart",
    "also: [third handle]",
    "also: [thirst handle, firsd handle]",
    "words-near",
    {
      at: "firsd",
    },
  ),
  wish(
    "two features are one slip apart",
    "also: [casting mark]",
    "also: [casting mark, levar shape]",
    "words-near",
    {
      at: "levar",
    },
  ),
  wish("a word is listed twice", "also: [third handle]", "also: [third handle, third handle]", "word-twice", {
    says: "round",
  }),
];

const rest: readonly CarelessHandbook[] = [
  doubt(
    "a correction repeats the misbelief",
    "correction: One genuine handle in four was fettled smooth at that place.",
    "correction: A handle without a star is a copy.",
    "misbelief-uncorrected",
    {
      at: "A handle",
    },
  ),
  doubt(
    "a correction is a word",
    "correction: One genuine handle in four was fettled smooth at that place.",
    "correction: Not true.",
    "misbelief-uncorrected",
  ),
  doubt(
    "a mounting is nowhere used",
    "  - { id: plate, name",
    "  - { id: clip, name: Clip, description: A clip. }\n  - { id: plate, name",
    "mounting-unused",
    {
      at: "clip",
    },
  ),
  doubt(
    "a mounting fits nothing",
    "  - { part: plate, car: plate, fit: direct, how: Four screws. }\n",
    "",
    "mounting-fits-nothing",
    {
      line: "id: plate",
      at: "plate",
    },
  ),
  doubt(
    "a mounting fits nothing but with a no",
    "car: two-stud, fit: direct",
    'car: two-stud, fit: "no"',
    "mounting-fits-nothing",
    {
      line: "id: two-stud",
    },
  ),
  doubt(
    "a check burns the part",
    "Hold a magnet to the button; steel holds it.",
    "Burn a sliver from the back and smell it.",
    "check-harmful",
    {
      says: "poison",
    },
  ),
  doubt(
    "a check dissolves the part",
    "Hold a magnet to the button; steel holds it.",
    "Wipe it with acetone and look at the rag.",
    "check-harmful",
    {
      says: "soap",
    },
  ),
  doubt(
    "a check sands the evidence away",
    "Look at it from above in daylight.",
    "Sand it down to the metal and look.",
    "check-harmful",
  ),
  doubt(
    "a check scratches",
    "Look at it from above in daylight.",
    "Scratch the lever with a nail.",
    "check-harmful",
    {
      says: "scar",
    },
  ),
  doubt(
    "a check tastes",
    "Look at it from above in daylight.",
    "Taste the white powder in the corner.",
    "check-harmful",
  ),
  doubt(
    "a check goes under the car",
    "With the trim off, look at the pivot from behind.",
    "Look at the pivot from under the car.",
    "check-uncautioned",
    {
      says: "cautions: [under-car]",
    },
  ),
  doubt(
    "a check pulls plugs",
    "With the trim off, look at the pivot from behind.",
    "Unplug the connector and look at the pivot.",
    "check-uncautioned",
    {
      says: "cautions: [battery]",
    },
  ),
  doubt(
    "a check opens a luminous dial",
    "With the trim off, look at the pivot from behind.",
    "Turn the luminous side up and look.",
    "check-uncautioned",
    {
      says: "radium",
    },
  ),
  doubt(
    "a check is by an airbag",
    "With the trim off, look at the pivot from behind.",
    "Look at the pivot beside the airbag.",
    "check-uncautioned",
    {
      says: "airbag",
    },
  ),
  wish("a check says nothing", "Look at it from above in daylight.", "Look.", "check-unclear"),
];

export const carelessHandbooks: readonly CarelessHandbook[] = [
  ...alike,
  ...grounds,
  ...claims,
  ...periods,
  ...features,
  ...whole,
  ...words,
  ...rest,
];
