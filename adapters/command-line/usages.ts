/** What each command is for and how it is written; here and not beside the commands, so that help loads none of them. */

export interface Usage {
  readonly purpose: string;
  readonly lines: readonly string[];
}

const HANDBOOK = "  --handbook DIR   a handbook's folder; without it the one that is shipped";
const STORE =
  "  --store FILE     keep conversations in this file (SQLite); without it they end with the program";
const GOAL =
  "  --goal G         which-variant (as when not given), right-for-car, genuine, what-should-it-have";
const PART = "  --part KIND      the part kind's id, such as rear-spoiler";

export const usages: Readonly<Record<string, Usage>> = {
  chat: {
    purpose: "talk here, or through a pipe: a line is a message",
    lines: ["witness-mark chat [--handbook DIR] [--store FILE]", HANDBOOK, STORE],
  },
  converse: {
    purpose: "answer messages for a script, one a line",
    lines: [
      "witness-mark converse [--handbook DIR] [--store FILE] [--json]",
      HANDBOOK,
      STORE,
      "  --json           one JSON object a line in, one a line out; without it plain text",
      'in:  {"from":"u1","text":"..."}   or, in place of text,',
      '     "answer":{"feature":"F","state":"S"}, {"feature":"F","reading":"1180 mm"} or {"feature":"F","cannotTell":true}',
      '     and, if wanted, "case":"ID", "goal":"G" and "id":"M": a message counts once',
      '     of a community: "community":"home", "name":"Ina", "standing":"asker|contributor|keeper|owner",',
      '     "isPrivate":true, and "quoted":{"from":"u2","text":"..."}: another\'s post that is asked about',
    ],
  },
  model: {
    purpose: "print the tables that a part kind is identified by",
    lines: [
      "witness-mark model --part KIND [--handbook DIR] [--goal G] [--car TEXT] [--json]",
      PART,
      HANDBOOK,
      GOAL,
      '  --car TEXT       the car in words, such as "built 1980-05, Shrike S"',
      "  --json           as one JSON object; without it as a summary",
    ],
  },
  simulate: {
    purpose: "play invented cases and compare with a printed form",
    lines: [
      "witness-mark simulate --part KIND [--n N] [--seed S] [--handbook DIR] [--goal G] [--car TEXT] [--json]",
      PART,
      "  --n N            how many cases, 1 to 100000; 1000 when not given",
      "  --seed S         a whole number; the same number gives the same cases; 1 when not given",
      HANDBOOK,
      GOAL,
      '  --car TEXT       the car in words, such as "built 1980-05, Shrike S"',
      "  --json           as one JSON object; without it as a table",
    ],
  },
  report: {
    purpose: "how well a handbook tells things apart, and what to write next",
    lines: [
      "witness-mark report [--handbook DIR] [--part KIND] [--n N] [--seed S] [--page FILE.html]",
      HANDBOOK,
      "  --part KIND      one part kind; without it all of them",
      "  --n N            how many invented owners each, 1 to 100000; 1000 when not given",
      "  --seed S         a whole number; the same number gives the same report; 1 when not given",
      "  --page FILE      also write a page with the handbook's drawings",
    ],
  },
  changeover: {
    purpose: "from a list of sightings: when one version of a part gave way to the next",
    lines: [
      "witness-mark changeover --sightings FILE.csv [--old VARIANT --new VARIANT] [--from 1976-09 --to 1985-06]",
      "                        [--handbook DIR [--part KIND]] [--json|--csv] [--picture FILE.svg]",
      "  --sightings FILE the list; its first row names the columns: variant, built and, if wanted, id, grade,",
      "                   misread, sought, ruling, model, trim, market, note",
      "  --old, --new     what gave way and what came; several ids with commas; without them two variants of the",
      "                   list are one change, and more are taken as a chain, all their changes at once",
      "  --from, --to     first and last month of the whole production, not of the list; the handbook knows them too",
      "  --handbook DIR   the cars built per year are taken from it; there is none unless it is given",
      "  --part KIND      the part kind in it: its stated periods are taken as a hint, and what it says was sold",
      "  --json, --csv    one JSON object, or rows for a spreadsheet; without either plain text",
      "  --picture FILE   also draw a timeline, .svg or .png, and print the same as a table",
    ],
  },
  new: {
    purpose: "begin a handbook from a few questions",
    lines: [
      "witness-mark new --folder DIR [--example]",
      "  --folder DIR     where it shall stand; a new folder, or an empty one",
      "  --example        copy the smallest handbook in place of asking: one part, two versions",
      "the schemas and settings by which editors check and complete are written along",
    ],
  },
  check: {
    purpose: "read a handbook as a critic would: what is broken, doubtful or could be better",
    lines: [
      "witness-mark check [--handbook DIR] [--json | --sarif] [--strict]",
      HANDBOOK,
      "  --json           one JSON object; without it a line for each remark and one for how to mend it",
      "  --sarif          a SARIF 2.1.0 log, for editors and build servers",
      "  --strict         exit status 2 also when there is a doubt; without it only when there is a fault",
      "a fault stops the handbook from being served; a doubt is most likely an error; a wish would make answers better",
    ],
  },
  editions: {
    purpose: "which editions of a handbook served, and what changed between two",
    lines: [
      "witness-mark editions [--store FILE]",
      "witness-mark editions --old ONE --new OTHER [--store FILE]",
      "  --store FILE     a store's file; without it the one of DATABASE_URL, or else of DATA_DIR",
      "  --old, --new     a handbook's folder, or an edition that served, by the figures that answers cite",
    ],
  },
  table: {
    purpose: "what variants show, as a spreadsheet and back",
    lines: [
      "witness-mark table to FILE [--handbook DIR] [--part KIND]",
      "witness-mark table from FILE --handbook DIR [--part KIND] [--write | --partly]",
      "  FILE             .xlsx with a sheet for each part kind, or .csv with one",
      HANDBOOK,
      "  --part KIND      one part kind; without it all, or the one the sheet names",
      "  --write          write the handbook if every cell was read; at a terminal it is asked without it",
      "  --partly         write what was read and leave the other cells aside",
      "each cell that could not be read is named, with what to write instead; status 2 when there is one",
    ],
  },
  learn: {
    purpose: "learn from annotated messages how owners speak of what a handbook describes",
    lines: [
      "witness-mark learn FILE [FILE ...] --handbook DIR",
      "  FILE             messages with what they tell, one JSON object a line:",
      '                   {"text":"...","facts":[{"part":"P","feature":"F","state":"S"}]} and, if wanted,',
      '                   "id":"M", "context":{"part":"P","askedFeature":"F"}: what was talked of and asked before',
      '                   a fact may have "not", "reading" or "date" in place of "state": it teaches nothing',
      "  --handbook DIR   the handbook's folder; learnt-words.json is written into it, in place of the one before",
      "each line that could not be read is named, and nothing is written then; status 2",
    ],
  },
  schema: {
    purpose: "print the JSON Schema of a handbook's file, for editors",
    lines: [
      "witness-mark schema --file KIND | --into DIR",
      "  --file KIND      handbook, cars, sources, or part (any file in parts/)",
      "  --into DIR       write all four into a handbook's folder, with the settings by which editors find them",
    ],
  },
  "sign-in": {
    purpose: "print a link that signs an owner in to the keepers' desk once",
    lines: [
      "witness-mark sign-in [--person ID] [--name NAME] [--community NAME]",
      "  --person ID        who signs in, such as discord:1234; console:owner when left out",
      "  --community NAME   whose desk; home when left out. The link holds for ten minutes",
    ],
  },
  store: {
    purpose: "check what is kept, back it up, put a backup back",
    lines: [
      "witness-mark store check [--store FILE]",
      "witness-mark store backup FILE [--store FILE]",
      "witness-mark store restore FILE [--store FILE] [--replace]",
      "  FILE             a backup: lines of JSON, the same from SQLite and from Postgres",
      "  --store FILE     a store's file; without it the one of DATABASE_URL, or else of DATA_DIR",
      "  --replace        put the backup in place of what is kept; without it only into an empty store",
      "all of it also while the program serves",
    ],
  },
  observations: {
    purpose: "take a community's observations out, or others in",
    lines: [
      "witness-mark observations export [--json] [--store FILE] [--community NAME]",
      "witness-mark observations import FILE [--store FILE] [--community NAME] [--handbook DIR]",
      "  FILE             comma-separated rows under a row of headings, or JSON, as they were exported",
      "  --json           every record whole; without it rows for a spreadsheet, formulas made harmless",
      "  --store FILE     a store's file, or a database's postgres:// address; without it the one of DATABASE_URL, or else of DATA_DIR",
      "  --community NAME whose; home when left out",
      "  --handbook DIR   a handbook's folder; without it those of HANDBOOKS, or the one that is shipped",
      "each row that could not be read is named, the others are taken in; status 2 when there is one",
    ],
  },
  help: {
    purpose: "this, or one command in full",
    lines: ["witness-mark help [COMMAND]"],
  },
};

export const commandNames: readonly string[] = Object.keys(usages);

/** One command in full, or all of them in a line each. */
export function usageText(command?: string): string {
  const usage = command === undefined ? undefined : usages[command];
  if (usage !== undefined) return usage.lines.join("\n");
  const rows = Object.entries(usages).map(([name, { purpose }]) => `  ${name.padEnd(14)}${purpose}`);
  return ["witness-mark COMMAND [options]", ...rows].join("\n");
}
