// What stands in a message but is not the speaker's own statement: addresses, code, quoted lines, turns of phrase
// that use a trade word for something else. Each is blanked with spaces, so that positions stay those of the text.

export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface ReadableText {
  /** Same length as the shown text, noise replaced by spaces. */
  readonly text: string;
  /** Lines quoted from somebody else: their words are left aside. */
  readonly quoted: readonly Span[];
}

const noise: readonly RegExp[] = [
  /```[\s\S]{0,4000}?(?:```|$)/g,
  /`[^`\n]{0,300}`/g,
  /\b(?:https?:\/\/|www\.)\S+/gi,
  /(?<!\S)[^\s@]{1,64}@[^\s@]{1,255}/g,
  /[@#][\w-]{2,40}/g,
  /<[@#:][^>\s]{1,60}>/g,
  // A masked chassis number; dots before a figure are a mark.
  /(?:[\w-]{1,13}[ -]?)?\u2022{2,16}(?!\u2022| ?\d)[\w\u2022-]{0,16}|\w\u2022[\w\u2022-]{0,16}|\u2022[A-Za-z][\w\u2022-]{0,16}/g,
  /\b\d[\d,.]* ?(?:k )?miles?\b/gi,
  // The stop of a shortened word ends no sentence, where its size goes on.
  /(?<=\d ?(?:in|ins|cm|mm|ft))\.(?= (?:wide|high|tall|across|thick|long|deep|overall|over|between|tip to)\b)|(?<=\bapprox)\.(?= \d)/gi,
  // A metric thread ("M6 x 20", ISO 261) counts nothing.
  /\bm(?:[3-9]|1[0-2])s?(?: ?x ?\d+(?: ?mm)?|\b)/gi,
];

/** Trade words used for something else; longer sayings of a club may be added here. */
const sayings: readonly RegExp[] = [
  /\brough(?:ly)? (?:idea|guess|estimate|shape|condition|nick|price|figure|order|edges?|around the edges|time|ride|patch|start)\b/g,
  /\b(?:smooth|plain) (?:ride|sailing|running|english|wrong|driver|operator)\b/g,
  /\b(?:all|other way|the other way|way|hang|turn(?:ed)?|come|came|going|go|look(?:ed|ing)?|shop(?:ped|ping)?|asked|year|the whole|another|next|first) round\b/g,
  /\bround (?:here|the (?:world|corner|clock|back of|houses|block|town|twist)|about|up|trip|my|his|her)\b/g,
  /\b(?:back to|on|from) square one\b/g,
  /\b(?:fair and|be there or be|all) square\b/g,
  /\bearly (?:days|bird|morning|on|next|this|retirement|start|night|hours)\b/g,
  /\b(?:sharp|open) (?:eyes?|mind|question)\b/g,
  /\b(?:on the|the|in the) (?:other|one|right|left) hand,/g,
  /\b(?:hit|struck|touch|nerves of) (?:steel|wood)\b/g,
  /\bsteel(?:ed)? myself\b/g,
  /\b(?:mark my words|question marks?|full marks|top marks|off the mark|near the mark|on your marks?)\b/g,
  /\b(?:screw(?:ed)? (?:up|over|it|that|loose)|a screw loose|nuts and bolts of)\b/g,
  /\bcast (?:an eye|your eye|my eye|aside|doubt|a vote|your mind)\b/g,
  /\bpaint(?:ing)? (?:a|the|me a) picture\b/g,
  /\bin the (?:rough|smooth) (?:part|bit|area|side|patch)\b/g,
  /\bgives? (?:me|you|us|him|her|no)\b/g,
  /\btouch wood\b/g,
  // What somebody polished is no mirror.
  /\b(?:to|like) an? mirror(?: finish| shine)?\b|\bmirror (?:finish|polish\w*|shine)\b/g,
  /\bmilk (?:floats?|bottles?|rounds?|cans?|churns?|man)\b/g,
  // "No mark I can find" says no more of who looked than "no mark" does.
  /(?<=\bno \w+ )(?:that |which )?(?:i|we) (?:can|could) (?:find|see|spot|make out)\b/g,
  // A comparison tells nothing by its object: "white as milk", "smooth as a plum".
  /(?<=\w )as an? (?!matter|result|rule|replacement|spare|pair|set|whole|lot|bit|few|good)(?:\w+ )?\w+/g,
  /(?<=\w )as (?:milk|coal|snow|soot|night|ice|glass|silk|anything|hell|rocks?|iron|houses|ditchwater|pitch|chalk|butter|nails)\b/g,
  // One word between signs is meant otherwise: the "wood" of a printed film. A letter is what a mark shows.
  /(?<=\bthe |\ba |\ban |\bits? |\bthis |\bthird )"[a-z]{2,}"/g,
];

/** Blanks noise and finds quoted lines ("> …"). Linear in the length; the patterns hold bounded repeats only. */
export function blankNoise(shown: string): ReadableText {
  let text = shown;
  // "Give or take 2 mm" says by how much a size may be out.
  text = text.replace(/\bgive or take\b/gi, (found) => "+/-".padEnd(found.length));
  for (const pattern of noise) text = text.replace(pattern, (found) => " ".repeat(found.length));
  const lower = text.replace(/[A-Z]/g, (letter) => letter.toLowerCase());
  for (const pattern of sayings) text = blankWhere(text, lower, pattern);
  const quoted = Array.from(shown.matchAll(/^ ?>.*$/gm), (line) => ({
    start: line.index,
    end: line.index + line[0].length,
  }));
  return { text, quoted };
}

function blankWhere(text: string, lower: string, pattern: RegExp): string {
  let result = text;
  for (const found of lower.matchAll(pattern)) {
    const end = found.index + found[0].length;
    result = result.slice(0, found.index) + " ".repeat(found[0].length) + result.slice(end);
  }
  return result;
}
