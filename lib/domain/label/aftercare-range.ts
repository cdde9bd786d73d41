import { compareExact, isNothing } from "#domain/quantities/exact-quantity";
import { badInput } from "#domain/foundation/outcome";
import { type RangeCheck, type Refused, refuseOutOfRange } from "#domain/turf/physical-range";
import {
  AT_ONCE_MINUTES,
  type DueReach,
  type LabelAftercare,
  type Reach,
  type ReachBack,
  statedConstraint,
  type Until,
} from "#domain/label/aftercare-constraint";
import { type MowingCount } from "#domain/label/mowing-count";

/**
 * The longest reach taken for meant: two years, for a soil residual, and a dozen mowings. Longer ones are slips of a
 * unit. Common practice.
 */
const LONGEST = { minutes: 1_051_200, days: 730, months: 24, mowings: 12 } as const;

type AnyReach = Reach | ReachBack | DueReach | MowingCount;

/** The labels that were looked at and found possible: a day asks for those of its few products again at every stop. */
const POSSIBLE = new WeakSet<LabelAftercare>();

/**
 * Refuses aftercare that can't be meant: a time below zero or over two years, part of a minute or day, no end at all, a
 * depth of nothing or a most under its least, watering that waits for itself. Each at a field that begins with the
 * product's name.
 */
export function refuseImpossibleAftercare(label: LabelAftercare): Refused | undefined {
  if (POSSIBLE.has(label)) return undefined;
  const refusal = firstImpossible(label);
  if (refusal === undefined) POSSIBLE.add(label);
  return refusal;
}

function firstImpossible(label: LabelAftercare): Refused | undefined {
  const reaches = reachesOf(label).map(measured);
  return refuseOutOfRange(reachChecks(label, reaches)) ?? refuseParts(label, reaches) ?? refuseEndless(label) ?? refuseDepth(label);
}

function untilsOf(label: LabelAftercare): readonly Until[] {
  return [
    ...statedConstraint(label, "people-and-pets").flatMap(({ untilLaterOf }) => untilLaterOf),
    ...statedConstraint(label, "watering-not-before").flatMap(({ untilLaterOf }) => untilLaterOf),
    ...statedConstraint(label, "mowing-after").flatMap(({ untilLaterOf }) => untilLaterOf),
  ];
}

function reachesOf(label: LabelAftercare): readonly AnyReach[] {
  return [
    ...untilsOf(label).flatMap((until) => (until.anchor === "state" ? [] : [until])),
    ...statedConstraint(label, "watering-in").flatMap(({ by }) => (by === "not-stated" ? [] : [by])),
    ...statedConstraint(label, "rain-that-spoils").map(({ within }) => within),
    ...statedConstraint(label, "mowing-before").map(({ within }) => within),
    ...statedConstraint(label, "seeding-before").map(({ within }) => within),
    ...statedConstraint(label, "seeding-after").flatMap(({ intervals }) => intervals.map(({ until }) => until)),
    ...statedConstraint(label, "posting-sign").flatMap(({ mayComeDown }) => signReach(mayComeDown)),
  ];
}

function signReach(down: StatedSignDown): readonly Reach[] {
  if (down.trigger === "no-time-required" || down.trigger === "state") return [];
  if (down.trigger === "elapsed") return [{ anchor: down.anchor, durationMinutes: down.durationMinutes }];
  const days = down.trigger === "days-after-completion" ? down.daysAfter : down.daysFollowing;
  return [{ anchor: "calendar-day", days }];
}

type StatedSignDown = ReturnType<typeof statedConstraint<"posting-sign">>[number]["mayComeDown"];

interface Measured {
  readonly value: number;
  readonly unit: keyof typeof LONGEST;
}

function measured(reach: AnyReach): Measured {
  switch (reach.anchor) {
    case "days":
    case "calendar-day":
      return { value: reach.days, unit: "days" };
    case "calendar-month":
      return { value: reach.months, unit: "months" };
    case "mowings":
      return { value: reach.count, unit: "mowings" };
    case "at-once":
      return { value: AT_ONCE_MINUTES, unit: "minutes" };
    case "application-start":
    case "application-end":
    case "posting":
      return { value: reach.durationMinutes, unit: "minutes" };
  }
}

function reachChecks(label: LabelAftercare, reaches: readonly Measured[]): readonly RangeCheck[] {
  return reaches.map(({ value, unit }) => {
    const words = `A time for ${label.productName}`;
    return { field: `${label.productName} ${unit}`, words, value, lowest: 0, highest: LONGEST[unit], unit };
  });
}

function refuseParts(label: LabelAftercare, reaches: readonly Measured[]): Refused | undefined {
  const part = reaches.find(({ value }) => !Number.isInteger(value));
  if (part === undefined) return undefined;
  const { value, unit } = part;
  const sentence = `A time for ${label.productName} is ${value} ${unit}; give whole ${unit}.`;
  return badInput(`${label.productName} ${unit}`, `${value} ${unit}`, `whole ${unit}`, sentence);
}

function refuseEndless(label: LabelAftercare): Refused | undefined {
  const { productName } = label;
  const ends = [
    ...statedConstraint(label, "people-and-pets"),
    ...statedConstraint(label, "watering-not-before"),
    ...statedConstraint(label, "mowing-after"),
  ].map(({ kind, untilLaterOf }) => ({ kind, count: untilLaterOf.length }));
  const seeding = statedConstraint(label, "seeding-after").map(({ kind, intervals }) => ({ kind, count: intervals.length }));
  const endless = [...ends, ...seeding].find(({ count }) => count === 0);
  if (endless !== undefined) {
    const sentence = `A limit of ${productName} has no end: say until when it holds.`;
    return badInput(`${productName} ${endless.kind}`, "no end", "one end or more", sentence);
  }
  const waitsForItself = statedConstraint(label, "watering-not-before").some(({ untilLaterOf }) =>
    untilLaterOf.some((until) => until.anchor === "state" && until.state.startsWith("watered-in")),
  );
  if (!waitsForItself) return undefined;
  const sentence = `Watering of ${productName} can't wait until it has been watered in.`;
  return badInput(`${productName} watering-not-before`, "watered in", "a time, dry, dust settled", sentence);
}

function refuseDepth(label: LabelAftercare): Refused | undefined {
  const { productName } = label;
  const depths = statedConstraint(label, "watering-in").flatMap(({ depth }) => (depth === "not-stated" ? [] : [depth]));
  const rains = statedConstraint(label, "rain-that-spoils").flatMap(({ from }) => (from === "any" ? [] : [from]));
  if ([...depths.map(({ least }) => least), ...rains].some(isNothing)) {
    return badInput(`${productName} depth`, "0", "more than nothing", `A depth of water for ${productName} is zero.`);
  }
  if (depths.some(({ least, most }) => most !== "none" && compareExact(least, most) > 0)) {
    const sentence = `The most water for ${productName} is less than the least.`;
    return badInput(`${productName} depth`, "most under least", "a most of at least the least", sentence);
  }
  return undefined;
}
