import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { commandLine, newFolder, root, run } from "../program.ts";

const answers = [
  "wireless set",
  "Quill Nightingale",
  "1936-09",
  "1930",
  "1951",
  "",
  "dial glass",
  "amber glass",
  "",
  "1947-03",
  "amber glass",
  "clear glass",
  "",
  "1951",
  "colour of the glass",
  "What colour is the dial glass?",
  "Look.",
  "Look at it with the set switched off, against white paper.",
  "amber",
  "clear",
  "Eleven sets seen by the society, 2019",
  "E",
  "",
];

test("a handbook is begun from a few answers, sound and without a doubt, and wrong answers are asked for again", async () => {
  const folder = newFolder();
  const { status, out, err } = await run(
    commandLine,
    ["new", "--folder", "quill"],
    `${answers.join("\n")}\n`,
    {
      folder,
    },
  );
  expect({ status, err }).toEqual({ status: 0, err: "" });
  expect(out).toContain("(that is before 1936-09) And the last one?");
  expect(out).toContain("(that is the same as the other) The later version");
  expect(out).toContain("(a few more words, so that another can follow) How does one look");
  expect(out).toContain("(one of A, B, C, D is needed)");
  expect(out).toMatch(
    /Quill Nightingale: sound, edition [0-9a-f]{64}, 1 part kind, 2 variants; 0 faults, 0 doubts, 0 wishes/u,
  );
  const talked = await run(
    commandLine,
    ["chat", "--handbook", "quill"],
    "which dial glass is this? it is amber\n",
    {
      folder,
    },
  );
  expect(talked.out).toMatch(/amber glass {2}(very |extremely )?likely/u);
  expect(talked.out).toMatch(/right for your wireless\s+set/u);
});

test("the guide says how many questions there are", () => {
  const wrong = ["1930", "amber glass", "Look.", "E"];
  expect(answers.length - wrong.length).toBe(19);
  expect(readFileSync(join(root, "knowledge/handbooks/guide.md"), "utf8")).toContain(
    "asks nineteen and writes the files",
  );
});

test("two versions whose names make one id are still two", async () => {
  const folder = newFolder();
  const twins = answers.map((answer, index) => (index === 7 ? "Mk 1" : index === 11 ? "Mk-1" : answer));
  const { status, out } = await run(commandLine, ["new", "--folder", "quill"], `${twins.join("\n")}\n`, {
    folder,
  });
  expect(status).toBe(0);
  expect(out).toContain("1 part kind, 2 variants; 0 faults");
});

test("answers that end too soon leave nothing behind", async () => {
  const folder = newFolder();
  const { status, err } = await run(commandLine, ["new", "--folder", "x"], "car\nTarn\n", { folder });
  expect({ status, err }).toEqual({ status: 2, err: "new: the answers ended too soon; nothing written\n" });
  expect(existsSync(join(folder, "x"))).toBe(false);
});

test("the example is the smallest handbook, wired for editors; a folder that is not empty is left alone", async () => {
  const folder = newFolder();
  const made = await run(commandLine, ["new", "--folder", "wren", "--example"], "", { folder });
  expect(made.status).toBe(0);
  const file = (path: string) => readFileSync(join(folder, "wren", path), "utf8");
  const original = readFileSync(join(root, "knowledge/handbooks/marlpit-wren/cars.yaml"), "utf8");
  expect(file("cars.yaml")).toBe(`# yaml-language-server: $schema=.schemas/cars.schema.json\n${original}`);
  expect(file("parts/window-catch.yaml").split("\n")[0]).toBe(
    "# yaml-language-server: $schema=../.schemas/part.schema.json",
  );
  const settings = JSON.parse(file(".vscode/settings.json"));
  expect(settings["yaml.schemas"][".schemas/part.schema.json"]).toBe("parts/*.yaml");
  expect((await run(commandLine, ["check", "--handbook", "wren", "--strict"], "", { folder })).status).toBe(
    0,
  );
  expect((await run(commandLine, ["new", "--folder", "wren", "--example"], "", { folder })).err).toBe(
    "wren: is not empty; name a new folder\n",
  );
});

test("what somebody has set in an editor stays beside the schemas, or is left alone where it is no plain JSON", async () => {
  const folder = newFolder();
  mkdirSync(join(folder, ".vscode"));
  const settings = join(folder, ".vscode/settings.json");
  writeFileSync(join(folder, ".editorconfig"), "root = true\n");
  writeFileSync(settings, '{ "editor.rulers": [80], "yaml.schemas": { "own.json": "own.yaml" } }');
  const { out } = await run(commandLine, ["schema", "--into", "."], "", { folder });
  expect(out).not.toContain(".editorconfig");
  expect(readFileSync(join(folder, ".editorconfig"), "utf8")).toBe("root = true\n");
  expect(JSON.parse(readFileSync(settings, "utf8"))).toMatchObject({
    "editor.rulers": [80],
    "yaml.schemas": { "own.json": "own.yaml", ".schemas/cars.schema.json": "cars.yaml" },
  });
  for (const own of ["{ // mine\n}", "[]"]) {
    writeFileSync(settings, own);
    const left = await run(commandLine, ["schema", "--into", "."], "", { folder });
    expect(left.out).toContain(
      'left as it is: ./.vscode/settings.json: is no plain JSON; put into it {"yaml.schemas":',
    );
    expect(readFileSync(settings, "utf8")).toBe(own);
  }
});

test("the schemas that editors get accept every shipped handbook and refuse a misspelt key", async () => {
  const folder = newFolder();
  expect((await run(commandLine, ["schema", "--into", "."], "", { folder })).status).toBe(0);
  const schema = JSON.parse(readFileSync(join(folder, ".schemas/part.schema.json"), "utf8"));
  const accepts = new Ajv2020({ strict: false }).compile(schema);
  for (const part of [
    "marlpit-wren/parts/window-catch",
    "ollerton-finch/parts/face-plate",
    "wexcombe-shrike/parts/door-mirror",
  ]) {
    const value = parse(readFileSync(join(root, `knowledge/handbooks/${part}.yaml`), "utf8"));
    expect({ part, errors: accepts(value) ? [] : accepts.errors }).toEqual({ part, errors: [] });
    expect(accepts({ ...value, sumary: "x" })).toBe(false);
  }
});
