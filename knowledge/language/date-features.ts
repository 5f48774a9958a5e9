// Which date feature a mark is of: the one named nearest, the one just asked, the only one of the part, or the only one
// that takes such a form.
import type { DateFeature } from "../handbook/schema.ts";
import { numberOf } from "./fold-word.ts";
import type { MessageView } from "./message-view.ts";

/** The form a mark as written has: a week and a year, a month and a year, or none that tells. */
export function shapeForm(written: string): string | undefined {
  if (/^(?:1[3-9]|[2-5]\d)(?: ?[/.-] ?| )\d{2}$/.test(written)) return "week-year";
  if (/^(?:week|wk|w)\b|w\d\d|\bweek\b/.test(written)) return "week-year";
  return /^\d{1,2}(?: ?[/.-] ?| )\d{2,4}$|^[a-z]{3,9}/.test(written) ? "month-year" : undefined;
}

/** The date feature named nearest, the one asked, the only one, or the only one that takes such a form. */
export function chooseDateFeature(
  view: MessageView,
  clause: number,
  at: number,
  form: string | undefined,
): { readonly part: string; readonly feature: DateFeature } | "several" | undefined {
  const partId = view.partOf[clause];
  const features = view.lexicon.handbook.parts
    .filter((part) => partId === undefined || part.id === partId)
    .flatMap((part) =>
      part.features.flatMap((feature) => (feature.kind === "date" ? [{ part: part.id, feature }] : [])),
    );
  const [first] = features;
  if (first === undefined) return undefined;
  const suited = features.filter(({ feature }) => form !== undefined && takesForm(feature, form));
  // A dial or a figure with dots is told as such, and no feature that has none is meant.
  const isOwnForm = suited.length > 0 && form !== "month-year";
  // "12/82 in the corner" is no figure with dots.
  const written = form === undefined ? features : features.filter(({ feature }) => !isOfDots(feature, form));
  const ranked = (isOwnForm ? suited : written)
    .map((each) => ({
      each,
      support: dateSupport(view, each, clause, at) + formSupport(each.feature, form),
    }))
    .sort((one, other) => other.support - one.support);
  const [best, second] = ranked;
  if (best === undefined) return undefined;
  if (partId === undefined && best.support < 2) return undefined;
  return second !== undefined && second.support === best.support ? "several" : best.each;
}

/** "12 81" is December 1981 or week 12: the month is what most write so, and the week is left where something else speaks for it. */
function formSupport(feature: DateFeature, form: string | undefined): number {
  if (form === undefined) return 0;
  if (takesForm(feature, form)) return 0.6;
  return form === "month-year" && takesForm(feature, "week-year") ? 0.5 : 0;
}

function isOfDots({ forms }: DateFeature, form: string): boolean {
  return (
    /^(?:week|month)-year$/.test(form) && forms.every((one) => one === "glass-dots" || one === "dot-grid")
  );
}

function takesForm(feature: DateFeature, form: string): boolean {
  return feature.forms.some((one) => one === form);
}

function dateSupport(
  view: MessageView,
  each: { readonly part: string; readonly feature: DateFeature },
  clause: number,
  at: number,
): number {
  const isIt = (spotted: MessageView["spotted"][number]): boolean =>
    spotted.phrase.meanings.some(
      (one) => one.kind === "feature" && one.part === each.part && one.feature === each.feature.id,
    );
  const sentence = view.clauses[clause]?.sentence;
  const named = view.spotted.reduce((best, spotted) => {
    const where = view.clauseOf[spotted.from] ?? 0;
    if (!isIt(spotted) || view.clauses[where]?.sentence !== sentence) return best;
    const hasOwnDate = where !== clause && /\d/.test(view.clauses[where]?.text ?? "");
    if (hasOwnDate) return best;
    return Math.max(best, (where === clause ? 4 : 2.5) - Math.min(1, Math.abs(spotted.from - at) / 20));
  }, 0);
  const asked = view.context.askedFeature === each.feature.id ? 2 : 0;
  return named + asked + cueSupport(view, each, clause);
}

function cueSupport(
  view: MessageView,
  each: { readonly part: string; readonly feature: DateFeature },
  clause: number,
): number {
  const cues = view.lexicon.parts.get(each.part)?.cues;
  const sentence = view.clauses[clause]?.sentence;
  const stretch = view.tokens.filter((_, at) => view.clauses[view.clauseOf[at] ?? 0]?.sentence === sentence);
  const support = stretch.reduce((sum, token) => {
    // The figures of the mark itself name no feature.
    const features =
      numberOf(token.stem) !== undefined || /^\d/.test(token.stem) ? undefined : cues?.get(token.stem);
    return features?.has(each.feature.id) ? sum + 1 / features.size : sum;
  }, 0);
  return Math.min(support, 2);
}
