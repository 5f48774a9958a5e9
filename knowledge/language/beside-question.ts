// While a question is open, a lone word within a short answer is about what was asked, if about anything. A message that
// is nothing but the word speaks for itself: "Corvane", said when the width was asked for, is the maker's stamp.
import type { MessageView } from "./message-view.ts";

const longestShortAnswer = 8;

/** Whether a lone word for this feature stands beside an open question for another and so tells nothing. */
export function isBesideQuestion(view: MessageView, feature: string): boolean {
  const asked = view.context.askedFeature;
  const count = view.tokens.length;
  return asked !== undefined && asked !== feature && count > 1 && count <= longestShortAnswer;
}
