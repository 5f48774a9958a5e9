/** A post as a forum sends it to the webhook, in words any forum software has; and how it is heard. */
import { z } from "zod";
import type { IncomingMessage } from "../../bot/index.ts";

const Person = z.strictObject({ id: z.string().min(1).max(100), name: z.string().max(80).optional() });

export const ForumPost = z.strictObject({
  /** The forum's own id of the post: sent again, it gets the first reply. */
  id: z.string().min(1).max(100),
  /** Where it stands: the posts of a thread are one conversation. */
  thread: z.string().min(1).max(100),
  author: Person,
  text: z.string().min(1).max(20_000),
  /** The post that is asked about, when that is another one's. */
  quoted: z.strictObject({ author: Person, text: z.string().max(20_000) }).optional(),
  /** Only the author sees the thread. */
  private: z.boolean().optional(),
});
export type ForumPost = z.output<typeof ForumPost>;

/** Every id carries the source's name, so that two forums never meet in one conversation. */
export function heardFrom(source: string, post: ForumPost): IncomingMessage {
  const { author, quoted } = post;
  return {
    conversation: `forum:${source}:${post.thread}`,
    id: post.id,
    from: `forum:${source}:${author.id}`,
    text: post.text,
    community: `forum-${source}`,
    isPrivate: post.private ?? false,
    ...(author.name === undefined ? {} : { name: author.name }),
    ...(quoted === undefined
      ? {}
      : {
          quoted: {
            from: `forum:${source}:${quoted.author.id}`,
            text: quoted.text,
            ...(quoted.author.name === undefined ? {} : { name: quoted.author.name }),
          },
        }),
  };
}
