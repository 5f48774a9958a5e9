/**
 * The server's own secret, by which serial numbers are recognised and invitations made. It lies beside the data and not in it, so that a
 * copy of the database alone gives no serial away; several processes on one database are given the same by SECRET_KEY.
 */
import { randomBytes } from "node:crypto";
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { dirname } from "node:path";
import { OutsideError } from "./errors.ts";

const SHORTEST = 32;

/** A secret for as long as the process lives. */
export function freshSecret(): string {
  return randomBytes(32).toString("base64url");
}

/** The secret in a file, which is made when there is none; only its owner can read it. Throws OutsideError. */
export async function secretKeyIn(file: string): Promise<string> {
  try {
    await mkdir(dirname(file), { recursive: true });
    // Of two processes that begin together one makes the file, and both read it.
    await writeFile(file, `${freshSecret()}\n`, { flag: "wx", mode: 0o600 }).catch(unlessThere);
    const secret = (await readFile(file, "utf8")).trim();
    if (secret.length >= SHORTEST) return secret;
  } catch (failure) {
    throw new OutsideError(`secret key: ${file} cannot be read or made`, failure);
  }
  throw new OutsideError(
    `secret key: ${file} holds fewer than ${SHORTEST} characters; restore it, or remove it to begin anew`,
  );
}

function unlessThere(failure: unknown): void {
  const isThere = failure instanceof Error && "code" in failure && failure.code === "EEXIST";
  if (!isThere) throw failure;
}
