/** Slips that historians make, each as one change to the sound handbook, with the line that must be named for it. */
import type { ProblemCode } from "../../../knowledge/handbook/problem.ts";

export interface BrokenHandbook {
  readonly slip: string;
  readonly file: string;
  /** The text that is replaced, the first time it stands in the file. */
  readonly from: string;
  readonly to: string;
  readonly code: ProblemCode;
  /** A piece of the line that must be named; without it, the first line of what was put in. */
  readonly line?: string;
  /** What the mending must say. */
  readonly mend?: string;
}

const inSpoiler = (
  slip: string,
  from: string,
  to: string,
  code: ProblemCode,
  rest: Pick<BrokenHandbook, "line" | "mend"> = {},
): BrokenHandbook => ({ slip, file: "parts/rear-spoiler.yaml", from, to, code, ...rest });
const inCars = (
  slip: string,
  from: string,
  to: string,
  code: ProblemCode,
  rest: Pick<BrokenHandbook, "line" | "mend"> = {},
): BrokenHandbook => ({ slip, file: "cars.yaml", from, to, code, ...rest });

const writing: readonly BrokenHandbook[] = [
  inSpoiler("a tab indents a line", "    effort: 2", "\teffort: 2", "yaml-tab", { mend: "spaces" }),
  inSpoiler("a line is indented one space too far", "    effort: 3", "     effort: 3", "yaml-indentation"),
  inSpoiler("a key is given twice", "effort: 2", "effort: 2\n    effort: 3", "yaml-key-twice", {
    line: "effort: 3",
  }),
  inSpoiler(
    "a variant's tell is given twice",
    "width: { mean: 1180, spread: 3 }",
    "inside-finish: { rough: often }",
    "yaml-key-twice",
  ),
  inSpoiler(
    "a second colon stands in plain text",
    "summary: Laid up by hand.",
    "summary: Laid up: by hand.",
    "yaml-syntax",
    { mend: "quotes" },
  ),
  inSpoiler("a quote is never closed", "name: Rear spoiler", 'name: "Rear spoiler', "yaml-syntax", {
    line: 'name: "Rear spoiler',
    mend: "closing quote",
  }),
  inCars("a quote is never closed up to the end", "production:\n", "production: 'all\n", "yaml-syntax", {
    line: "production: 'all",
  }),
  inCars("a colon has no space", "  1980: 55", "  1980:55", "yaml-syntax", {
    line: "1980:55",
    mend: "put a space after the colon",
  }),
  inSpoiler("a hyphen has no space", "  - id: second\n", "  -id: second\n", "yaml-syntax", {
    line: "-id: second",
    mend: "put a space after the hyphen",
  }),
  inSpoiler(
    "a list is written as one of its entries",
    "    fitted:\n      - {",
    "    fitted:\n      {",
    "value-type",
    { line: "      {", mend: "hyphen" },
  ),
  inSpoiler("a bracket is never closed", "also: [boot spoiler]", "also: [boot spoiler", "yaml-syntax", {
    line: "summary: The moulding",
  }),
  inSpoiler("words follow a closing quote", "name: Rear spoiler", 'name: "Rear" spoiler', "yaml-syntax", {
    mend: "quotes",
  }),
  inSpoiler("text begins with an at sign", "name: Rear spoiler", "name: @spoiler", "yaml-syntax", {
    mend: "quotes",
  }),
  inSpoiler("text begins with a star", "name: Rear spoiler", "name: *spoiler", "yaml-alias", {
    mend: "quotes",
  }),
  inSpoiler(
    "one place refers to another",
    "also: [boot spoiler]",
    "also: &words [boot spoiler]\nextra: *words",
    "yaml-alias",
    { line: "extra" },
  ),
  inSpoiler("text begins with an exclamation mark", "name: Rear spoiler", "name: !rear spoiler", "yaml-tag"),
  inSpoiler("a tag asks for another type", "effort: 2", 'effort: !!int "2"', "yaml-tag"),
  inSpoiler("a line has no colon", "    photograph: true", "    photograph", "yaml-indentation"),
  inSpoiler("a second document begins", "groups:", "---\ngroups:", "yaml-several-documents"),
  inSpoiler("a number has a leading nought", "name: Rear spoiler", "name: 0777", "value-number", {
    mend: '"0777"',
  }),
  inSpoiler("a number is beyond all bounds", "mean: 1180", "mean: 1e999", "value-number"),
  inSpoiler("a number is hexadecimal", "mean: 1180", "mean: 0x1F", "value-number"),
  inSpoiler(
    "a part number is too long for a number",
    "name: Rear spoiler",
    "name: 90071992547409931",
    "value-number",
  ),
  inSpoiler("a measure is infinite", "mean: 1180", "mean: .inf", "value-number"),
  inSpoiler("a key is missing before its colon", "    effort: 2", "    : 2", "yaml-key"),
  inSpoiler("a key is a list", "    effort: 2", "    [a, b]: 2", "yaml-syntax"),
  inSpoiler("a key reaches for the machinery", "    effort: 2", "    __proto__: { effort: 2 }", "yaml-key"),
  inSpoiler(
    "lists lie bottomless deep",
    "also: [boot spoiler]",
    `also: ${"[".repeat(40)}${"]".repeat(40)}`,
    "yaml-depth",
  ),
];

