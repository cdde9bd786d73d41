import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { formatRate } from "#domain/quantities/format-rate";
import { addRates, compareRates } from "#domain/quantities/rate";
import { compareRational, decimal, multiplyRational, rational, toDecimalString } from "#domain/quantities/rational";
import { US_STATES } from "#domain/company/us-state";
import { annualNitrogenRangesIn } from "#domain/turf/annual-nitrogen";
import { slowShareOfNitrogen } from "#domain/turf/nutrients";
import { type NitrogenCapRule, type PackFact, type RulePack } from "#domain/rules/rule-pack";
import { isSpread, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { broughtByTreatments, countedAsQuick, type CountedNitrogen, mostNitrogen, nitrogenOfVisit, nitrogenOfYear, type NitrogenRate, wholeNitrogen } from "#domain/mixing/year-nitrogen";

/**
 * What is said of nitrogen: the law's most in one application (which is all that goes on a lawn in one visit) and of it
 * quick, the law's most in a calendar year with all that the lawn got of it, the law's share of slow nitrogen, and the
 * most that is published for the grass in that state. Nitrogen whose release no label states counts as quick. A feed of
 * the year that can't be counted leaves the year undecided, which holds. A rule that is not on file is said where
 * nutrient law is said; nitrogen of this visit that can't be counted holds by itself.
 */
export function checkNitrogen(question: TicketQuestion, pack: RulePack | undefined): readonly Finding[] {
  const { treatments, lawns, on } = question;
  const brought = broughtByTreatments(treatments);
  const ofLawns = lawns.flatMap((lawn) => {
    const visit = nitrogenOfVisit(lawn, brought);
    if (wholeNitrogen(visit.nitrogen).amount === 0n) return [];
    const before = nitrogenOfYear(lawn, on);
    return [...(pack === undefined ? [] : [...perApplication(lawn, visit, pack), ...perYear(lawn, before, visit, pack)]), ...aboveRange(lawn, before, visit, question)];
  });
  return [...ofLawns, ...treatments.flatMap((treatment) => checkSlowShare(treatment, pack))];
}

type Cap = Extract<PackFact<NitrogenCapRule>, { readonly onFile: true }>;

function perApplication({ name }: TicketLawn, { nitrogen }: CountedNitrogen, { facts }: RulePack): readonly Finding[] {
  const whole = facts["nitrogen-per-application"];
  const quick = facts["quick-nitrogen-per-application"];
  const asQuick = countedAsQuick(nitrogen);
  return [
    ...(whole.onFile && compareRates(wholeNitrogen(nitrogen), mostNitrogen(whole.value)) > 0
      ? [aboveLaw("nitrogen-above-the-law", `${name} gets more nitrogen in one visit than the law lets it.`, wholeNitrogen(nitrogen), whole, name)]
      : []),
    ...(quick.onFile && compareRates(asQuick, mostNitrogen(quick.value)) > 0
      ? [aboveLaw("quick-nitrogen-above-the-law", `${name} gets more quick nitrogen in one visit than the law lets it.`, asQuick, quick, name, notStatedWords(nitrogen))]
      : []),
  ];
}

function notStatedWords({ notStated }: CountedNitrogen["nitrogen"]): string {
  return notStated.amount === 0n ? "" : ` Of ${formatRate(notStated, "us")} no label states the release; it counts as quick.`;
}

function aboveLaw(rule: string, what: string, planned: NitrogenRate, cap: Cap, lawnName: string, more = ""): Finding {
  return hold("license-holder", {
    rule,
    source: "law",
    what,
    figure: `Planned is ${formatRate(planned, "us")}; the law's most is ${formatRate(mostNitrogen(cap.value), "us")}.${more}`,
    toDo: "Lower the rate, or split it over two visits.",
    citation: cap.citation,
    about: [lawnName],
  });
}

function perYear({ name }: TicketLawn, before: CountedNitrogen, visit: CountedNitrogen, { facts }: RulePack): readonly Finding[] {
  const rule = facts["nitrogen-per-year"];
  if (!rule.onFile) return [];
  const most = formatRate(mostNitrogen(rule.value), "us");
  const had = wholeNitrogen(before.nitrogen);
  const after = addRates(had, wholeNitrogen(visit.nitrogen));
  const words = { source: "law", citation: rule.citation, about: [name] } as const;
  const undecided = hold("license-holder", {
    ...words,
    rule: "nitrogen-of-the-year-undecided",
    what: `How much nitrogen ${name} had this year can't be counted.`,
    figure: `${before.missing.join(" ")} The law's most in a year is ${most}.`,
    toDo: "Enter what is missing, or add up this year's feeds of the lawn before it gets another.",
  });
  const above = hold("license-holder", {
    ...words,
    rule: "nitrogen-of-the-year-above-the-law",
    what: `${name} gets more nitrogen in the year than the law lets it.`,
    figure: `It had ${formatRate(had, "us")} and has ${formatRate(after, "us")} after this visit; the law's most is ${most}.`,
    toDo: "Lower the rate, or leave the feed out this year.",
  });
  return [...(before.missing.length > 0 ? [undecided] : []), ...(compareRates(after, mostNitrogen(rule.value)) > 0 ? [above] : [])];
}

/** Above the highest of what is published for the lawn's main grass in the state: advice, and no law. */
function aboveRange({ name, grasses }: TicketLawn, before: CountedNitrogen, visit: CountedNitrogen, { state }: TicketQuestion): readonly Finding[] {
  const [grass] = grasses;
  const ranges = grass === undefined ? [] : annualNitrogenRangesIn(state, grass);
  const [first, ...others] = ranges;
  if (first === undefined) return [];
  const highest = others.reduce((most, range) => (compareRates(range.highest, most.highest) > 0 ? range : most), first);
  const after = addRates(wholeNitrogen(before.nitrogen), wholeNitrogen(visit.nitrogen));
  if (compareRates(after, highest.highest) <= 0) return [];
  return [
    takeCare({
      rule: "nitrogen-above-published-range",
      source: "handbook",
      what: `${name} gets more nitrogen in the year than is published for ${highest.grass} in ${US_STATES[state].name}.`,
      figure: `It has ${formatRate(after, "us")} after this visit; the most published is ${formatRate(highest.highest, "us")}.`,
      toDo: "Make sure that it is meant; feed less, or leave one feed out.",
      citation: highest.source.name,
      about: [name],
    }),
  ];
}

/** Choose 30 % or more slow-release when possible. Source: Penn State AASL, "Home Lawn - Maintain". */
const ADVISED_SLOW_PERCENT = "30";
const ADVISED_SLOW_SOURCE = "Penn State AASL, Home Lawn, Maintain";

/** The slow share of a feed against the law's, or else, for what is spread, against what is advised. */
function checkSlowShare(treatment: TicketTreatment, pack: RulePack | undefined): readonly Finding[] {
  const { analysis, productName } = treatment.label;
  if (analysis === "none" || analysis === "unknown" || analysis.grade.nitrogenPercent.numerator === 0n) return [];
  const rule = pack?.facts["slow-release-share"];
  const isLaw = rule?.onFile === true;
  if (!isLaw && !isSpread(treatment)) return [];
  const least = isLaw ? rule.value.leastPercentOfNitrogen : ADVISED_SLOW_PERCENT;
  const share = slowShareOfNitrogen(analysis.grade, analysis.release);
  const percent = share.ok ? multiplyRational(share.value, rational(100n)) : undefined;
  if (percent !== undefined && compareRational(percent, decimal(least)) >= 0) return [];
  const wanted = isLaw ? `The law asks for at least ${least} %.` : `At least ${least} % is advised where it can be had.`;
  const words = {
    rule: percent === undefined ? "slow-release-not-stated" : "slow-release-share-low",
    what: percent === undefined ? `How much of the nitrogen of ${productName} is slow is not on file.` : `Little of the nitrogen of ${productName} is slow.`,
    figure: percent === undefined ? wanted : `${toDecimalString(percent, 1, "nearest")} % of it is. ${wanted}`,
    about: [productName],
  };
  const toDo = percent === undefined ? "Enter what the label states of slow-release nitrogen." : "Take a feed with more slow nitrogen.";
  if (isLaw) return [hold("license-holder", { ...words, source: "law", citation: rule.citation, toDo })];
  return [note({ ...words, source: "handbook", citation: ADVISED_SLOW_SOURCE, toDo })];
}
