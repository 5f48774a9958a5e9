/** Sentences around a keeper's pinned answer. */

export function pinnedLead(author: string, date: string): string {
  return `Pinned answer by ${author}, ${date}:`;
}
