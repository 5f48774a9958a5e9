/** Tells Discord our commands, and only when they differ from those it knows: it allows few such calls a day. */
import { type REST, Routes } from "discord.js";
import { commandBodies } from "./commands.ts";

/** True when they had to be told. */
export async function registerCommands(rest: REST, application: string): Promise<boolean> {
  const wanted = commandBodies();
  const known = await rest.get(Routes.applicationCommands(application));
  if (fingerprint(known) === fingerprint(wanted)) return false;
  await rest.put(Routes.applicationCommands(application), { body: wanted });
  return true;
}

const fields = [
  "type",
  "name",
  "description",
  "required",
  "autocomplete",
  "max_length",
  "choices",
  "options",
  "value",
  "contexts",
  "default_member_permissions",
] as const;

/** Only what we say, in one order: Discord adds fields of its own and leaves out what is usual. */
function fingerprint(commands: unknown): string {
  const list = Array.isArray(commands) ? commands.map(told) : [];
  return JSON.stringify(list.map((one) => JSON.stringify(one)).sort());
}

function told(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(told);
  if (typeof value !== "object" || value === null) return value;
  const record: Readonly<Record<string, unknown>> = { ...value };
  return fields.flatMap((field) => {
    const one = record[field];
    const isUsual = one === undefined || one === null || one === false || one === "" || isEmptyList(one);
    return isUsual ? [] : [[field, told(one)]];
  });
}

function isEmptyList(value: unknown): boolean {
  return Array.isArray(value) && value.length === 0;
}
