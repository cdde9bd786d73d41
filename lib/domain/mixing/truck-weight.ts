import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { massOf, volumeOf, WATER } from "#domain/quantities/density";
import { fromExactAmount, settle } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity } from "#domain/quantities/quantity";
import { multiplyRational, type Rational, rational, subtractRational, divideRational } from "#domain/quantities/rational";
import { type FillStop } from "#domain/mixing/tank-fill";
import { allIn } from "#domain/mixing/tank-rests";
import { type LoadedTruck, type TankAboard, type TankPlanQuestion } from "#domain/mixing/tank-plan-question";

/**
 * What part of a finished spray is water: all but its liquid products; none where they leave no room for it. Volumes
 * are taken to add up (common practice).
 */
export function waterShareOf(products: readonly Pick<FillStop["products"][number], "concentration">[]): Rational {
  const share = products.reduce(
    (left, { concentration }) => (concentration.basis === "product-volume-per-spray-volume" ? subtractRational(left, rational(concentration.amount, concentration.per)) : left),
    rational(1n),
  );
  return share.numerator < 0n ? rational(0n) : share;
}

/** What the water in so much finished spray weighs, both in canonical units. Water is taken at 1 kg/L. */
export function waterWeight(spray: bigint, waterShare: Rational): bigint {
  return settle(massOf(fromExactAmount("volume", multiplyRational(rational(spray), waterShare)), WATER), "up").amount;
}

/** Puts a weight on the truck on the way to each stop from one until before another; one below nothing comes off there. In canonical units. */
export function addWeight(weights: bigint[], weight: bigint, from: number, until: number): void {
  for (let index = from; index < until; index += 1) weights[index] = (weights[index] ?? 0n) + weight;
}

/**
 * How much finished spray may come aboard where so much weight may, both in canonical units; undefined where it brings
 * no water and so no weight.
 */
export function sprayWithin(room: bigint, waterShare: Rational): bigint | undefined {
  if (waterShare.numerator === 0n) return undefined;
  const water = volumeOf(fromAmount("mass", room < 0n ? 0n : room), WATER);
  return settle(fromExactAmount("volume", divideRational(water.exactAmount, waterShare)), "down").amount;
}

/** What a truck carries of products and water where it carries most. */
export interface HeaviestLoad {
  readonly weight: Quantity<"mass">;
  /** The stop on the way to which it is; null for a truck that carries nothing. */
  readonly visitId: string | null;
}

/** What rides along every day, in canonical units; nothing where nobody has entered it, which wants care. */
export function weightStaying({ staysAboard }: LoadedTruck): bigint {
  return staysAboard === "unknown" ? 0n : staysAboard.amount;
}

/**
 * What the truck's own payload says to its heaviest load and to what rides along every day: unknown wants care, more than it
 * may is a hold.
 */
export function checkPayload({ weight }: HeaviestLoad, truck: LoadedTruck): readonly Finding[] {
  const { name, payload, staysAboard } = truck;
  const words = { source: "house", about: [name] } as const;
  if (weight.amount === 0n) return [];
  if (payload === null) {
    return [
      takeCare({
        ...words,
        rule: "payload-not-on-file",
        what: `What ${name} may carry is not on file.`,
        figure: `Products and water weigh ${formatQuantity(weight, "us")}.`,
        toDo: "Enter the payload from the door sticker, and what rides along every day.",
      }),
    ];
  }
  const open = staysAboard === "unknown" ? [staysUnweighed(truck, weight, payload)] : [];
  const whole = fromAmount("mass", weight.amount + weightStaying(truck));
  if (compare(whole, payload) <= 0) return open;
  const [loaded, most] = formatQuantitiesApart(whole, payload, "us");
  return [
    ...open,
    hold("office", {
      ...words,
      rule: "above-payload",
      what: `${name} would carry more than it may.`,
      figure: `${staysAboard === "unknown" ? "Products and water" : "People, fixed gear, products and water"} weigh ${loaded}; the payload is ${most}.`,
      toDo: "Move stops to another truck, or fetch part of the bags later.",
    }),
  ];
}

function staysUnweighed({ name }: LoadedTruck, weight: Quantity<"mass">, payload: Quantity<"mass">): Finding {
  return takeCare({
    source: "house",
    about: [name],
    rule: "stays-aboard-not-on-file",
    what: `What people and fixed gear on ${name} weigh is not on file.`,
    figure: `Products and water weigh ${formatQuantity(weight, "us")}; the payload of ${formatQuantity(payload, "us")} is for all of it together.`,
    toDo: "Enter with the truck what rides along every day.",
  });
}

/** Of which sprayers that no stop uses nobody knows how much of a mix is in them, where the truck's payload is on file and its load is held against it. */
export function unweighedRests({ truck, lastHeld, stops, settings }: Pick<TankPlanQuestion, "truck" | "lastHeld" | "stops" | "settings">, unused: readonly TankAboard[]): readonly Finding[] {
  const names = unused.flatMap(({ equipmentId, name }) => {
    const held = lastHeld.get(equipmentId);
    return held !== undefined && typeof held !== "string" && allIn(held, settings) === "unknown" ? [name] : [];
  });
  if (names.length === 0 || stops.length === 0 || truck.payload === null) return [];
  return [
    takeCare({
      rule: "rest-not-weighed",
      source: "house",
      what: `How much is left in ${listWords(names)} is not known, and it rides along on ${truck.name}.`,
      figure: "It is not in what the truck is said to weigh.",
      toDo: "Read the gauge and write the reading down.",
      about: [truck.name, ...names],
    }),
  ];
}
