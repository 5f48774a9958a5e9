/**
 * The kinds under which doors keep records of their own that may name somebody: which message shows whose case, where a person spoke last, who
 * is signed in. A door that keeps another kind adds it here, so that what somebody has erased is erased there too.
 */
import type { DoorKind } from "../bot/index.ts";
import { shownWithout } from "./telegram/shown.ts";

export const doorKinds: readonly DoorKind[] = [
  { kind: "discord-person" },
  { kind: "discord-place" },
  { kind: "telegram-person" },
  { kind: "telegram-place", without: shownWithout },
  { kind: "web-session" },
];
