/** Rows of a spreadsheet into observations: read one by one, what cannot be read named with its row and left out. */
import { z } from "zod";
import {
  type Handbook,
  type Interval,
  parseDateText,
  provenanceGrades,
  readCommaSeparated,
  unescapedCell,
} from "../../../knowledge/index.ts";
import { KeptReport } from "../../conversation/case.ts";
import type { CommunityScene } from "../affair.ts";
import { faults as words } from "../phrases/observations.ts";
import { recordId, recordIdOf, recordIdPattern } from "../record-id.ts";
import { type Column, columns } from "./exchange-row.ts";
import type { FoundRows } from "./found-rows.ts";
import type { Observation } from "./observation.ts";

/** A row that cannot be read; caught for each row. */
class RowFault extends Error {
  override readonly name = "RowFault";
}

const ways = ["waiting", "accepted", "declined", "withdrawn"] as const;

type CellOf = (column: Column) => string;

export function readRows(scene: CommunityScene, text: string): FoundRows {
  const {
    rows: [head, ...body],
    faults: written,
  } = readCommaSeparated(text);
  const places = new Map(head?.cells.map(({ text: name }, at) => [name.trim().toLowerCase(), at]) ?? []);
  const missing = (["part", "kind", "history"] as const).find((column) => !places.has(column));
  if (missing !== undefined)
    return { rows: [], faults: [{ place: words.row(head?.row ?? 1), fault: words.noHead(missing) }] };
  const rows: { id: string; observation: Observation }[] = [];
  const faults = written.map(({ row, message }) => ({ place: words.row(row), fault: message }));
  for (const { row, cells } of body) {
    const cell: CellOf = (column) => unescapedCell((cells[places.get(column) ?? -1]?.text ?? "").trim());
    try {
      rows.push({ id: idOf(scene, cell), observation: observationOf(scene, cell) });
    } catch (fault) {
      if (!(fault instanceof RowFault)) throw fault;
      faults.push({ place: words.row(row), fault: fault.message });
    }
  }
  return { rows, faults };
}

/** The same row is the same observation however often it is taken in. */
function idOf({ community }: CommunityScene, cell: CellOf): string {
  const id = cell("id");
  if (new RegExp(`^${recordIdPattern}$`, "iu").test(id)) return recordIdOf(id);
  return recordId(community, "imported", ...columns.map(cell));
}

function observationOf(scene: CommunityScene, cell: CellOf): Observation {
  const { speaker, at, message } = scene;
  const handbook = handbookOf(scene, cell("handbook"));
  const part = handbook.parts.find(({ id, name }) =>
    [id, name.toLowerCase()].includes(cell("part").toLowerCase()),
  );
  if (part === undefined) throw new RowFault(words.part(cell("part")));
  const kind = cell("kind");
  const variant = part.variants.find(({ id, name }) => [id, name.toLowerCase()].includes(kind.toLowerCase()));
  if (variant === undefined && kind !== "") throw new RowFault(words.kind(kind));
  const grade = provenanceGrades.find((one) => one === cell("history"));
  if (grade === undefined) throw new RowFault(words.grade(cell("history")));
  return {
    by: speaker.id,
    byName: cell("by") === "" ? speaker.name : cell("by").slice(0, 80),
    at,
    conversation: message.conversation,
    edition: handbook.edition,
    saw: {
      handbook: handbook.cover.id,
      part: part.id,
      variant: variant?.id ?? null,
      reports: toldIn(cell("told")),
      car: carOf(handbook, cell),
      grade,
      seen: spanOf(cell("seen from"), cell("seen to")) ?? null,
      photographs: [],
      links: cell("links")
        .split(" ")
        .filter((link) => /^https?:\/\/\S{1,500}$/u.test(link)),
      credit: cell("credit") === "yes",
    },
    // What a keeper has declined or its author has withdrawn does not begin to wait again.
    stands: ways.find((one) => one === cell("stands")) ?? "waiting",
    kinds: [],
    reason: null,
    isRuledAsBuilt: cell("as built by ruling") === "yes",
    sayings: [],
  };
}

/** Without a handbook's id it is the one that answers here. */
function handbookOf({ served, knowledge }: CommunityScene, id: string): Handbook {
  const named = id === "" ? knowledge : served.find(({ handbook }) => handbook.cover.id === id);
  if (named === undefined) throw new RowFault(words.handbook(id));
  return named.handbook;
}

function carOf({ cars }: Handbook, cell: CellOf): Observation["saw"]["car"] {
  const built = spanOf(cell("built from"), cell("built to"));
  const known = (
    column: "model" | "trim" | "market",
    list: readonly { readonly id: string; readonly name: string }[],
  ) => {
    const written = cell(column);
    if (written === "") return {};
    const found = list.find(({ id, name }) => [id, name.toLowerCase()].includes(written.toLowerCase()));
    if (found === undefined) throw new RowFault(words.car(written));
    return { [column]: found.id };
  };
  return {
    ...known("model", cars.models),
    ...known("trim", cars.trims),
    ...known("market", cars.markets),
    ...(built === undefined ? {} : { built }),
  };
}

function spanOf(from: string, to: string): Interval | undefined {
  if (from === "") return undefined;
  const [first, last] = [parseDateText(from), parseDateText(to === "" ? from : to)];
  if (first === undefined) throw new RowFault(words.date(from));
  if (last === undefined) throw new RowFault(words.date(to));
  if (last.to <= first.from) throw new RowFault(words.backwards);
  return { from: first.from, to: last.to };
}

/** What was told, as it was exported; a cell that is anything else says nothing. */
function toldIn(text: string): Observation["saw"]["reports"] {
  if (text === "") return [];
  try {
    const parsed = z.array(KeptReport).safeParse(JSON.parse(text));
    return parsed.success ? parsed.data : [];
  } catch (failure) {
    if (failure instanceof SyntaxError) return [];
    throw failure;
  }
}
