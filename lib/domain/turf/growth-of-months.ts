import { listWords } from "#domain/foundation/list-words";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Grass, GRASSES } from "#domain/turf/grass";
import { growthPotential, type GrowthSeason } from "#domain/turf/growth-potential";
import { type MonthOfDays, type MonthTemperature } from "#domain/turf/month-temperature";

/** How the grass grows in one month, from 0 to 1, or that too few of its days are kept. */
export type GrowthOfMonth = (MonthOfDays & { readonly kind: "growth"; readonly meanTemperatureC: number; readonly potential: number }) | (MonthOfDays & { readonly kind: "too-few-days" });

/**
 * The one curve that a lawn's grasses grow by. Refused at `grasses` where no grass is on file, and where cool-season
 * and warm-season grass grow together: two curves of which neither is the lawn's.
 */
export function growthSeasonOf(grasses: readonly Grass[]): Outcome<GrowthSeason> {
  const [first] = grasses;
  if (first === undefined) return missingFact("grasses", "the grass of the lawn", "The grass is not on file, so how it grows can't be drawn.");
  const ofSeason = (season: "cool" | "warm") => grasses.filter((grass) => GRASSES[grass] === season);
  const [cool, warm] = [ofSeason("cool"), ofSeason("warm")];
  if (cool.length === 0 || warm.length === 0) return accept(cool.length > 0 ? "cool-season" : "warm-season");
  return badInput("grasses", grasses.join(", "), "cool-season grass alone or warm-season grass alone", `Cool-season ${listWords(cool)} and warm-season ${listWords(warm)} grow here together, so no one curve is this lawn's.`);
}

/**
 * The growth potential of each month, January first, from the month's mean air temperature: the period over which PACE
 * Turf takes its means (https://www.paceturf.org/journal/P3, from average monthly temperatures) and by which nitrogen
 * of a month is counted. It is no target. A month without a mean has no growth either. Refused at `days` where no month
 * has one.
 */
export function growthOfMonths(season: GrowthSeason, months: readonly MonthTemperature[]): Outcome<readonly GrowthOfMonth[]> {
  if (months.every(({ kind }) => kind === "too-few-days")) {
    return missingFact("days", "a month of daily temperatures", "Of no month of the year are enough daily temperatures kept, so how the grass grows can't be drawn.");
  }
  const grown: GrowthOfMonth[] = [];
  for (const month of months) {
    if (month.kind === "too-few-days") {
      grown.push(month);
      continue;
    }
    const potential = growthPotential(season, month.meanTemperatureC);
    if (!potential.ok) return potential;
    grown.push({ ...month, kind: "growth", potential: potential.value });
  }
  return accept(grown);
}
