// Market and trim told otherwise than by a name of theirs: by the country a car was sold new in, or by the adjective of a name
// before another noun ("a US one", "Dutch papers", "a British Mark II", "a base one"). Which market or trim an adjective is of
// stands in the handbook; which adjective a country has is everyday English.
import { isAnyCar, isOthersCar } from "./any-car.ts";
import type { CarFinding } from "./message-reading.ts";
import { type MessageView, wordsBetween } from "./message-view.ts";

const adjectives: Readonly<Record<string, readonly string[]>> = {
  holland: ["dutch"],
  netherlands: ["dutch"],
  germany: ["german"],
  france: ["french"],
  belgium: ["belgian"],
  switzerland: ["swiss"],
  austria: ["austrian", "european"],
  italy: ["italian", "european"],
  spain: ["spanish", "european"],
  denmark: ["danish", "european"],
  sweden: ["swedish", "european"],
  norway: ["norwegian", "european"],
  finland: ["finnish", "european"],
  europe: ["european"],
  england: ["english", "british", "uk"],
  britain: ["british", "uk"],
  scotland: ["scottish", "british", "uk"],
  wales: ["welsh", "british", "uk"],
  ireland: ["irish"],
  uk: ["uk", "british"],
  america: ["american", "us"],
  usa: ["us", "american"],
  states: ["us", "american"],
  canada: ["canadian"],
  japan: ["japanese"],
  australia: ["australian"],
};

const soldIn =
  /\b(?:sold new|(?:car|mine|was|it|went|bought|from) new|delivered(?: new)?|supplied(?: new)?|exported(?: new)?|registered new|first sold|first registered|sold when new) (?:here )?(?:in|to) (?:the (?:united )?)?(?<country>[a-z]+)\b/g;
const carsOwn =
  /\b(?:car|mine|it|its|this)(?: \w+){0,2}? (?:is |was )?an? (?<adjective>[a-z]+) one\b|\b(?<papers>[a-z]+) (?:papers|number plates|log ?book|registration papers|title|documents)\b|\b(?<delivered>[a-z]+) (?:delivered|supplied)\b/g;
const ofCar = /^(?:cars?|spec|market|model|version|trim|supplied|import|export|vehicle)$/;

/** Markets told by a country or by an adjective, in the order said; of no car but the speaker's own. */
export function marketsSold(view: MessageView): readonly CarFinding[] {
  return view.clauses.flatMap((clause, at) => {
    const aside = view.stances[at]?.aside;
    if (aside === "hearsay" || aside === "another-car" || isAnyCar(view, at)) return [];
    const words = wordsBetween(view, clause.from, clause.to);
    const told = [
      ...Array.from(clause.text.matchAll(soldIn), (found) => adjectives[found.groups?.country ?? ""] ?? []),
      ...Array.from(clause.text.matchAll(carsOwn), ({ groups }) => [
        groups?.adjective ?? groups?.papers ?? groups?.delivered ?? "",
      ]),
      ...adjectivesOfModels(view, at),
    ];
    const id = told.map((each) => marketOf(view, each)).findLast((each) => each !== undefined);
    return id === undefined ? [] : [{ about: "market" as const, id, words }];
  });
}

/** "A British Mark II": the word before the name of a model. */
function adjectivesOfModels(view: MessageView, at: number): readonly (readonly string[])[] {
  return view.spotted.flatMap(({ from, to, phrase }) => {
    const isModel = phrase.meanings.some(({ kind }) => kind === "model" || kind === "trim");
    const before = view.tokens[from - 1];
    if (!isModel || view.clauseOf[from] !== at || before === undefined || isOthersCar(view, from, to))
      return [];
    return view.tokens[from]?.breakBefore === "none" ? [[before.folded]] : [];
  });
}

/** The market of the first of the adjectives that one has among its names ("Dutch car", "US spec"). */
export function marketOf(view: MessageView, said: readonly string[]): string | undefined {
  const { markets } = view.lexicon.handbook.cars;
  return said.map((adjective) => namedBy(markets, adjective)).find((each) => each !== undefined);
}

const plainOne = /^(?:an? |the )?(?<adjective>[a-z]+) one$/;

const aPlainOne =
  /(?:\bcar(?: \w+){0,2}? (?:is|was)|^cars) (?:just |only )?an? (?:bog )?(?<adjective>[a-z]+)(?: one\b|$)/;
const myPlainOne = /^(?:mines|mine is) (?:just |only )?an? (?:bog )?(?<adjective>[a-z]+) one\b/;

function isPartSpokenOf(view: MessageView): boolean {
  return view.context.part !== undefined || view.mentioned.some((part) => part !== undefined);
}

/** "My car is a base one", "car is right hand drive, standard one": of the car, not of a part. */
export function trimsByAdjective(view: MessageView): readonly CarFinding[] {
  return view.clauses.flatMap((clause, at) => {
    const aside = view.stances[at]?.aside;
    if (aside === "hearsay" || aside === "another-car" || isAnyCar(view, at)) return [];
    const before = view.clauses[at - 1];
    const isOfCar = before?.sentence === clause.sentence && /\bcar\b/.test(before.text);
    const said =
      (isOfCar ? plainOne.exec(clause.text) : null) ??
      aPlainOne.exec(clause.text) ??
      (isPartSpokenOf(view) ? null : myPlainOne.exec(clause.text));
    const id = namedBy(view.lexicon.handbook.cars.trims, said?.groups?.adjective ?? "");
    return id === undefined
      ? []
      : [{ about: "trim" as const, id, words: wordsBetween(view, clause.from, clause.to) }];
  });
}

interface Named {
  readonly id: string;
  readonly name: string;
  readonly also: readonly string[];
}

/** The one that has the adjective before a word for cars among its names. */
function namedBy(things: readonly Named[], adjective: string): string | undefined {
  if (adjective === "") return undefined;
  return things.find(({ name, also }) =>
    [name, ...also].some((each) => {
      const [first = "", second = ""] = each.toLowerCase().split(/[ -]+/);
      return first === adjective && ofCar.test(second);
    }),
  )?.id;
}
