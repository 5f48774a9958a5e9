/** A rendered reply as the body of a message: bytes in place of drawings and photographs, mentions off, no previews of links. */
import { AttachmentBuilder, MessageFlags } from "discord.js";
import type { Log } from "../../bot/index.ts";
import type { Attached, Rendered } from "./render.ts";
import type { Row } from "./rows.ts";

/** Where photographs of members are kept; metadata is gone before anything is. */
export interface Photographs {
  take(
    bytes: Uint8Array,
    by: string,
  ): Promise<
    | { readonly ok: true; readonly id: string }
    | { readonly ok: false; readonly problem: { readonly message: string } }
  >;
  read(id: string): Promise<{ readonly bytes: Uint8Array } | undefined>;
}

export interface PictureMaking {
  readonly pngOf: (svg: string) => Promise<Uint8Array>;
  readonly photographs: Photographs;
  readonly log: Log;
}

export interface Payload {
  readonly content: string;
  readonly components: readonly Row[];
  readonly files: AttachmentBuilder[];
  /** Of the files that stood there before none is kept. */
  readonly attachments: [];
  readonly allowedMentions: { readonly parse: []; readonly repliedUser: false };
  readonly flags: typeof MessageFlags.SuppressEmbeds;
}

/** A function, because discord.js changes the options it is given: each attempt gets its own. */
export type Body = () => Payload;

export async function bodyOf(rendered: Rendered, making: PictureMaking): Promise<Body> {
  const files = (await Promise.all(rendered.attachments.map((one) => bytesOf(one, making)))).flat();
  // Discord takes no message without content, attachments or components.
  const content = rendered.content === "" && files.length === 0 ? "\u200b" : rendered.content;
  return () => ({
    content,
    components: rendered.rows,
    files: files.map(
      ({ bytes, name, alternative }) =>
        new AttachmentBuilder(Buffer.from(bytes), { name, description: alternative }),
    ),
    attachments: [],
    allowedMentions: { parse: [], repliedUser: false },
    flags: MessageFlags.SuppressEmbeds,
  });
}

/** A body of a few words of the adapter's own. */
export function plainBody(content: string, rows: readonly Row[] = []): Body {
  return () => ({
    content,
    components: rows,
    files: [],
    attachments: [],
    allowedMentions: { parse: [], repliedUser: false },
    flags: MessageFlags.SuppressEmbeds,
  });
}

/** The same with a text of a member's own to save. */
export function withFile(body: Body, name: string, text: string): Body {
  return () => ({ ...body(), files: [new AttachmentBuilder(Buffer.from(text), { name })] });
}

interface FileBytes {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly alternative: string;
}

/** A picture that cannot be made is left out: the words around it stand without it, and its alternative is in the log. */
async function bytesOf(attached: Attached, making: PictureMaking): Promise<readonly FileBytes[]> {
  const { name, alternative } = attached;
  try {
    const bytes = await readBytes(attached, making);
    return bytes === undefined ? [] : [{ name, bytes, alternative }];
  } catch (failure) {
    making.log.error({ err: failure, name, alternative }, "picture left out");
    return [];
  }
}

async function readBytes(
  attached: Attached,
  { pngOf, photographs }: PictureMaking,
): Promise<Uint8Array | undefined> {
  switch (attached.kind) {
    case "picture":
      return pngOf(attached.svg);
    case "photograph":
      return (await photographs.read(attached.photograph))?.bytes;
    case "file":
      return new TextEncoder().encode(attached.text);
  }
}
