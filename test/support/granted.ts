// The value of a result that a test expects to be there; the reason of a refusal becomes the failure.
import type { Result } from "../../knowledge/dating/result.ts";

export function granted<Value>(result: Result<Value, unknown>): Value {
  if (!result.ok) throw new Error(`refused: ${JSON.stringify(result.problem)}`);
  return result.value;
}
