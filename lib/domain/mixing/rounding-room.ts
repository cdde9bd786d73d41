import { packOf } from "#domain/rules/packs-on-file";
import { type RulePack } from "#domain/rules/rule-pack";
import { highestOf } from "#domain/mixing/granular-mix";
import { passesNitrogenOfLaw } from "#domain/mixing/nitrogen-checks";
import { passesPhosphateOfLaw } from "#domain/mixing/phosphate-checks";
import { passesSeason } from "#domain/mixing/season-limits";
import { type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

/** The treatments last worked out of a question: a day asks for those of its mix tickets again for every plan and fill. */
const KEPT_OF_QUESTION = new WeakMap<TicketQuestion, readonly TicketTreatment[]>();

/** The treatments of a visit as rounding may take them, by the law on file for its state. */
export function treatmentsForRounding(question: TicketQuestion): readonly TicketTreatment[] {
  const known = KEPT_OF_QUESTION.get(question);
  if (known !== undefined) return known;
  const kept = keptFromRoundingUp(question, packOf(question.state));
  KEPT_OF_QUESTION.set(question, kept);
  return kept;
}

/**
 * The treatments as rounding to marks may take them. Where every product rounded up as far as its own label lets it
 * would pass a season's limit or the law's nitrogen or phosphate, no amount is rounded above its planned rate: its highest rate is
 * then the plan's.
 */
export function keptFromRoundingUp(question: TicketQuestion, pack: RulePack | undefined): readonly TicketTreatment[] {
  const roundedUp = question.treatments.map((treatment): TicketTreatment => ({ ...treatment, rate: highestOf(treatment) }));
  if (!passesMaximum({ ...question, treatments: roundedUp }, pack)) return question.treatments;
  return question.treatments.map((treatment) => ({ ...treatment, use: { ...treatment.use, rates: highestAsPlanned(treatment) } }));
}

/** A maximum that is made of several products or of a season, and not of one product's highest rate. */
function passesMaximum(question: TicketQuestion, pack: RulePack | undefined): boolean {
  const { treatments, lawns } = question;
  const isOverSeason = (treatment: TicketTreatment) => passesSeason(treatment, lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)), question);
  return passesNitrogenOfLaw(question, pack) || passesPhosphateOfLaw(question, pack) || treatments.some(isOverSeason);
}

function highestAsPlanned({ rate, use: { rates } }: TicketTreatment): TicketTreatment["use"]["rates"] {
  if (rates.basis === "product-mass-per-area" && rate.basis === rates.basis) return { ...rates, high: rate };
  if (rates.basis === "product-volume-per-area" && rate.basis === rates.basis) return { ...rates, high: rate };
  return rates;
}
