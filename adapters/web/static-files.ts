/** The style, the scripts and the mark: read once at the start, sent under addresses that change with their content. */
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import type { Assets } from "./render/page.ts";

interface StaticFile {
  readonly text: string;
  readonly type: string;
}

const folder = new URL("./static/", import.meta.url);
const SCRIPT = "text/javascript; charset=utf-8";

/** By name; nothing else in the folder is ever sent. */
const files: ReadonlyMap<string, StaticFile> = new Map([
  ["styles.css", { type: "text/css; charset=utf-8", text: styles() }],
  ["page.js", { type: SCRIPT, text: read("page.js") }],
  ["embed.js", { type: SCRIPT, text: read("embed.js") }],
  ["mark.svg", { type: "image/svg+xml", text: read("mark.svg") }],
]);

/** The sheets in the order of their numbers, as one. */
function styles(): string {
  return readdirSync(new URL("styles/", folder))
    .toSorted()
    .map((name) => read(`styles/${name}`))
    .join("\n");
}

function read(name: string): string {
  return readFileSync(new URL(name, folder), "utf8");
}

export function staticFile(name: string): StaticFile | undefined {
  return files.get(name);
}

export const assets: Assets = { styles: versioned("styles.css"), script: versioned("page.js") };

function versioned(name: string): string {
  return `/static/${name}?v=${versionOf(name)}`;
}

/** What stands for the content of a file that is there. */
export function versionOf(name: string): string {
  const digest = createHash("sha256")
    .update(files.get(name)?.text ?? "")
    .digest("hex");
  return digest.slice(0, 12);
}
