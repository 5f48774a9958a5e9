// The reader of messages, the loader of handbooks, and what is imported: spreadsheets and lists of sightings.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { demonstrationHandbook } from "../../adapters/configuration.ts";
import { OutsideError } from "../../adapters/errors.ts";
import { readHandbookFolder } from "../../adapters/handbook-folder/index.ts";
import { readSheets, writeSheets } from "../../adapters/spreadsheets/index.ts";
import { emptyConversation, knowledgeOf, readConversation, step } from "../../bot/index.ts";
import {
  applyTables,
  type Handbook,
  type HandbookFile,
  loadHandbook,
  parseSightings,
  readTable,
  reviewHandbook,
  tableOfPart,
} from "../../knowledge/index.ts";
import { annotatedMessages } from "../support/corpus-folder.ts";
import { demoKnowledge, demoToday } from "../support/demo-knowledge.ts";
import { pick } from "../support/draws.ts";
import { hostileMessages } from "../support/hostile-messages.ts";
import { brokenBytes, brokenText, madeText } from "./pieces.ts";
import { shown, type Target, timedWork } from "./target.ts";

const nothingOpen = async () => undefined;

/** The small ones twice: they take a tenth of the time. */
const SHIPPED = ["wexcombe-shrike", "marlpit-wren", "ollerton-finch", "marlpit-wren", "ollerton-finch"];

async function filesOf(name: string) {
  const read = await readHandbookFolder(join(demonstrationHandbook, "..", name));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.files;
}

export const messages: Target = {
  name: "messages",
  about: "words and pressed answers through the whole turn, four after another",
  async open() {
    const draw = hostileMessages(
      demoKnowledge().handbook,
      annotatedMessages("development").map(({ text }) => text),
    );
    return {
      close: nothingOpen,
      attempt(chance) {
        let conversation = emptyConversation;
        for (let turn = 0; turn < 4; turn += 1) {
          const message = draw(chance);
          const before = conversation;
          const { result: taken, slow } = timedWork(() => step(demoKnowledge(), before, message, demoToday));
          if (slow !== undefined) return `${slow}: ${shown(message)}`;
          if (taken.reply.blocks.length === 0) return `no answer to ${shown(message)}`;
          const back = readConversation(JSON.parse(JSON.stringify(taken.conversation)));
          if (back === undefined) return `the conversation does not come back after ${shown(message)}`;
          conversation = taken.conversation;
        }
        return undefined;
      },
    };
  },
};

export const handbooks: Target = {
  name: "handbooks",
  about:
    "a handbook that is shipped with one of its files broken, loaded and, when it is sound, criticised and asked",
  async open() {
    const shipped = await Promise.all(SHIPPED.map(filesOf));
    return {
      close: nothingOpen,
      attempt(chance) {
        const files = pick(chance, shipped);
        const readable = files.filter(({ path }) => path.endsWith(".yaml"));
        const file = pick(chance, readable);
        const text = brokenText(chance, file.text, pick(chance, readable).text);
        const given = files.map((one) => (one === file ? { ...file, text } : one));
        const { result: loaded, slow } = timedWork(() => loadHandbook(given));
        if (slow !== undefined) return `${slow}: ${file.path} as ${shown(text)}`;
        if (loaded.ok) {
          criticised(given, loaded.handbook);
          return undefined;
        }
        const isPlaced = loaded.problems.every(
          ({ file: path, line, column }) => path !== "" && line >= 1 && column >= 1,
        );
        return isPlaced && loaded.problems.length > 0
          ? undefined
          : `a problem without a place in ${shown(text)}`;
      },
    };
  },
};

/** What it would throw at is no sound handbook. */
function criticised(files: readonly HandbookFile[], handbook: Handbook): void {
  if (handbook.parts.length < 3) reviewHandbook(files);
  const knowledge = knowledgeOf(handbook);
  for (const { name } of handbook.parts) {
    const said = {
      conversation: "c",
      from: "u",
      text: `which ${name} is this? rough inside, built may 1980`,
    };
    step(knowledge, emptyConversation, said, demoToday);
  }
}

export const sheets: Target = {
  name: "sheets",
  about: "spreadsheets, as CSV and as XLSX with bytes of it changed, into the handbook",
  async open() {
    const { handbook } = demoKnowledge();
    const files = await filesOf("wexcombe-shrike");
    const folder = mkdtempSync(join(tmpdir(), "wm-fuzz-"));
    const parts = handbook.parts.map((part) => ({ part, sheet: tableOfPart(part) }));
    const excel = join(folder, "whole.xlsx");
    await writeSheets(
      excel,
      parts.map(({ sheet }) => sheet),
    );
    const bytes = readFileSync(excel);
    return {
      close: async () => rmSync(folder, { recursive: true, force: true }),
      async attempt(chance) {
        const { part, sheet } = pick(chance, parts);
        const isExcel = chance() < 0.3;
        const file = join(folder, isExcel ? "broken.xlsx" : "broken.csv");
        const written = sheet.rows.map((row) => row.map((cell) => String(cell ?? "")).join(",")).join("\n");
        const given = isExcel
          ? brokenBytes(chance, bytes)
          : Buffer.from(brokenText(chance, written, written));
        writeFileSync(file, given);
        try {
          for (const one of await readSheets(file)) {
            const read = readTable({ part, sources: handbook.sources, sheet: one });
            applyTables(files, new Map([[part.id, read]]));
          }
        } catch (failure) {
          if (failure instanceof OutsideError) return undefined;
          return `${String(failure)} at ${isExcel ? given.toString("base64").slice(0, 300) : shown(given.toString())}`;
        }
        return undefined;
      },
    };
  },
};

export const sightings: Target = {
  name: "sightings",
  about: "lists of sightings as comma-separated text",
  async open() {
    const file = new URL("../support/sightings-of-mirrors.csv", import.meta.url);
    const whole = readFileSync(file, "utf8");
    return {
      close: nothingOpen,
      attempt(chance) {
        const text =
          chance() < 0.7 ? brokenText(chance, whole, whole) : madeText(chance, 60, whole.split(/[,\n]/u));
        const { slow } = timedWork(() => parseSightings(text));
        return slow === undefined ? undefined : `${slow}: ${shown(text)}`;
      },
    };
  },
};
