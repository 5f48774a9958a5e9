// The programs of a run and who speaks to them.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Chance } from "../support/random-tables.ts";
import type { Role } from "./errands.ts";
import { type Program, programOf } from "./program.ts";
import type { Scenario } from "./run.ts";
import type { Speaker } from "./speaker.ts";
import { forumSpeaker, webSpeaker } from "./web-speakers.ts";

export const forums = Array.from({ length: 12 }, (_, index) => `forum${index}`);

type Variables = Readonly<Record<string, string>>;

/** Not yet started. */
export async function programsOf(
  { processes, doors, discordInAll, profiles }: Scenario,
  {
    folder,
    shared,
    discord,
  }: { readonly folder: string; readonly shared: Variables; readonly discord: Variables },
): Promise<readonly Program[]> {
  const programs: Program[] = [];
  for (let index = 0; index < processes; index += 1) {
    const data = join(folder, `data${index}`);
    mkdirSync(data, { recursive: true });
    const isOnDiscord = doors.includes("discord") && (index === 0 || discordInAll);
    const environment = { ...shared, DATA_DIR: data, ...(isOnDiscord ? discord : {}) };
    programs.push(await programOf(environment, join(folder, `clock${index}`), profiles));
  }
  return programs;
}

export interface Peopled {
  readonly speaker: Speaker;
  readonly role: Role;
}

interface Surrounded {
  readonly programs: readonly Program[];
  readonly secret: string;
  readonly members: Readonly<Record<"discord" | "telegram", (role: Role) => Speaker>>;
  readonly chance: Chance;
}

/** Starts the programs in between: servers must be there before they log in, and visitors need them. */
export async function speakersOf(
  { conversations, doors }: Scenario,
  { programs, secret, members, chance }: Surrounded,
): Promise<readonly Peopled[]> {
  const plans = Array.from({ length: conversations }, (_, index) => {
    const door = doors[index % doors.length] ?? "web";
    const role = roleOf(index, chance());
    return {
      index,
      door,
      role,
      speaker: door in members ? members[door as keyof typeof members](role) : undefined,
    };
  });
  for (const program of programs) await program.start();
  const speakers: Peopled[] = [];
  for (const { index, door, role, speaker } of plans) {
    const address = programs[index % programs.length]?.address ?? "";
    // Who comes by a page or a forum is not known to have a standing there.
    if (speaker !== undefined) speakers.push({ speaker, role });
    else if (door === "web") speakers.push({ speaker: await webSpeaker(address, index), role: "asker" });
    else {
      const forum = forums[index % forums.length] ?? "";
      speakers.push({ speaker: forumSpeaker(address, forum, secret, index), role: "asker" });
    }
  }
  return speakers;
}

/** One in ten records what they saw, one in fifty is a keeper. */
function roleOf(index: number, luck: number): Role {
  if (index % 50 < 2) return "keeper";
  return luck < 0.1 ? "observer" : "asker";
}
