import { accept, refuse } from "#domain/foundation/outcome";
import { settle } from "#domain/quantities/exact-quantity";
import { parseLength } from "#domain/quantities/parse-length";
import { compare, type Quantity } from "#domain/quantities/quantity";
import { type ReadAnswer } from "#domain/label/label-answer";

/** How far from water a product stays: with a spreader that has a deflector, and with everything else. */
export interface DistanceToWater {
  readonly withDeflector: Quantity<"length">;
  readonly otherwise: Quantity<"length">;
}

const WITH = /^(.+?) with (?:a |the )?deflector$/iu;
const OTHERWISE = /^(?:(.+?) (?:otherwise|without(?: a| the)?(?: deflector)?)|otherwise (.+))$/iu;
const ASKED = "Write as in 25 ft; or 3 ft with a deflector, 15 ft otherwise.";

function readOne(text: string): ReadAnswer<Quantity<"length">> {
  const read = parseLength(text, { field: "distance" });
  if (!read.ok) return refuse(`${read.refusal.sentence} ${ASKED}`);
  const distance = settle(read.value.exact, "up");
  return distance.amount > 0n ? accept(distance) : refuse("A distance of nothing is none. Write none where the label states no distance.");
}

/**
 * Reads one distance for every machine, "25 ft", or one with a deflector and one otherwise, "3 ft with a deflector, 15
 * ft otherwise". Refuses a distance of nothing, one of the two alone, and a deflector that would have to stay farther
 * away. A part of a canonical length is rounded up.
 */
export function readDistanceToWater(value: string): ReadAnswer<DistanceToWater> {
  const parts = value.split(/[,;\n]/u).map((part) => part.trim()).filter((part) => part !== "");
  const [first = "", second, ...more] = parts;
  if (more.length > 0) return refuse(ASKED);
  if (second === undefined) {
    if (/deflector|otherwise/iu.test(first)) return refuse(`Write both distances. ${ASKED}`);
    const one = readOne(first);
    return one.ok ? accept({ withDeflector: one.value, otherwise: one.value }) : one;
  }
  const shielded = [first, second].map((part) => WITH.exec(part)?.[1]).find((part) => part !== undefined);
  const open = [first, second].map((part) => OTHERWISE.exec(part)).map((found) => found?.[1] ?? found?.[2]).find((part) => part !== undefined);
  if (shielded === undefined || open === undefined) return refuse(ASKED);
  const withDeflector = readOne(shielded);
  if (!withDeflector.ok) return withDeflector;
  const otherwise = readOne(open);
  if (!otherwise.ok) return otherwise;
  if (compare(withDeflector.value, otherwise.value) > 0) return refuse("With a deflector it would stay farther away than without one. Look at the label again.");
  return accept({ withDeflector: withDeflector.value, otherwise: otherwise.value });
}
