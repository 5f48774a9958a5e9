/** What the YAML library's complaints mean to somebody who is no programmer, and how to mend the line. */
import type { YAMLError } from "yaml";
import type { ProblemCode } from "./problem.ts";

export interface YamlComplaint {
  readonly code: ProblemCode;
  readonly message: string;
  readonly mend: string;
}

const quoteIt = 'put the whole text in quotes, such as name: "Early: first type"';
const syntax = (message: string, mend: string): YamlComplaint => ({ code: "yaml-syntax", message, mend });

const COMPLAINTS: Readonly<Partial<Record<YAMLError["code"], YamlComplaint>>> = {
  TAB_AS_INDENT: {
    code: "yaml-tab",
    message: "a tab is used to indent",
    mend: "indent with spaces, two for each step",
  },
  BAD_INDENT: {
    code: "yaml-indentation",
    message: "this line is indented wrongly",
    mend: "line it up with the entries it belongs to",
  },
  BLOCK_AS_IMPLICIT_KEY: syntax("a second colon stands on this line", quoteIt),
  MULTILINE_IMPLICIT_KEY: {
    code: "yaml-indentation",
    message: "this line has no colon, or is indented wrongly",
    mend: "write key: value, lined up with the entries it belongs to",
  },
  BAD_SCALAR_START: syntax("text cannot begin with this character", quoteIt),
  BAD_DQ_ESCAPE: syntax("a backslash in double quotes has a meaning of its own", "use single quotes"),
  BAD_ALIAS: { code: "yaml-alias", message: "text begins with * or &", mend: quoteIt },
  ALIAS_PROPS: { code: "yaml-alias", message: "text begins with * or &", mend: quoteIt },
  MULTIPLE_ANCHORS: { code: "yaml-alias", message: "text begins with &", mend: quoteIt },
  MULTIPLE_TAGS: { code: "yaml-tag", message: "text begins with !", mend: quoteIt },
  TAG_RESOLVE_FAILED: { code: "yaml-tag", message: "text begins with !", mend: quoteIt },
  BAD_COLLECTION_TYPE: { code: "yaml-tag", message: "a tag (!) does not fit what follows", mend: quoteIt },
  MULTIPLE_DOCS: {
    code: "yaml-several-documents",
    message: "a line of three hyphens starts a second document",
    mend: "remove the line: a file holds one document",
  },
  BAD_DIRECTIVE: syntax("a line begins with %", "remove the line, or put the text in quotes"),
  UNEXPECTED_TOKEN: syntax(
    "something stands here that does not belong",
    "if it is text, put the whole of it in quotes (single quotes outside when it holds double ones)",
  ),
  IMPOSSIBLE: syntax("this cannot stand here", "write key: value, with one word before the colon"),
  KEY_OVER_1024_CHARS: syntax("a key is far too long", "a key is one word before a colon"),
  RESOURCE_EXHAUSTION: {
    code: "yaml-depth",
    message: "lists and records lie too deep inside one another",
    mend: "a handbook needs no more than a few steps of indentation",
  },
};

/** A complaint and its offset in the text. */
export interface PlacedComplaint extends YamlComplaint {
  readonly offset: number;
}

/** The library's errors in plain words, at most one for each place. Cost: linear in the errors. */
export function yamlComplaints(errors: readonly YAMLError[], text: string): readonly PlacedComplaint[] {
  const byOffset = new Map<number, YAMLError[]>();
  for (const error of errors) {
    const together = byOffset.get(error.pos[0]);
    if (together === undefined) byOffset.set(error.pos[0], [error]);
    else together.push(error);
  }
  return [...byOffset].map(([offset, together]) => {
    const close = withoutBlank(offset, text);
    if (close !== undefined) return close;
    const tooFarIn = overIndentedLine(together, text);
    if (tooFarIn !== undefined) return { ...overIndented, offset: tooFarIn };
    const [error] = together;
    if (error === undefined) return { ...notGood, offset };
    return { ...complaintOf(error), offset: openedAt(error, text) ?? offset };
  });
}

/** "-id: brass", "1961:40": read as one word, and complained of as anything but what is wrong. */
function withoutBlank(offset: number, text: string): PlacedComplaint | undefined {
  const before = text.slice(Math.max(0, offset - FARTHEST), offset);
  const start = offset - before.length + before.lastIndexOf("\n") + 1;
  const isBeginning = start === 0 || text[start - 1] === "\n";
  const line = isBeginning ? (text.slice(start, start + FARTHEST).split("\n", 1)[0] ?? "") : "";
  const [all, indent = "", sign = ""] =
    /^( *)(-(?=[A-Za-z][\w-]*:(?: |$))|[\w-]+:(?=[^\s:/]))/u.exec(line) ?? [];
  if (all === undefined) return undefined;
  const after = sign === "-" ? "hyphen" : "colon";
  return {
    ...syntax(`a space is missing after the ${after}`, `put a space after the ${after}`),
    offset: start + indent.length,
  };
}

/** Letters of a line that are looked at for one complaint: a hostile line of a hundred thousand has as many complaints. */
const FARTHEST = 200;

/** The library names the end of a text whose quote is never closed; what there is to look at is where it was opened. */
function openedAt({ code, message, pos: [end] }: YAMLError, text: string): number | undefined {
  const quote = code === "MISSING_CHAR" ? /closing (["'])quote/u.exec(message)?.[1] : undefined;
  const opened = quote === undefined ? -1 : text.lastIndexOf(quote, end - 1);
  return opened < 0 ? undefined : opened;
}

const overIndented: YamlComplaint = {
  code: "yaml-indentation",
  message: "this line is indented further than the entries it belongs to",
  mend: "line it up with them",
};

/**
 * A line that stands too far in reads on from the one before, and the library complains there, twice: of a second
 * colon and of a key over two lines. The line to mend is the later one.
 */
function overIndentedLine(together: readonly YAMLError[], text: string): number | undefined {
  const codes = new Set(together.map(({ code }) => code));
  const isBoth = codes.has("MULTILINE_IMPLICIT_KEY") && codes.has("BLOCK_AS_IMPLICIT_KEY");
  if (!isBoth) return undefined;
  const start = together[0]?.pos[0] ?? 0;
  const end = Math.max(...together.map(({ pos }) => pos[1]));
  const line = text.lastIndexOf("\n", end - 1);
  return line <= start ? undefined : line + 1 + text.slice(line + 1, end).search(/\S|$/);
}

const notGood = syntax("this is not good YAML", "compare the line with its neighbours; put text in quotes");

function complaintOf(error: YAMLError): YamlComplaint {
  if (error.code === "MISSING_CHAR") return missingCharacter(error.message);
  if (error.code === "BAD_INDENT" && error.message.startsWith("Flow")) {
    return syntax("a bracket is opened above and not closed before this line", "add the closing ] or }");
  }
  const known = COMPLAINTS[error.code];
  if (known !== undefined) return known;
  return notGood;
}

function missingCharacter(message: string): YamlComplaint {
  if (message.includes("quote")) return syntax("a quote is opened and never closed", "add the closing quote");
  if (/end with a|Expected.*[\]}]/.test(message)) {
    return syntax("a bracket is opened and never closed", "add the closing ] or }");
  }
  if (message.includes("space")) return syntax("a space is missing", "put a space after the colon or comma");
  return syntax("a comma, colon, quote or bracket is missing", "compare the line with its neighbours");
}
