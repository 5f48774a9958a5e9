// What speaks for and against taking a candidate as the speaker's word on the part in hand, as numbers that name no word
// of any handbook. The judge weighs them; nothing is decided here.
import { commonWords, glueWords, isGeneralWord } from "./common-words.ts";
import { numberOf } from "./fold-word.ts";
import type { Candidate } from "./gather-observations.ts";
import type { MessageView } from "./message-view.ts";
import { type Clause } from "./clauses.ts";
import type { PartWords } from "./part-words.ts";
import type { Spotted } from "./spot-terms.ts";
import { isOtherThing } from "./other-things.ts";
import { isTagged } from "./stance.ts";
import { classesOf, type WordClass } from "./word-classes.ts";

const set = (list: string): ReadonlySet<string> => new Set(list.split(" "));
const verbs = set("is are was were has have had isnt arent wasnt hasnt its theyre got came comes looks look feels feel seems seem says say shows show reads sits weighs measures appears went goes runs");
const prepositions = set("of in on at to from by with for into onto off up under behind inside along round around over");
const owners = set("my his her our their your mates neighbours");
const firstPerson = set("i im ive my mine me we our");
const thirdPerson = set("he she his her hers him they their theirs someone somebody people guy bloke chap seller mate mates friend friends everybody everyone who whose");
const secondPerson = set("you your yours youre u");
const pastWords = set("was were had used once previous old ago");
const business = set("quid pound pounds euro euros dollar dollars bucks price prices cheap worth cost sold sell selling sale buy bought paid pay ordered order auction ebay");
const times = set("tomorrow tonight yesterday weekend week month today monday tuesday wednesday thursday friday saturday sunday summer winter night nights evening morning");
const generic = set("usually normally always never all every any ones them these those copies originals early late later genuine repro both");
const wishes = set("want wants wanted need needs would could should might may id wish hope if going will prefer rather thinking");
const asking = set("is are was were do does did can could should would will has have which what who where when why how any anyone anybody does");
const negations = set("not never dont cant didnt no isnt arent nor");

export interface Seen {
  readonly view: MessageView;
  readonly candidate: Candidate;
  readonly classes: readonly WordClass[];
  readonly share: Readonly<Record<WordClass, number>>;
  readonly told: number;
  readonly clause: Clause;
  readonly words: PartWords | undefined;
  readonly spotted: Spotted | undefined;
  /** Places of the clause outside the candidate. */
  readonly beside: readonly number[];
  /** Telling words of the candidate. */
  readonly said: readonly number[];
  readonly foreign: number;
  readonly subject: Subject | undefined;
  readonly isNamedHere: boolean;
  readonly isNamed: boolean;
  readonly isPartNamed: boolean;
  readonly isAsked: boolean;
}

const folded = ({ view }: Seen, at: number): string => view.tokens[at]?.folded ?? "";
const holds = (seen: Seen, words: ReadonlySet<string>): boolean => seen.beside.some((at) => words.has(folded(seen, at)));
const adjacent = (seen: Seen, at: number, break_: number): WordClass | undefined => seen.view.tokens[break_]?.breakBefore === "none" ? seen.classes[at] : undefined;
const next = (seen: Seen) => adjacent(seen, seen.candidate.to + 1, seen.candidate.to + 1);
const before = (seen: Seen) => adjacent(seen, seen.candidate.from - 1, seen.candidate.from);
const isFound = (finder: Candidate["finder"]) => ({ candidate }: Seen) => candidate.finder === finder;
const isLone = ({ said }: Seen) => said.length <= 1;
const isUngrounded = (s: Seen) => !s.isNamed && !s.isPartNamed && !s.isAsked;
const everyday = (s: Seen) => s.said.length === 0 ? 0 : s.said.filter((at) => commonWords.has(folded(s, at)) || numberOf(folded(s, at)) !== undefined).length / s.said.length;
const aside = (s: Seen) => s.view.stances[s.candidate.clause]?.aside;
const isAskedSentence = (s: Seen) => s.view.clauses.some((each) => each.sentence === s.clause.sentence && each.isAsked && !each.isDoubted) && !isTagged(s.view.clauses, s.candidate.clause);
const opens = (s: Seen) => asking.has(folded(s, s.clause.from));

