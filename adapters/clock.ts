/** The system's clock behind the bot's port: today as a calendar interval, in universal time so that hosts agree. */
import type { Clock } from "../bot/index.ts";

/** A clock that asks `now` (milliseconds since 1970) each time; a day is its fraction of the month. */
export function systemClock(now: () => number = Date.now): Clock {
  return {
    milliseconds: now,
    today() {
      const date = new Date(now());
      const year = date.getUTCFullYear();
      const month = date.getUTCMonth();
      const daysInMonth = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
      const from = 12 * year + month + (date.getUTCDate() - 1) / daysInMonth;
      return { from, to: from + 1 / daysInMonth };
    },
  };
}
