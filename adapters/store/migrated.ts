/** Runs the migrations to the newest, and says in one line why it could not. */
import type { Migrator } from "kysely/migration";
import { OutsideError } from "../errors.ts";

export async function migrated(migrator: Migrator, place: string): Promise<void> {
  const { error } = await migrator.migrateToLatest();
  if (error === undefined) return;
  if (error instanceof Error && /previously executed migration/u.test(error.message)) {
    throw new OutsideError(
      `store: ${place} was written by a newer version of this program; start that version`,
      error,
    );
  }
  throw error;
}