export const grounds = {
  "asked about it": (s: Seen) => s.isAsked,
  "asked about another": (s: Seen) => s.view.context.askedFeature !== undefined && !s.isAsked,
  "feature named in clause": (s: Seen) => s.isNamedHere,
  "feature named in message": (s: Seen) => s.isNamed,
  "cue in clause": (s: Seen) => s.beside.some((at) => s.words?.cues.get(s.view.tokens[at]?.stem ?? "")?.has(s.candidate.feature) === true),
  "part named in message": (s: Seen) => s.isPartNamed,
  "no context": (s: Seen) => s.view.context.part === undefined,
  "ungrounded": isUngrounded,
  "ungrounded one word": (s: Seen) => isUngrounded(s) && isLone(s),
  "ungrounded alone": (s: Seen) => isUngrounded(s) && s.told <= 1,
  "ungrounded foreign": (s: Seen) => isUngrounded(s) && s.foreign > 0,
  "two words": (s: Seen) => s.said.length === 2,
  "three words": (s: Seen) => s.said.length > 2,
  "general word": (s: Seen) => s.said.length === 1 && isGeneralWord(folded(s, s.said[0] ?? 0)),
  "everyday words": everyday,
  "everyday ungrounded": (s: Seen) => isUngrounded(s) ? everyday(s) : 0,
  misspelt: (s: Seen) => (s.spotted?.edits ?? 0) > 0 || s.said.some((at) => s.view.words[at] !== s.view.tokens[at]?.stem),
  saying: (s: Seen) => s.spotted?.phrase.isSaying === true,
  "lone saying": (s: Seen) => s.spotted?.phrase.isSaying === true && s.spotted.phrase.stems.length === 1,
  stretched: (s: Seen) => s.spotted !== undefined && s.spotted.to - s.spotted.from + 1 > s.spotted.used.length + 1,
  ambiguous: (s: Seen) => s.spotted !== undefined && new Set(s.spotted.phrase.meanings.flatMap((m) => m.kind === "state" && m.part === s.candidate.part ? [m.feature] : [])).size > 1,
  loose: isFound("loose"), carried: isFound("carried"), named: isFound("named"), presence: isFound("presence"),
  "answer by word": isFound("word"), "answer by nod": isFound("nod"), "answer by place": isFound("place"), "answer by nearness": isFound("nearness"),
  denied: (s: Seen) => s.candidate.isDenied,
  "foreign in clause": (s: Seen) => Math.min(s.foreign, 5) / 5,
  "any foreign in clause": (s: Seen) => s.foreign > 0,
  "foreign share of clause": (s: Seen) => s.beside.length === 0 ? 0 : s.foreign / s.beside.length,
  "foreign share of message": (s: Seen) => s.share.foreign,
  "own share of message": (s: Seen) => s.share.own,
  "prose share": (s: Seen) => s.share.prose,
  "subject this feature": (s: Seen) => s.subject === "feature",
  "subject other feature": (s: Seen) => s.subject === "other feature",
  "subject part": (s: Seen) => s.subject === "part",
  "subject own": (s: Seen) => s.subject === "own",
  "subject thing": (s: Seen) => s.subject === "thing",
  "thing possessed": (s: Seen) => s.beside.some((at) => isThing(s.view, at, s.words, s.candidate.feature) && owners.has(folded(s, at - 1))),
  "thing beside": (s: Seen) => s.beside.some((at) => isThing(s.view, at, s.words, s.candidate.feature)),
  "things in message": (s: Seen) => Math.min(3, s.view.tokens.filter((_, at) => isThing(s.view, at, s.words, s.candidate.feature)).length) / 3,
  "next thing": (s: Seen) => s.view.tokens[s.candidate.to + 1]?.breakBefore === "none" && isThing(s.view, s.candidate.to + 1, s.words, s.candidate.feature),
  "another feature named": (s: Seen) => !s.isNamedHere && s.view.spotted.some((each) => s.view.clauseOf[each.from] === s.candidate.clause && each.phrase.meanings.every((m) => m.kind === "feature" && m.part === s.candidate.part && m.feature !== s.candidate.feature)),
  "subject foreign": (s: Seen) => s.subject === "foreign",
  "subject pronoun": (s: Seen) => s.subject === "pronoun",
  "subject first person": (s: Seen) => s.subject === "first",
  "subject third": (s: Seen) => s.subject === "third",
  "state in subject": (s: Seen) => s.subject !== undefined && verbAt(s.view, s.clause) > s.candidate.to,
  "next foreign": (s: Seen) => next(s) === "foreign", "next own": (s: Seen) => next(s) === "own", "next prose": (s: Seen) => next(s) === "prose",
  "before foreign": (s: Seen) => before(s) === "foreign",
  "foreign place behind": hasForeignBehind,
  "foreign possessed": (s: Seen) => s.beside.some((at) => s.classes[at] === "foreign" && owners.has(folded(s, at - 1))),
  "foreign with article": (s: Seen) => s.beside.some((at) => s.classes[at] === "foreign" && /^(?:the|a|an)$/.test(folded(s, at - 1))),
  "other facts": (s: Seen) => Math.min(4, Math.max(0, s.told - 1)) / 4,
  "one fact only": (s: Seen) => s.told <= 1,
  "short message": (s: Seen) => s.view.tokens.length <= 6,
  "long message": (s: Seen) => s.view.tokens.length > 25,
  "asked sentence": isAskedSentence,
  "opens asking": opens,
  "asks outright": (s: Seen) => isAskedSentence(s) && opens(s),
  doubted: (s: Seen) => (s.view.stances[s.candidate.clause]?.certainty ?? 1) < 1,
  "verb before": (s: Seen) => [1, 2, 3].some((back) => s.candidate.from - back >= s.clause.from && verbs.has(folded(s, s.candidate.from - back))),
  "first person": (s: Seen) => holds(s, firstPerson), "third person": (s: Seen) => holds(s, thirdPerson), "second person": (s: Seen) => holds(s, secondPerson),
  past: (s: Seen) => holds(s, pastWords), business: (s: Seen) => holds(s, business), times: (s: Seen) => holds(s, times),
  "other part": (s: Seen) => s.view.mentioned.some((each) => each !== undefined && each !== s.candidate.part),
  generic: (s: Seen) => holds(s, generic), wish: (s: Seen) => holds(s, wishes), negation: (s: Seen) => holds(s, negations),
  hearsay: (s: Seen) => aside(s) === "hearsay", question: (s: Seen) => aside(s) === "question", "another car": (s: Seen) => aside(s) === "another-car",
  "figure alone": (s: Seen) => s.said.length > 0 && s.said.every((at) => numberOf(folded(s, at)) !== undefined),
  "all is said": (s: Seen) => s.beside.every((at) => s.classes[at] === "talk"),
} as const satisfies Readonly<Record<string, (seen: Seen) => number | boolean>>;

