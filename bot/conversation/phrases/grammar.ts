/** The small grammar that every sentence shares: lists, capitals, plurals. English only, and without the locale. */

/** "a", "a and b", "a, b and c"; empty for an empty list. */
export function listed(items: readonly string[], joint = "and"): string {
  const last = items.at(-1);
  if (last === undefined) return "";
  if (items.length === 1) return last;
  return `${items.slice(0, -1).join(", ")} ${joint} ${last}`;
}

/** The text with its first letter as a capital. */
export function capitalised(text: string): string {
  return text.slice(0, 1).toUpperCase() + text.slice(1);
}

/** A sentence from a clause: a capital first, one full stop last. */
export function sentence(clause: string): string {
  const trimmed = clause.trim();
  return /[.?!:]$/.test(trimmed) ? capitalised(trimmed) : `${capitalised(trimmed)}.`;
}

/** The words with a full stop last, unless they end a sentence as they are. */
export function ended(words: string): string {
  return /[.?!…]$/u.test(words) ? words : `${words}.`;
}

/** "1 look", "3 looks". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

const smallNumbers = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** The number in words up to ten, in figures beyond. */
export function numberInWords(count: number): string {
  return smallNumbers[count] ?? String(count);
}

/** A quotation of somebody's words, shortened so that nobody's long message comes back whole. */
export function quoted(words: string, longest = 60): string {
  const flat = words.replace(/\s+/g, " ").trim();
  if (flat.length <= longest) return `“${flat}”`;
  // Never half of a character that two units stand for.
  const begun = flat.slice(0, longest - 1).replace(/\p{Surrogate}$/u, "");
  return `“${begun.trimEnd()}…”`;
}

/** "the first-type mirror"; a name that brings its own article keeps it. */
export function withThe(name: string): string {
  return /^(the|a|an) /i.test(name) ? name : `the ${name}`;
}
