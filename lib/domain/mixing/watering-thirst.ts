import { type Finding } from "#domain/foundation/finding";
import { type AppliedConstraint, type AppliedProduct, appliedName } from "#domain/mixing/applied-product";
import { depthWords } from "#domain/mixing/irrigation-run";
import { type WateringNeed } from "#domain/mixing/watering-bounds";
import { byWords, namedOnce, type TightestPair } from "#domain/mixing/watering-pair";
import { compareExact } from "#domain/quantities/exact-quantity";
import { type UnitSystem } from "#domain/quantities/format-quantity";

/** Which of two wants more water, to sort the thirstiest last. One whose label states no depth wants the least. */
export function compareThirst(one: AppliedConstraint<"watering-in">, other: AppliedConstraint<"watering-in">): number {
  const [depth, otherDepth] = [one.constraint.depth, other.constraint.depth];
  if (depth === "not-stated" || otherDepth === "not-stated") return Number(depth !== "not-stated") - Number(otherDepth !== "not-stated");
  return compareExact(depth.least, otherDepth.least);
}

/** In which words times and depths are told. */
export interface WordsOfPlace {
  readonly timeZone: string;
  readonly unitSystem: UnitSystem;
}

/** A product that wants so much water that it keeps two others apart, or one from its own water, and what is said of that. */
export interface ThirstInTheWay {
  readonly thirstiest: WateringNeed;
  readonly what: string;
  readonly figure: string;
}

/**
 * The thirstiest, where it is its water alone that spoils what must stay dry: as much as the one that is due wants would
 * not. Undefined where those two are at odds by themselves.
 */
export function thirstInTheWay({ dry, due }: TightestPair, needs: readonly WateringNeed[], { timeZone, unitSystem }: WordsOfPlace): ThirstInTheWay | undefined {
  const thirstiest = needs.toSorted(compareThirst).at(-1);
  if (dry?.constraint.kind !== "rain-that-spoils" || due === undefined || thirstiest === undefined) return undefined;
  const [{ from }, dueDepth, depth] = [dry.constraint, due.constraint.depth, thirstiest.constraint.depth];
  if (from === "any" || depth === "not-stated" || compareThirst(thirstiest, due) === 0 || thirstiest.applied === dry.applied) return undefined;
  if (dueDepth !== "not-stated" && compareExact(dueDepth.least, from) >= 0) return undefined;
  const nameOf = ({ applied }: { readonly applied: AppliedProduct }) => appliedName(applied, timeZone);
  const until = due.applied === dry.applied ? "until its own time for water is over" : `longer than ${nameOf(due)} can wait for water`;
  return {
    thirstiest,
    what: `${nameOf(thirstiest)} wants so much water that it spoils ${nameOf(dry)} ${until}.`,
    figure: `${nameOf(thirstiest)}: at least ${depthWords(depth.least, unitSystem)}${dueWords(thirstiest, timeZone)}; ${depthWords(from, unitSystem)} spoils ${nameOf(dry)}.`,
  };
}

function dueWords(need: WateringNeed, timeZone: string): string {
  const { dueAtEpochMilliseconds: due } = need;
  return due === null ? "" : `, watered in ${byWords({ ...need, byEpochMilliseconds: due }, timeZone)}`;
}

/**
 * What is said where some of what is down already wants so much water that the rest could not be watered in as its labels
 * ask: the rest is watered in without it.
 * @param ofAll what was found where all of it was to be watered in together, whose figures it is told in
 */
export function tooMuchWater(thirsty: readonly WateringNeed[], rest: readonly WateringNeed[], ofAll: Finding, timeZone: string): Finding {
  const [thirstyNames, restNames] = [thirsty, rest].map((needs) => namedOnce(needs.map(({ applied }) => applied), timeZone));
  const then = thirsty.map((need) => {
    const { applied, dueAtEpochMilliseconds: due } = need;
    const by = due === null ? "" : ` ${byWords({ ...need, byEpochMilliseconds: due }, timeZone)}`;
    return `Then have ${appliedName(applied, timeZone)} watered in${by}, as the other products and the watering hours allow, over several goes if need be.`;
  });
  return {
    ...ofAll,
    what: `Enough water for ${thirstyNames} leaves no time to water in ${restNames}.`,
    toDo: [`Have ${restNames} watered in first, with less.`, ...then].join(" "),
    about: [...new Set(thirsty.map(({ applied }) => applied.label.productName))],
  };
}
