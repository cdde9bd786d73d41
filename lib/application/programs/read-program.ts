import { z } from "zod";
import { type RoundTreatment } from "#adapters/postgres/generated/client";
import { type CalendarDate } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { accept, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type LabelRates, type UseRate, useNamed } from "#domain/label/label-facts";
import { plannedNitrogen, type PlannedNitrogen, rateStanding, type RateStanding } from "#domain/scheduling/planned-rate";
import { type NitrogenSum, sumNitrogen } from "#domain/scheduling/season-nitrogen";
import { idField } from "#application/field.schema";
import { labelsOfProducts, type LabelOfProduct } from "#application/products/stored-label";
import { NO_VISITS, todayOf, type VisitCounts, visitsOfRounds } from "#application/programs/visits-of-rounds";
import { notFound } from "#application/refusal";
import { calendarDayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";
import { useRateOf } from "#application/visits/visit-rows";

/** What goes down in a round, held against the label as it is confirmed now. */
export interface TreatmentOfRound {
  readonly line: number;
  readonly productId: string;
  readonly productName: string;
  readonly labelUse: string;
  readonly rate: UseRate;
  readonly rateText: string;
  /** Of spot work its share of each lawn; null: all over. */
  readonly spotShareBasisPoints: number | null;
  readonly reason: string;
  /** The label's own range, or null where the use is not on the label any more. */
  readonly labelRates: LabelRates | null;
  readonly standing: RateStanding | "not-on-label";
  readonly nitrogen: Outcome<PlannedNitrogen>;
}

export interface RoundOnFile {
  readonly roundId: string;
  readonly version: number;
  readonly name: string;
  readonly opensOn: CalendarDate;
  readonly closesOn: CalendarDate;
  readonly secondLookAfterDays: number | null;
  readonly treatments: readonly TreatmentOfRound[];
  readonly visits: VisitCounts;
  readonly visitCount: number;
  readonly nitrogen: NitrogenSum;
  /** Over this round and those before it. */
  readonly nitrogenSoFar: NitrogenSum;
}

export interface ProgramOnFile {
  readonly programId: string;
  readonly version: number;
  readonly name: string;
  readonly season: number;
  /** In the order in which they open. */
  readonly rounds: readonly RoundOnFile[];
  /** How many properties have at least one visit of the program. */
  readonly properties: number;
  readonly nitrogen: NitrogenSum;
}

function treatmentOnFile(row: RoundTreatment, productName: string, label: LabelOfProduct | undefined): TreatmentOfRound {
  const { line, productId, labelUse, rateText, spotShareBasisPoints, reason } = row;
  const rate = useRateOf(row.rateBasis, row.rateAmount, row.ratePer);
  const facts = label?.confirmed?.facts;
  const use = facts === undefined ? undefined : useNamed(facts, labelUse);
  return {
    ...{ line, productId, productName, labelUse, rate, rateText, spotShareBasisPoints, reason },
    labelRates: use?.rates ?? null,
    standing: use === undefined ? "not-on-label" : rateStanding(rate, use.rates),
    nitrogen:
      facts === undefined
        ? missingFact("label", "a confirmed label", `Nobody has confirmed the label of ${productName}.`)
        : plannedNitrogen(rate, facts, spotShareBasisPoints),
  };
}

async function treatmentsOfRounds(work: Work, roundIds: readonly string[]): Promise<ReadonlyMap<string, readonly TreatmentOfRound[]>> {
  const { companyId } = work.company;
  const rows = await work.tx.roundTreatment.findMany({ where: { companyId, roundId: { in: [...roundIds] } }, orderBy: { line: "asc" } });
  const productIds = [...new Set(rows.map(({ productId }) => productId))];
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } }, select: { productId: true, name: true } });
  const nameOf = new Map(products.map(({ productId, name }) => [productId, name]));
  const labels = await labelsOfProducts(work.tx, companyId, productIds);
  const treatments = rows.map((row) => ({ roundId: row.roundId, treatment: treatmentOnFile(row, nameOf.get(row.productId) ?? "", labels.get(row.productId)) }));
  return new Map([...groupedBy(treatments, ({ roundId }) => roundId)].map(([roundId, own]) => [roundId, own.map(({ treatment }) => treatment)]));
}

/** The rounds of a program in the order in which they open. */
async function roundsOnFile(work: Work, programId: string): Promise<readonly RoundOnFile[]> {
  const { companyId } = work.company;
  const rows = await work.tx.round.findMany({ where: { companyId, programId }, orderBy: [{ opensOn: "asc" }, { closesOn: "asc" }, { position: "asc" }] });
  const roundIds = rows.map(({ roundId }) => roundId);
  const treatmentsOf = await treatmentsOfRounds(work, roundIds);
  const counts = await visitsOfRounds(work, roundIds);
  const before: TreatmentOfRound[] = [];
  return rows.map(({ roundId, version, name, opensOn, closesOn, secondLookAfterDays }) => {
    const treatments = treatmentsOf.get(roundId) ?? [];
    before.push(...treatments);
    const visits = counts.get(roundId) ?? NO_VISITS;
    return {
      ...{ roundId, version, name, opensOn: calendarDayOf(opensOn), closesOn: calendarDayOf(closesOn), secondLookAfterDays, treatments, visits },
      visitCount: Object.values(visits).reduce((sum, count) => sum + count, 0),
      nitrogen: sumNitrogen(treatments.map(({ nitrogen }) => nitrogen)),
      nitrogenSoFar: sumNitrogen(before.map(({ nitrogen }) => nitrogen)),
    };
  });
}

/** One program with its rounds, what goes down in each, the nitrogen that brings, and how the visits stand today. */
export const readProgram = useCase("programs/read-program", z.object({ programId: idField }), async (work, { programId }) => {
  const { companyId } = work.company;
  const row = await work.tx.program.findUnique({ where: { companyId_programId: { companyId, programId } } });
  if (row === null) return notFound("program");
  const rounds = await roundsOnFile(work, programId);
  const served = await work.tx.visit.findMany({
    where: { companyId, roundId: { in: rounds.map(({ roundId }) => roundId) } },
    select: { propertyId: true, roundId: true },
  });
  const roundsOf = groupedBy(served, ({ propertyId }) => propertyId);
  const program: ProgramOnFile = {
    ...{ programId, version: row.version, name: row.name, season: row.season, rounds, properties: roundsOf.size },
    nitrogen: rounds.at(-1)?.nitrogenSoFar ?? sumNitrogen([]),
  };
  /** Of which rounds each property has a visit. */
  const roundsOfProperty = new Map([...roundsOf].map(([propertyId, own]) => [propertyId, own.flatMap(({ roundId }) => roundId ?? [])]));
  return accept({ program, roundsOfProperty, today: todayOf(work) });
});