export type GroundName = keyof typeof grounds;
export const groundNames = Object.keys(grounds) as readonly GroundName[];

export interface Whole { readonly classes: readonly WordClass[]; readonly share: Readonly<Record<WordClass, number>>; readonly told: number }

export function wholeOf(view: MessageView, candidates: readonly Candidate[], others = 0): Whole {
  const classes = classesOf(view);
  const all = Math.max(1, classes.length);
  const shareOf = (wanted: WordClass): number => classes.filter((each) => each === wanted).length / all;
  const share = { own: shareOf("own"), prose: shareOf("prose"), talk: shareOf("talk"), figure: shareOf("figure"), foreign: shareOf("foreign") };
  return { classes, share, told: new Set(candidates.map((each) => each.feature)).size + others };
}

const wholeMessage = (view: MessageView): Clause => ({ from: 0, to: view.tokens.length - 1, join: "sentence", sentence: 0, isAsked: view.clauses.some((c) => c.isAsked), isDoubted: false, text: "" });

export function seenFrom(view: MessageView, candidate: Candidate, { classes, share, told }: Whole): Seen {
  const { from, to, feature, part } = candidate;
  const clause = from > to ? wholeMessage(view) : (view.clauses[candidate.clause] ?? wholeMessage(view));
  const inSpan = (at: number): boolean => from <= at && at <= to;
  const beside = range(clause.from, clause.to).filter((at) => !inSpan(at));
  const mentions = (view.featuresNamed.get(feature) ?? []).filter((each) => !inSpan(each.from));
  const words = part === null ? undefined : view.lexicon.parts.get(part);
  const spotted = (view.phrasesAt.get(to) ?? []).find((each) => each.to === to && each.phrase.meanings.some((m) => m.kind === "state" && m.feature === feature));
  return {
    view, candidate, classes, share, told, clause, words, spotted, beside,
    said: range(spotted?.from ?? from, to).filter((at) => !glueWords.has(view.tokens[at]?.folded ?? "")),
    foreign: beside.filter((at) => classes[at] === "foreign").length,
    subject: subjectOf(view, clause, classes, words, feature),
    isNamedHere: mentions.some((each) => view.clauseOf[each.from] === candidate.clause),
    isNamed: mentions.length > 0,
    isPartNamed: part !== null && view.mentioned.includes(part),
    isAsked: view.context.askedFeature === feature,
  };
}

