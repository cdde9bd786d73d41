import { type Finding } from "#domain/foundation/finding";
import { addRates, type Rate } from "#domain/quantities/rate";
import { type RulePack } from "#domain/rules/rule-pack";
import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { aboveAtOnce, broughtInYear, capOf, isAboveCap, type NutrientCap, type NutrientWords, overYear, uncountedOf, type YearOfNutrient } from "#domain/mixing/nutrient-caps";
import { type TicketQuestion } from "#domain/mixing/ticket-question";
import { type BroughtByTreatment, broughtByTreatments } from "#domain/mixing/year-nitrogen";

type PhosphateRate = Rate<"nutrient-mass-per-area">;

function phosphateIn(brought: readonly BroughtByTreatment["nutrients"][]): PhosphateRate {
  return brought.reduce((sum, each) => (each.ok ? addRates(sum, each.value.phosphate) : sum), NO_NUTRIENT_RATE);
}

/** A lawn that gets phosphate in the visit. */
interface LawnWithPhosphate extends YearOfNutrient {
  readonly visit: PhosphateRate;
}

function phosphateOnLawns({ treatments, lawns, on }: TicketQuestion): readonly LawnWithPhosphate[] {
  const brought = broughtByTreatments(treatments);
  return lawns.flatMap((lawn) => {
    const visit = phosphateIn(brought.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).map(({ nutrients }) => nutrients));
    if (visit.amount === 0n) return [];
    const ofYear = broughtInYear(lawn, on);
    const before = phosphateIn(ofYear);
    return [{ lawnName: lawn.name, visit, before, year: addRates(before, visit), uncounted: uncountedOf(ofYear) }];
  });
}

const WORDS: NutrientWords = { name: "phosphate", ofWhat: " of P2O5", toDo: "Lower the rate, or take a product without phosphate." };

/**
 * The law's most phosphate (P2O5) in one application, which is all that goes on a lawn in one visit, and in a calendar year
 * with all that the lawn had of it. A feed of the year that can't be counted leaves the year undecided, which holds. Whether
 * a lawn may get phosphate at all is asked where nutrient law is said.
 */
export function checkPhosphate(question: TicketQuestion, pack: RulePack | undefined): readonly Finding[] {
  const [perApplication, perYear] = capsOf(pack);
  if (perApplication === undefined && perYear === undefined) return [];
  return phosphateOnLawns(question).flatMap((fed) => [...tooMuchAtOnce(fed, perApplication), ...overYear(fed, perYear, WORDS)]);
}

/** Whether a lawn gets more phosphate than the law lets it, in one visit or in the calendar year. */
export function passesPhosphateOfLaw(question: TicketQuestion, pack: RulePack | undefined): boolean {
  const [perApplication, perYear] = capsOf(pack);
  if (perApplication === undefined && perYear === undefined) return false;
  return phosphateOnLawns(question).some(({ visit, year }) => isAboveCap(visit, perApplication) || isAboveCap(year, perYear));
}

function capsOf(pack: RulePack | undefined): readonly [NutrientCap | undefined, NutrientCap | undefined] {
  return [capOf(pack?.facts["phosphate-per-application"]), capOf(pack?.facts["phosphate-per-year"])];
}

function tooMuchAtOnce({ lawnName, visit }: LawnWithPhosphate, cap: NutrientCap | undefined): readonly Finding[] {
  if (!isAboveCap(visit, cap)) return [];
  const said = { rule: "phosphate-above-the-law", what: `${lawnName} gets more phosphate in one visit than the law lets it.`, toDo: "Lower the rate, or take a product with less phosphate." };
  return [aboveAtOnce(said, { planned: visit, ofWhat: WORDS.ofWhat }, cap, lawnName)];
}
