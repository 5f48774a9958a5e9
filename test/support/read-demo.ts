/** Reading against the demo handbook, in the short words of reading-in-words.ts. */
import type { MessageReading } from "../../knowledge/language/message-reading.ts";
import { readMessage } from "../../knowledge/language/read-message.ts";
import { demoLexicon, testToday } from "./demo-lexicon.ts";

const lexicon = await demoLexicon();

/** `about`: "part" or "part askedFeature". */
export function readDemo(text: string, about = ""): MessageReading {
  const [part, askedFeature] = about.split(" ");
  return readMessage(text, lexicon, {
    today: testToday,
    ...(part === undefined || part === "" ? {} : { part }),
    ...(askedFeature === undefined ? {} : { askedFeature }),
  });
}

/** One row of a table: the message, what it is about, what must be read. */
export type Row = readonly [text: string, about: string, expected: readonly string[]];
