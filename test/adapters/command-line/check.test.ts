import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { carefulHandbook } from "../../support/careful-handbook.ts";
import { commandLine, newFolder, run } from "../program.ts";

function folderWith(replaced: Readonly<Record<string, string>> = {}): string {
  const folder = newFolder();
  for (const [path, text] of Object.entries({ ...carefulHandbook, ...replaced })) {
    mkdirSync(dirname(join(folder, "tarn", path)), { recursive: true });
    writeFileSync(join(folder, "tarn", path), text);
  }
  return folder;
}

const doubtful = {
  "cars.yaml": (carefulHandbook["cars.yaml"] ?? "").replace("built: 1978-06", "built: 1988-06"),
};
const broken = { "cars.yaml": (carefulHandbook["cars.yaml"] ?? "").replace("built: 1978-06", "built: June") };

test("a careful handbook is sound, and the last line counts nothing", async () => {
  const { status, out, err } = await run(commandLine, ["check", "--handbook", "tarn", "--strict"], "", {
    folder: folderWith(),
  });
  expect({ status, err }).toEqual({ status: 0, err: "" });
  expect(out).toMatch(
    /^Tarn handle book: sound, edition [0-9a-f]{64}, 1 part kind, 4 variants; 0 faults, 0 doubts, 0 wishes\n$/u,
  );
});

test("a doubt has its place and its mending, and ends with status 2 only when asked to be strict", async () => {
  const folder = folderWith(doubtful);
  const mild = await run(commandLine, ["check", "--handbook", "tarn"], "", { folder });
  expect(mild.status).toBe(0);
  expect(mild.out.split("\n").slice(0, 2)).toEqual([
    "cars.yaml:25:29  doubt  serial 500 was built 1988-06, when no model was made",
    "    → correct the date, or the years of the models",
  ]);
  const strict = await run(commandLine, ["check", "--handbook", "tarn", "--strict"], "", { folder });
  expect(strict).toMatchObject({ status: 2, out: mild.out, err: "handbook tarn: 1 in doubt\n" });
});

test("a fault ends with status 2, and scripts get it as JSON", async () => {
  const { status, out, err } = await run(commandLine, ["check", "--handbook", "tarn", "--json"], "", {
    folder: folderWith(broken),
  });
  expect({ status, err }).toEqual({ status: 2, err: "handbook tarn: 1 to mend\n" });
  expect(JSON.parse(out)).toMatchObject({
    handbook: null,
    sound: false,
    counts: { fault: 1, doubt: 0, wish: 0 },
    remarks: [{ severity: "fault", code: "value-date", file: "cars.yaml", line: 25, column: 29 }],
  });
});

test("an editor gets a SARIF 2.1.0 log with places relative to where the command runs", async () => {
  const { status, out } = await run(commandLine, ["check", "--handbook", "tarn", "--sarif"], "", {
    folder: folderWith(doubtful),
  });
  expect(status).toBe(0);
  const log = JSON.parse(out);
  expect(log.version).toBe("2.1.0");
  const [only] = log.runs;
  expect(only.tool.driver.rules).toEqual([
    { id: "built-outside-production", shortDescription: { text: "a serial built outside of production" } },
  ]);
  expect(only.results).toEqual([
    {
      ruleId: "built-outside-production",
      ruleIndex: 0,
      level: "warning",
      message: {
        text: "serial 500 was built 1988-06, when no model was made (correct the date, or the years of the models)",
      },
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: "tarn/cars.yaml" },
            region: { startLine: 25, startColumn: 29 },
          },
        },
      ],
    },
  ]);
});

test("a folder that is not there is a fault without a place", async () => {
  const { status, out } = await run(commandLine, ["check", "--handbook", "nowhere"]);
  expect(status).toBe(2);
  expect(out).toMatch(/^fault {2}the handbook folder nowhere does not exist\n {4}→ check the path/u);
});
