/**
 * The schemas for an editor that completes keys and underlines slips while a historian types (JSON Schema, draft
 * 2020-12). Made from the one definition; what one place says of another they cannot check.
 */
import { z } from "zod";
import { Cars, Cover, PartKind, Sources } from "./schema.ts";

export type HandbookFileKind = "handbook" | "cars" | "sources" | "part";

/** One JSON Schema for each kind of YAML file, in the form it is written in (defaults may be left out). */
export function handbookJsonSchemas(): Readonly<Record<HandbookFileKind, object>> {
  return {
    handbook: z.toJSONSchema(Cover, { io: "input" }),
    cars: z.toJSONSchema(Cars, { io: "input" }),
    sources: z.toJSONSchema(Sources, { io: "input" }),
    part: z.toJSONSchema(PartKind, { io: "input" }),
  };
}
