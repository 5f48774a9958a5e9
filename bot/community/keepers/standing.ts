/** What somebody may do: what the platform vouches for or what they were invited to, whichever is more. */
import { type Standing, standings } from "../../message.ts";
import type { Keepers } from "./keepers-record.ts";

/** A member of whom the platform says nothing may contribute: what they record waits for a keeper anyway. */
export const usualStanding: Standing = "contributor";

export function standingOf({ roles }: Keepers, person: string, vouched: Standing = usualStanding): Standing {
  const role = roles.find((one) => one.person === person)?.standing ?? vouched;
  return reaches(role, vouched) ? role : vouched;
}

/** Whether `standing` is `needed` or more. */
export function reaches(standing: Standing, needed: Standing): boolean {
  return standings.indexOf(standing) >= standings.indexOf(needed);
}
