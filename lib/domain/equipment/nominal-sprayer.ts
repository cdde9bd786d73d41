import { type SprayerKind } from "#domain/equipment/equipment-kind";
import { isNozzleSize, type RatedFlow, ratedFlowOfSize } from "#domain/equipment/nozzle";
import { USUAL_SPREAD_LIMIT } from "#domain/equipment/nozzle-wear";
import { type Pace } from "#domain/equipment/pace";
import { rateOnFile } from "#domain/equipment/rate-on-file";
import { calibrateSprayer, type SprayerTest } from "#domain/equipment/sprayer-calibration";
import { readAmount, readMinutes, readPressure, readSpeed, SECONDS_PER_MINUTE } from "#domain/equipment/typed-test";
import { type Finding, hold } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { exactly } from "#domain/quantities/exact-quantity";
import { withoutUnit } from "#domain/quantities/number-with-unit";
import { type Quantity } from "#domain/quantities/quantity";
import { type Rate } from "#domain/quantities/rate";

// What stands in for a sprayer's calibration: the flow that its tip should have, and the pace at which somebody means to
// go. Nothing of it is ever filled in: a figure that nobody entered is missing by name.

/** A sprayer's nominal figures as they were typed; what is empty nobody has entered. */
export interface TypedNominalSprayer {
  /** The tip as it is written on it. */
  readonly tip: string;
  /** Its size by ISO 10625, or empty. */
  readonly tipSize: string;
  /** What its maker states that it gives in a minute, where it has no size, and at which pressure. */
  readonly tipFlow: string;
  readonly tipFlowPsi: string;
  /** The pressure at which it is used. */
  readonly pressurePsi: string;
  /** Booms only. */
  readonly nozzleSpacing: string;
  readonly speedMph: string;
  readonly minutesPerThousand: string;
}

/** A sprayer for which nobody has entered anything. */
export const NO_NOMINAL_SPRAYER: TypedNominalSprayer = {
  tip: "",
  tipSize: "",
  tipFlow: "",
  tipFlowPsi: "",
  pressurePsi: "",
  nozzleSpacing: "",
  speedMph: "",
  minutesPerThousand: "",
};

/** What a sprayer should put out by its tip, its pressure and the pace. */
export interface NominalSprayer {
  readonly tip: string;
  readonly pressurePsi: number;
  readonly rate: Rate<"carrier-volume-per-area">;
  /** The same as a test in which nothing was caught, for its pace. */
  readonly test: SprayerTest;
  /** Whose flow and which pace: "ISO 10625, size 06, at 40 psi and 3 mph". */
  readonly statedBy: string;
}

interface Written {
  readonly kind: SprayerKind;
  readonly typed: TypedNominalSprayer;
  /** The swath on file with the gear; null where nobody entered one. */
  readonly swath: Quantity<"length"> | null;
}

/**
 * What a sprayer should put out: the flow of its tip's size by ISO 10625, or the one that its maker states, brought to
 * the pressure in use by the square root of the pressures; over the spacing of a boom's nozzles or the gear's swath at
 * a speed, or over the minutes that 1,000 sq ft take. A boom needs its spacing and a speed, since minutes for an area
 * say nothing of one nozzle. Refused: what is missing, all of it by name (`nominal`); two flows (`tipFlow`) or two
 * paces (`minutesPerThousand`) at once; at its field a figure that can't be read or that no turf sprayer has.
 */
export function nominalSprayer(written: Written): Outcome<NominalSprayer> {
  const { typed } = written;
  const doubled = refuseTwice(typed);
  if (doubled !== undefined) return doubled;
  const missing = missingFigures(written);
  if (missing.length > 0) return missingFact("nominal", "tip, pressure, width and pace", `Missing for nominal figures: ${listWords(missing)}.`);
  const pressure = readPressure("pressurePsi", typed.pressurePsi);
  if (!pressure.ok) return pressure;
  const rated = ratedFlowOf(typed);
  if (!rated.ok) return rated;
  const test = testOf(written, { rated: rated.value, pressurePsi: pressure.value });
  if (!test.ok) return test;
  // The only nozzle that there is has no spread.
  const calibration = calibrateSprayer(test.value, { kind: "the-spray-itself" }, USUAL_SPREAD_LIMIT);
  if (!calibration.ok) return calibration;
  const { carrierRate } = calibration.value;
  const kept = rateOnFile(rateField(typed), carrierRate);
  if (!kept.ok) return kept;
  return accept({
    tip: typed.tip,
    pressurePsi: pressure.value,
    rate: carrierRate,
    test: test.value,
    statedBy: `${rated.value.statedBy}, at ${String(pressure.value)} psi and ${paceInWords(typed)}`,
  });
}

function paceInWords({ speedMph, minutesPerThousand }: TypedNominalSprayer): string {
  if (minutesPerThousand === "") return `${withoutUnit(speedMph, "mph")} mph`;
  return `${withoutUnit(minutesPerThousand, "min")} min for 1,000 sq ft`;
}

