import { a } from "../knowledge/index.ts";
export const b = a;
