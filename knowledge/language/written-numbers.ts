// Numbers as people write or spell them in a size: "17 3/8", "1,180", "44,5", "four and a quarter", "half an".
// Half-widths: half of the last place written, 1/(2n) for a fraction of n.

const small =
  "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty";
const tens = "twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety";
const digit = "one|two|three|four|five|six|seven|eight|nine";
const belowHundred = `(?:(?:${tens})(?:[ -](?:${digit}))?|${small})`;
/** "A hundred and eight", "one thousand one hundred and eighty", "eleven hundred". */
const large = `(?:an?|${small}) (?:thousand(?:,? (?:and )?(?:an?|${digit}) hundred)?|hundred)(?:(?: and)? ${belowHundred})?`;
/** "Four point five". */
const pointed = String.raw`(?:\d+|${belowHundred}) point (?:${digit}|zero|nought|oh|\d+)(?: (?:${digit}))*`;
const share = "half|quarter|third|eighth|(?:one|three) quarters?|(?:one|three|five|seven) eighths?";
const sized =
  "(?= ?-?(?:inch|mm|millim|cm|centim|met(?:er|re)|foot|feet|kilo|kg|pound|lbs?\\b|ounce|oz\\b|mils?\\b))";
const ofOne = "(?= ?-?(?:inch|mm|millim|cm|kilo))";

/** "5/16ths of an inch". */
const th = "(?:ths?\\b(?: of an?(?= ?inch))?)?";

/** A regular expression's source for one number; spelled ones only where a unit follows. */
export const numberForm = String.raw`(?:(?:${large}|${pointed})${sized}|(?:${small}) and \d{1,2}\/(?:2|4|8|16|32|64)(?!\d)|(?:\d+|${small}) and (?:a |an )?(?:${share})|(?:\d+|${small}) and a bit${sized}|(?:${tens})(?:[ -](?:${digit}))?${sized}|(?:${small})${sized}|(?:${share})(?: of)?(?: an?)?${ofOne}|an?${ofOne}|\.\d+${sized}|\d{1,3} \d{3}(?= ?(?:mm|millim|g|gr|grams?|grammes?)\b)|\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+[.,]\d+|\d+(?: and| &)?[ -]\d{1,2}\/(?:2|4|8|16|32|64)(?!\d)${th}|\d{1,2}\/(?:2|4|8|16|32|64)(?!\d)${th}|\d+)`;

export interface ParsedNumber {
  readonly value: number;
  readonly halfWidth: number;
}

/** "17 3/8" is 17.375 ± 1/16; "1,180" is a thousand, "44,5" a decimal. Undefined for a fraction over nought. */
export function parseNumber(written: string): ParsedNumber | undefined {
  const spoken = spokenNumber(written.toLowerCase());
  if (spoken !== undefined) return spoken;
  const fraction = /^(?:(\d+)(?: and| &)?[ -])?(\d{1,2})\/(\d{1,2})(?:ths?\b.*)?$/.exec(written);
  if (fraction !== null) {
    const below = Number(fraction[3]);
    if (Number(fraction[2]) >= below) return undefined;
    return { value: Number(fraction[1] ?? 0) + Number(fraction[2]) / below, halfWidth: 1 / (2 * below) };
  }
  const plain = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$/.test(written)
    ? written.replace(/,/g, "")
    : written.replace(",", ".").replace(" ", "");
  const value = Number(plain);
  if (!Number.isFinite(value) || value <= 0 || value > 1e6) return undefined;
  const decimals = plain.split(".")[1]?.length ?? 0;
  return { value, halfWidth: 0.5 * 10 ** -Math.min(decimals, 6) };
}

const shares: readonly (readonly [RegExp, number, number])[] = [
  [/half/, 1, 2],
  [/third/, 1, 3],
  [/three quarter/, 3, 4],
  [/quarter/, 1, 4],
  [/seven eighth/, 7, 8],
  [/five eighth/, 5, 8],
  [/three eighth/, 3, 8],
  [/eighth/, 1, 8],
  // "Three and a bit": a quarter over, within a quarter.
  [/bit/, 1, 4],
];

/** A share of one said in words: "half an", "three eighths", "a bit"; undefined for anything else. */
export function shareOf(said: string): ParsedNumber | undefined {
  const found = /\d/.test(said) ? undefined : shares.find(([form]) => form.test(said));
  if (found === undefined) return undefined;
  const [, above, below] = found;
  return { value: above / below, halfWidth: 1 / (2 * below) };
}

/** "Four and a quarter", "25 and three eighths", "an", "half an". */
function spokenNumber(written: string): ParsedNumber | undefined {
  if (/ (?:hundred|thousand)\b/.test(written)) return { value: countOf(written), halfWidth: 0.5 };
  if (/ point /.test(written)) return pointedNumber(written);
  const words = small.split("|");
  const [ten = "", one] = written.split(/[ -]/);
  const of = tens.split("|").indexOf(ten);
  if (of >= 0) return { value: 10 * (of + 2) + words.indexOf(one ?? "") + 1, halfWidth: 0.5 };
  const plain = /^an?$/.test(written) ? 1 : words.indexOf(written) + 1;
  if (plain > 0) return { value: plain, halfWidth: 0.5 };
  const [whole = "", part] = written.split(" and ", 2);
  if (part === undefined) return shareOf(written);
  const added = /\//.test(part) ? parseNumber(part) : shareOf(part);
  if (added === undefined) return undefined;
  const count = /^\d+$/.test(whole) ? Number(whole) : words.indexOf(whole) + 1;
  return { value: count + added.value, halfWidth: added.halfWidth };
}

/** "One thousand one hundred and eighty" is 1180. */
function countOf(said: string): number {
  let thousands = 0;
  let count = 0;
  for (const word of said.split(/[ -]|, ?/)) {
    if (word === "thousand") [thousands, count] = [count * 1000, 0];
    else count = word === "hundred" ? count * 100 : count + countFor(word);
  }
  return thousands + count;
}

/** "Four", "forty", "a"; nothing for what is no number. */
function countFor(word: string): number {
  const ten = tens.split("|").indexOf(word);
  if (ten >= 0) return 10 * (ten + 2);
  return /^an?$/.test(word) ? 1 : small.split("|").indexOf(word) + 1;
}

/** "Four point five": each word behind is one place. */
function pointedNumber(said: string): ParsedNumber | undefined {
  const [whole = "", places = ""] = said.split(" point ", 2);
  const digits = places.replace(/[a-z]+/g, (word) => String(countFor(word))).replace(/ /g, "");
  const before = /^\d+$/.test(whole) ? whole : String(countOf(whole));
  return parseNumber(`${before}.${digits}`);
}
