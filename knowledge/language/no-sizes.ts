// Figures beside which stands that they are no size of a thing: money, time, what counts the items of a list, what a scale can
// weigh, a place ("17 in the middle"), what gives way. And those whose words loosen or deny them. Everyday English, no source.
import type { MeasurementUnit } from "../evidence/report.ts";

/** What loosens a figure, before it and behind. */
export const loosely =
  /(?:\b(?:about|approx(?:imately)?\.?|around|roughly|circa|ca\.?|nearly|almost|some|say|maybe|probably|near enough|more or less|just (?:over|under|shy of)|a (?:bit|touch|hair|little|shade|smidge|fraction|whisker|tad) (?:over|under|more than|less than)|slightly (?:over|under|more than|less than))|~) ?(?:a |the )?$/i;
export const looselyAfter =
  /^ *(?:\+\/-|ish\b|or so\b|-ish\b|give or take|approx|roughly|ish|more or less|or thereabouts|odd\b)/i;
const bounded =
  /\b(?:less than|more than|under|over|at least|at most|up to|no (?:more|less) than|max(?:imum)?|min(?:imum)?) $/i;

/** "Not 1180 mm but …", "1192 mm rather than 1180": the size that it has not. */
export const denied =
  /\b(?:not|never|(?:is|was|are|were)n'?t|rather than|instead of|other than) (?:(?:exactly|the|an?|at|of|about|by) )*$/i;

/** "E4 43R-001234": letters run on. */
const isOfMark = /^(?!ish\b|j\b|x ?\d)[a-z]/i;

/** Money, time and shares are no sizes. */
const noSize =
  /^ ?(?:quid|euros?|bucks|dollars|pence|percent|%|years?|yrs?|weeks?|days?|hours?|hrs?|minutes?|mins?|ono\b|each\b)/i;
/** Figures that name or number something, and roads. */
const numbering =
  /\b(?:drove|driven|walked|cycled|ends?|ending|starts?|starting|begins?|beginning|page|stall|post|lot|table|row|unit|hall|stand)(?: (?:in|with|on|at|no\.?|number))? $/i;
/** How far something gives way is no size of it. */
const givingWay =
  /\b(?:deflects?|flex(?:es)?|bends?|moves?|squash(?:es)?|yields?|springs?|sags?|droops?|missed|play,?)(?: (?:by|of|about|around|only|maybe|some|nearly|roughly|a good|in|down|up|back|to)){0,3} $/i;
/** "My scales only go to 2 kg": what the instrument has, not what was read. */
const wholeRange =
  /\b(?:scales?|tape|rule|ruler|calipers?)\b[^.;]{0,16}\b(?:goe?s?|stops?|ends?|runs out|gives? up|gave up|starts?)\b[^.;,\d]{0,12}\b(?:to|at) $/i;
const weighing = /\bweigh(?:s|ed|ing)?(?: in)?(?: (?:at|about|around|only|some|just)){0,2} $/i;

/** "In air 640 g, in water 400": what water leaves of a weight is no weight of the part. */
const inWater = /\b(?:in|under) water(?:,|:)?(?: (?:it |its )?(?:is|was|weighs|weighed|reads|shows))? $/i;

/** "1180 wide, ± 2 mm": what a size may be out by is no size of its own. */
const tolerance = /(?:\u00b1|\+ ?\/? ?-|\bplus or minus) *$/i;

/** "One foot rubbed away": a foot of something, unless it goes on as a length. */
export function isFootOf(said: string, after: string): boolean {
  return /^one foot$/i.test(said.trim()) && /^ (?:\w+ed|worn|broken|gone|missing)\b/.test(after);
}

/** Whether what stands beside a figure makes it no size. */
export function isNoSize(unit: MeasurementUnit | null, before: string, after: string): boolean {
  if (bounded.test(before) && !loosely.test(before)) return true;
  if (wholeRange.test(before) || inWater.test(before) || tolerance.test(before)) return true;
  if (unit === null)
    return (
      isOfMark.test(after) ||
      noSize.test(after) ||
      numbering.test(before) ||
      isListMark(before, after) ||
      isOfSeries(before, after)
    );
  const isLength = /^(?:mm|cm|in)$/.test(unit);
  return isLength && (givingWay.test(before) || weighing.test(before));
}

/** "3) front flange 4) no idea": what counts the items of a list. */
function isListMark(before: string, after: string): boolean {
  return after.startsWith(")") && !before.includes("(");
}

/** "Gaps go 60, 71, 58": three figures in a row are no one's size. */
function isOfSeries(before: string, after: string): boolean {
  return (
    /^,? \d+, \d/.test(after) || /\d, \d+, $/.test(before) || (/\d, $/.test(before) && /^, \d/.test(after))
  );
}

/** "17 in the middle", "31 in stencil": a place or a manner, not inches, unless the words of a size follow. */
export function isPreposition(
  said: string | undefined,
  number: string,
  text: string,
  end: number,
  rest: string | undefined,
): boolean {
  if (said !== "in" || rest !== undefined || /[.,/]/.test(number)) return false;
  return !/^(?:$|[^ ]| [^a-z]| (?:wide|high|tall|across|thick|long|deep|dia\w*|overall|at|over|from|tip|to|on|along|around|round|up|down|above|below|under|behind|past|out|of|then|not|which|with|by|x|and|or|for|exactly|approx\w*|about|max\w*|is|so|but|rims?|wheels?|between|apart|off|as|i|it|its|measured|centres?|centers?)\b)/i.test(
    text.slice(end, end + 24),
  );
}
