/** "start over": the case is empty again; what was said stays in its history, so that undo brings it back. */
import { noFacts } from "../conversation/case.ts";
import { type Change, withNote } from "../conversation/change.ts";
import { nothingToStartOver, startedOver } from "../conversation/phrases/commands.ts";

export function startOver(change: Change): Change {
  const isEmpty = change.facts.part === null && change.facts.reports.length === 0;
  if (isEmpty) return withNote(change, nothingToStartOver);
  return withNote({ ...change, facts: noFacts }, startedOver);
}
