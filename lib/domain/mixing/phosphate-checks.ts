import { type Finding, hold } from "#domain/foundation/finding";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { addRates, compareRates, type Rate } from "#domain/quantities/rate";
import { type PackFact, type PhosphateCapRule, type RulePack } from "#domain/rules/rule-pack";
import { NO_NUTRIENT_RATE } from "#domain/turf/nutrients";
import { type TicketLawn, type TicketQuestion } from "#domain/mixing/ticket-question";
import { type BroughtByTreatment, broughtByTreatments, mostNutrient } from "#domain/mixing/year-nitrogen";

type PhosphateRate = Rate<"nutrient-mass-per-area">;

interface Cap {
  readonly most: PhosphateRate;
  readonly citation: string;
}

function capOf(fact: PackFact<PhosphateCapRule> | undefined): Cap | undefined {
  return fact?.onFile === true ? { most: mostNutrient(fact.value), citation: fact.citation } : undefined;
}

interface CountedPhosphate {
  readonly phosphate: PhosphateRate;
  /** Why something is not in it, once each: it is a lowest sum then. */
  readonly missing: readonly string[];
}

function countPhosphate(brought: readonly BroughtByTreatment["nutrients"][]): CountedPhosphate {
  const phosphate = brought.reduce((sum, each) => (each.ok ? addRates(sum, each.value.phosphate) : sum), NO_NUTRIENT_RATE);
  return { phosphate, missing: [...new Set(brought.flatMap((each) => (each.ok ? [] : [each.refusal.sentence])))] };
}

/** A lawn that gets phosphate in the visit, and what it had of it in the calendar year before. */
interface LawnWithPhosphate {
  readonly lawn: TicketLawn;
  readonly visit: PhosphateRate;
  readonly before: CountedPhosphate;
}

function phosphateOnLawns({ treatments, lawns, on }: TicketQuestion): readonly LawnWithPhosphate[] {
  const brought = broughtByTreatments(treatments);
  return lawns.flatMap((lawn) => {
    const visit = countPhosphate(brought.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId)).map(({ nutrients }) => nutrients)).phosphate;
    if (visit.amount === 0n) return [];
    const ofYear = lawn.history.filter((past) => past.on.slice(0, 4) === on.slice(0, 4)).map(({ nutrients }) => nutrients);
    return [{ lawn, visit, before: countPhosphate(ofYear) }];
  });
}

/**
 * The law's most phosphate (P2O5) in one application, which is all that goes on a lawn in one visit, and in a calendar year
 * with all that the lawn had of it. A feed of the year that can't be counted leaves the year undecided, which holds. Whether
 * a lawn may get phosphate at all is asked where nutrient law is said.
 */
export function checkPhosphate(question: TicketQuestion, pack: RulePack | undefined): readonly Finding[] {
  const [perApplication, perYear] = capsOf(pack);
  if (perApplication === undefined && perYear === undefined) return [];
  return phosphateOnLawns(question).flatMap((fed) => [...aboveAtOnce(fed, perApplication), ...overYear(fed, perYear)]);
}

/** Whether a lawn gets more phosphate than the law lets it, in one visit or in the calendar year. */
export function passesPhosphateOfLaw(question: TicketQuestion, pack: RulePack | undefined): boolean {
  const [perApplication, perYear] = capsOf(pack);
  if (perApplication === undefined && perYear === undefined) return false;
  return phosphateOnLawns(question).some(({ visit, before }) => isAbove(visit, perApplication) || isAbove(addRates(before.phosphate, visit), perYear));
}

function capsOf(pack: RulePack | undefined): readonly [Cap | undefined, Cap | undefined] {
  return [capOf(pack?.facts["phosphate-per-application"]), capOf(pack?.facts["phosphate-per-year"])];
}

function isAbove(rate: PhosphateRate, cap: Cap | undefined): cap is Cap {
  return cap !== undefined && compareRates(rate, cap.most) > 0;
}

function aboveAtOnce({ lawn: { name }, visit }: LawnWithPhosphate, cap: Cap | undefined): readonly Finding[] {
  if (!isAbove(visit, cap)) return [];
  const [above, limit] = formatRatesApart(visit, cap.most, "us");
  return [
    hold("license-holder", {
      rule: "phosphate-above-the-law",
      source: "law",
      what: `${name} gets more phosphate in one visit than the law lets it.`,
      figure: `Planned is ${above} of P2O5; the law's most is ${limit}.`,
      toDo: "Lower the rate, or take a product with less phosphate.",
      citation: cap.citation,
      about: [name],
    }),
  ];
}

function overYear({ lawn: { name }, visit, before }: LawnWithPhosphate, cap: Cap | undefined): readonly Finding[] {
  if (cap === undefined) return [];
  const words = { source: "law", citation: cap.citation, about: [name] } as const;
  const findings: Finding[] = [];
  if (before.missing.length > 0) {
    findings.push(
      hold("license-holder", {
        ...words,
        rule: "phosphate-of-the-year-undecided",
        what: `How much phosphate ${name} had this year can't be counted.`,
        figure: `${before.missing.join(" ")} The law's most in a year is ${formatRate(cap.most, "us")} of P2O5.`,
        toDo: "Enter what is missing, or add up this year's feeds of the lawn before it gets another.",
      }),
    );
  }
  const year = addRates(before.phosphate, visit);
  if (isAbove(year, cap)) {
    const [above, limit] = formatRatesApart(year, cap.most, "us");
    findings.push(
      hold("license-holder", {
        ...words,
        rule: "phosphate-of-the-year-above-the-law",
        what: `${name} gets more phosphate in the year than the law lets it.`,
        figure: `It had ${formatRate(before.phosphate, "us")} and has ${above} of P2O5 after this visit; the law's most is ${limit}.`,
        toDo: "Lower the rate, or take a product without phosphate.",
      }),
    );
  }
  return findings;
}
