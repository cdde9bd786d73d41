import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { areaTimesRate, figure, manyTimes, perThousand } from "#domain/mixing/ticket-working-words";
import { writeQuantity } from "#domain/quantities/format-quantity";
import { type Rate, ratioOfRates, times } from "#domain/quantities/rate";
import { divideRational, rational } from "#domain/quantities/rational";
import { nutrientsDelivered, parseGrade, productForNutrient } from "#domain/turf/nutrients";
import { splitRate } from "#domain/turf/split-rate";
import { acreLines, amountBothWays, amountWords, areaInput, rateBothWays, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { nutrientTable, partsOfGrade } from "#domain/worksheets/nutrient-lines";
import { muchNitrogen } from "#domain/worksheets/nutrients";
import { ifTyped, readAmountField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The fields of the worksheet. */
export type PotashField = "recommended" | "table" | "grade" | "area" | "cap" | "capBy";

const ENH_73 = "McCarty and Cisar, UF/IFAS ENH-73 (1995), https://docslib.org/doc/2582559/";

export const POTASH_EXAMPLE: WorksheetExample<PotashField> = {
  typed: { recommended: "0.5 lb per 1,000 sq ft", table: "a laboratory's own report", grade: "16-4-8", area: "1,000 sq ft", cap: "", capBy: "" },
  from: `${ENH_73} (16-4-8 brings 0.5 lb of K2O at 6.25 lb). The recommendation is made up`,
};

const POTASH_RATE = { bases: ["nutrient-mass-per-area"], unitWhenNone: "lb per 1,000 sq ft" } as const;
/** Longer names are a paste of something else. Common practice. */
const LONGEST_NAME = 200;

function readName(field: string, what: string, such: string, text: string): Outcome<string> {
  const empty = refuseEmpty({ field, what, such }, text);
  if (empty !== undefined) return empty;
  const name = text.trim();
  return name.length <= LONGEST_NAME ? accept(name) : badInput(field, `${name.length} characters`, `up to ${LONGEST_NAME}`, `At most ${LONGEST_NAME} characters are read.`);
}

/** The most potash in one application, and who says so: a label, a handbook. */
interface PotashCap {
  readonly perApplication: Rate<"nutrient-mass-per-area">;
  readonly statedBy: string;
}

/** A cap with whoever states it; undefined where neither is given. */
function readCap({ cap, capBy }: Typed<"cap" | "capBy">): Outcome<PotashCap | undefined> {
  const most = ifTyped(cap, (text) => readRateField({ field: "cap", what: "the most K2O in one application", such: "1 lb per 1,000 sq ft" }, text, POTASH_RATE));
  if (!most.ok) return most;
  const by = capBy.trim();
  if (most.value === undefined) return by === "" ? accept(undefined) : missingFact("cap", "a rate", "Give the most K2O in one application that it states, or leave both empty.");
  return by === "" ? missingFact("capBy", "who states it", "Say who states the most: a label, a handbook.") : accept({ perApplication: most.value, statedBy: by });
}

/** What there is to say of the way, whatever the figures: whose table it is, and that nothing limits an application. */
function alwaysSaid(table: string, cap: PotashCap | undefined): readonly Finding[] {
  const ofOneTable = note({
    rule: "potash-table-of-one-lab",
    source: "handbook",
    what: "Laboratories extract potassium in different ways: the figure of one means nothing in another’s table.",
    figure: `The recommendation is by ${table}.`,
    toDo: "Go by the laboratory that tested the soil; without a soil test spread no potash for the soil’s sake.",
    about: [],
  });
  if (cap !== undefined) return [ofOneTable];
  return [
    ofOneTable,
    takeCare({ rule: "potash-without-cap", source: "common-practice", what: "No most for one application was given, so all of it is in one.", toDo: "Look it up on the label or in the laboratory’s handbook.", about: [] }),
  ];
}

interface Split {
  readonly potash: Rate<"nutrient-mass-per-area">;
  readonly applications: number;
  readonly each: Rate<"nutrient-mass-per-area">;
  readonly cap: PotashCap | undefined;
}

function splitLines({ potash, applications, each, cap }: Split): readonly string[] {
  if (cap === undefined) return [];
  const most = cap.perApplication;
  if (applications === 1) return [`${stepRate(potash, "lb")} is within the most of ${stepRate(most, "lb")}: one application.`];
  return [
    `Against the most: ${perThousand(potash, "lb")} ÷ ${perThousand(most, "lb")} = ${figure(ratioOfRates(potash, most))}, so ${applications} applications.`,
    `K2O in each of ${applications} applications: ${perThousand(potash, "lb")} ÷ ${applications} = ${stepRate(each, "lb")}.`,
  ];
}

// No table of potash is on file, because none was found in print that could be read whole: laboratories extract potassium
// in different ways, and the figure of one means nothing in another's table.

/**
 * The product that brings the potash which a laboratory recommends by its own named table, split into equal applications,
 * as few as a cap allows. Refused by field: what is missing or can't be read, a table without a name, a cap without
 * whoever states it, a grade without potash.
 */
export function potashWorksheet(typed: Typed<PotashField>): WorksheetOutcome {
  const read = readTogether({
    recommended: readRateField({ field: "recommended", what: "the K2O that the laboratory recommends", such: "2 lb per 1,000 sq ft" }, typed.recommended, POTASH_RATE),
    table: readName("table", "the laboratory, its method and its table", "the laboratory's report, Mehlich 3, potash for lawns", typed.table),
    grade: refuseEmpty({ field: "grade", what: "the grade on the bag", such: "0-0-50" }, typed.grade) ?? parseGrade("grade", typed.grade),
    area: readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, typed.area, { dimension: "area", unitWhenNone: "sq ft" }),
    cap: readCap(typed),
  });
  if (!read.ok) return read;
  const { recommended, table, grade, area, cap } = read.value;
  const { applications, each } = cap === undefined ? { applications: 1, each: recommended } : splitRate(recommended, cap.perApplication);
  const rate = productForNutrient("K2O", each, grade);
  if (!rate.ok) return refuseOne({ ...rate.refusal, field: "grade" });
  const delivered = nutrientsDelivered(rate.value, { grade, release: { kind: "not-stated" } });
  invariant(delivered.ok, "a solid whose slow release is left open delivers what its grade says");
  const percent = partsOfGrade(grade).find(({ name }) => name === "K2O")?.percent;
  invariant(percent !== undefined, "a grade without potash was refused");
  const perTime = times(rate.value, area);
  const perPound = divideRational(rational(100n), percent);
  const often = applications === 1 ? "in one application" : `in each of ${applications} applications`;
  return accept({
    answers: [{ ...writeQuantity(perTime, "us"), of: `product on ${amountWords(area)}, ${often}` }],
    working: {
      title: "Potash by a soil test",
      formula: "Split the recommended K2O into equal applications, as few as the most in one allows. Product per 1,000 sq ft = K2O in one application ÷ (% K2O ÷ 100).",
      inputs: [
        { name: "Recommended K2O", figure: withTyped(stepRate(recommended, "lb"), typed.recommended), from: table },
        { name: "K2O in the product", figure: `${figure(percent)}%`, from: `the label: ${typed.grade.trim()}` },
        { name: "Area", figure: areaInput(area, typed.area) },
        ...(cap === undefined ? [] : [{ name: "Most K2O in one application", figure: withTyped(stepRate(cap.perApplication, "lb"), typed.cap), from: cap.statedBy }]),
      ],
      steps: [
        ...splitLines({ potash: recommended, applications, each, cap }),
        `Product for one pound of K2O: 1 lb ÷ ${figure(percent)}% = ${figure(perPound)} lb.`,
        `Product rate: ${figure(perPound)} lb × ${perThousand(each, "lb")} = ${stepRate(rate.value, "lb")}.`,
        ...acreLines(area, typed.area),
        `On the area: ${areaTimesRate(area, rate.value, "lb")}.`,
        ...(applications === 1 ? [] : [`In all: ${manyTimes(BigInt(applications), perTime, "lb")}.`]),
      ],
      result: `${amountBothWays(perTime)} of product at ${rateBothWays(rate.value)}, ${often}.`,
      source: `${table}${cap === undefined ? "" : `; most in one application: ${cap.statedBy}`}; ${ENH_73}`,
    },
    findings: [...alwaysSaid(table, cap), ...muchNitrogen(delivered.value.nitrogen)],
    tables: [{ ...nutrientTable(delivered.value, area), caption: applications === 1 ? "What it brings" : "What one application brings" }],
  });
}
