import { type Finding, hold } from "#domain/foundation/finding";
import { formatRate } from "#domain/quantities/format-rate";
import { addRates, compareRates, type Rate, rateFromAmounts, rateOf } from "#domain/quantities/rate";
import { nitrogenDelivered } from "#domain/turf/nutrients";
import { type RulePack } from "#domain/rules/rule-pack";
import { type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";

type NitrogenRate = Rate<"nutrient-mass-per-area">;

/**
 * What a state's law on file says of nitrogen: the most in one application, which is all that goes on a lawn in one
 * visit, and the most in a year, which can't be judged while a lawn's history holds no nitrogen and then holds for a
 * license holder. A rule that is not on file is said where nutrient law is said. Nitrogen that can't be counted is not
 * judged here; it holds by itself.
 */
export function checkNitrogenLaw({ treatments, lawns }: TicketQuestion, pack: RulePack | undefined): readonly Finding[] {
  if (pack === undefined) return [];
  const brought = treatments.map((treatment) => ({ zoneIds: treatment.zoneIds, nitrogen: nitrogenOf(treatment) }));
  return lawns.flatMap((lawn) => {
    const here = brought.filter(({ zoneIds }) => zoneIds.includes(lawn.zoneId));
    const nitrogen = here.map((one) => one.nitrogen).reduce(addRates, NOTHING);
    return nitrogen.amount === 0n ? [] : [...perApplication(lawn, nitrogen, pack), ...perYear(lawn, pack)];
  });
}

const NOTHING: NitrogenRate = rateFromAmounts("nutrient-mass-per-area", 0n, 1n);

function nitrogenOf({ label, rate }: TicketTreatment): NitrogenRate {
  const { analysis, density } = label;
  if (analysis === "none" || analysis === "unknown") return NOTHING;
  const nitrogen = nitrogenDelivered(rate, { ...analysis, ...(density === "unknown" ? {} : { density }) });
  return nitrogen.ok ? nitrogen.value : NOTHING;
}

function perApplication({ name }: TicketLawn, nitrogen: NitrogenRate, { facts }: RulePack): readonly Finding[] {
  const rule = facts["nitrogen-per-application"];
  if (!rule.onFile) return [];
  const most = rateOf("nutrient-mass-per-area", rule.value.poundsPer1000SqFt, "lb per 1,000 sq ft");
  if (compareRates(nitrogen, most) <= 0) return [];
  return [
    hold("license-holder", {
      rule: "nitrogen-above-the-law",
      source: "law",
      what: `${name} gets more nitrogen in one visit than the law lets it.`,
      figure: `Planned is ${formatRate(nitrogen, "us")}; the law's most is ${formatRate(most, "us")}.`,
      toDo: "Lower the rate, or split it over two visits.",
      citation: rule.citation,
      about: [name],
    }),
  ];
}

function perYear({ name }: TicketLawn, { facts }: RulePack): readonly Finding[] {
  const rule = facts["nitrogen-per-year"];
  if (!rule.onFile) return [];
  const most = rateOf("nutrient-mass-per-area", rule.value.poundsPer1000SqFt, "lb per 1,000 sq ft");
  return [
    hold("license-holder", {
      rule: "nitrogen-of-the-year-undecided",
      source: "law",
      what: `How much nitrogen ${name} had this year is not counted here.`,
      figure: `The law's most in a year is ${formatRate(most, "us")}.`,
      toDo: "Add up this year's feeds of the lawn before it gets another.",
      citation: rule.citation,
      about: [name],
    }),
  ];
}
