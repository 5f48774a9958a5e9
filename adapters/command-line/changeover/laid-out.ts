/** Text of 80 columns: headings, labels in a column with their texts beside it, paragraphs. */
import { padded, textWidth, wrapped } from "../../terminal/wrap.ts";

const WIDTH = 80;

export type Row = readonly [label: string, text: string];

export function section(heading: string, body: readonly Row[]): readonly string[] {
  return ["", heading, ...rows(body)];
}

/** Labels in a column, their texts wrapped beside it; a long label takes a line of its own. */
export function rows(body: readonly Row[]): readonly string[] {
  const column = Math.min(28, Math.max(0, ...body.map(([label]) => textWidth(label))));
  return body.flatMap(([label, text]) => {
    const first = `  ${padded(label, column)}  `;
    if (textWidth(label) <= column) return wrapped(text, WIDTH, first);
    return [...wrapped(label, WIDTH, "  "), ...wrapped(text, WIDTH, " ".repeat(column + 4))];
  });
}

export function paragraph(line: string): readonly string[] {
  return line.startsWith("- ") ? wrapped(line.slice(2), WIDTH, "  - ") : flowing(line);
}

export function flowing(line: string): readonly string[] {
  return wrapped(line, WIDTH);
}