const shape: readonly BrokenHandbook[] = [
  inSpoiler("a key is misspelt", "    effort: 2", "    efort: 2", "key-unknown", {
    mend: 'did you mean "effort"?',
  }),
  inSpoiler("a key is unheard of", "    effort: 2", "    effort: 2\n    weather: fine", "key-unknown", {
    line: "weather",
    mend: "known keys: id, name",
  }),
  inSpoiler(
    "a comma cuts a text in two",
    "how: Plug the holes first.",
    "how: Plug the holes, then glue.",
    "key-unknown",
    {
      mend: "quotes",
    },
  ),
  inSpoiler("a variant has no origin", "    origin: production\n", "", "key-missing", {
    line: "- id: first",
    mend: "origin:",
  }),
  inSpoiler("a feature has no kind", "    kind: measurement\n", "", "key-missing", {
    line: "- id: width",
    mend: "kind:",
  }),
  inSpoiler("a feature is of an unknown kind", "kind: measurement", "kind: measurment", "value-choice", {
    mend: 'did you mean "measurement"?',
  }),
  inSpoiler("an origin is misspelt", "origin: reproduction", "origin: reproductoin", "value-choice", {
    mend: 'did you mean "reproduction"?',
  }),
  inSpoiler(
    "nothing stands behind a colon",
    "    check: Look under the edge with a lamp.",
    "    check:",
    "value-missing",
    { mend: "delete the line" },
  ),
  inSpoiler("a name is a number", "name: Width", "name: 1180", "value-type", { mend: '"1180"' }),
  inSpoiler("an effort is in words", "effort: 2", "effort: two", "value-type", { mend: "figures" }),
  inSpoiler("an effort is out of bounds", "effort: 2", "effort: 9", "value-range"),
  inSpoiler("a spread is nought", "spread: 3", "spread: 0", "value-range"),
  inSpoiler("a yes stands for true", "photograph: true", "photograph: yes", "value-type", {
    mend: "true or false",
  }),
  inSpoiler("one word stands for a list", "also: [boot spoiler]", "also: boot spoiler", "value-type", {
    mend: "also: [boot spoiler]",
  }),
  inSpoiler(
    "a list stands for text",
    "summary: The moulding along the edge of the boot lid.",
    "summary: [The moulding]",
    "value-type",
  ),
  inSpoiler("an id has capitals and a space", "- id: inside-finish", "- id: Inside Finish", "value-id", {
    mend: "write inside-finish",
  }),
  inSpoiler("an id is every record's own", "- id: width", "- id: constructor", "value-id"),
  inSpoiler("a name is empty", "name: Width", 'name: ""', "text-length"),
  inSpoiler("a name is far too long", "name: Width", `name: ${"wide ".repeat(40)}`, "text-length", {
    mend: "120",
  }),
  inSpoiler("a feature has one state only", "      - { id: round, name: Round }\n", "", "list-length", {
    line: "- { id: square",
  }),
  inSpoiler("a month does not exist", "from: 1978-04", "from: 1978-14", "value-date", { mend: "1980-05" }),
  inSpoiler("a date is in words", 'from: "1995"', "from: about 1995", "value-date"),
  inSpoiler("a date is true", 'from: "1995"', "from: true", "value-date"),
  inSpoiler("a frequency is misspelt", "rough: nearly always", "rough: nealy always", "value-frequency", {
    mend: 'did you mean "nearly always"?',
  }),
  inSpoiler("a frequency is a number", "rough: nearly always", "rough: 0.9", "value-frequency", {
    mend: "17 of 20",
  }),
  inSpoiler(
    "a comma cuts a frequency off",
    "rough: nearly always,",
    "rough: always, 11 of 11,",
    "value-missing",
    {
      mend: "put the whole text in quotes",
    },
  ),
  inSpoiler("a count has a stroke", "rough: nearly always", "rough: 9/11", "value-frequency", {
    mend: "write 9 of 11",
  }),
  inSpoiler("a frequency is a share", "rough: nearly always", "rough: 85 %", "value-frequency", {
    mend: "a count such as 17 of 20",
  }),
  inSpoiler("a count is turned round", "rough: nearly always", "rough: 12 of 11", "value-frequency", {
    mend: "11 of 12",
  }),
  inSpoiler("a count exceeds its total", "usually, 17 of 20", "usually, 27 of 20", "value-frequency"),
  inSpoiler("a claim is a word alone", "width: { mean: 1180, spread: 3 }", "width: always", "claim-mixed", {
    mend: "mean",
  }),
  inSpoiler(
    "a claim measures and names states",
    "width: { mean: 1180, spread: 3 }",
    "width: { mean: 1180, spread: 3, not-there: rarely }",
    "claim-mixed",
  ),
  inSpoiler("a claim has a mean but no spread", "mean: 1180, spread: 3", "mean: 1180", "key-missing", {
    mend: "spread",
  }),
  inSpoiler("a claim's mean is misspelt", "mean: 1180", "maen: 1180", "key-unknown", {
    mend: 'did you mean "mean"?',
  }),
  inSpoiler("a mean carries its unit", "mean: 1180", "mean: 1180 mm", "value-type", { mend: "unit" }),
  inSpoiler(
    "a misreading is a word",
    "misread:\n      - { is: smooth, said: rough, rate: 0.1 }",
    "misread: often",
    "value-type",
    { mend: "0.05" },
  ),
  inSpoiler("a misreading has no rate", "said: rough, rate: 0.1", "said: rough", "key-missing", {
    mend: "rate",
  }),
  inSpoiler("a misreading is more often wrong than right", "rate: 0.1", "rate: 0.7", "value-range"),
  inSpoiler(
    "a source id in a claim is a number",
    "smooth: rarely, sources: [parts-list]",
    "smooth: rarely, sources: [12]",
    "value-type",
  ),
  inCars("a year of production is no year", "  1978: 12", "  seventy-eight: 12", "value-date"),
  {
    slip: "the format is of the future",
    file: "handbook.yaml",
    from: "format: 1",
    to: "format: 2",
    code: "value-choice",
  },
  {
    slip: "a grade is in small letters",
    file: "sources.yaml",
    from: "grade: A",
    to: "grade: a",
    code: "value-choice",
    mend: '"A"',
  },
];

