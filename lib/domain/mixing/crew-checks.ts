import { US_STATES, type UsState } from "#domain/company/us-state";
import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { canonicalAmountOf } from "#domain/quantities/exact-quantity";
import { formatQuantitiesApart } from "#domain/quantities/format-quantity";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { compareRates, type Rate, scaleRate } from "#domain/quantities/rate";
import { compareRational, rational } from "#domain/quantities/rational";
import { NOT_ON_FILE, type RulePack } from "#domain/rules/rule-pack";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketApplicator, type TicketSettings, type TicketSpreader, type TicketTreatment } from "#domain/mixing/ticket-question";

/** True for a product that is registered as a pesticide, or of which nobody has read whether it is. */
function mayBePesticide({ label }: TicketTreatment): boolean {
  return label.epaRegistrationNumber !== "none";
}

/**
 * Whether the license's category covers turf, as far as the state's categories are on file. Fertilizer alone asks for
 * none here.
 */
export function checkLicenseCategory({ name, license }: TicketApplicator, treatments: readonly TicketTreatment[], state: UsState, pack: RulePack | undefined): readonly Finding[] {
  const pesticides = treatments.filter(mayBePesticide).map(({ label }) => label.productName);
  if (license.standing !== "stands" || pesticides.length === 0) return [];
  const rule = pack?.facts["license-category"];
  const written = license.category.trim();
  const on = written === "" ? "names no category" : `is of category ${written}`;
  if (rule?.onFile !== true) {
    return [
      takeCare({
        rule: "license-category-not-on-file",
        source: "law",
        what: `The license of ${name} ${on}; which categories cover turf in ${US_STATES[state].name} is ${NOT_ON_FILE}.`,
        toDo: `Ask ${pack?.leadAgency ?? "the state's lead agency"}.`,
        about: [name],
      }),
    ];
  }
  const codeOf = (category: string) => category.toLowerCase().split(/[\s,;:]+/u)[0] ?? "";
  if (rule.value.some((code) => code.toLowerCase() === codeOf(written))) return [];
  return [
    hold("license-holder", {
      rule: "license-category",
      source: "law",
      what: `The license of ${name} does not cover turf.`,
      figure: `It ${on}; turf asks for ${rule.value.join(" or ")}.`,
      toDo: "Give the visit to someone whose license covers turf.",
      citation: rule.citation,
      about: [name, ...pesticides],
    }),
  ];
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

const COUNTED_BY = { mass: "weight", volume: "volume" } as const;

/** What the visit needs of a product in all against what there is for it: in the shop, on the trucks, and mixed for it already. */
export function checkStock(treatment: TicketTreatment, needed: ProductAmount): readonly Finding[] {
  const { label, onHand } = treatment;
  if (onHand.dimension !== needed.dimension) {
    return [
      hold("office", {
        rule: "stock-by-another-measure",
        source: "stock",
        what: `${label.productName} is counted by ${COUNTED_BY[onHand.dimension]} and planned by ${COUNTED_BY[needed.dimension]}.`,
        toDo: "Plan it as it is counted.",
        about: [label.productName],
      }),
    ];
  }
  if (compareRational(canonicalAmountOf(onHand), canonicalAmountOf(needed)) >= 0) return [];
  const [wanted, there] = formatQuantitiesApart<"mass" | "volume">(needed, onHand, "us");
  return [
    hold("office", {
      rule: "stock-short",
      source: "stock",
      what: `Not enough ${label.productName} is on hand.`,
      figure: `The visit needs ${wanted}; the shop, the trucks and what is mixed for it come to ${there}.`,
      toDo: "Receive more, or count what is there.",
      about: [label.productName],
    }),
  ];
}

/**
 * Where the setting of a spreader was found at another rate than one pass wants: half of the planned rate where the
 * company spreads twice crosswise. A setting that would put down more than the label's highest rate in all passes
 * wants care, however near it is to the plan. Else the same figure within a twentieth counts as the same (UMass
 * Extension, Rotary Spreader Calibration: accept 4.75 to 5.25 for 5.00).
 */
export function checkSetting(treatment: TicketTreatment, settings: TicketSettings): readonly Finding[] {
  const { gear, rate, label } = treatment;
  if (!("setting" in gear) || gear.setting === "not-calibrated" || rate.basis !== "product-mass-per-area") return [];
  const { setting } = gear.setting;
  const passes = settings.granularPasses === "two-at-half-rate-crosswise" ? 2n : 1n;
  const found = scaleRate(gear.setting.rate, rational(passes));
  const difference = rate.amount * found.per - found.amount * rate.per;
  const isNear = (difference < 0n ? -difference : difference) * 20n <= rate.amount * found.per;
  const doubts = doubtOf(gear, label.productName);
  const perVisit = passes === 1n ? "" : " in its two passes";
  const above = aboveHighest(treatment, found, { name: gear.name, setting, perVisit, planned: rate });
  if (above.length > 0) return [...doubts, ...above];
  if (isNear) return doubts;
  const [puts, planned] = formatRatesApart(found, rate, "us");
  const another = note({
    rule: "setting-of-another-rate",
    source: "house",
    what:
      gear.setting.basis === "nominal"
        ? `By the bag, setting ${setting} of ${gear.name} puts down another rate of ${label.productName}.`
        : `Setting ${setting} of ${gear.name} was calibrated at another rate for ${label.productName}.`,
    figure: `It puts down ${puts}${perVisit}; planned is ${planned}.`,
    toDo: "Weigh out what each lawn gets and set by trial, or calibrate at this rate.",
    about: [label.productName, gear.name],
  });
  return [...doubts, another];
}

interface FoundSetting {
  readonly name: string;
  readonly setting: string;
  readonly perVisit: string;
  readonly planned: Rate<"product-mass-per-area">;
}

/** What a setting puts down above the label's highest rate, near the plan or not. */
function aboveHighest({ label, use: { rates } }: TicketTreatment, found: Rate<"product-mass-per-area">, { name, setting, perVisit, planned }: FoundSetting): readonly Finding[] {
  if (rates.basis !== "product-mass-per-area" || compareRates(found, rates.high) <= 0) return [];
  const [puts, highest] = formatRatesApart(found, rates.high, "us");
  return [
    takeCare({
      rule: "setting-of-another-rate",
      source: "house",
      what: `Setting ${setting} of ${name} puts down more of ${label.productName} than its label's highest rate.`,
      figure: `It puts down ${puts}${perVisit}; the label's highest is ${highest}, and planned is ${formatRate(planned, "us")}.`,
      toDo: "Weigh out what each lawn gets and set by trial, or calibrate at this rate.",
      about: [label.productName, name],
    }),
  ];
}

/** What several tested settings leave open of the planned rate. */
function doubtOf({ name, setting }: TicketSpreader, productName: string): readonly Finding[] {
  if (setting === "not-calibrated" || setting.doubt === undefined) return [];
  const { rule, sentence } = setting.doubt;
  const isBeyond = rule === "setting-beyond-tests";
  return [
    takeCare({
      rule,
      source: "house",
      what: isBeyond ? `No setting of ${name} was tested near the planned rate of ${productName}.` : `The tested settings of ${name} with ${productName} contradict one another.`,
      figure: sentence,
      toDo: isBeyond ? "Until then weigh out what each lawn gets; beyond the tests nothing is guessed." : "Until then the setting of one calibration stands.",
      about: [productName, name],
    }),
  ];
}
