/** `npm start`. Everything that is wired together is in composition-root.ts; this only sees to it that it starts quickly. */
import { keepCompiled } from "./compile-cache.ts";

keepCompiled();
await import("./composition-root.ts");
