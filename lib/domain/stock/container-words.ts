import { formatQuantity } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { type Dimension } from "#domain/quantities/units";

/** What product comes in. */
export const CONTAINERS = ["bag", "jug", "bottle", "drum", "box"] as const;
export type Container = (typeof CONTAINERS)[number];

const MANY: Readonly<Record<Container, string>> = { bag: "bags", jug: "jugs", bottle: "bottles", drum: "drums", box: "boxes" };

function counted(count: bigint, container: Container): string {
  return `${count.toString()} ${count === 1n ? container : MANY[container]}`;
}

/** "12 bags of 50 lb", "1 jug of 2½ gal". */
export function containersOf(count: bigint, container: Container, size: Quantity<Dimension>): string {
  return `${counted(count, container)} of ${formatQuantity(size, "us")}`;
}

/** An amount as people count it: "11 bags of 50 lb and 23 lb", "23 lb", and below zero "23 lb too few". */
export function amountInContainers(amount: bigint, container: Container, size: Quantity<Dimension>): string {
  const { dimension } = size;
  const quantity = (value: bigint) => formatQuantity({ dimension, amount: value }, "us");
  if (amount < 0n) return `${quantity(-amount)} too few`;
  const whole = amount / size.amount;
  const rest = amount % size.amount;
  if (whole === 0n) return quantity(rest);
  return rest === 0n ? containersOf(whole, container, size) : `${containersOf(whole, container, size)} and ${quantity(rest)}`;
}

/** A sum of stock, which may be below zero: "600 lb", "3 gal too few". */
export function stockInWords(amount: bigint, dimension: Dimension): string {
  if (amount < 0n) return `${formatQuantity({ dimension, amount: -amount }, "us")} too few`;
  return formatQuantity({ dimension, amount }, "us");
}
