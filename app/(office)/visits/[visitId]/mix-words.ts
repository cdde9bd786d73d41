import { formatQuantity, writeQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { type Quantity } from "#domain/quantities/quantity";
import { type Rate } from "#domain/quantities/rate";

type Product = Quantity<"mass"> | Quantity<"volume">;

/** An amount at the size of amounts, with its tool's marks. */
export function amountProps(amount: Product, marks: bigint | null, toolName: string | null): { readonly figure: string; readonly unit: string; readonly tool: string } {
  return { ...writeQuantity(amount, "us"), tool: toolWords(marks, toolName) };
}

/** "half-ounce cup, 9 marks"; says so where no tool measures it. */
export function toolWords(marks: bigint | null, toolName: string | null): string {
  if (toolName === null) return "no tool on file measures it";
  if (marks === null) return `below the first mark of ${toolName}`;
  return `${toolName}, ${String(marks)} ${marks === 1n ? "mark" : "marks"}`;
}

/** What a rate really becomes, or that nothing goes down. */
export function becameWords(rate: Rate<"product-mass-per-area"> | Rate<"product-volume-per-area"> | null): string {
  if (rate === null) return "nothing";
  return rate.basis === "product-mass-per-area" ? formatRate(rate, "us") : formatRate(rate, "us");
}

/** How strong a spray is: "1 fl oz per gal". */
export function concentrationWords(rate: Rate<"product-volume-per-spray-volume"> | Rate<"product-mass-per-spray-volume">): string {
  return rate.basis === "product-mass-per-spray-volume" ? formatRate(rate, "us") : formatRate(rate, "us");
}

/** A quantity in the units of the trade. */
export function us(quantity: Quantity<"mass"> | Quantity<"volume"> | Quantity<"area">): string {
  return formatQuantity(quantity, "us");
}
