import { addDays, type CalendarDate, daysBetween, formatShortDate } from "#domain/foundation/calendar-date";
import { daysWords } from "#domain/foundation/days-words";
import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { invariant } from "#domain/foundation/invariant";
import { isSameName } from "#domain/foundation/same-name";

/** A person, a machine or a product: what it is told apart by, and what it is called. */
export interface Named {
  readonly id: string;
  readonly name: string;
}

/** How the equipment was set up. The rate belongs to all of it. A tip is told apart by its name, as {@link isSameName} has it. */
export type EquipmentSetup =
  | { readonly kind: "sprayer"; readonly tip: string; readonly pressurePsi: number }
  | { readonly kind: "spreader"; readonly product: Named };

/** A calibration as a dated fact: whose pace, which machine, which setup, and what it gave. */
export interface CalibrationFact<Figures> {
  readonly doneOn: CalendarDate;
  readonly equipment: Named;
  readonly operator: Named;
  readonly setup: EquipmentSetup;
  readonly figures: Figures;
}

/** What is to be done with the equipment, and when. */
export interface PlannedUse {
  readonly on: CalendarDate;
  readonly equipment: Named;
  readonly operator: Named;
  readonly setup: EquipmentSetup;
}

/** What the company holds to. */
export interface CalibrationSettings {
  /** A calibration of April 1 that is good for 30 days is good through May 1. */
  readonly validForDays: number;
  /** Gauges are read to a mark: a pressure this near is the same one. */
  readonly samePressureWithinPsi: number;
}

/** What stands in where no calibration can be used, and in whose words: the tip's chart, the bag's table. */
export interface NominalFigures<Figures> {
  readonly figures: Figures;
  readonly statedBy: string;
}

/** The ways in which a calibration may stand to a use; "none" where there is no calibration. */
export type CalibrationStandingKind = "current" | "run-out" | "other-operator" | "other-setup" | "none";

/**
 * Which calibration stands for a use, and what its figures are. Figures come from the calibration where it is of the
 * same equipment and setup, even if run out or another operator's; else they are the nominal ones, if there are any.
 */
export interface CalibrationStanding<Figures> {
  readonly kind: CalibrationStandingKind;
  readonly calibration: CalibrationFact<Figures> | undefined;
  /** The last day on which that calibration is good. */
  readonly lastGoodDay: CalendarDate | undefined;
  readonly figures:
    | { readonly basis: "calibration"; readonly figures: Figures }
    | { readonly basis: "nominal"; readonly figures: Figures; readonly statedBy: string }
    | { readonly basis: "none" };
  readonly finding: Finding;
}

/**
 * How a planned use stands with the calibrations on file: current, run out, another operator's, of another tip, pressure
 * or product, or none. Each is a finding with its figures: a note when current, else take care, and a hold only where not
 * even nominal figures are known. Calibrations of later days don't count. Among several the one that serves best is
 * taken, and of those the latest (of one day the one listed last). Throws when the settings are below zero.
 */
export function standingOf<Figures>(
  calibrations: readonly CalibrationFact<Figures>[],
  use: PlannedUse,
  settings: CalibrationSettings,
  nominal: NominalFigures<Figures> | "unknown",
): CalibrationStanding<Figures> {
  invariant(settings.validForDays >= 0 && settings.samePressureWithinPsi >= 0, "settings of calibrations are not below zero");
  const best = bestFor(calibrations, use, settings);
  if (best === undefined || best.kind === "other-setup") return withNominal(best?.calibration, use, settings, nominal);
  const { kind, calibration } = best;
  return {
    kind,
    calibration,
    lastGoodDay: lastGoodDayOf(calibration, settings),
    figures: { basis: "calibration", figures: calibration.figures },
    finding: findingFor(kind, calibration, use, settings),
  };
}

type UsableKind = "current" | "run-out" | "other-operator";

interface Candidate<Figures> {
  readonly kind: UsableKind | "other-setup";
  readonly calibration: CalibrationFact<Figures>;
}

/** The kinds from the one that serves best. One's own old pace is nearer than another's. */
const BEST_FIRST: readonly Candidate<unknown>["kind"][] = ["current", "run-out", "other-operator", "other-setup"];

function bestFor<Figures>(
  calibrations: readonly CalibrationFact<Figures>[],
  use: PlannedUse,
  settings: CalibrationSettings,
): Candidate<Figures> | undefined {
  const candidates = calibrations
    .filter(({ equipment, doneOn }) => equipment.id === use.equipment.id && daysBetween(doneOn, use.on) >= 0)
    .sort((left, right) => daysBetween(right.doneOn, left.doneOn))
    .map((calibration): Candidate<Figures> => ({ kind: kindOf(calibration, use, settings), calibration }));
  for (const kind of BEST_FIRST) {
    const latest = candidates.findLast((candidate) => candidate.kind === kind);
    if (latest !== undefined) return latest;
  }
  return undefined;
}

