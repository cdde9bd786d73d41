import { z } from "zod";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { requiredClockTime } from "#application/clock-time.schema";
import { idField, requiredDate, requiredLine } from "#application/field.schema";
import { stockPlaceField } from "#application/stock/stock-place.schema";

/** What the tank held by its gauge: a volume with its unit, and an empty tank is one. */
function gaugeField(when: "before" | "after") {
  const missing = when === "before" ? "Give what the tank held before anything went in; 0 where it was empty." : "Give what the tank held after filling.";
  return z.string(missing).transform((text, context) => {
    const read = parseQuantity(text, { field: "gauge", dimensions: ["volume"], unitWhenNone: "gal" });
    if (read.ok) return read.value.quantity;
    context.addIssue({ code: "custom", message: text.trim() === "" ? missing : read.refusal.sentence });
    return z.NEVER;
  });
}

/** An amount of product by weight or volume, above nothing; empty where none of it went in. */
const amountField = z.string().transform((text, context) => {
  if (text.trim() === "") return undefined;
  const read = parseQuantity(text, { field: "amount", dimensions: ["mass", "volume"] });
  if (read.ok && read.value.quantity.amount > 0n) return read.value.quantity;
  context.addIssue({ code: "custom", message: read.ok ? "Leave it empty where none went in." : read.refusal.sentence });
  return z.NEVER;
});

/** Ids of visits, as one hidden field sends them. */
const visitIdsField = z
  .union([z.array(idField), z.string().transform((text) => text.split(" ").filter((part) => part !== ""))], "Choose the visits.")
  .pipe(z.array(idField).max(60, "One fill serves at most 60 visits."));

export const recordFillSchema = z.object({
  /** Made with the form, so that a second press of its button does nothing. */
  requestId: idField,
  equipmentId: idField,
  filledOn: requiredDate("the day of the fill"),
  filledAt: requiredClockTime("when it was filled"),
  mixingPlace: requiredLine("where it was mixed", 120),
  /** What was in it already; the difference of the two is the fill. */
  gaugeBefore: gaugeField("before"),
  gaugeAfter: gaugeField("after"),
  /** By product id: what really went in. */
  products: z.record(idField, amountField),
  from: stockPlaceField,
  visitIds: visitIdsField,
});

export type FillForm = z.output<typeof recordFillSchema>;
