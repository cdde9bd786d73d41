import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { compareRational } from "#domain/quantities/rational";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketApplicator, type TicketTreatment } from "#domain/mixing/ticket-question";

/** True for a product that is registered as a pesticide, or of which nobody has read whether it is. */
function mayBePesticide({ label }: TicketTreatment): boolean {
  return label.epaRegistrationNumber !== "none";
}

/**
 * Whether the applicator may put this down: an expired license is never named on a ticket, a technician works under a
 * named applicator's supervision, and pesticides want a license at all.
 */
export function checkLicense({ name, license }: TicketApplicator, treatments: readonly TicketTreatment[]): readonly Finding[] {
  const pesticides = treatments.filter(mayBePesticide).map(({ label }) => label.productName);
  if (license.standing === "stands") {
    if (license.kind === "certified-applicator") return [];
    return [
      takeCare({
        rule: "technician-under-supervision",
        source: "law",
        what: `${name} works as a registered technician.`,
        toDo: "Name the applicator who supervises; the state says how near that person must be.",
        about: [name, ...pesticides],
      }),
    ];
  }
  const what = license.standing === "expired" ? `The license of ${name} has run out.` : `${name} has no license on file for this state.`;
  const toDo = "Give the visit to someone with a license that stands.";
  if (pesticides.length > 0) return [hold("office", { rule: "license-missing", source: "law", what, toDo, about: [name, ...pesticides] })];
  const advice = "Only fertilizer goes down; look up whether the state asks for a license for it.";
  return [takeCare({ rule: "license-missing", source: "law", what, toDo: advice, about: [name] })];
}

/** What is needed against what the shop and the trucks hold. */
export function checkStock(treatment: TicketTreatment, needed: ProductAmount): readonly Finding[] {
  const { label, onHand } = treatment;
  if (onHand.dimension !== needed.dimension) {
    return [
      hold("office", {
        rule: "stock-by-another-measure",
        source: "stock",
        what: `${label.productName} is counted by ${onHand.dimension} and planned by ${needed.dimension}.`,
        toDo: "Plan it as it is counted.",
        about: [label.productName],
      }),
    ];
  }
  if (compareRational(canonicalAmountOf(onHand), canonicalAmountOf(needed)) >= 0) return [];
  return [
    hold("office", {
      rule: "stock-short",
      source: "stock",
      what: `Not enough ${label.productName} is on hand.`,
      figure: `The visit needs ${formatQuantity(needed, "us")}; the shop and the trucks hold ${formatQuantity(onHand, "us")}.`,
      toDo: "Receive more, or count what is there.",
      about: [label.productName],
    }),
  ];
}

/** Where the setting of a spreader was found at another rate than planned. */
export function checkSetting(treatment: TicketTreatment): readonly Finding[] {
  const { gear, rate, label } = treatment;
  if (!("setting" in gear) || gear.setting === "not-calibrated" || rate.basis !== "product-mass-per-area") return [];
  const { rate: found, setting } = gear.setting;
  // The same figure within a twentieth counts as the same; a spreader repeats no better.
  const difference = rate.amount * found.per - found.amount * rate.per;
  const isNear = (difference < 0n ? -difference : difference) * 20n <= rate.amount * found.per;
  if (isNear) return [];
  return [
    note({
      rule: "setting-of-another-rate",
      source: "house",
      what: `Setting ${setting} of ${gear.name} was calibrated at another rate for ${label.productName}.`,
      toDo: "Weigh out what each lawn gets and set by trial, or calibrate at this rate.",
      about: [label.productName, gear.name],
    }),
  ];
}
