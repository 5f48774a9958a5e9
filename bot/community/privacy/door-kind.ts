/** A kind under which a door keeps records of its own that may name people: erased with them. */
export interface DoorKind {
  readonly kind: string;
  /**
   * Of a kind that keeps one record for each conversation, by its id, which is others' too: what is left of a state without somebody. Left
   * out: a record that names them goes whole, for what it was for is theirs.
   */
  readonly without?: (person: string, state: unknown) => unknown;
}
