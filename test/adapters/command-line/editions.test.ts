import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test, vi } from "vitest";
import { writeHandbookFiles } from "../../../adapters/handbook-folder/index.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { commandLine, mainProgram, newFolder, run, start } from "../program.ts";

const handle = "parts/door-handle.yaml";
const yaml = carefulHandbook[handle] ?? "";
const words = "The Length of the Round handle is now 121 ± 0.5 mm; until now 120 ± 0.5 mm.";

test("what changed between two folders is said in words, without a store", async () => {
  const folder = newFolder();
  await writeHandbookFiles(join(folder, "old"), carefulFiles());
  await writeHandbookFiles(
    join(folder, "new"),
    carefulFiles({ [handle]: yaml.replace("mean: 120", "mean: 121") }),
  );
  const changed = await run(commandLine, ["editions", "--old", "old", "--new", "new"], "", { folder });
  expect(changed).toMatchObject({ status: 0, out: `${words}\n`, err: "" });
  const same = await run(commandLine, ["editions", "--old", "old", "--new", "old"], "", { folder });
  expect(same.out).toBe("Nothing that is said has changed.\n");
  expect((await run(commandLine, ["editions", "--old", "old"], "", { folder })).err).toMatch(
    /^witness-mark editions: --old and --new belong together\n/u,
  );
});

test("a service that runs takes a changed handbook, refuses a broken one, and its history tells of both", async () => {
  const folder = newFolder();
  const book = join(folder, "tarn");
  await writeHandbookFiles(book, carefulFiles());
  const environment = { HANDBOOKS: book, DATA_DIR: join(folder, "data"), PORT: "0" };
  const service = start(mainProgram, [], { folder, environment });
  const history = async () => (await run(commandLine, ["editions"], "", { folder, environment })).out;
  const until = async (text: string) => {
    await vi.waitFor(async () => expect(await history()).toContain(text), { timeout: 40_000, interval: 300 });
  };
  try {
    await service.lines(2);
    writeFileSync(join(book, handle), yaml.replace("mean: 120", "mean: 121"));
    await until(`\n  ${words}\n`);
    writeFileSync(join(book, handle), yaml.replace("mean: 120", "maen: 120"));
    await until("refused");
  } finally {
    service.process.kill("SIGTERM");
  }
  expect((await service.ended).status).toBe(0);
  const told = await history();
  expect(told).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d {2}Tarn handle book, edition [0-9a-f]{8} taken\n/u);
  expect(told).toContain('unknown key "maen" … did you mean "mean"?');
  const [first = "", second = ""] = [...told.matchAll(/edition ([0-9a-f]{8}) taken/gu)].map(
    ([, edition]) => edition,
  );
  const between = await run(commandLine, ["editions", "--old", first, "--new", second], "", {
    folder,
    environment,
  });
  expect(between.out).toBe(`${words}\n`);
  const unknown = await run(commandLine, ["editions", "--old", "00000000", "--new", second], "", {
    folder,
    environment,
  });
  expect(unknown).toMatchObject({ status: 2 });
  expect(unknown.err).toContain("has not served from this store");
});
