import { lockCompany } from "#adapters/postgres/company-work";
import { type Prisma, type Round, type RoundTreatment } from "#adapters/postgres/generated/client";
import { groupedBy } from "#domain/foundation/grouping";
import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { fromAmount, sum } from "#domain/quantities/quantity";
import { typedShareOf } from "#domain/quantities/share";
import { serviceMinutesOf } from "#domain/scheduling/service-time";
import { type HouseSettings } from "#domain/company/house-settings";
import { houseSettingsOf } from "#application/companies/house-settings";
import { writeDeed } from "#application/audit-trail";
import { putOnProgramSchema } from "#application/programs/put-on-program.schema";
import { columnsByLabels, productsToPlan } from "#application/programs/treatment-columns";
import { todayOf } from "#application/programs/visits-of-rounds";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

interface LawnOfProperty {
  readonly zoneId: string;
  readonly area: bigint;
}

interface RoundToCome extends Round {
  readonly treatments: readonly RoundTreatment[];
}

/** The rounds whose window has not closed, held against the labels as they are confirmed now. */
async function roundsToCome(work: Work, programId: string): Promise<Outcome<readonly RoundToCome[], UseCaseRefusal>> {
  const { companyId } = work.company;
  const rounds = await work.tx.round.findMany({ where: { companyId, programId, closesOn: { gte: dayOf(todayOf(work)) } }, orderBy: { position: "asc" } });
  if (rounds.length === 0) return conflict("This program has no round that is open or to come. Add a round first.");
  const treatments = await work.tx.roundTreatment.findMany({ where: { companyId, roundId: { in: rounds.map(({ roundId }) => roundId) } }, orderBy: { line: "asc" } });
  const treatmentsOf = groupedBy(treatments, ({ roundId }) => roundId);
  const whole = rounds.map((round) => ({ ...round, treatments: treatmentsOf.get(round.roundId) ?? [] }));
  const products = await productsToPlan(work, treatments);
  for (const round of whole) {
    const asked = round.treatments.map(({ line, productId, labelUse, rateText, spotShareBasisPoints, reason }) => ({ row: String(line), productId, labelUse, rate: rateText, spotShare: typedShareOf(spotShareBasisPoints), reason }));
    const held = columnsByLabels(products, "treatments", asked);
    if (held.ok) continue;
    const [why = held.refusal.sentence] = held.refusal.kind === "bad-input" ? Object.values(held.refusal.fields) : [];
    return conflict(`${round.name} can't be planned as it stands. ${why}`);
  }
  return accept(whole);
}

/** The lawns of each property, when every one of them has a lawn and a customer who is served; else which has not. */
async function lawnsOf(work: Work, propertyIds: readonly string[]): Promise<Outcome<ReadonlyMap<string, readonly LawnOfProperty[]>, UseCaseRefusal>> {
  const { companyId } = work.company;
  const where = { companyId, propertyId: { in: [...propertyIds] } };
  const properties = await work.tx.property.findMany({ where, select: { propertyId: true, street: true, clientId: true } });
  if (properties.length < propertyIds.length) return notFound("property");
  const clients = await work.tx.client.findMany({ where: { companyId, clientId: { in: properties.map(({ clientId }) => clientId) } }, select: { clientId: true, standing: true } });
  const standingOf = new Map(clients.map(({ clientId, standing }) => [clientId, standing]));
  const zones = await work.tx.zone.findMany({ where: { ...where, removedAt: null }, select: { zoneId: true, propertyId: true, area: true }, orderBy: { letter: "asc" } });
  const zonesOf = groupedBy(zones, ({ propertyId }) => propertyId);
  const unserved = properties.filter(({ clientId }) => standingOf.get(clientId) !== "current").map(({ street }) => street);
  if (unserved.length > 0) return badField("properties", `The customer is paused or has left: ${unserved.join("; ")}.`);
  const bare = properties.filter(({ propertyId }) => !zonesOf.has(propertyId)).map(({ street }) => street);
  if (bare.length > 0) return badField("properties", `No lawn is measured yet: ${bare.join("; ")}.`);
  return accept(zonesOf);
}