function kindOf(
  calibration: CalibrationFact<unknown>,
  use: PlannedUse,
  settings: CalibrationSettings,
): Candidate<unknown>["kind"] {
  if (!isSameSetup(calibration.setup, use.setup, settings)) return "other-setup";
  if (calibration.operator.id !== use.operator.id) return "other-operator";
  return daysBetween(lastGoodDayOf(calibration, settings), use.on) > 0 ? "run-out" : "current";
}

function isSameSetup(left: EquipmentSetup, right: EquipmentSetup, { samePressureWithinPsi }: CalibrationSettings): boolean {
  if (left.kind === "spreader") return right.kind === "spreader" && left.product.id === right.product.id;
  return (
    right.kind === "sprayer" &&
    isSameName(left.tip, right.tip) &&
    Math.abs(left.pressurePsi - right.pressurePsi) <= samePressureWithinPsi
  );
}

function lastGoodDayOf({ doneOn }: CalibrationFact<unknown>, { validForDays }: CalibrationSettings): CalendarDate {
  return addDays(doneOn, validForDays);
}

/** "Gun tip at 60 psi" for a sprayer, the product's name for a spreader. */
export function setupInWords(setup: EquipmentSetup): string {
  return setup.kind === "spreader" ? setup.product.name : `${setup.tip} at ${setup.pressurePsi} psi`;
}

function findingFor(
  kind: UsableKind,
  calibration: CalibrationFact<unknown>,
  use: PlannedUse,
  settings: CalibrationSettings,
): Finding {
  const { equipment, operator, doneOn } = calibration;
  const done = formatShortDate(doneOn);
  const age = daysBetween(doneOn, use.on);
  const lastDay = formatShortDate(lastGoodDayOf(calibration, settings));
  const about = [use.equipment.name, use.operator.name];
  switch (kind) {
    case "current":
      return note({
        rule: "calibration-current",
        source: "house",
        what: `${equipment.name} was calibrated by ${operator.name} on ${done}, with ${setupInWords(calibration.setup)}.`,
        figure: `That is ${daysWords(age)} before this use; it is good through ${lastDay}.`,
        about,
      });
    case "run-out":
      return takeCare({
        rule: "calibration-run-out",
        source: "house",
        what: `The calibration of ${equipment.name} by ${operator.name} has run out.`,
        figure: `It is of ${done}, ${daysWords(age)} before this use, and was good through ${lastDay} (${daysWords(settings.validForDays)}).`,
        toDo: "Calibrate again before this use. Until then the old figures are used.",
        about,
      });
    case "other-operator": {
      const isOld = age > settings.validForDays;
      return takeCare({
        rule: "calibration-of-another-operator",
        source: "house",
        what: `${equipment.name} was calibrated by ${operator.name}, not by ${use.operator.name}. Pace is part of the rate.`,
        figure: `It is of ${done}, ${daysWords(age)} before this use, and ${isOld ? "was" : "is"} good through ${lastDay} for ${operator.name}.`,
        toDo: `Let ${use.operator.name} calibrate before this use. Until then the figures of ${operator.name} are used.`,
        about,
      });
    }
  }
}

function withNominal<Figures>(
  other: CalibrationFact<Figures> | undefined,
  use: PlannedUse,
  settings: CalibrationSettings,
  nominal: NominalFigures<Figures> | "unknown",
): CalibrationStanding<Figures> {
  const isSpreader = use.setup.kind === "spreader";
  const found =
    other === undefined
      ? `There is none of ${use.equipment.name} on file up to ${formatShortDate(use.on)}.`
      : `The latest is with ${setupInWords(other.setup)}, by ${other.operator.name}, of ${formatShortDate(other.doneOn)}.`;
  const words = {
    rule: other === undefined ? "calibration-missing" : `calibration-of-another-${isSpreader ? "product" : "tip-or-pressure"}`,
    source: "house",
    what: `${use.equipment.name} has no calibration with ${setupInWords(use.setup)}.`,
    about: [use.equipment.name, use.operator.name],
  } as const;
  const settled = {
    kind: other === undefined ? "none" : "other-setup",
    calibration: other,
    lastGoodDay: other === undefined ? undefined : lastGoodDayOf(other, settings),
  } as const;
  if (nominal === "unknown") {
    const toDo = "Calibrate it, or enter the nominal figures of this setup.";
    const figure = `${found} Nominal figures are not on file either.`;
    return { ...settled, figures: { basis: "none" }, finding: hold("office", { ...words, figure, toDo }) };
  }
  const figure = `${found} Nominal figures stand in, by ${nominal.statedBy}.`;
  return {
    ...settled,
    figures: { basis: "nominal", ...nominal },
    finding: takeCare({ ...words, figure, toDo: "Calibrate it before this use." }),
  };
}
