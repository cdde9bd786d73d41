import { invariant } from "#domain/foundation/invariant";

/** What a record may hold: text, whole numbers, yes and no, nothing, lists and named parts. No fractions, no dates. */
export type PlainValue = string | number | boolean | null | readonly PlainValue[] | { readonly [name: string]: PlainValue };

/** Half of a surrogate pair: with the u flag whole pairs are one character and do not match. */
const HALF_A_PAIR = /\p{Cs}/u;

/**
 * One value as one text, always the same for the same value: names in the order of their UTF-16 code units, no spaces,
 * as RFC 8785 (JSON Canonicalization Scheme) writes it. Numbers are whole and within 2^53, so that no rule about
 * fractions is needed; halves of surrogate pairs are no text. Throws on anything else.
 */
export function canonicalJson(value: PlainValue): string {
  if (value === null || typeof value === "boolean") return JSON.stringify(value);
  if (typeof value === "string") {
    invariant(!HALF_A_PAIR.test(value), "text of a record is whole characters");
    return JSON.stringify(value);
  }
  if (typeof value === "number") {
    invariant(Number.isSafeInteger(value), "a number of a record is whole and within 2^53");
    return JSON.stringify(Object.is(value, -0) ? 0 : value);
  }
  if (isList(value)) return `[${value.map(canonicalJson).join(",")}]`;
  const names = Object.keys(value).sort(byCodeUnits);
  const parts = names.map((name) => {
    const part = value[name];
    invariant(part !== undefined, `"${name}" of a record has a value`);
    return `${canonicalJson(name)}:${canonicalJson(part)}`;
  });
  return `{${parts.join(",")}}`;
}

function isList(value: PlainValue): value is readonly PlainValue[] {
  return Array.isArray(value);
}

function byCodeUnits(left: string, right: string): number {
  if (left === right) return 0;
  return left < right ? -1 : 1;
}
