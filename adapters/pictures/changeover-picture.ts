/** The timeline of a reply as a drawing: its words broken into lines that fit, the rest as `timeline` draws it. */
import type { ChainChart, ChangeoverChart } from "../../bot/index.ts";
import { wrapped } from "../terminal/wrap.ts";
import { chainTimeline } from "./chain-timeline.ts";
import { timeline, timelineLineLength } from "./timeline.ts";

const MOST_NAME_LINES = 2;

export function changeoverPicture(chart: ChangeoverChart | ChainChart): string {
  if ("lanes" in chart) return chainTimeline(chart);
  const side = (words: string) =>
    words === "" ? [] : wrapped(words, timelineLineLength).slice(0, MOST_NAME_LINES);
  return timeline({
    ...chart,
    heading: chart.heading.flatMap((line) => wrapped(line, timelineLineLength)),
    old: side(chart.old),
    new: side(chart.new),
  });
}
