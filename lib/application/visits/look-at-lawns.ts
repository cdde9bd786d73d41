import { lockCompany } from "#adapters/postgres/company-work";
import { type LawnLook } from "#adapters/postgres/generated/client";
import { accept } from "#domain/foundation/outcome";
import { type BloomSeen } from "#domain/properties/lawn-look";
import { type WateredBy, type WaterToldBy } from "#domain/properties/lawn-watering";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { instantOfMinute } from "#domain/weather/local-hours";
import { writeDeed } from "#application/audit-trail";
import { badField, conflict, notFound } from "#application/refusal";
import { SENT_WITH_OTHER_FIGURES } from "#application/stock/post-stock";
import { useCase, type Work } from "#application/use-case";
import { type LookAtLawnsForm, lookAtLawnsSchema } from "#application/visits/look-at-lawns.schema";

/** A statement about water as its columns have it. */
interface WaterSaid {
  readonly wateredAt: Date;
  readonly wateredBy: WateredBy;
  readonly waterToldBy: WaterToldBy;
  readonly waterDepth: bigint | null;
}

interface SaidOfLawn {
  readonly zoneId: string;
  readonly blooms: BloomSeen;
  readonly said: string | null;
  readonly water: WaterSaid | null;
}

/**
 * Writes down what was seen on the lawns of a visit and which of them were watered in: one row for each lawn that was
 * looked at or of which something is said, and none for the others. It is a fact, before the work, after the mix ticket or after the visit, and changes none
 * that was written before. Pressed twice, the first looks are answered.
 */
export const lookAtLawns = useCase("visits/look-at-lawns", lookAtLawnsSchema, async (work, form) => {
  const { companyId, timeZone } = work.company;
  const { requestId, visitId, seenById } = form;
  const visit = await work.tx.visit.findUnique({ where: { companyId_visitId: { companyId, visitId } } });
  if (visit === null) return notFound("visit");
  const seenAt = new Date(instantOfMinute(form.seenOn, form.seenAt, timeZone));
  if (seenAt.getTime() > work.now.getTime()) return badField("seenAt", "This moment has not come yet.");
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId: seenById } } });
  if (person === null) return badField("seenById", "There is no such person here. Choose another.");
  const lawns = await lawnsOfVisit(work, visitId);
  const water = waterSaid(form, timeZone);
  if (water !== null && water.wateredAt.getTime() > work.now.getTime()) return badField("wateredAt", "This moment has not come yet.");
  const isNoneOfThem = (zoneId: string) => !lawns.some((lawn) => lawn.zoneId === zoneId);
  const strange = Object.keys(form.lawns).find(isNoneOfThem);
  if (strange !== undefined) return badField(`lawns.${strange}`, "This lawn is none of the visit’s. Load the page again.");
  if (Object.keys(form.watered).some(isNoneOfThem)) return badField("watered", "A lawn among these is none of the visit’s. Load the page again.");
  const seen = lawns.flatMap(({ zoneId }) => saidOf(form, zoneId, water));
  if (seen.length === 0) return badField(`lawns.${lawns[0]?.zoneId ?? ""}`, "Say of at least one lawn whether anything blooms there, or that it was watered in.");
  await lockCompany(work.tx);
  const before = await work.tx.lawnLook.findMany({ where: { companyId, requestId } });
  if (before.length > 0) {
    const isSame = before.length === seen.length && before.every((row) => row.seenAt.getTime() === seenAt.getTime() && row.seenById === seenById && seen.some((one) => saysTheSame(one, row)));
    return isSame ? accept({ lawns: before.length }) : conflict(SENT_WITH_OTHER_FIGURES);
  }
  await work.tx.lawnLook.createMany({
    data: seen.map(({ water: ofWater, ...one }) => ({ companyId, lawnLookId: work.newId(), requestId, ...one, ...ofWater, seenAt, enteredAt: work.now, seenById, personId: work.member.personId })),
  });
  const named = new Map(lawns.map(({ zoneId, letter, name }) => [zoneId, `${letter} ${name}`]));
  await writeDeed(work, visitId, {
    deed: "lawns-looked-at",
    details: { visit: visit.name, seenAt: seenAt.toISOString(), seenBy: person.name, lawns: seen.map(({ zoneId, blooms, said, water: ofWater }) => ({ lawn: named.get(zoneId) ?? "", blooms, said, ...wateredOfDeed(ofWater) })) },
  });
  return accept({ lawns: seen.length });
});

/** The lawns on which something is planned by letter, also those that were taken off the plan since. */
async function lawnsOfVisit(work: Work, visitId: string): Promise<readonly { readonly zoneId: string; readonly letter: string; readonly name: string }[]> {
  const { companyId } = work.company;
  const planned = await work.tx.visitTaskZone.findMany({ where: { companyId, visitId }, select: { zoneId: true } });
  return work.tx.zone.findMany({ where: { companyId, zoneId: { in: planned.map(({ zoneId }) => zoneId) } }, select: { zoneId: true, letter: true, name: true }, orderBy: { letter: "asc" } });
}

/** What the form says of the water of all lawns that are ticked; null where none is. */
function waterSaid({ watered, wateredOn, wateredAt, wateredBy, waterToldBy, waterDepth }: LookAtLawnsForm, timeZone: string): WaterSaid | null {
  if (!Object.values(watered).includes("yes") || wateredOn === null || wateredAt === null || wateredBy === null || waterToldBy === null) return null;
  return { wateredAt: new Date(instantOfMinute(wateredOn, wateredAt, timeZone)), wateredBy, waterToldBy, waterDepth };
}

/** What the form says of a lawn; nothing where nobody looked and nobody has a word for it. */
function saidOf({ lawns, said, watered }: LookAtLawnsForm, zoneId: string, ofAll: WaterSaid | null): readonly SaidOfLawn[] {
  const words = said[zoneId] ?? null;
  const water = watered[zoneId] === "yes" ? ofAll : null;
  const blooms = lawns[zoneId] ?? (water === null ? undefined : "not-looked");
  if (blooms === undefined || (blooms === "not-looked" && words === null && water === null)) return [];
  return [{ zoneId, blooms, said: words, water }];
}

function saysTheSame(one: SaidOfLawn, other: LawnLook): boolean {
  const { wateredAt, wateredBy, waterToldBy, waterDepth } = other;
  const isSameWater =
    one.water === null
      ? wateredAt === null
      : one.water.wateredAt.getTime() === wateredAt?.getTime() && one.water.wateredBy === wateredBy && one.water.waterToldBy === waterToldBy && one.water.waterDepth === waterDepth;
  return isSameWater && one.zoneId === other.zoneId && one.blooms === other.blooms && one.said === other.said;
}

/** Deeds that say nothing of water are those of before it was asked. */
function wateredOfDeed(water: WaterSaid | null) {
  if (water === null) return {};
  const { wateredAt, wateredBy, waterToldBy, waterDepth } = water;
  const depth = waterDepth === null ? null : formatQuantityIn({ dimension: "length", amount: waterDepth }, "in");
  return { watered: { at: wateredAt.toISOString(), by: wateredBy, toldBy: waterToldBy, depth } };
}
