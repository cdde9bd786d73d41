/** Something that the code itself promised is not so: a defect, never a user's mistake. */
export class BrokenInvariant extends Error {
  override readonly name = "BrokenInvariant";
}

/** Throws {@link BrokenInvariant} unless the condition holds. */
export function invariant(condition: boolean, promise: string): asserts condition {
  if (!condition) throw new BrokenInvariant(promise);
}

/**
 * Marks the end of an exhaustive switch: a new member of the union fails to compile here. Throws {@link
 * BrokenInvariant} when it is reached all the same.
 */
export function unreachable(value: never): never {
  throw new BrokenInvariant(`unreachable case: ${JSON.stringify(value)}`);
}
