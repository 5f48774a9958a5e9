import { b } from "../bot/index.ts";
console.log(b, process.pid);