const references: readonly BrokenHandbook[] = [
  inSpoiler("a state is misspelt", "{ rough: nearly always", "{ ruogh: nearly always", "id-unknown", {
    mend: 'did you mean "rough"?',
  }),
  inSpoiler(
    "a feature is misspelt among the tells",
    "      width: { mean: 1180",
    "      widht: { mean: 1180",
    "id-unknown",
    { mend: 'did you mean "width"?' },
  ),
  inSpoiler(
    "a source is unknown",
    "smooth: rarely, sources: [parts-list]",
    "smooth: rarely, sources: [part-list]",
    "id-unknown",
    { mend: 'did you mean "parts-list"?' },
  ),
  inSpoiler(
    "a misbelief's source is unknown",
    "    sources: [works-ledger]\n",
    "    sources: [gossip]\n",
    "id-unknown",
    { mend: "known: works-ledger, parts-list" },
  ),
  inSpoiler("a period's model is unknown", "models: [shrike]", "models: [shirke]", "id-unknown", {
    mend: 'did you mean "shrike"?',
  }),
  inSpoiler("a period's trim is unknown", "trims: [tourer]", "trims: [saloon]", "id-unknown"),
  inSpoiler("a period's market is unknown", "markets: [home]", "markets: [moon]", "id-unknown"),
  inSpoiler("a mounting is unknown", "mounting: four-stud", "mounting: four-studs", "id-unknown", {
    mend: "four-stud",
  }),
  inSpoiler("a fit names an unknown mounting", "part: tape, car", "part: tapes, car", "id-unknown"),
  inSpoiler("a look-alike is unknown", "resembles: [trade-copy]", "resembles: [trade-copies]", "id-unknown"),
  inSpoiler("a variant resembles itself", "resembles: [trade-copy]", "resembles: [first]", "id-itself"),
  inSpoiler(
    "a group names an unknown feature",
    "features: [inside-finish, edge-bead]",
    "features: [inside-finish, edge-beed]",
    "id-unknown",
  ),
  inSpoiler(
    "a condition names an unknown feature",
    "when: { inside-finish: [rough] }",
    "when: { outside-finish: [rough] }",
    "id-unknown",
  ),
  inSpoiler(
    "a condition names an unknown state",
    "when: { inside-finish: [rough] }",
    "when: { inside-finish: [ruff] }",
    "id-unknown",
  ),
  inSpoiler(
    "a condition names its own feature",
    "when: { inside-finish: [rough] }",
    "when: { edge-bead: [round] }",
    "id-itself",
  ),
  inSpoiler(
    "a misreading names an unknown state",
    "is: smooth, said: rough",
    "is: smoth, said: rough",
    "id-unknown",
  ),
  inSpoiler(
    "a state is misread as itself",
    "is: smooth, said: rough",
    "is: smooth, said: smooth",
    "id-itself",
  ),
  inSpoiler(
    "a state is never seen as it is",
    "      - { is: smooth, said: rough, rate: 0.1 }",
    "      - { is: smooth, said: rough, rate: 0.5 }\n      - { is: smooth, said: not-there, rate: 0.5 }",
    "misread-sum",
    { line: "said: not-there" },
  ),
  inSpoiler(
    "a cause names an unknown variant",
    "first: { old: usually, new: sometimes }",
    "frist: { old: usually, new: sometimes }",
    "id-unknown",
  ),
  inSpoiler(
    "a cause names an unknown state of its own",
    "first: { old: usually, new: sometimes }",
    "first: { old: usually, knew: sometimes }",
    "id-unknown",
  ),
  inSpoiler(
    "a cause names an unknown state of a feature",
    "old: { round: usually }",
    "old: { roundish: usually }",
    "id-unknown",
  ),
  inSpoiler("a cause speaks about a measurement", "      edge-bead:\n", "      width:\n", "claim-kind"),
  inSpoiler("a cause has one state twice", "states: [old, new]", "states: [old, new, old]", "id-twice"),
  inSpoiler("a mark comes before an unknown mark", "before: stamp-date", "before: stamp", "id-unknown"),
  inSpoiler(
    "a mark comes before something that is no mark",
    "before: stamp-date",
    "before: width",
    "id-unknown",
  ),
  inSpoiler("a mark is written in an unknown form", "forms: [clock]", "forms: [clocks]", "value-choice"),
  inSpoiler(
    "two marks come before each other",
    "    forms: [month-year]",
    "    before: cast-date\n    forms: [month-year]",
    "chain-cycle",
    { line: "before: stamp-date" },
  ),
  inSpoiler("a mark comes before itself", "before: stamp-date", "before: cast-date", "chain-cycle"),
  inSpoiler(
    "two features wait for each other",
    "    misread:",
    "    when: { edge-bead: [round] }\n    misread:",
    "chain-cycle",
  ),
  inSpoiler("two features have one id", "- id: edge-bead", "- id: inside-finish", "id-twice", {
    mend: "line 7",
  }),
  inSpoiler(
    "two states have one id",
    "{ id: smooth, name: Smooth }",
    "{ id: rough, name: Smooth }",
    "id-twice",
  ),
  inSpoiler("two variants have one id", "- id: second", "- id: first", "id-twice", { mend: "line 78" }),
  inSpoiler(
    "a pair of mountings is given twice",
    "fits:\n",
    "fits:\n  - { part: tape, car: four-stud, fit: no, how: It falls off. }\n",
    "id-twice",
    { line: "Plug the holes" },
  ),
  inSpoiler(
    "a state has a reserved id",
    "{ id: square, name: Square }",
    "{ id: not-there, name: None }",
    "id-reserved",
  ),
  inSpoiler(
    "a period ends before it begins",
    "from: 1978-04, to: 1980-11",
    "from: 1980-11, to: 1978-04",
    "period-order",
  ),
  inSpoiler(
    "a sale ends before it begins",
    'from: "1995", to: "2010"',
    'from: "2010", to: "1995"',
    "period-order",
  ),
  inSpoiler(
    "a production variant was never fitted",
    "    fitted:\n      - { from: 1980-09, to: 1984-09, end: exact }\n",
    "",
    "variant-never-fitted",
    { line: "- id: second" },
  ),
  inSpoiler(
    "a reproduction was never sold",
    '    sold:\n      - { from: "1995", to: "2010" }\n',
    "",
    "variant-never-sold",
    { line: "- id: trade-copy" },
  ),
  inSpoiler(
    "the works fitted a reproduction",
    "    sold:\n",
    '    fitted: [{ from: "1980", to: "1981" }]\n    sold:\n',
    "variant-not-fitted-by-works",
  ),
  inSpoiler(
    "a measurement is claimed in states",
    "width: { mean: 1180, spread: 3 }",
    "width: { wide: usually }",
    "claim-kind",
    { mend: "mean" },
  ),
  inSpoiler(
    "a state is claimed as a measurement",
    'inside-finish: { smooth: "usually, 17 of 20" }',
    "inside-finish: { mean: 3, spread: 1 }",
    "claim-kind",
    { mend: "frequencies" },
  ),
  inSpoiler(
    "a date mark is claimed in states",
    "cast-date: { not-there: always }",
    "cast-date: { early: always }",
    "claim-kind",
  ),
  inSpoiler(
    "a claim says nothing",
    "cast-date: { not-there: always }",
    "cast-date: { sources: [parts-list] }",
    "claim-empty",
  ),
  inSpoiler("shares add up to far more than the whole", "smooth: rarely", "smooth: usually", "claim-sum"),
  inSpoiler(
    "a feature is in two groups",
    "causes:",
    "  - id: again\n    coupling: loose\n    features: [edge-bead, width]\n    reason: None.\ncauses:",
    "feature-in-two-groups",
    { line: "[edge-bead, width]" },
  ),
  inSpoiler(
    "a drawing is not there",
    "drawing: drawings/spoiler.svg",
    "drawing: drawings/spoilr.svg",
    "drawing-missing",
    { mend: "drawings/spoiler.svg" },
  ),
  inSpoiler(
    "a caution is unheard of",
    "    effort: 1",
    "    cautions: [grp-dsut]\n    effort: 1",
    "id-unknown",
    { mend: 'did you mean "grp-dust"?' },
  ),
  inCars("a trim names an unknown model", "models: [shrike]", "models: [shrikes]", "id-unknown"),
  inCars(
    "two models have one id",
    "trims:",
    "  - { id: shrike, name: Shrike Two, from: 1982-01, to: 1984-09 }\ntrims:",
    "id-twice",
    { mend: "line 2" },
  ),
  inCars("a model ends before it begins", "to: 1984-09", "to: 1974-09", "period-order"),
  inCars("serials fall", "serial: 101", "serial: 0", "serial-order"),
  inCars("a later serial was built earlier", "built: 1980-05-12", "built: 1977-05-12", "serial-order"),
  inCars("a serial form has no figures", "form: WS-####", "form: WS", "serial-form"),
  inCars("an anchor's source is unknown", "sources: [works-ledger]", "sources: [ledger]", "id-unknown"),
  {
    slip: "two sources have one id",
    file: "sources.yaml",
    from: "- id: parts-list",
    to: "- id: works-ledger",
    code: "id-twice",
    mend: "line 2",
  },
];

