// `witness-mark store`: what is kept is checked, carried away and put back from the command line, beside a program that serves.
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { newPostgresDatabase } from "../../support/postgres-database.ts";
import { commandLine, mainProgram, newFolder, run, start } from "../program.ts";

let database = "";
beforeAll(async () => {
  database = await newPostgresDatabase();
});

const said = (id: string, text: string) => `${JSON.stringify({ from: "u1", id, text })}\n`;

test("a backup of a file goes into the database of a program that serves, and out again the same", async () => {
  const folder = newFolder();
  const environment = { DATABASE_URL: database, PORT: "0" };
  const store = (...words: string[]) => run(commandLine, ["store", ...words], "", { folder, environment });
  await run(
    commandLine,
    ["converse", "--json", "--store", "kept.sqlite"],
    said("m1", "rear spoiler") + said("m2", "rough inside"),
    { folder },
  );
  const serving = start(mainProgram, [], { folder, environment });
  await serving.lines(2);

  expect(await store("backup", "one.jsonl", "--store", "kept.sqlite")).toMatchObject({
    status: 0,
    out: "one.jsonl: 4 versions of kept.sqlite\n",
  });
  const place = `postgres at 127.0.0.1:${new URL(database).port}${new URL(database).pathname}`;
  // The program that serves has noted its handbook's edition already.
  const restored = await store("restore", "one.jsonl", "--replace");
  expect(restored).toMatchObject({
    status: 0,
    out: `${place}: 3 records, 4 versions put back from one.jsonl\n`,
  });
  expect(await store("check")).toMatchObject({ status: 0, out: `${place}: sound, 3 records, 4 versions\n` });
  expect(await store("restore", "one.jsonl")).toMatchObject({
    status: 2,
    out: "",
    err: `store: ${place} holds something already; back it up, then use --replace to put the backup in its place\n`,
  });
  expect(await store("restore", "one.jsonl", "--replace")).toMatchObject({ status: 0 });
  expect(await store("backup", "two.jsonl")).toMatchObject({ status: 0 });
  expect(readFileSync(join(folder, "two.jsonl"), "utf8")).toBe(
    readFileSync(join(folder, "one.jsonl"), "utf8"),
  );

  serving.process.kill("SIGTERM");
  expect((await serving.ended).status).toBe(0);
});

test("what cannot be done is said in one line with status 2, and leaves nothing half-written", async () => {
  const folder = newFolder();
  writeFileSync(join(folder, "letter"), "dear diary\n");
  const store = (...words: string[]) => run(commandLine, ["store", ...words], "", { folder });
  expect(await store("restore", "missing.jsonl", "--store", "new.sqlite")).toMatchObject({
    status: 2,
    err: "backup: missing.jsonl cannot be read (ENOENT)\n",
  });
  expect(await store("restore", "letter", "--store", "new.sqlite")).toMatchObject({
    status: 2,
    err: "backup: letter is no backup of this program\n",
  });
  expect(await store("backup", "no/such/folder.jsonl", "--store", "new.sqlite")).toMatchObject({
    status: 2,
    err: "backup: no/such/folder.jsonl cannot be written (ENOENT)\n",
  });
  expect(await store("check", "--store", "letter")).toMatchObject({
    status: 2,
    err: "store: letter is no store of this program, or is damaged; name another file, or put a backup back\n",
  });
});