interface NewVisits {
  readonly visits: Prisma.VisitCreateManyInput[];
  readonly tasks: Prisma.VisitTaskCreateManyInput[];
  readonly taskZones: Prisma.VisitTaskZoneCreateManyInput[];
}

/** One visit of a round at one property, with each of the round's treatments on all its lawns. */
function addVisit(work: Work, into: NewVisits, round: RoundToCome, propertyId: string, lawns: readonly LawnOfProperty[], settings: HouseSettings): void {
  const { companyId } = work.company;
  const visitId = work.newId();
  const { roundId, name, opensOn, closesOn, secondLookAfterDays } = round;
  const area = sum("area", lawns.map((lawn) => fromAmount("area", lawn.area)));
  const serviceMinutes = serviceMinutesOf(area, settings);
  into.visits.push({ companyId, visitId, propertyId, roundId, name, opensOn, closesOn, secondLookAfterDays, serviceMinutes, createdAt: work.now });
  for (const { line, productId, labelUse, rateBasis, rateAmount, ratePer, rateText, spotShareBasisPoints, reason } of round.treatments) {
    into.tasks.push({ companyId, visitId, line, kind: "treatment", productId, labelUse, rateBasis, rateAmount, ratePer, rateText, spotShareBasisPoints, reason });
    for (const { zoneId } of lawns) into.taskZones.push({ companyId, visitId, line, zoneId });
  }
}

/** PostgreSQL takes 65,535 values in one statement, and no row of these has more than sixteen. */
const ROWS_AT_ONCE = 2000;

function inParts<Row>(rows: readonly Row[]): readonly Row[][] {
  return Array.from({ length: Math.ceil(rows.length / ROWS_AT_ONCE) }, (_, part) => rows.slice(part * ROWS_AT_ONCE, (part + 1) * ROWS_AT_ONCE));
}

/**
 * Puts properties on a program: one visit for each round that is open or to come, on all their lawns. A round that a
 * property has a visit of already is left as it is, so that pressing twice, or adding a round later and putting the
 * same properties on again, makes only what is missing; where nothing is missing it is refused.
 */
export const putOnProgram = useCase("programs/put-on-program", putOnProgramSchema, async (work, { programId, properties }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const program = await work.tx.program.findUnique({ where: { companyId_programId: { companyId, programId } } });
  if (program === null) return notFound("program");
  const rounds = await roundsToCome(work, programId);
  if (!rounds.ok) return rounds;
  const lawns = await lawnsOf(work, properties);
  if (!lawns.ok) return lawns;
  const standing = await work.tx.visit.findMany({
    where: { companyId, propertyId: { in: properties }, roundId: { in: rounds.value.map(({ roundId }) => roundId) } },
    select: { propertyId: true, roundId: true },
  });
  const taken = new Set(standing.map(({ propertyId, roundId }) => `${propertyId} ${roundId ?? ""}`));
  const settings = await houseSettingsOf(work);
  const into: NewVisits = { visits: [], tasks: [], taskZones: [] };
  for (const propertyId of properties) {
    for (const round of rounds.value) {
      if (!taken.has(`${propertyId} ${round.roundId}`)) addVisit(work, into, round, propertyId, lawns.value.get(propertyId) ?? [], settings);
    }
  }
  if (into.visits.length === 0) {
    const sentence = "Every chosen property is on all rounds of this program that are open or to come. Nothing was written a second time.";
    return refuse({ kind: "conflict", sentence });
  }
  for (const part of inParts(into.visits)) await work.tx.visit.createMany({ data: part });
  for (const part of inParts(into.tasks)) await work.tx.visitTask.createMany({ data: part });
  for (const part of inParts(into.taskZones)) await work.tx.visitTaskZone.createMany({ data: part });
  const counts = { properties: new Set(into.visits.map(({ propertyId }) => propertyId)).size, visits: into.visits.length };
  await writeDeed(work, programId, { deed: "properties-put-on-program", details: { program: program.name, ...counts } });
  return accept({ programId, ...counts });
});
