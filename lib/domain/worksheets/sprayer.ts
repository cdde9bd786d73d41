import { spreadSentence } from "#domain/equipment/calibration-working";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { calibrateSprayer, type CaughtLiquid, type SprayerCalibration } from "#domain/equipment/sprayer-calibration";
import { judgeRate, SPRAYER_TOLERANCE } from "#domain/equipment/target-rate";
import { readSprayerTest, typedLines, type TypedSprayerTest } from "#domain/equipment/typed-test";
import { accept } from "#domain/foundation/outcome";
import { type WorkingInput } from "#domain/foundation/working";
import { inUnit, perThousand } from "#domain/mixing/ticket-working-words";
import { formatRate, formatRateIn } from "#domain/quantities/format-rate";
import { type Rate, rateIn, times } from "#domain/quantities/rate";
import { type Density } from "#domain/quantities/density";
import { exactly, ratioExact } from "#domain/quantities/exact-quantity";
import { of } from "#domain/quantities/quantity";
import { rational, toNumber } from "#domain/quantities/rational";
import { numberWords, rateWords, stepRate, withTyped } from "#domain/worksheets/figure-words";
import { densityFigure } from "#domain/worksheets/nutrient-lines";
import { type FieldAsk, ifTyped, readDensityField, readRateField, readTogether, refuseEmpty, refuseOne } from "#domain/worksheets/read-fields";
import { densityLines, sprayerLines } from "#domain/worksheets/sprayer-lines";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

type Common = "wanted" | "density";
/** The fields of a boom. */
export type BoomField = "caught" | "caughtSeconds" | "nozzleSpacing" | "course" | "courseSeconds" | Common;
/** The fields of any sprayer on a measured area. */
export type SmallAreaField = "area" | "used" | Common;
/** The fields of a hose and gun. */
export type GunField = "area" | "areaSeconds" | "caught" | "caughtSeconds" | Common;

const OKLAHOMA = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const ALACHUA = "UF/IFAS Alachua County (2022), https://blogs.ifas.ufl.edu/alachuaco/2022/02/04/calibrating-a-backpack-sprayer-the-1-128th-rule/";
const OHIO = "Ohio State Bulletin 817, http://ohioline.osu.edu/b817/b817_07.html";
const STEWARDSHIP = "National Pesticide Stewardship (NC State, Buhler), http://pesticidestewardship.org";
const HOMEOWNER = "Calibrating Homeowner Equipment, slides, https://vdocuments.site/calibrating-homeowner-equipment.html";
const DENSITY = "University of Nebraska CropWatch 2016, https://cropwatch.unl.edu/2016/setting-sprayer-flow-rate-non-water-solutions";

/** Its page prints 88 gallons per acre for these entries, which its own formula gives as 86.8. */
export const BOOM_EXAMPLE: WorksheetExample<BoomField> = {
  typed: { caught: "101 fl oz", caughtSeconds: "60", nozzleSpacing: "18 in", course: "264 ft", courseSeconds: "60", wanted: "", density: "" },
  from: `${OKLAHOMA}: 101 fl oz a minute, 3 mph, 18 in. The page prints 88 gal per acre; its own formula gives 87`,
};
export const SMALL_AREA_EXAMPLE: WorksheetExample<SmallAreaField> = {
  typed: { area: "1/128 acre", used: "25 fl oz", wanted: "", density: "" },
  from: ALACHUA,
};
export const GUN_EXAMPLE: WorksheetExample<GunField> = {
  typed: { area: "1,000 sq ft", areaSeconds: "50", caught: "1.4 gal", caughtSeconds: "50", wanted: "", density: "" },
  from: HOMEOWNER,
};

interface Kind {
  readonly title: string;
  readonly formula: string;
  readonly source: string;
  readonly asks: readonly (FieldAsk & { readonly name: string; readonly isSeconds?: boolean })[];
}

