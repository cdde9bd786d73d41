import { type Prisma } from "#adapters/postgres/generated/client";

// Whole numbers of canonical units are bigints, which JSON does not have. In a JSON column each is {"$whole": "123"}.

const MARK = "$whole";

/** A value of plain objects, lists, text, numbers and bigints as a JSON column takes it. */
export function toStoredJson(value: unknown): Prisma.InputJsonObject {
  return JSON.parse(JSON.stringify(value, (_name, part: unknown) => (typeof part === "bigint" ? { [MARK]: part.toString() } : part))) as Prisma.InputJsonObject;
}

/** The value back, bigints included. Whoever reads knows what type was written. */
export function fromStoredJson(stored: unknown): unknown {
  return JSON.parse(JSON.stringify(stored), (_name, part: unknown) => (isMarked(part) ? BigInt(part[MARK]) : part));
}

/** Whether two values say the same. A JSON column keeps no order of names, so a value that was read back has another. */
export function isSameStored(left: unknown, right: unknown): boolean {
  return inOneOrder(left) === inOneOrder(right);
}

function inOneOrder(value: unknown): string {
  return JSON.stringify(toStoredJson(value), (_name, part: unknown) => {
    if (typeof part !== "object" || part === null || Array.isArray(part)) return part;
    return Object.fromEntries(Object.entries(part).toSorted(([left], [right]) => (left < right ? -1 : 1)));
  });
}

function isMarked(part: unknown): part is { readonly [MARK]: string } {
  if (typeof part !== "object" || part === null) return false;
  const names = Object.keys(part);
  return names.length === 1 && names[0] === MARK && typeof (part as Record<string, unknown>)[MARK] === "string";
}
