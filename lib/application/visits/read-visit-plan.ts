import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { type LabelRates, useNamed } from "#domain/label/label-facts";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { rateStanding, type RateStanding } from "#domain/scheduling/planned-rate";
import { idField } from "#application/field.schema";
import { labelsOfProducts } from "#application/products/stored-label";
import { todayOf } from "#application/programs/visits-of-rounds";
import { notFound } from "#application/refusal";
import { useCase, type Work } from "#application/use-case";
import { standingOf, type VisitInList } from "#application/visits/list-visits";
import { type PlannedTreatment, visitRows } from "#application/visits/visit-rows";

/** A treatment with what its label says to its rate now. */
export interface TreatmentOnPlan extends PlannedTreatment {
  readonly productName: string;
  readonly equipmentName: string | null;
  readonly labelRates: LabelRates | null;
  readonly standing: RateStanding | "not-on-label";
}

/** A visit as it is planned: what, on which lawns, when. The mix ticket is computed elsewhere. */
export interface VisitPlan extends Omit<VisitInList, "treatments"> {
  readonly treatments: readonly TreatmentOnPlan[];
  readonly lawns: readonly { readonly zoneId: string; readonly letter: string; readonly name: string; readonly area: Quantity<"area">; readonly isRemoved: boolean }[];
  readonly program: { readonly programId: string; readonly name: string } | null;
  readonly hasRecord: boolean;
  /** Why and by whom it was called off, or null. */
  readonly calledOff: { readonly reason: string; readonly by: string; readonly at: Date } | null;
}

async function treatmentsOnPlan(work: Work, treatments: readonly PlannedTreatment[]): Promise<readonly TreatmentOnPlan[]> {
  const { companyId } = work.company;
  const productIds = treatments.map(({ productId }) => productId);
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: productIds } }, select: { productId: true, name: true } });
  const equipmentIds = treatments.flatMap(({ equipmentId }) => equipmentId ?? []);
  const equipment = await work.tx.equipment.findMany({ where: { companyId, equipmentId: { in: equipmentIds } }, select: { equipmentId: true, name: true } });
  const nameOf = new Map([...products.map(({ productId, name }) => [productId, name] as const), ...equipment.map(({ equipmentId, name }) => [equipmentId, name] as const)]);
  const labels = await labelsOfProducts(work.tx, companyId, productIds);
  return treatments.map((treatment) => {
    const facts = labels.get(treatment.productId)?.confirmed?.facts;
    const rates = facts === undefined ? undefined : useNamed(facts, treatment.labelUse)?.rates;
    return {
      ...treatment,
      productName: nameOf.get(treatment.productId) ?? "",
      equipmentName: treatment.equipmentId === null ? null : (nameOf.get(treatment.equipmentId) ?? null),
      labelRates: rates ?? null,
      standing: rates === undefined ? ("not-on-label" as const) : rateStanding(treatment.rate, rates),
    };
  });
}

async function calledOffBy(work: Work, visitId: string): Promise<VisitPlan["calledOff"]> {
  const event = await work.tx.auditEvent.findFirst({ where: { companyId: work.company.companyId, subjectId: visitId, deed: "visit-called-off" }, orderBy: { at: "desc" } });
  if (event === null) return null;
  const { reason } = z.object({ reason: z.string() }).parse(event.details);
  return { reason, by: event.personName, at: event.at };
}

/** One visit's plan, with its lawns by letter, what the labels say to its rates now, and whether anything was written of it. */
export const readVisitPlan = useCase("visits/read-visit-plan", z.object({ visitId: idField }), async (work, { visitId }) => {
  const { companyId } = work.company;
  const [row] = await visitRows(work, [visitId]);
  if (row === undefined) return notFound("visit");
  const zones = await work.tx.zone.findMany({ where: { companyId, propertyId: row.property.propertyId }, orderBy: [{ letter: "asc" }, { zoneId: "asc" }] });
  const worked = new Set([...row.treatments, ...row.looks].flatMap(({ zoneIds }) => zoneIds));
  const round = row.roundId === null ? null : await work.tx.round.findUnique({ where: { companyId_roundId: { companyId, roundId: row.roundId } } });
  const program = round === null ? null : await work.tx.program.findUnique({ where: { companyId_programId: { companyId, programId: round.programId } } });
  const plan: VisitPlan = {
    ...row,
    standing: standingOf(row, todayOf(work)),
    treatments: await treatmentsOnPlan(work, row.treatments),
    lawns: zones
      .filter(({ zoneId, removedAt }) => removedAt === null || worked.has(zoneId))
      .map(({ zoneId, letter, name, area, removedAt }) => ({ zoneId, letter, name, area: fromAmount("area", area), isRemoved: removedAt !== null })),
    program: program === null ? null : { programId: program.programId, name: program.name },
    hasRecord: (await work.tx.registerEntry.count({ where: { companyId, visitId } })) > 0,
    calledOff: row.state === "not-done" ? await calledOffBy(work, visitId) : null,
  };
  return accept({ visit: plan });
});
