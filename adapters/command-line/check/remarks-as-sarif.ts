/**
 * Remarks for editors and build servers: a log in the Static Analysis Results Interchange Format (SARIF) 2.1.0, OASIS Standard,
 * 27 March 2020. Places are relative to where the command runs, as a build server expects of a checked-out tree.
 */
import { type Remark, type Review, reviewRules, type Severity } from "../../../knowledge/index.ts";

/** Section 3.27.10 of the standard: how grave a result is. */
const levels: Readonly<Record<Severity, "error" | "warning" | "note">> = {
  fault: "error",
  doubt: "warning",
  wish: "note",
};

/** `base`: the handbook's folder from the place the command runs in, with forward slashes; "" for the same folder. */
export function remarksAsSarif(base: string, { remarks }: Review): string {
  const codes = [...new Set(remarks.map(({ code }) => code))].toSorted();
  const rules = codes.map((id) => ({
    id,
    shortDescription: { text: Object.hasOwn(reviewRules, id) ? ruleWords(id) : id.replaceAll("-", " ") },
  }));
  const run = {
    tool: { driver: { name: "witness-mark", rules } },
    columnKind: "utf16CodeUnits",
    results: remarks.map((remark) => resultOf(remark, base, codes.indexOf(remark.code))),
  };
  return JSON.stringify({
    $schema: "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
    version: "2.1.0",
    runs: [run],
  });
}

function ruleWords(id: string): string {
  return Object.entries(reviewRules).find(([code]) => code === id)?.[1] ?? id;
}

function resultOf(remark: Remark, base: string, ruleIndex: number): object {
  const { severity, code, file, line, column, message, mend } = remark;
  const path = [base, file === "." ? "" : file].filter((step) => step !== "").join("/");
  const region = file === "." ? {} : { region: { startLine: line, startColumn: column } };
  const artifactLocation = { uri: path.split("/").map(encodeURIComponent).join("/") || "." };
  return {
    ruleId: code,
    ruleIndex,
    level: levels[severity],
    message: { text: `${message} (${mend})` },
    locations: [{ physicalLocation: { artifactLocation, ...region } }],
  };
}