export type Grounds = Readonly<Record<GroundName, number>>;

export function groundsOf(view: MessageView, candidate: Candidate, whole: Whole): Grounds {
  const seen = seenFrom(view, candidate, whole);
  return Object.fromEntries(groundNames.map((name) => [name, Number(grounds[name](seen))])) as Grounds;
}

type Subject = "thing" | "feature" | "other feature" | "part" | "own" | "foreign" | "pronoun" | "first" | "third";

function verbAt(view: MessageView, { from, to }: Clause): number {
  for (let at = from; at <= to; at += 1) if (verbs.has(view.tokens[at]?.folded ?? "")) return at;
  return -1;
}

function subjectOf(view: MessageView, clause: Clause, classes: readonly WordClass[], words: PartWords | undefined, feature: string): Subject | undefined {
  const verb = verbAt(view, clause);
  if (verb < 0) return undefined;
  if (/^(?:its|theyre)$/.test(view.tokens[verb]?.folded ?? "")) return "pronoun";
  let head = -1;
  for (let at = clause.from; at < verb; at += 1) {
    const word = view.tokens[at]?.folded ?? "";
    if (head >= 0 && prepositions.has(word)) break;
    if (classes[at] !== "talk" || words?.cues.has(view.tokens[at]?.stem ?? "") === true) head = at;
  }
  if (head >= 0) {
    const stem = view.tokens[head]?.stem ?? "";
    if (words?.nameHeads.has(stem) === true || words?.nameHeads.has(view.tokens[head]?.folded ?? "") === true) return "part";
    const cues = words?.cues.get(stem);
    if (isThing(view, head, words, feature)) return "thing";
    if (cues?.has(feature) === true) return "feature";
    if (cues !== undefined) return "other feature";
    return classes[head] === "own" || classes[head] === "figure" ? "own" : "foreign";
  }
  const said = view.tokens.slice(clause.from, verb).map((token) => token.folded);
  if (said.some((word) => firstPerson.has(word))) return "first";
  return said.some((word) => thirdPerson.has(word)) ? "third" : "pronoun";
}

function hasForeignBehind({ view, candidate: { to }, clause, classes }: Seen): boolean {
  for (let at = to + 1; at < clause.to; at += 1) {
    if (!prepositions.has(view.tokens[at]?.folded ?? "")) continue;
    for (let noun = at + 1; noun <= Math.min(clause.to, at + 3); noun += 1) if (classes[noun] === "foreign") return true;
  }
  return false;
}

function range(from: number, to: number): readonly number[] {
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => from + step);
}

function isThing(view: MessageView, at: number, words: PartWords | undefined, feature: string): boolean {
  const token = view.tokens[at];
  if (token === undefined || !isOtherThing(token.stem)) return false;
  if (words === undefined) return true;
  return !words.nameHeads.has(token.folded) && !words.nameHeads.has(token.stem) && words.cues.get(token.stem)?.has(feature) !== true;
}
