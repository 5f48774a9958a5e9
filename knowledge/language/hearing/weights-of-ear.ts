// The weights of an ear out of their text, read in one pass: splitting it first took three times as long, and a handbook's words
// stand between the first message and its answer.

/** Calls `hear` with the place of each word and its weight in nats, in order. `weights`: as the schema has it. */
export function eachWeight(weights: string, hear: (word: number, weight: number) => void): void {
  let word = 0;
  let figures = 0;
  let sign = 1;
  let isWord = true;
  for (let at = 0; at < weights.length + 1; at += 1) {
    const unit = weights.charCodeAt(at);
    if (unit >= zero) figures = figures * 10 + unit - zero;
    else if (unit === minus) sign = -1;
    else {
      if (isWord) word += figures;
      else hear(word, (sign * figures) / 100);
      isWord = !isWord;
      figures = 0;
      sign = 1;
    }
  }
}

const zero = 48;
const minus = 45;
