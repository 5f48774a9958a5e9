/** Every affair of a community, in the order in which they are asked whether a message is theirs. */
import type { Affair } from "./affair.ts";
import { boardAffair } from "./board/board-affair.ts";
import { carSheetAffair } from "./car-sheet/car-sheet-affair.ts";
import { datingAffair } from "./dating/dating-affair.ts";
import { handOverAffair } from "./hand-over/hand-over-affair.ts";
import { helpAffair } from "./help/help-affair.ts";
import { keepersAffair } from "./keepers/keepers-affair.ts";
import { observationsAffair } from "./observations/observations-affair.ts";
import { shareAffair } from "./pages/share-affair.ts";
import { pinsAffair } from "./pins/pins-affair.ts";
import { privacyAffair } from "./privacy/privacy-affair.ts";
import { queueAffair } from "./queue/queue-affair.ts";
import { settingsAffair } from "./settings-affair.ts";
import { signInAffair } from "./sign-in/sign-in-affair.ts";

export const affairs: readonly Affair[] = [
  helpAffair,
  keepersAffair,
  signInAffair,
  shareAffair,
  settingsAffair,
  queueAffair,
  observationsAffair,
  datingAffair,
  handOverAffair,
  pinsAffair,
  boardAffair,
  carSheetAffair,
  privacyAffair,
];
