/** What stands in a stranger's list, made fit to be printed within a line: nothing a terminal would obey, no line ends. */
import { clean } from "../../terminal/wrap.ts";

export function oneLine(text: string): string {
  return clean(text).replaceAll(/\s+/gu, " ").trim();
}
