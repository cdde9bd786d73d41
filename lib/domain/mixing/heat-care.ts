import { addDays, formatShortDate } from "#domain/foundation/calendar-date";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { type LabelFacts } from "#domain/label/label-facts";
import { nutrientRatesOf } from "#domain/mixing/delivered";
import { type TicketQuestion, type TicketSettings, type TicketTreatment } from "#domain/mixing/ticket-question";
import { formatRate } from "#domain/quantities/format-rate";
import { compareRates, type Rate, rateOf } from "#domain/quantities/rate";
import { compareRational, ONE } from "#domain/quantities/rational";
import { type GrassSeason, seasonOf } from "#domain/turf/grass";
import { slowShareOfNitrogen } from "#domain/turf/nutrients";
import { type ForecastHighs } from "#domain/weather/forecast-high";

const inPounds = (pounds: string) => rateOf("nutrient-mass-per-area", pounds, "lb per 1,000 sq ft");

/** The most quick nitrogen that Maryland's law (Agriculture 6-224) and Florida's rule (UF/IFAS EP353) let down at once. */
const FULL_QUICK_RATE = inPounds("0.7");

/** The least that is fed at a time as the warm months begin: a fifth of a pound. Source: NC State, home lawn calendar. */
const LIGHT_QUICK_RATE = inPounds("0.2");

/** So much earlier a full rate of quick nitrogen wants care, and so much later a light one. Common practice. */
const RATE_STEP_F = 5;

/** Where the nitrogen of a rate lies: a full one burns first, a light one last; iron alone or unread is held as usual and as full. */
type Burning =
  | { readonly strength: "full" | "usual" | "light"; readonly quick: Rate<"nutrient-mass-per-area"> }
  | { readonly strength: "full"; readonly quick: "not-countable" }
  | { readonly strength: "usual"; readonly quick: "iron" };

/**
 * How strongly a treatment burns: by its quick nitrogen, of which what no label states the release of counts, and by iron, for
 * which no university's limit was found. Undefined for what does not burn: slow nitrogen alone rarely does even above 85 °F
 * (Purdue AY-22), and what has no nutrients is not asked. What can't be counted is taken for a full rate.
 */
function burningOf({ label, rate }: TicketTreatment): Burning | undefined {
  const { analysis } = label;
  if (analysis === "none") return undefined;
  if (analysis === "unknown") return { strength: "full", quick: "not-countable" };
  const hasIron = analysis.grade.ironPercent !== "not-stated" && analysis.grade.ironPercent.numerator > 0n;
  if (!hasIron && !hasQuickNitrogen(analysis)) return undefined;
  const brought = nutrientRatesOf(label, rate);
  if (!brought.ok) return { strength: "full", quick: "not-countable" };
  const { nitrogen, quickNitrogen } = brought.value;
  const quick = quickNitrogen === "not-stated" ? nitrogen : quickNitrogen;
  if (compareRates(quick, FULL_QUICK_RATE) >= 0) return { strength: "full", quick };
  if (hasIron) return { strength: "usual", quick: "iron" };
  return { strength: compareRates(quick, LIGHT_QUICK_RATE) <= 0 ? "light" : "usual", quick };
}

function hasQuickNitrogen({ grade, release }: Extract<LabelFacts["analysis"], object>): boolean {
  if (grade.nitrogenPercent.numerator === 0n) return false;
  if (release.kind === "not-stated") return true;
  const slow = slowShareOfNitrogen(grade, release);
  return slow.ok && compareRational(slow.value, ONE) < 0;
}

/** A treatment that can burn, on turf of one season, with the high from which on it wants care. */
interface Caution {
  readonly productName: string;
  readonly season: GrassSeason;
  readonly burning: Burning;
  readonly fromF: number;
}

const STEPS: Readonly<Record<Burning["strength"], number>> = { full: -RATE_STEP_F, usual: 0, light: RATE_STEP_F };