const CAUGHT = { field: "caught", name: "Caught", what: "what was caught", such: "20 fl oz" } as const;
const CAUGHT_SECONDS = { field: "caughtSeconds", name: "Time of the catch", what: "in how many seconds it was caught", such: "30", isSeconds: true } as const;
const AREA = { field: "area", name: "Test area", what: "the measured area", such: "1,000 sq ft" } as const;

const KINDS = {
  boom: {
    title: "Boom sprayer: spray per 1,000 sq ft",
    formula: "Rate = what one nozzle gives in a minute ÷ the area that it covers in a minute (feet a minute × distance between nozzles) × 1,000 sq ft.",
    source: OKLAHOMA,
    asks: [
      { ...CAUGHT, name: "Caught from each nozzle" },
      CAUGHT_SECONDS,
      { field: "nozzleSpacing", name: "Nozzles apart", what: "how far apart the nozzles are", such: "20 in" },
      { field: "course", name: "Course", what: "the length of the course", such: "200 ft" },
      { field: "courseSeconds", name: "Driven in", what: "the time for the course", such: "45", isSeconds: true },
    ],
  },
  "small-area": {
    title: "Small area: spray per 1,000 sq ft",
    formula: "Rate = what was sprayed ÷ the measured area × 1,000 sq ft.",
    source: `${ALACHUA}; ${OHIO}`,
    asks: [AREA, { field: "used", name: "Sprayed on it", what: "what was sprayed on it", such: "25 fl oz" }],
  },
  gun: {
    title: "Hose and gun: spray per 1,000 sq ft",
    formula: "Rate = flow in a second × the seconds that the measured area takes ÷ that area × 1,000 sq ft.",
    source: STEWARDSHIP,
    asks: [AREA, { field: "areaSeconds", name: "Covered in", what: "the time that it took", such: "50", isSeconds: true }, CAUGHT, CAUGHT_SECONDS],
  },
} as const satisfies Readonly<Record<string, Kind>>;

/**
 * A boom: what its nozzles give by the watch, over the ground that each covers. Refused by field: what is missing or
 * can't be read, and what calibrateSprayer refuses.
 */
export function boomWorksheet(typed: Typed<BoomField>): WorksheetOutcome {
  return calibrate(KINDS.boom, { method: "boom", tipSize: "", ...typed }, typed);
}

/**
 * Any sprayer on a measured area; on 1/128 acre the fluid ounces are the gallons per acre. Refused as boomWorksheet
 * refuses.
 */
export function smallAreaWorksheet(typed: Typed<SmallAreaField>): WorksheetOutcome {
  return calibrate(KINDS["small-area"], { method: "small-area", ...typed }, typed);
}

/**
 * A hose and gun: its flow by the watch, times the minutes that a measured area takes. Refused as boomWorksheet
 * refuses.
 */
export function gunWorksheet(typed: Typed<GunField>): WorksheetOutcome {
  return calibrate(KINDS.gun, { method: "timed-area", ...typed }, typed);
}

/** The tip's nominal flow is never asked here, so no pressure is needed. */
const NO_PRESSURE_PSI = 0;

function calibrate(kind: Kind, test: TypedSprayerTest, typed: Typed<Common> & Readonly<Partial<Record<string, string>>>): WorksheetOutcome {
  const read = readTogether({
    ...Object.fromEntries(kind.asks.map((ask) => [ask.field, refuseEmpty(ask, typed[ask.field] ?? "") ?? accept(undefined)])),
    wanted: ifTyped(typed.wanted, (text) =>
      readRateField({ field: "wanted", what: "the wanted rate", such: "2 gal per 1,000 sq ft" }, text, { bases: ["carrier-volume-per-area"], unitWhenNone: "gal per 1,000 sq ft" }),
    ),
    density: ifTyped(typed.density, (text) => readDensityField("density", text, "product")),
  });
  if (!read.ok) return read;
  const parsed = readSprayerTest(test, NO_PRESSURE_PSI);
  if (!parsed.ok) return refuseOne(parsed.refusal);
  const { wanted, density } = read.value;
  const calibration = calibrateSprayer(parsed.value, liquidOf(density), USUAL_SPREAD_LIMIT);
  if (!calibration.ok) return refuseOne(calibration.refusal);
  return accept(tell(kind, calibration.value, typed, { wanted, density }));
}

