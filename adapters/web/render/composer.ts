/** The field in which one says in one's own words what one sees, with photographs. */
import { chat } from "../phrases.ts";
import { html, type Markup } from "./markup.ts";
import type { Controls } from "./rendering.ts";

export interface Composer extends Controls {
  readonly canPhotograph: boolean;
  /** Stands in the field to begin with. */
  readonly text?: string | undefined;
  /** What was refused of what was sent last, in a sentence. */
  readonly problem?: string | undefined;
}

export function composer({ action, hidden, canPhotograph, text, problem }: Composer): Markup {
  const photographs =
    canPhotograph &&
    html`<label for="photographs">${chat.photographs}</label><input id="photographs" type="file" name="photographs" accept="image/jpeg,image/png,image/webp" multiple aria-describedby="photographs-hint"><span class="hint" id="photographs-hint">${chat.photographsHint}</span>`;
  const encoding = canPhotograph && html` enctype="multipart/form-data"`;
  return html`<form method="post" action="${action}" class="say" id="say"${encoding} data-lost="${chat.lost}" data-sending="${chat.sending}">${hidden}
${problem !== undefined && html`<p class="caution" role="alert" data-refusal>${problem}</p>`}
<label for="text">${chat.saySomething}</label>
<textarea id="text" name="text" rows="3" maxlength="8000" autocomplete="off"${problem !== undefined && html` autofocus`}>\n${text}</textarea>
${photographs}
<p class="row"><button type="submit" class="main">${chat.send}</button><span role="status" class="hint"></span></p>
</form>`;
}