/** What of a visit can burn, on turf of each season that it goes on; a lawn whose grass nobody entered counts as cool-season turf. */
function cautionsOf({ treatments, lawns, settings }: TicketQuestion): readonly Caution[] {
  return treatments.flatMap((treatment) => {
    const burning = burningOf(treatment);
    if (burning === undefined) return [];
    const seasons = new Set(lawns.filter(({ zoneId }) => treatment.zoneIds.includes(zoneId)).map(({ grasses }) => (grasses.length === 0 ? "cool" : seasonOf(grasses))));
    return [...seasons].map((season) => ({ productName: treatment.label.productName, season, burning, fromF: settingOf(settings, season) + STEPS[burning.strength] }));
  });
}

function settingOf({ heatCautionFromF, heatCautionWarmFromF }: TicketSettings, season: GrassSeason): number {
  return season === "cool" ? heatCautionFromF : heatCautionWarmFromF;
}

/** "The company's settings ask for care from 80 °F on, 5 °F earlier for 0.8 lb per 1,000 sq ft of quick nitrogen: from 75 °F." */
function whyFrom({ burning, fromF, season }: Caution, settings: TicketSettings): string {
  const asked = `The company's settings ask for care from ${String(settingOf(settings, season))} °F on`;
  if (burning.strength === "usual") return `${asked}.`;
  const when = burning.strength === "full" ? "earlier" : "later";
  const what = burning.quick === "not-countable" ? "nitrogen that can't be counted" : `${formatRate(burning.quick, "us")} of quick nitrogen`;
  return `${asked}, ${String(RATE_STEP_F)} °F ${when} for ${what}: from ${String(fromF)} °F.`;
}

/**
 * What wants care in the heat of the day or of the days after it, as far as their highs were entered: feed and iron by the
 * season of the turf, the nitrogen's source and its rate (common practice: cool-season turf gets them in the 70s F and
 * waits in the 80s). Where the entered highs are cool and one of the days after is not entered, a note says so.
 */
export function careInHeat(question: TicketQuestion, { date, forecastHighF, followingHighsF }: ForecastHighs): readonly Finding[] {
  const days = [forecastHighF, ...followingHighsF].map((highF, index) => ({ highF, on: formatShortDate(addDays(date, index)) }));
  return cautionsOf(question).flatMap((caution): readonly Finding[] => {
    const { productName, season, fromF } = caution;
    const hot = days.find(({ highF }) => highF !== "not-entered" && highF >= fromF);
    if (hot !== undefined) {
      return [
        takeCare({
          rule: `heat-on-${season}-season-turf`,
          source: "common-practice",
          what: `${productName} can burn ${season}-season turf in heat.`,
          figure: `The forecast high of ${hot.on} is ${String(hot.highF)} °F. ${whyFrom(caution, question.settings)}`,
          toDo: "Wait for cooler days, take less quick nitrogen, or water as the label says.",
          about: [productName],
        }),
      ];
    }
    const missing = days.find(({ highF }) => highF === "not-entered");
    if (missing === undefined) return [];
    return [
      note({
        rule: "coming-heat-not-judged",
        source: "common-practice",
        what: `${productName} can burn ${season}-season turf in the heat of the days after it, and their forecast is not entered.`,
        figure: `The first one that is missing is ${missing.on}. ${whyFrom(caution, question.settings)}`,
        toDo: "Look at the forecast of the coming days, and enter it with the day's own.",
        about: [productName],
      }),
    ];
  });
}

/** What wants care in heat on a day without a forecast, and from which high on. */
export function careWithoutForecast(question: TicketQuestion): readonly Finding[] {
  return cautionsOf(question).map((caution) =>
    takeCare({
      rule: "heat-not-judged",
      source: "common-practice",
      what: `${caution.productName} can burn ${caution.season}-season turf in heat, and the day has no forecast.`,
      figure: whyFrom(caution, question.settings),
      toDo: `Look at the forecast: from ${String(caution.fromF)} °F on, wait.`,
      about: [caution.productName],
    }),
  );
}
