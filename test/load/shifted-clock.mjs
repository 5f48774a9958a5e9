// Loaded before a program under load: its wall clock goes before or behind the machine's by what stands in a file, read at SIGUSR2. Only
// the wall clock jumps on real machines too; timers and performance.now() go on.
import { readFileSync } from "node:fs";

const RealDate = globalThis.Date;
let shift = 0;

process.on("SIGUSR2", () => {
  shift = Number(readFileSync(process.env.CLOCK_SHIFT_FILE ?? "", "utf8"));
});

globalThis.Date = class extends RealDate {
  constructor(...given) {
    if (given.length === 0) super(RealDate.now() + shift);
    else super(...given);
  }
  static now() {
    return RealDate.now() + shift;
  }
};
