import { type CalibrationFact, type CalibrationSettings, setupInWords, standingOf } from "#domain/equipment/calibration-standing";
import { type CalendarDate, daysBetween, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, takeCare } from "#domain/foundation/finding";

/** How an operator's latest calibration stands today. */
export type OperatorStanding =
  | { readonly kind: "good"; readonly lastGoodDay: CalendarDate; readonly daysLeft: number }
  | { readonly kind: "run-out"; readonly lastGoodDay: CalendarDate; readonly daysAgo: number; readonly finding: Finding }
  | { readonly kind: "setup-changed"; readonly finding: Finding };

/** One operator's latest calibration of one piece of equipment; of a spreader, the latest with each product. */
export interface LatestCalibration<Figures> {
  readonly calibration: CalibrationFact<Figures>;
  readonly standing: OperatorStanding;
}

function setupKey({ operator, setup }: CalibrationFact<unknown>): string {
  return setup.kind === "spreader" ? `${operator.id} ${setup.product.id}` : operator.id;
}

/**
 * Each operator's latest calibration of one piece of equipment, the newest first, and how it stands: good, run out, or
 * of a tip or pressure that somebody has changed since. The setup of a sprayer is the one it was last calibrated with,
 * whoever did it. The calibrations come in the order in which they were made; those of later days don't count.
 */
export function latestByOperator<Figures>(
  calibrations: readonly CalibrationFact<Figures>[],
  today: CalendarDate,
  settings: CalibrationSettings,
): readonly LatestCalibration<Figures>[] {
  const made = calibrations.filter(({ doneOn }) => daysBetween(doneOn, today) >= 0);
  const latest = new Map<string, CalibrationFact<Figures>>();
  for (const calibration of made) {
    latest.delete(setupKey(calibration));
    latest.set(setupKey(calibration), calibration);
  }
  const present = made.at(-1);
  return [...latest.values()]
    .reverse()
    .map((calibration) => ({ calibration, standing: standingAmong(calibration, present ?? calibration, today, settings) }));
}

function standingAmong(
  calibration: CalibrationFact<unknown>,
  present: CalibrationFact<unknown>,
  today: CalendarDate,
  settings: CalibrationSettings,
): OperatorStanding {
  const { equipment, operator } = calibration;
  const setup = calibration.setup.kind === "spreader" ? calibration.setup : present.setup;
  const found = standingOf([calibration], { on: today, equipment, operator, setup }, settings, "unknown");
  const { lastGoodDay } = found;
  if (found.kind === "other-setup" || lastGoodDay === undefined) {
    return { kind: "setup-changed", finding: setupChanged(calibration, present) };
  }
  const daysLeft = daysBetween(today, lastGoodDay);
  return found.kind === "run-out"
    ? { kind: "run-out", lastGoodDay, daysAgo: -daysLeft, finding: found.finding }
    : { kind: "good", lastGoodDay, daysLeft };
}

function setupChanged(calibration: CalibrationFact<unknown>, present: CalibrationFact<unknown>): Finding {
  const { equipment, operator, setup, doneOn } = calibration;
  return takeCare({
    rule: "calibration-of-another-tip-or-pressure",
    source: "house",
    what: `The calibration of ${equipment.name} by ${operator.name} is of another tip or pressure.`,
    figure: `It is of ${formatShortDate(doneOn)} with ${setupInWords(setup)}; since ${formatShortDate(present.doneOn)} the sprayer has ${setupInWords(present.setup)}.`,
    toDo: `Let ${operator.name} calibrate with what is on it now.`,
    about: [equipment.name, operator.name],
  });
}
