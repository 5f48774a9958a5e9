// The body of a call as it comes over the wire: JSON, or multipart with files. Small on purpose: one sender, one form.
import type { IncomingMessage } from "node:http";
import { buffer } from "node:stream/consumers";
import { readTexts } from "./check-call.ts";

export interface SentFile {
  readonly name: string;
  readonly bytes: Buffer;
}

export interface Body {
  readonly payload: Readonly<Record<string, unknown>>;
  /** By the name that the payload attaches them under. */
  readonly files: ReadonlyMap<string, SentFile>;
}

export async function readBody(method: string, request: IncomingMessage): Promise<Body> {
  const bytes = await buffer(request);
  const boundary = /boundary=(\S+)/u.exec(request.headers["content-type"] ?? "")?.[1];
  if (boundary !== undefined) return readParts(method, bytes, boundary);
  return { payload: bytes.length === 0 ? {} : JSON.parse(bytes.toString()), files: new Map() };
}

function readParts(method: string, bytes: Buffer, boundary: string): Body {
  const texts: Record<string, string> = {};
  const files = new Map<string, SentFile>();
  for (const part of partsOf(bytes, boundary)) {
    const headEnd = part.indexOf("\r\n\r\n");
    const head = part.subarray(0, headEnd).toString();
    const content = part.subarray(headEnd + 4);
    const name = /[ ;]name="([^"]+)"/u.exec(head)?.[1] ?? "";
    const filename = /filename=([^\r\n;]+)/u.exec(head)?.[1];
    if (filename === undefined) texts[name] = content.toString();
    else files.set(name, { name: filename, bytes: content });
  }
  return { payload: readTexts(method, texts), files };
}

function partsOf(bytes: Buffer, boundary: string): readonly Buffer[] {
  const border = Buffer.from(`--${boundary}`);
  const parts: Buffer[] = [];
  let from = bytes.indexOf(border) + border.length + 2;
  for (;;) {
    const to = bytes.indexOf(border, from);
    if (to < 0) return parts;
    parts.push(bytes.subarray(from, to - 2));
    from = to + border.length + 2;
  }
}
