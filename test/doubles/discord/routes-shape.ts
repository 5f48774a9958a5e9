// What a route of the double is given and may answer or refuse with.
import type { Gateway } from "./gateway.ts";
import type { SentFile } from "./http.ts";
import type { Json, Message } from "./wire-shapes.ts";
import type { World } from "./world.ts";

export interface Asked {
  readonly world: World;
  readonly gateway: Gateway;
  /** What stands in the path's brackets. */
  readonly names: readonly string[];
  readonly query: URLSearchParams;
  readonly body: Json;
  readonly files: ReadonlyMap<string, SentFile>;
  /** By performance.now(). */
  readonly arrived: number;
  readonly shown: (message: Message) => Json;
  readonly host: string;
}

export interface Route {
  readonly method: string;
  readonly path: RegExp;
  /** No bot token is needed, the path carries its own. */
  readonly isOpen?: boolean;
  readonly answer: (asked: Asked) => unknown;
}

/** A refusal in Discord's own numbers. */
export class ApiError extends Error {
  readonly status: number;
  readonly code: number;

  constructor(status: number, code: number, message: string) {
    super(message);
    this.status = status;
    this.code = code;
  }
}

export const unknownChannel = () => new ApiError(404, 10003, "Unknown Channel");
export const unknownMessage = () => new ApiError(404, 10008, "Unknown Message");
export const unknownMember = () => new ApiError(404, 10007, "Unknown Member");
export const unknownWebhook = () => new ApiError(404, 10015, "Unknown Webhook");
export const invalidToken = () => new ApiError(401, 50027, "Invalid Webhook Token");
export const unknownInteraction = () => new ApiError(404, 10062, "Unknown interaction");
export const acknowledgedAlready = () =>
  new ApiError(400, 40060, "Interaction has already been acknowledged.");
export const missingPermissions = () => new ApiError(403, 50013, "Missing Permissions");
export const missingAccess = () => new ApiError(403, 50001, "Missing Access");
export const notYours = () => new ApiError(403, 50005, "Cannot edit a message authored by another user");
export const cannotSendToUser = () => new ApiError(403, 50007, "Cannot send messages to this user");
export const invalidForm = (what: string) => new ApiError(400, 50035, `Invalid Form Body: ${what}`);
