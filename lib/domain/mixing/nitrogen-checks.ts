import { type Finding, hold, note, takeCare } from "#domain/foundation/finding";
import { formatRate, formatRatesApart } from "#domain/quantities/format-rate";
import { addRates, compareRates } from "#domain/quantities/rate";
import { compareRational, decimal, multiplyRational, rational, toDecimalString } from "#domain/quantities/rational";
import { US_STATES } from "#domain/company/us-state";
import { ABOUT_PERCENT, type AnnualNitrogenRange, annualNitrogenRangesIn, isOneFigure, rangeHeldAgainst, sourceOfRange } from "#domain/turf/annual-nitrogen";
import { slowShareOfNitrogen } from "#domain/turf/nutrients";
import { type RulePack } from "#domain/rules/rule-pack";
import { aboveAtOnce, capOf, isAboveCap, type NutrientCap, type NutrientWords, overYear, type YearOfNutrient } from "#domain/mixing/nutrient-caps";
import { isSpread, type TicketLawn, type TicketQuestion, type TicketTreatment } from "#domain/mixing/ticket-question";
import { broughtByTreatments, countedAsQuick, nitrogenOfVisit, nitrogenOfYear, nitrogenOverLawn, type NitrogenRate, wholeNitrogen } from "#domain/mixing/year-nitrogen";

/**
 * What is said of nitrogen: the law's most in one application (which is all that goes on a lawn in one visit) and of it
 * quick, the law's most in a calendar year with all that the lawn got of it, the law's share of slow nitrogen, and the
 * most that is published for the grass in that state. Nitrogen whose release no label states counts as quick. A feed of
 * the year that can't be counted leaves the year undecided, which holds. A rule that is not on file is said where
 * nutrient law is said; nitrogen of this visit that can't be counted holds by itself. Sources: the pack, the published
 * yearly ranges, and for slow nitrogen Penn State AASL, Home Lawn, Maintain.
 */
export function checkNitrogen(question: TicketQuestion, pack: RulePack | undefined): readonly Finding[] {
  const caps = capsOf(pack);
  return [
    ...nitrogenOnLawns(question).flatMap((fed) => [...perApplication(fed, caps), ...overYear(fed, caps.perYear, WORDS), ...aboveRange(fed, question)]),
    ...question.treatments.flatMap((treatment) => checkSlowShare(treatment, pack)),
  ];
}

/** Whether a lawn gets more nitrogen than the law lets it, in one visit or in the calendar year. */
export function passesNitrogenOfLaw(question: TicketQuestion, pack: RulePack | undefined): boolean {
  const caps = capsOf(pack);
  if (caps.perApplication === undefined && caps.quickPerApplication === undefined && caps.perYear === undefined) return false;
  return nitrogenOnLawns(question).some(
    ({ visit, quick, year }) => isAboveCap(visit, caps.perApplication) || isAboveCap(quick, caps.quickPerApplication) || isAboveCap(year, caps.perYear),
  );
}

interface CapsOfLaw {
  readonly perApplication: NutrientCap | undefined;
  readonly quickPerApplication: NutrientCap | undefined;
  readonly perYear: NutrientCap | undefined;
}

function capsOf(pack: RulePack | undefined): CapsOfLaw {
  return {
    perApplication: capOf(pack?.facts["nitrogen-per-application"]),
    quickPerApplication: capOf(pack?.facts["quick-nitrogen-per-application"]),
    perYear: capOf(pack?.facts["nitrogen-per-year"]),
  };
}

/** A lawn that gets nitrogen in the visit. */
interface FedLawn extends YearOfNutrient {
  readonly lawn: TicketLawn;
  readonly visit: NitrogenRate;
  /** Of it what counts as quick, and of that what no label states the release of. */
  readonly quick: NitrogenRate;
  readonly notStated: NitrogenRate;
  /** The year's, with what went on spots spread over the whole lawn. */
  readonly overLawn: NitrogenRate;
}

function nitrogenOnLawns({ treatments, lawns, on }: TicketQuestion): readonly FedLawn[] {
  const brought = broughtByTreatments(treatments);
  return lawns.flatMap((lawn) => {
    const { nitrogen } = nitrogenOfVisit(lawn, brought);
    const visit = wholeNitrogen(nitrogen);
    if (visit.amount === 0n) return [];
    const had = nitrogenOfYear(lawn, on);
    const before = wholeNitrogen(had.nitrogen);
    const year = addRates(before, visit);
    const hasSpots = [...treatments, ...lawn.history].some(({ spot }) => spot !== undefined);
    return [{ lawn, lawnName: lawn.name, visit, quick: countedAsQuick(nitrogen), notStated: nitrogen.notStated, year, before, uncounted: had.missing, overLawn: hasSpots ? wholeNitrogen(nitrogenOverLawn(lawn, treatments, on)) : year }];
  });
}

const WORDS: NutrientWords = { name: "nitrogen", ofWhat: "", toDo: "Lower the rate, or leave the feed out this year." };
const LOWER_OR_SPLIT = "Lower the rate, or split it over two visits.";

function perApplication({ lawnName, visit, quick, notStated }: FedLawn, caps: CapsOfLaw): readonly Finding[] {
  const { perApplication: ofAll, quickPerApplication: ofQuick } = caps;
  const found: Finding[] = [];
  if (isAboveCap(visit, ofAll)) {
    const said = { rule: "nitrogen-above-the-law", what: `${lawnName} gets more nitrogen in one visit than the law lets it.`, toDo: LOWER_OR_SPLIT };
    found.push(aboveAtOnce(said, { planned: visit, ofWhat: WORDS.ofWhat }, ofAll, lawnName));
  }
  if (isAboveCap(quick, ofQuick)) {
    const said = { rule: "quick-nitrogen-above-the-law", what: `${lawnName} gets more quick nitrogen in one visit than the law lets it.`, toDo: LOWER_OR_SPLIT };
    found.push(aboveAtOnce(said, { planned: quick, ofWhat: WORDS.ofWhat, more: notStatedWords(notStated) }, ofQuick, lawnName));
  }
  return found;
}

function notStatedWords(notStated: NitrogenRate): string {
  return notStated.amount === 0n ? "" : ` Of ${formatRate(notStated, "us")} no label states the release; it counts as quick.`;
}

/** Above the highest of what is published for the lawn's main grass in the state, or above what is about a single figure: advice, and no law. Published is what a whole lawn gets. */
function aboveRange({ lawn: { name, grasses }, overLawn: year }: FedLawn, { state }: TicketQuestion): readonly Finding[] {
  const [grass] = grasses;
  const ranges = grass === undefined ? [] : annualNitrogenRangesIn(state, grass);
  const [first, ...others] = ranges;
  if (first === undefined) return [];
  const most = (range: AnnualNitrogenRange) => rangeHeldAgainst(range).highest;
  const highest = others.reduce((found, range) => (compareRates(most(range), most(found)) > 0 ? range : found), first);
  if (compareRates(year, most(highest)) <= 0) return [];
  const [above, limit] = formatRatesApart(year, highest.highest, "us");
  const published = isOneFigure(highest) ? `published is about ${limit}, and up to ${String(ABOUT_PERCENT)} % more counts as that` : `the most published is ${limit}`;
  return [
    takeCare({
      rule: "nitrogen-above-published-range",
      source: "handbook",
      what: `${name} gets more nitrogen in the year than is published for ${highest.grass} in ${US_STATES[state].name}.`,
      figure: `It has ${above} after this visit; ${published}.`,
      toDo: "Make sure that it is meant; feed less, or leave one feed out.",
      citation: sourceOfRange(highest),
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
