/** What a renderer needs to know beside the reply: where pictures come from, and how its controls are sent. */
import type { Drawings } from "../drawings.ts";
import { html, type Markup } from "./markup.ts";

export type Units = "metric" | "imperial";

/** What goes unseen with every form of the chat: its token, and the turn it comes after. */
export function chatFields(token: string, turn: string): Markup {
  return html`<input type="hidden" name="token" value="${token}"><input type="hidden" name="turn" value="${turn}">`;
}

/** Where forms go and what goes with them unseen: the form's token, the place of a conversation without a cookie. */
export interface Controls {
  readonly action: string;
  readonly hidden: Markup;
  /** Where an answer is made a page of; absent where that is not offered. */
  readonly share?: string;
}

export interface Rendering {
  readonly drawings: Drawings;
  /** Which unit stands first in a measurement field. */
  readonly units: Units;
  /** Absent: nothing can be pressed, the reply is read only. */
  readonly controls?: Controls;
  /** Stands in a frame of another site's page, where other pages of ours do not open. */
  readonly isFramed?: boolean;
  /** The part the reply is about, for the drawings beside its question. */
  readonly part: string | null;
}
