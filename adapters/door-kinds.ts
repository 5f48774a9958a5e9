/**
 * The kinds under which doors keep records of their own that may name somebody: which message shows whose case, where a person spoke last, who
 * is signed in. A door that keeps another kind adds it here, so that what somebody has erased is erased there too.
 */
export const doorKinds: readonly string[] = [
  "discord-person",
  "discord-place",
  "telegram-person",
  "telegram-place",
  "web-session",
];
