/** A moment as a day in words, in universal time so that every host writes the same. */

const months = [
  "January",
  "February",
  "March",
  "April",
  "May",
  "June",
  "July",
  "August",
  "September",
  "October",
  "November",
  "December",
] as const;

/** "25 November 2026". */
export function dayWords(milliseconds: number): string {
  const date = new Date(milliseconds);
  return `${date.getUTCDate()} ${months[date.getUTCMonth()] ?? ""} ${date.getUTCFullYear()}`;
}
