import { type ProgramOnFile } from "#application/programs/read-program";
import { rateIn } from "#domain/quantities/rate";
import { toNumber } from "#domain/quantities/rational";
import { besideRangeWords, besideYearlyRange, endsOfRange, type NitrogenSum } from "#domain/scheduling/season-nitrogen";
import { dayWords } from "#domain/scheduling/window-words";
import { type AnnualNitrogenRange, annualNitrogenRanges, rangeFigures, sourceOfRange } from "#domain/turf/annual-nitrogen";
import { Button } from "#ui/button";
import { NutrientBar } from "#ui/drawings/nutrient-bar";
import { SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { Text } from "#ui/text";
import { nitrogenWords } from "./rounds-of-program";

const UNIT = "lb per 1,000 sq ft";
type NitrogenRate = NitrogenSum["known"];

function pounds(rate: NitrogenRate): number {
  return toNumber(rateIn(rate, UNIT));
}

function keyOf({ grass, region }: AnnualNitrogenRange): string {
  return `${grass}, ${region}`;
}

/** The published range that an address names, if it names one. */
export function rangeNamed(key: string | undefined): AnnualNitrogenRange | undefined {
  return annualNitrogenRanges.find((range) => keyOf(range) === key);
}

function conclusionOf(nitrogen: NitrogenSum, range: AnnualNitrogenRange | undefined): string {
  const sum = nitrogenWords(nitrogen, range === undefined ? [] : endsOfRange(range));
  const brings = sum === "none" || sum === "not known" ? `The season's nitrogen is ${sum}` : `The season brings ${sum} ${UNIT}`;
  if (range === undefined) return `${brings}.`;
  const beside = besideYearlyRange(nitrogen, range);
  const words = besideRangeWords(beside, range);
  return beside === "not-known" ? `${brings} ${words}; whether that is enough can't be said.` : `${brings}, ${words}.`;
}

interface Props {
  readonly program: ProgramOnFile;
  readonly range: AnnualNitrogenRange | undefined;
}

/** The nitrogen of the rounds, one after the other, beside a published yearly range that somebody chose. */
export function NitrogenOfSeason({ program, range }: Props) {
  const { nitrogen, rounds } = program;
  return (
    <Stack gap={5}>
      <NutrientBar
        title={`Nitrogen, ${program.name}, ${String(program.season)}`}
        conclusion={conclusionOf(nitrogen, range)}
        unit="lb N per 1,000 sq ft"
        decimals={2}
        parts={rounds.map((round) => ({
          id: round.roundId,
          when: dayWords(round.opensOn),
          product: round.name,
          standing: "planned" as const,
          quick: pounds(round.nitrogen.known) - pounds(round.nitrogen.slow),
          slow: pounds(round.nitrogen.slow),
        }))}
        {...(range === undefined ? {} : { range: { name: `${range.grass}, ${range.region}`, low: pounds(range.lowest), high: pounds(range.highest) } })}
      />
      {nitrogen.missing.length > 0 && <p>{nitrogen.missing.join(" ")}</p>}
      {nitrogen.isReleaseMissing && <p>Where a label does not state how much of its nitrogen is slow, all of it stands under quick.</p>}
      <form method="get" action="#nitrogen">
        <Stack gap={3}>
          <SelectField
            label="Beside the yearly range of"
            name="beside"
            chooseWords="Choose a grass and a region"
            width="medium"
            defaultValue={range === undefined ? "" : keyOf(range)}
            choices={annualNitrogenRanges.map((each) => ({ value: keyOf(each), word: `${keyOf(each)}: ${rangeFigures(each)}` }))}
          />
          <div>
            <Button type="submit">Set it beside</Button>
          </div>
        </Stack>
      </form>
      {range !== undefined && (
        <Text size="small" tone="second">
          {sourceOfRange(range)}. Tables disagree; none is averaged with another.
        </Text>
      )}
    </Stack>
  );
}
