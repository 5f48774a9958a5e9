// One spelling for words that are one word: case, accents, British and American spelling, small numbers and
// plurals. Deliberately weaker than a published stemmer: "paint" must not become "painted".

const spellings: readonly (readonly [RegExp, string])[] = [
  [/mould/, "mold"],
  [/colour/, "color"],
  [/grey/, "gray"],
  [/centre/, "center"],
  [/alumini/, "alumin"],
  [/tyre/, "tire"],
  [/fibre/, "fiber"],
  [/metre/, "meter"],
  [/guage/, "gauge"],
  [/aluminum|alluminum|alluminium/, "aluminum"],
  [/^alu$|^ally$/, "aluminum"],
  [/^(?:fiberglas|grp|frp)$/, "fiberglass"],
  [/^(?:dosent|dosnt|doesent|doesnot|dosn)$/, "doesnt"],
  [/^havnt$/, "havent"],
  [/^hasent$/, "hasnt"],
  [/^is(?:i|e)nt$/, "isnt"],
  [/^carnt$/, "cant"],
  [/^pics?$|^photos?$/, "photograph"],
  [/^(?:single|sole)$/, "one"],
  [/^(?:twin|dual|double|pair|couple)$/, "two"],
  [/^triple$/, "three"],
  [/^inner$/, "inside"],
  [/^outer$/, "outside"],
];

const numberWords: readonly string[] = [
  "zero",
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];
const romanFigures: Readonly<Record<string, string>> = { ii: "two", iii: "three", iv: "four", vi: "six" };
const ordinals: Readonly<Record<string, string>> = {
  "1st": "first",
  "2nd": "second",
  "3rd": "third",
  "4th": "fourth",
  "5th": "fifth",
  "6th": "sixth",
};
const shorthand: Readonly<Record<string, string>> = {
  "w/o": "without",
  "w/": "with",
  "p/n": "partnumber",
  "&": "and",
  "+": "and",
  mk: "mark",
  "half a dozen": "six",
  "a dozen": "twelve",
  cond: "condition",
  "n/a": "inapplicable",
};
const tens = "twenty thirty forty fifty sixty seventy eighty ninety".split(" ");

/** The number a folded word stands for ("two" is 2), or undefined. */
export function numberOf(folded: string): number | undefined {
  const at = numberWords.indexOf(folded);
  if (at >= 0) return at;
  return /^\d{1,6}$/.test(folded) ? Number(folded) : undefined;
}

/** One word in its folded form: "Aluminium" gives "aluminum", "2" gives "two", "isn't" gives "isnt". */
export function foldWord(word: string): string {
  const bare = word.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/'/g, "");
  const small = /^0?[1-9]\d?$/.test(bare) ? numberWords[Number(bare)] : undefined;
  if (small !== undefined) return small;
  const [ten = "", one = ""] = bare.split(/[ -]/);
  if (tens.includes(ten) && one !== "") return `${tens.indexOf(ten) + 2}${numberWords.indexOf(one)}`;
  const known = wordIn(shorthand, bare) ?? wordIn(ordinals, bare) ?? wordIn(romanFigures, bare);
  if (known !== undefined) return known;
  return spellings.reduce((spelt, [pattern, plain]) => spelt.replace(pattern, plain), bare);
}

function wordIn(table: Readonly<Record<string, string>>, word: string): string | undefined {
  return Object.hasOwn(table, word) ? table[word] : undefined;
}

const contractions: ReadonlySet<string> = new Set(
  "isnt arent wasnt werent dont doesnt didnt hasnt havent hadnt cant cannot couldnt wont wouldnt aint".split(
    " ",
  ),
);

/** A folded word without its plural, contractions as "not": "screws" gives "screw", "glasses" "glass", "glass" itself. */
export function stemWord(folded: string): string {
  if (contractions.has(folded)) return "not";
  if (folded.length < 4 || !folded.endsWith("s")) return folded;
  if (/(?:ss|us|is)$/.test(folded)) return folded;
  if (folded.endsWith("ies") && folded.length > 4) return `${folded.slice(0, -3)}y`;
  if (/(?:ss|x|ch|sh|zz)es$/.test(folded)) return folded.slice(0, -2);
  return folded.slice(0, -1);
}

const irregular: readonly (readonly string[])[] = [
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
].map((forms) => forms.split(" "));

/** The other forms of a strong verb: "sweeping" gives "sweep" and "swept". */
export function irregularForms(folded: string): readonly string[] {
  return irregular.find((forms) => forms.includes(folded))?.filter((form) => form !== folded) ?? [];
}

/** Other inflections a folded word may stand for, without those that turn a noun into a participle. */
export function baseForms(folded: string): readonly string[] {
  const bases: string[] = [];
  if (folded.endsWith("ed") && folded.length > 4) bases.push(folded.slice(0, -2), folded.slice(0, -1));
  if (folded.endsWith("ing") && folded.length > 5) bases.push(folded.slice(0, -3), `${folded.slice(0, -3)}e`);
  if (/([bdgmnprt])\1(?:ed|ing)$/.test(folded)) bases.push(folded.replace(/([bdgmnprt])\1(?:ed|ing)$/, "$1"));
  if (folded.endsWith("y") && folded.length > 5) bases.push(`${folded.slice(0, -1)}ed`, folded.slice(0, -1));
  if (folded.endsWith("ish") && folded.length > 5) bases.push(folded.slice(0, -3));
  if (folded.length > 4) bases.push(`${folded}ed`, `${folded}d`, `${folded}ing`);
  if (/[aeiou][bdgmnprt]$/.test(folded)) bases.push(`${folded}${folded.at(-1)}ed`);
  return bases;
}