const drawings: readonly BrokenHandbook[] = (
  [
    ["a drawing holds a script", "<title>", "<script>alert(1)</script><title>"],
    ["a drawing embeds a page", "<title>", "<foreignObject/><title>"],
    ["a drawing loads a picture", "<title>", '<image href="https://example.org/a.png"/><title>'],
    ["a drawing refers outside", "<title>", '<use href="https://example.org/a.svg#b"/><title>'],
    ["a drawing refers outside by the old name", "<title>", '<use xlink:href="other.svg#b"/><title>'],
    ["a drawing reacts to an event", 'fill="none"', 'fill="none" onload="alert(1)"'],
    ["a drawing reaches out through a paint", 'fill="none"', 'fill="url(https://example.org/a)"'],
    ["a drawing has a style sheet", "<title>", "<style>@import 'a.css'</style><title>"],
    ["a drawing has a style attribute", 'fill="none"', 'style="fill:none"'],
    ["a drawing has a document type", "<svg", "<!DOCTYPE svg>\n<svg"],
    ["a drawing declares an entity", "<svg", '<!DOCTYPE svg [<!ENTITY a "b">]>\n<svg'],
    ["a drawing uses an entity", "inside &amp; edge", "inside &lol; edge"],
    ["a drawing has an animation", "<title>", '<set attributeName="href" to="x"/><title>'],
    ["a drawing has a link", "<title>", '<a href="#x"><title>'],
    ["a drawing hides text in CDATA", "<title>", "<![CDATA[ <script> ]]><title>"],
    ["a drawing is not closed", "</svg>", ""],
    ["a drawing's attribute has no quotes", 'fill="none"', "fill=none"],
    ["a drawing is a page", "<svg xmlns", "<html xmlns"],
  ] as const
).map(([slip, from, to]) => ({
  slip,
  file: "drawings/spoiler.svg",
  from,
  to,
  code: "drawing-unsafe" as const,
}));

export const brokenHandbooks: readonly BrokenHandbook[] = [...writing, ...shape, ...references, ...drawings];