function rateField(typed: TypedNominalSprayer): string {
  return typed.minutesPerThousand === "" ? "speedMph" : "minutesPerThousand";
}

function refuseTwice({ tipSize, tipFlow, speedMph, minutesPerThousand }: TypedNominalSprayer) {
  if (tipSize !== "" && tipFlow !== "") {
    return badInput("tipFlow", tipFlow, "the size or the flow", "Give the size of the tip or the flow that its maker states, not both.");
  }
  if (speedMph !== "" && minutesPerThousand !== "") {
    return badInput("minutesPerThousand", minutesPerThousand, "a speed or minutes", "Give the speed or the minutes for 1,000 sq ft, not both.");
  }
  return undefined;
}

/** What is wanted and was not entered, in words for a list. */
function missingFigures({ kind, typed, swath }: Written): readonly string[] {
  const { tip, tipSize, tipFlow, tipFlowPsi, pressurePsi, nozzleSpacing, speedMph, minutesPerThousand } = typed;
  const isBoom = kind === "boom-sprayer";
  const hasPace = speedMph !== "" || (!isBoom && minutesPerThousand !== "");
  const wantsSwath = !isBoom && minutesPerThousand === "" && swath === null;
  return [
    ...(tip === "" ? ["the tip"] : []),
    ...(tipSize === "" && tipFlow === "" ? ["its size or its maker's flow"] : []),
    ...(tipFlow !== "" && tipFlowPsi === "" ? ["the pressure of its maker's flow"] : []),
    ...(pressurePsi === "" ? ["the pressure in use"] : []),
    ...(isBoom && nozzleSpacing === "" ? ["the spacing of the nozzles"] : []),
    ...(wantsSwath && speedMph !== "" ? ["the swath"] : []),
    ...(hasPace ? [] : [isBoom ? "the speed" : "the pace (the swath with a speed, or the minutes for 1,000 sq ft)"]),
  ];
}

function ratedFlowOf({ tipSize, tipFlow, tipFlowPsi }: TypedNominalSprayer): Outcome<RatedFlow> {
  if (tipSize !== "") {
    if (isNozzleSize(tipSize)) return accept(ratedFlowOfSize(tipSize));
    return badInput("tipSize", tipSize, "a size of ISO 10625", `${tipSize} is no size of ISO 10625 that is on file.`);
  }
  const flowPerMinute = readAmount("tipFlow", tipFlow, "volume");
  if (!flowPerMinute.ok) return flowPerMinute;
  const atPressurePsi = readPressure("tipFlowPsi", tipFlowPsi);
  if (!atPressurePsi.ok) return atPressurePsi;
  return accept({ flowPerMinute: flowPerMinute.value, atPressurePsi: atPressurePsi.value, statedBy: `its maker (${tipFlow} a minute at ${withoutUnit(tipFlowPsi, "psi")} psi)` });
}

const THOUSAND_SQUARE_FEET = exactly("sq ft", 1000n);

function testOf({ kind, typed, swath }: Written, nominal: { readonly rated: RatedFlow; readonly pressurePsi: number }): Outcome<SprayerTest> {
  const flow = { catches: [], nominal } as const;
  if (typed.minutesPerThousand !== "" && kind !== "boom-sprayer") {
    const minutes = readMinutes("minutesPerThousand", typed.minutesPerThousand);
    if (!minutes.ok) return minutes;
    return accept({ method: "gun", coverings: [{ area: THOUSAND_SQUARE_FEET, seconds: minutes.value * SECONDS_PER_MINUTE }], ...flow });
  }
  const milesPerHour = readSpeed("speedMph", typed.speedMph);
  if (!milesPerHour.ok) return milesPerHour;
  const pace: Pace = { kind: "speed", milesPerHour: milesPerHour.value };
  if (kind === "boom-sprayer") {
    const nozzleSpacing = readAmount("nozzleSpacing", typed.nozzleSpacing, "length");
    return nozzleSpacing.ok ? accept({ method: "boom", nozzleSpacing: nozzleSpacing.value, pace, ...flow }) : nozzleSpacing;
  }
  if (swath === null) return missingFact("swath", "a width", "Missing for nominal figures: the swath.");
  return accept({ method: "backpack", swath, pace, ...flow });
}

/**
 * The hold of a sprayer of which neither a calibration nor the nominal figures are on file: what it puts out is unknown,
 * and nothing can be mixed for it. The office answers it at the gear.
 * @param missing what the nominal figures lack, as nominalSprayer says it
 */
export function withoutFigures(gearName: string, missing: string): Finding {
  return hold("office", {
    rule: "sprayer-without-figures",
    source: "house",
    what: `${gearName} has no calibration and no nominal figures, so what it puts out is not known.`,
    figure: missing,
    toDo: "Calibrate it, or enter at the gear its tip, the pressure, the swath and the pace.",
    about: [gearName],
  });
}