function liquidOf(density: Density | undefined): CaughtLiquid {
  return density === undefined ? { kind: "the-spray-itself" } : { kind: "water-for-a-spray", sprayDensity: density };
}

/**
 * Whether the measured area is 1/128 acre, or the 340 sq ft that are taken for it (18.5 ft square, UF/IFAS Alachua
 * County).
 */
function isOneOf128({ test }: SprayerCalibration): boolean {
  if (test.method !== "small-area" || test.runs[0] === undefined) return false;
  return Math.abs(toNumber(ratioExact(test.runs[0].area, exactly("acre", rational(1n, 128n)))) - 1) < 0.002;
}

/** What goes in as the lines have it, each with what was typed; several repeats apart by commas. */
function inputWords(figures: readonly string[] | undefined, typed: readonly string[], isSeconds: boolean): string {
  return typed.map((line, place) => withTyped(figures?.[place] ?? line, line)).map((words) => (isSeconds && /\d$/u.test(words) ? `${words} s` : words)).join(", ");
}

interface Asked {
  readonly wanted: Rate<"carrier-volume-per-area"> | undefined;
  readonly density: Density | undefined;
}

function tell(kind: Kind, calibration: SprayerCalibration, typed: Typed<Common> & Readonly<Partial<Record<string, string>>>, { wanted, density }: Asked) {
  const { carrierRate } = calibration;
  const perAcre = formatRateIn(carrierRate, "gal per acre");
  const judged = wanted === undefined ? undefined : judgeRate("The sprayer", carrierRate, wanted, SPRAYER_TOLERANCE);
  const told = sprayerLines(calibration);
  const inputs: WorkingInput[] = kind.asks.map(({ field, name, isSeconds }) => ({ name, figure: inputWords(told.inputs[field], typedLines(typed[field] ?? ""), isSeconds === true) }));
  if (density !== undefined) inputs.push({ name: "Density of the spray", figure: withTyped(densityFigure(density), typed.density) });
  if (wanted !== undefined) inputs.push({ name: "Wanted", figure: withTyped(stepRate(wanted, "gal"), typed.wanted) });
  const ounces = isOneOf128(calibration) ? ["On 1/128 acre the fluid ounces are the gallons per acre: an acre has 128 such areas and a gallon 128 fl oz."] : [];
  const denser = density === undefined ? [] : densityLines(calibration, density);
  return {
    answers: [
      { figure: numberWords(rateIn(carrierRate, "gal per 1,000 sq ft")), unit: "gal per 1,000 sq ft", of: "finished spray" },
      { figure: numberWords(rateIn(carrierRate, "gal per acre")), unit: "gal per acre", of: "the same per acre" },
    ],
    working: {
      title: kind.title,
      formula: kind.formula,
      inputs,
      steps: [...told.steps, ...ounces, ...denser, `Per acre: ${perThousand(carrierRate, "gal")} ÷ 1,000 sq ft × 43,560 sq ft = ${inUnit(times(carrierRate, of("acre", 1n)), "gal")} per acre.`, ...(wanted === undefined ? [] : [`Wanted: ${stepRate(wanted, "gal")}.`])],
      result: `${rateWords(carrierRate)}, ${perAcre} (${formatRate(carrierRate, "metric")}). ${spreadSentence(calibration.uncertainty)}`,
      source: density === undefined ? kind.source : `${kind.source}; ${DENSITY}`,
    },
    findings: [...calibration.findings, ...(judged?.findings ?? [])],
    tables: [],
  };
}
