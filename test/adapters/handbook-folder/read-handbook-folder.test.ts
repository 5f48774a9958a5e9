import { chmod, mkdir, mkdtemp, rm, symlink, truncate, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { loadHandbookFolder, readHandbookFolder } from "../../../adapters/handbook-folder/index.ts";
import { handbookLimits, loadHandbook, problemText } from "../../../knowledge/index.ts";
import { minimalFiles } from "../../support/minimal-handbook.ts";

let base = "";
let folder = "";

beforeEach(async () => {
  base = await mkdtemp(join(tmpdir(), "handbook-"));
  folder = join(base, "wexcombe");
  for (const { path, text } of minimalFiles()) await put(path, text);
});
afterEach(async () => {
  await rm(base, { recursive: true, force: true });
});

async function put(path: string, content: string | Uint8Array): Promise<void> {
  await mkdir(dirname(join(folder, path)), { recursive: true });
  await writeFile(join(folder, path), content);
}

async function problemsIn(path: string): Promise<readonly string[]> {
  const reading = await readHandbookFolder(path);
  return reading.ok ? [] : reading.problems.map(({ file, code }) => `${file} ${code}`);
}

describe("a handbook folder", () => {
  test("is read by path and is the handbook that its texts make", async () => {
    const loaded = await loadHandbookFolder(folder);
    expect(loaded.ok ? loaded.warnings : loaded.problems).toEqual([]);
    expect(loaded).toEqual(loadHandbook(minimalFiles()));
  });

  test("may hold a README, a licence and hidden files, none of which is read", async () => {
    await put("README.md", Uint8Array.of(0xff));
    await put("LICENSE", "do as you like");
    await put(".git/HEAD", "ref");
    await put("parts/.swap", "x");
    expect(await problemsIn(folder)).toEqual([]);
  });

  test("may hold links that stay inside it", async () => {
    await put(".kept/other.svg", minimalFiles().at(-1)?.text ?? "");
    await symlink("../.kept/other.svg", join(folder, "drawings/other.svg"));
    const reading = await readHandbookFolder(folder);
    expect(reading.ok && reading.files.map(({ path }) => path)).toContain("drawings/other.svg");
  });
});

describe("a folder that cannot be read is told with its name and what to do", () => {
  test("one that does not exist", async () => {
    const missing = join(base, "nowhere");
    const reading = await readHandbookFolder(missing);
    const [problem] = reading.ok ? [] : reading.problems;
    expect(problem?.code).toBe("folder-missing");
    expect(problem && problemText(problem)).toBe(
      `the handbook folder ${missing} does not exist … check the path: it must be the folder that holds handbook.yaml`,
    );
  });

  test("one that is a file", async () => {
    expect(await problemsIn(join(folder, "cars.yaml"))).toEqual([". folder-unreadable"]);
  });

  test("one that goes round in a circle", async () => {
    await symlink("circle", join(base, "circle"));
    expect(await problemsIn(join(base, "circle"))).toEqual([". folder-unreadable"]);
  });
});

describe("files are refused before they are opened when", () => {
  test("they have no place in a handbook", async () => {
    await put("notes.txt", "x");
    await put("parts/door-mirror.yml", "x");
    await put("pictures/foot.png", "x");
    expect(await problemsIn(folder)).toEqual([
      "notes.txt file-unknown",
      "parts/door-mirror.yml file-unknown",
      "pictures file-unknown",
    ]);
  });

  test("they are links that leave the folder", async () => {
    await writeFile(join(base, "secret.yaml"), "id: secret");
    await symlink("../../secret.yaml", join(folder, "parts/secret.yaml"));
    expect(await problemsIn(folder)).toEqual(["parts/secret.yaml file-path"]);
  });

  test("their folder is a link that leaves the folder", async () => {
    await mkdir(join(base, "elsewhere"));
    await rm(join(folder, "drawings"), { recursive: true });
    await symlink("../elsewhere", join(folder, "drawings"));
    expect(await problemsIn(folder)).toEqual(["drawings file-unknown"]);
  });

  test("they are links to nothing", async () => {
    await symlink("gone.yaml", join(folder, "parts/lost.yaml"));
    expect(await problemsIn(folder)).toEqual(["parts/lost.yaml folder-unreadable"]);
  });

  test("one is over its limit, even if nothing was ever written to it", async () => {
    await put("parts/huge.yaml", "");
    await truncate(join(folder, "parts/huge.yaml"), 5_000_000_000);
    expect(await problemsIn(folder)).toEqual(["parts/huge.yaml file-too-large"]);
  });

  test("together they are over the limit", async () => {
    for (let index = 0; index < 11; index++) {
      await put(`parts/p${index}.yaml`, "");
      await truncate(join(folder, `parts/p${index}.yaml`), handbookLimits.fileBytes);
    }
    expect(await problemsIn(folder)).toEqual([". folder-too-large"]);
  });

  test("there are too many", async () => {
    for (let index = 0; index < 501; index++) await put(`parts/p${index}.yaml`, "x");
    expect(await problemsIn(folder)).toEqual([". too-many-files"]);
  });
});

test("a file that is not UTF-8 is refused", async () => {
  await put("parts/latin.yaml", Uint8Array.from([0x69, 0x64, 0x3a, 0x20, 0xe9, 0x0a]));
  expect(await problemsIn(folder)).toEqual(["parts/latin.yaml file-not-text"]);
});

test.skipIf(process.getuid?.() === 0)("a file that may not be read is refused", async () => {
  await chmod(join(folder, "cars.yaml"), 0o000);
  expect(await problemsIn(folder)).toEqual(["cars.yaml folder-unreadable"]);
});
