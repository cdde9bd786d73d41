import { type Finding, takeCare } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { formatQuantitiesApart, formatQuantity } from "#domain/quantities/format-quantity";
import { compare, fromAmount, type Quantity, subtract, zero } from "#domain/quantities/quantity";
import { drawFromFill, type FillOnRecord, type LotInFill } from "#domain/mixing/tank-fill";

/** How a crew tells what was sprayed: a meter that counts up, or the tank's own gauge before and after. */
export type TankReading =
  | { readonly by: "meter"; readonly before: Quantity<"volume">; readonly after: Quantity<"volume"> }
  | { readonly by: "dip"; readonly before: Quantity<"volume">; readonly after: Quantity<"volume">; readonly filledBetween: Quantity<"volume"> };

/**
 * What was sprayed between two readings. Refused at `after`: a meter that ran backwards, and a tank that holds more
 * afterwards than it held and was filled with. Common practice.
 */
export function sprayedBetween(reading: TankReading): Outcome<Quantity<"volume">> {
  const { before, after } = reading;
  if (reading.by === "meter") {
    if (compare(after, before) >= 0) return accept(subtract(after, before));
    const [first, second] = formatQuantitiesApart(before, after, "us");
    return badInput("after", second, `${first} or more`, `The meter read ${first} before and ${second} after; it only counts up.`);
  }
  const had = fromAmount("volume", before.amount + reading.filledBetween.amount);
  if (compare(after, had) <= 0) return accept(subtract(had, after));
  const [left, most] = formatQuantitiesApart(after, had, "us");
  return badInput("after", left, `${most} or less`, `The tank can't hold ${left} after spraying: it held ${most} with what was filled in.`);
}

/** What a visit really got of a fill. */
export interface SprayedAtVisit {
  readonly visitId: string;
  readonly sprayed: Quantity<"volume">;
  /** The product, lot by lot, in canonical units of its own dimension. */
  readonly lots: readonly LotInFill[];
}

/** How a fill adds up: mixed is sprayed, left and the difference, in volume and in every lot. */
export interface FillAddedUp {
  readonly visits: readonly SprayedAtVisit[];
  readonly sprayed: Quantity<"volume">;
  /** By the dip at the end, or by the books where nobody measured it. */
  readonly left: Quantity<"volume">;
  readonly leftLots: readonly LotInFill[];
  readonly difference:
    | { readonly kind: "none" }
    /** Nobody measured what is left, so what the books have left may be a difference. */
    | { readonly kind: "not-measured" }
    /** Mixed, and neither sprayed nor left. */
    | { readonly kind: "missing"; readonly volume: Quantity<"volume">; readonly lots: readonly LotInFill[] }
    /** Sprayed or left, and never mixed. */
    | { readonly kind: "excess"; readonly volume: Quantity<"volume"> };
  readonly findings: readonly Finding[];
}

/**
 * Gallons back into product: each visit's gallons times the fill's concentration, lot by lot and taken between running
 * totals, so that visits, rest and difference add up to what went in to the last canonical unit. The difference is said with
 * where to post it. More sprayed than mixed gives the visits what there was, and says by how much it was more.
 */
export function addUpFill(
  fill: Pick<FillOnRecord, "finished" | "lots"> & { readonly name: string },
  draws: readonly { readonly visitId: string; readonly sprayed: Quantity<"volume"> }[],
  left: Quantity<"volume"> | "not-measured",
): FillAddedUp {
  let drawn = zero("volume");
  const draw = (sprayed: Quantity<"volume">) => {
    const { lots } = drawFromFill({ finished: fill.finished, lots: fill.lots, drawn }, sprayed, fill.name);
    drawn = fromAmount("volume", drawn.amount + sprayed.amount);
    return lots;
  };
  const visits = draws.map(({ visitId, sprayed }): SprayedAtVisit => ({ visitId, sprayed, lots: draw(sprayed) }));
  const sprayed = drawn;
  const remaining = fill.finished.amount - sprayed.amount;
  if (left === "not-measured") {
    const byBooks = fromAmount("volume", remaining > 0n ? remaining : 0n);
    const difference: FillAddedUp["difference"] = remaining === 0n ? { kind: "none" } : remaining > 0n ? { kind: "not-measured" } : { kind: "excess", volume: fromAmount("volume", -remaining) };
    return { visits, sprayed, left: byBooks, leftLots: draw(byBooks), difference, findings: fillDifference(fill.name, difference) };
  }
  const leftLots = draw(left);
  const missing = remaining - left.amount;
  const difference = differenceOf(missing, draw);
  return { visits, sprayed, left, leftLots, difference, findings: fillDifference(fill.name, difference) };
}

function differenceOf(missing: bigint, draw: (volume: Quantity<"volume">) => readonly LotInFill[]): FillAddedUp["difference"] {
  if (missing === 0n) return { kind: "none" };
  if (missing < 0n) return { kind: "excess", volume: fromAmount("volume", -missing) };
  const volume = fromAmount("volume", missing);
  return { kind: "missing", volume, lots: draw(volume) };
}

/** What is said of a fill that does not add up, with where to post the difference; nothing where nobody measured what is left. */
export function fillDifference(name: string, difference: FillAddedUp["difference"]): readonly Finding[] {
  if (difference.kind === "none" || difference.kind === "not-measured") return [];
  const isMissing = difference.kind === "missing";
  return [
    takeCare({
      rule: "fill-does-not-add-up",
      source: "stock",
      what: isMissing ? `Of ${name} more was mixed than was sprayed and is left.` : `Of ${name} more was sprayed or is left than was mixed.`,
      figure: `The difference is ${formatQuantity(difference.volume, "us")}.`,
      toDo: isMissing
        ? "Post its product to loss where it was spilled or dumped, to the rinsate tank where it is kept, else to count difference."
        : "Check meter, gauge and fill; amend the record that is wrong, or post the product to count difference.",
      about: [name],
    }),
  ];
}
