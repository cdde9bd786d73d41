import { type Finding, note } from "#domain/foundation/finding";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { areaTimesRate, figure, inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { type Rate, ratioOfRates, times } from "#domain/quantities/rate";
import { type Rational } from "#domain/quantities/rational";
import { type LimeCap, limingMaterialFor, publishedLimeCaps, recommendLime, splitLime, type TargetPh } from "#domain/turf/lime";
import { acreLines, amountBothWays, amountWords, areaInput, rateBothWays, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { readAmountField, readChoice, readNumberField, readRateField, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

const TARGET_PHS = ["7.0", "6.5", "6.0"] as const satisfies readonly TargetPh[];
/** The published caps by their pounds per 1,000 sq ft: Penn State's and NC State's. */
export const LIME_CAPS = ["100", "50"] as const;

type Common = "equivalent" | "area" | "cap";
/** The fields of lime by the table. */
export type LimeByTableField = "acidity" | "targetPh" | Common;
/** The fields of lime by a laboratory's recommendation. */
export type LimeByLabField = "recommended" | Common;

const PENN_STATE = "Penn State Agricultural Analytical Services Laboratory, turf handbook, Table 1";

export const LIME_BY_TABLE_EXAMPLE: WorksheetExample<LimeByTableField> = {
  typed: { acidity: "7.8", targetPh: "7.0", equivalent: "90", area: "5,000 sq ft", cap: "100" },
  from: `${PENN_STATE} (7.8 meq to pH 7.0 is 180 lb). The lime and the area are made up`,
};
export const LIME_BY_LAB_EXAMPLE: WorksheetExample<LimeByLabField> = {
  typed: { recommended: "180 lb per 1,000 sq ft", equivalent: "100", area: "5,000 sq ft", cap: "50" },
  from: "made up; the split cap of 50 lb is an NC State agent's",
};

type ProductRate = Rate<"product-mass-per-area">;

function readCommon(typed: Typed<Common>) {
  return {
    equivalent: readNumberField({ field: "equivalent", what: "the calcium carbonate equivalent on the bag", such: "90" }, typed.equivalent, { lowest: "1", highest: "250", unit: "%" }),
    area: readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, typed.area, { dimension: "area" as const, unitWhenNone: "sq ft" as const }),
    cap: readCap(typed.cap),
  };
}

function readCap(text: string): Outcome<LimeCap> {
  const chosen = readChoice("cap", text, LIME_CAPS);
  if (!chosen.ok) return chosen;
  const cap = publishedLimeCaps[LIME_CAPS.indexOf(chosen.value)];
  return cap === undefined ? badInput("cap", text, LIME_CAPS.join(", "), "This cap is not on file.") : accept(cap);
}

interface Lime {
  readonly pure: ProductRate;
  readonly equivalent: Rational;
  readonly area: ExactQuantity<"area">;
  readonly typedArea: string;
  readonly cap: LimeCap;
  readonly title: string;
  readonly inputs: readonly WorkingInput[];
  readonly before: readonly string[];
  readonly source: string;
}

function tell({ pure, equivalent, area, typedArea, cap, title, inputs, before, source }: Lime): WorksheetOutcome {
  const material = limingMaterialFor(pure, equivalent);
  if (!material.ok) return refuseOne({ ...material.refusal, field: "equivalent" });
  const total = times(material.value, area);
  const split = splitLime(material.value, cap);
  const each = times(split.each, area);
  const { least, most } = cap.monthsApart;
  const months = least === most ? `${least} months` : `${least} to ${most} months`;
  const splitLines =
    split.applications === 1
      ? [`${stepRate(material.value, "lb")} is within the cap of ${stepRate(cap.perApplication, "lb")}: one application.`]
      : [
          `Against the cap: ${perThousand(material.value, "lb")} ÷ ${perThousand(cap.perApplication, "lb")} = ${figure(ratioOfRates(material.value, cap.perApplication))}, so ${split.applications} applications, ${months} apart.`,
          `In each of ${split.applications} applications: ${perThousand(material.value, "lb")} ÷ ${split.applications} = ${stepRate(split.each, "lb")}.`,
        ];
  return accept({
    answers: [
      { ...writeQuantity(total, "us"), of: `lime on ${amountWords(area)} in all` },
      { ...writeQuantity(each, "us"), of: split.applications === 1 ? "in one application" : `in each of ${split.applications} applications, ${months} apart` },
    ],
    working: {
      title,
      formula: "Lime per 1,000 sq ft = pounds of calcium carbonate per 1,000 sq ft ÷ (calcium carbonate equivalent ÷ 100). Split into equal applications, as few as the cap allows.",
      inputs: [...inputs, { name: "Calcium carbonate equivalent", figure: `${figure(equivalent)}%`, from: "the bag" }, { name: "Area", figure: areaInput(area, typedArea) }, { name: "Most in one application", figure: stepRate(cap.perApplication, "lb") }],
      steps: [
        ...before,
        `Lime from the bag: ${perThousand(pure, "lb")} ÷ ${figure(equivalent)}% = ${stepRate(material.value, "lb")}.`,
        ...splitLines,
        ...acreLines(area, typedArea),
        `On the area: ${areaTimesRate(area, material.value, "lb")}.`,
        ...(split.applications === 1 ? [] : [`Each time: ${inUnit(total, "lb")} ÷ ${split.applications} = ${inUnit(each, "lb")}.`]),
      ],
      result: `${amountBothWays(total)} of lime at ${rateBothWays(material.value)}, in ${split.applications === 1 ? "one application" : `${split.applications} applications`}.`,
      source: `${source}; cap: ${cap.source}`,
    },
    findings: [labsDiffer()],
    tables: [],
  });
}

function labsDiffer(): Finding {
  return note({
    rule: "lime-table-of-one-lab",
    source: "handbook",
    what: "Labs test with different buffers, and published caps differ: 100 lb at Penn State, 50 lb by an NC State agent.",
    toDo: "Go by the lab that tested the soil; without a soil test spread no lime.",
    about: [],
  });
}

/**
 * Lime by the Penn State table for the Mehlich buffer: exchangeable acidity and the wanted pH give pounds of calcium
 * carbonate. Refused by field: what is missing or can't be read, an acidity outside the table.
 */
export function limeByTableWorksheet(typed: Typed<LimeByTableField>): WorksheetOutcome {
  const read = readTogether({
    acidity: readNumberField({ field: "acidity", what: "the exchangeable acidity on the lab's report", such: "7.8" }, typed.acidity, { lowest: "0", highest: "100", unit: "meq" }),
    targetPh: readChoice("targetPh", typed.targetPh, TARGET_PHS),
    ...readCommon(typed),
  });
  if (!read.ok) return read;
  const { acidity, targetPh, equivalent, area, cap } = read.value;
  const found = recommendLime({ method: "Mehlich buffer, exchangeable acidity", exchangeableAcidity: acidity }, targetPh);
  if (!found.ok) return refuseOne({ ...found.refusal, field: "acidity" });
  const { calciumCarbonateEquivalent, rowAcidity, source } = found.value;
  return tell({
    pure: calciumCarbonateEquivalent,
    equivalent,
    area,
    typedArea: typed.area,
    cap,
    title: `Lime to pH ${targetPh}`,
    inputs: [{ name: "Exchangeable acidity, Mehlich buffer", figure: `${figure(acidity)} meq per 100 g`, from: "the lab" }, { name: "Wanted pH", figure: targetPh }],
    before: [`The table's row at or below ${figure(acidity)} is ${figure(rowAcidity)}, and to pH ${targetPh} it has ${stepRate(calciumCarbonateEquivalent, "lb")} of calcium carbonate.`],
    source,
  });
}

/**
 * Lime by the lab's own recommendation in pounds of calcium carbonate. Refused by field: what is missing or can't be
 * read. Source of the way: Penn State, as for the table.
 */
export function limeByLabWorksheet(typed: Typed<LimeByLabField>): WorksheetOutcome {
  const read = readTogether({
    recommended: readRateField({ field: "recommended", what: "what the lab recommends", such: "100 lb per 1,000 sq ft" }, typed.recommended, { bases: ["product-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" }),
    ...readCommon(typed),
  });
  if (!read.ok) return read;
  const { recommended, equivalent, area, cap } = read.value;
  return tell({
    pure: recommended,
    equivalent,
    area,
    typedArea: typed.area,
    cap,
    title: "Lime by the lab's recommendation",
    inputs: [{ name: "Recommended, as calcium carbonate", figure: withTyped(stepRate(recommended, "lb"), typed.recommended), from: "the lab" }],
    before: [],
    source: "the lab's report",
  });
}
