// What `check --sarif` writes, held against the published schema of SARIF 2.1.0.
import { describe, expect, test } from "vitest";
import { remarksAsSarif } from "../../../adapters/command-line/check/remarks-as-sarif.ts";
import { reviewHandbook } from "../../../knowledge/index.ts";
import { carelessHandbooks } from "../../knowledge/review/careless-handbooks.ts";
import { carefulFiles, carefulHandbook } from "../../support/careful-handbook.ts";
import { againstSchema } from "../../support/published-schema.ts";

const faultsOf = againstSchema("sarif-2.1.0-rtm.5");
const logOf = (base: string, replaced: Readonly<Record<string, string>> = {}, lost = "") =>
  JSON.parse(
    remarksAsSarif(base, reviewHandbook(carefulFiles(replaced).filter(({ path }) => path !== lost))),
  );

describe("a SARIF log is sound by the schema", () => {
  test("of a handbook without a remark, in this folder, beside it and under a name with blanks and accents", () => {
    for (const base of ["", "../tarn", "vieux papiers/été & co"]) expect(faultsOf(logOf(base))).toEqual([]);
  });

  test("of every careless handbook, whatever is remarked on", () => {
    const codes = new Set<string>();
    for (const { file, from, to, besides = [] } of carelessHandbooks) {
      const changed = (carefulHandbook[file] ?? "").replace(from, () => to);
      const text = besides.reduce((spoilt, [old, put]) => spoilt.replace(old, () => put), changed);
      const log = logOf("handbooks/été", { [file]: text });
      expect(faultsOf(log), from).toEqual([]);
      for (const { ruleId } of log.runs[0].results) codes.add(ruleId);
    }
    expect(codes.size).toBeGreaterThan(30);
  });

  test("of one that does not load: a file that is missing, one that is no YAML, one that is no text", () => {
    const lost = logOf("tarn", {}, "cars.yaml");
    expect(lost.runs[0].results[0].level).toBe("error");
    for (const log of [
      lost,
      logOf("tarn", { "sources.yaml": "sources: [" }),
      logOf("tarn", { "cars.yaml": "a: \u0000" }),
      logOf("", {}, "parts/door-handle.yaml"),
    ]) {
      expect(faultsOf(log)).toEqual([]);
    }
  });

  test("and one that is not is refused by it", () => {
    const log = logOf("tarn", {}, "cars.yaml");
    const [run] = log.runs;
    const [result] = run.results;
    const spoilt = (changed: object) => ({
      ...log,
      runs: [{ ...run, results: [{ ...result, ...changed }] }],
    });
    const location = { physicalLocation: { artifactLocation: { uri: "old papers" } } };
    for (const changed of [{ level: "fault" }, { message: {} }, { line: 3 }, { locations: [location] }]) {
      expect(faultsOf(spoilt(changed))).not.toEqual([]);
    }
    expect(faultsOf({ ...log, version: "2.0.0" })).not.toEqual([]);
  });
});
