import Link from "next/link";
import { type GrowthOfYear, type LedgerOfLawn } from "#application/properties/read-nutrient-ledger";
import { countedAsQuick, wholeNitrogen } from "#domain/mixing/year-nitrogen";
import { conclusionOfYear, LEDGER_NUTRIENT_WORDS, type LedgerPart, type NutrientYearOfLawn, poundsPerThousand } from "#domain/scheduling/nutrient-ledger";
import { dayWords } from "#domain/scheduling/window-words";
import { monthWords } from "#domain/foundation/calendar-date";
import { listWords } from "#domain/foundation/list-words";
import { type GrowthOfMonth } from "#domain/turf/growth-of-months";
import { NutrientBar, type NutrientPart } from "#ui/drawings/nutrient-bar";
import { type MonthGrowth, NutrientMonths } from "#ui/drawings/nutrient-months";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { meanWords } from "../settings/temperature-words";

const DECIMALS = LEDGER_NUTRIENT_WORDS.nitrogen.decimals;

/** What is drawn and what stands in the table come from this one list. */
function drawnPart({ id, on, productName, standing, amount }: LedgerPart): NutrientPart {
  const { quick, slow, notStated } = amount;
  return { id, when: dayWords(on), product: productName, standing, quick: poundsPerThousand(quick), slow: poundsPerThousand(slow), notStated: poundsPerThousand(notStated) };
}

function rangeOf({ ranges }: NutrientYearOfLawn) {
  const [range, ...others] = ranges;
  if (range === undefined || others.length > 0) return {};
  return { range: { name: `${range.grass}, ${range.region}`, low: poundsPerThousand(range.lowest), high: poundsPerThousand(range.highest) } };
}

interface LawnProps {
  readonly lawn: LedgerOfLawn;
}

function BarOf({ lawn: { letter, name, ledger }, year }: LawnProps & { readonly year: NutrientYearOfLawn }) {
  const words = LEDGER_NUTRIENT_WORDS[year.nutrient];
  return (
    <NutrientBar
      title={`${words.name}, ${letter} ${name}, ${String(ledger.year)}`}
      conclusion={conclusionOfYear(year, ledger.missing)}
      unit={`lb ${words.sign} per 1,000 sq ft`}
      decimals={words.decimals}
      hasRelease={year.nutrient === "nitrogen"}
      parts={year.parts.map(drawnPart)}
      {...rangeOf(year)}
      {...(year.limit.kind === "law" ? { limit: { amount: poundsPerThousand(year.limit.most), source: "law" } } : {})}
    />
  );
}

/** Bars of the nutrients that go on a lawn in the year, nitrogen always first, with what can't be drawn in words. */
export function YearOfLawn({ lawn, withMonths }: LawnProps & { readonly withMonths: boolean }) {
  const { ledger } = lawn;
  const drawn = ledger.nutrients.filter(({ nutrient, parts }) => nutrient === "nitrogen" || parts.length > 0);
  const none = ledger.nutrients.filter((year) => !drawn.includes(year)).map(({ nutrient }) => LEDGER_NUTRIENT_WORDS[nutrient].sign);
  const [nitrogen] = drawn;
  return (
    <Stack gap={5}>
      {drawn.map((year) => (
        <BarOf key={year.nutrient} lawn={lawn} year={year} />
      ))}
      {withMonths && nitrogen !== undefined && <MonthsOf lawn={lawn} year={nitrogen} />}
      <Stack gap={2}>
        {none.length > 0 && <p>No {listWords(none).replace(" and ", " or ")} is put down or planned this year.</p>}
        {ledger.missing.length > 0 && <p>Not counted: {ledger.missing.join(" ")}</p>}
        {nitrogen !== undefined && <ReleaseNotStated year={nitrogen} />}
        <Text size="small" tone="second">
          {ledger.rangeWords} {nitrogen?.limit.kind === "not-on-file" && nitrogen.limit.words}
          {drawn.flatMap(({ nutrient, limit }) => (limit.kind === "law" ? [`The law’s most ${LEDGER_NUTRIENT_WORDS[nutrient].sign}: ${limit.citation}.`] : [])).join(" ")}
        </Text>
      </Stack>
    </Stack>
  );
}

/** Says how much counts as quick because no label says otherwise. */
function ReleaseNotStated({ year: { sums } }: { readonly year: NutrientYearOfLawn }) {
  const { notStated } = sums["put-down"];
  if (notStated.amount === 0n) return null;
  const [unknown, quick, whole] = [notStated, countedAsQuick(sums["put-down"]), wholeNitrogen(sums["put-down"])].map((rate) => poundsPerThousand(rate).toFixed(DECIMALS));
  return (
    <p>
      Of {whole} lb put down, {unknown} lb has a release that no label states; where a limit asks, {quick} lb counts as quick.
    </p>
  );
}

function monthOfDrawing(month: GrowthOfMonth): MonthGrowth {
  if (month.kind === "growth") return { share: month.potential, mean: meanWords(month.meanTemperatureC) };
  return { none: month.daysKept === 0 ? "no day on file" : `${String(month.daysKept)} of ${String(month.daysOfMonth)} days on file` };
}

/** In which month the grass could grow best, of those that have a figure. */
function bestMonthWords({ months }: GrowthOfYear): string {
  const best = months.reduce((most, month) => (month.kind === "growth" && month.potential > most.potential ? month : most), { month: 0, potential: -1 });
  return `Growth potential is best in ${monthWords(best.month)}, ${String(Math.round(best.potential * 100))} %.`;
}

function MonthsOf({ lawn: { letter, name, ledger, growth }, year }: LawnProps & { readonly year: NutrientYearOfLawn }) {
  if (year.parts.length === 0 && !growth.ok) return null;
  const months = [...new Set(year.parts.map(({ on }) => on.slice(0, 7)))].length;
  const goesDown = months === 0 ? "No nitrogen goes down in the year." : `Nitrogen goes down in ${months === 1 ? "one month" : `${String(months)} months`} of the year.`;
  return (
    <Stack gap={2}>
      <NutrientMonths
        title={`Nitrogen by month, ${letter} ${name}, ${String(ledger.year)}`}
        conclusion={growth.ok ? `${goesDown} ${bestMonthWords(growth.value)}` : goesDown}
        unit="lb N per 1,000 sq ft"
        decimals={DECIMALS}
        parts={year.parts.map((part) => ({ ...drawnPart(part), month: Number(part.on.slice(5, 7)) }))}
        {...(growth.ok ? { growth: growth.value.months.map(monthOfDrawing) } : {})}
      />
      <Text size="small" tone="second">
        {growth.ok ? growthWords(growth.value) : growth.refusal.sentence} Growth is a curve to look at beside the feeding, never its target: in disease weather it would feed.{" "}
        <Link prefetch={false} href="/settings/temperatures">
          Daily temperatures
        </Link>
      </Text>
    </Stack>
  );
}

function growthWords({ season, isGrassAssumed, source }: GrowthOfYear): string {
  return `Growth potential of ${season} grass${isGrassAssumed ? ", which is assumed and was not looked at," : ""} by the mean air temperature of each month at ${source} (Woods 2014, after Gelernter and Stowell 2005).`;
}
