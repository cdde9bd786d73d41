import { type z } from "zod";
import { lockCompany } from "#adapters/postgres/company-work";
import { type Prisma } from "#adapters/postgres/generated/client";
import { calendarDateIn } from "#domain/foundation/calendar-date";
import { accept } from "#domain/foundation/outcome";
import { squareFeetWords } from "#domain/properties/area-words";
import { readLawn, type TypedPiece } from "#domain/properties/lawn-pieces";
import { writeDeed } from "#application/audit-trail";
import { addZoneSchema } from "#application/properties/add-zone.schema";
import { grassesOf } from "#application/properties/zone-fields.schema";
import { badField, notFound } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase, type Work } from "#application/use-case";

/** An area as the audit trail and the screens write it. */
export function areaWords(amount: bigint): string {
  return squareFeetWords({ dimension: "area", amount });
}

/** The columns of a lawn whose pieces were measured today, in the company's own day. */
export function measuredColumns(work: Work, pieces: readonly TypedPiece[], area: bigint) {
  const today = calendarDateIn(work.company.timeZone, work.now.getTime());
  return { pieces: pieces as unknown as Prisma.InputJsonArray, area, areaOrigin: "measured", measuredOn: dayOf(today) };
}

/** The columns of a lawn whose area somebody gave without measuring it here. */
export function enteredColumns(area: bigint) {
  return { pieces: [], area, areaOrigin: "entered", measuredOn: null };
}

/** The columns of a lawn's first measure. A first piece that is cut out leaves no lawn and is refused. */
function firstColumns(work: Work, measure: z.output<typeof addZoneSchema>["measure"]) {
  if (measure.kind === "area") return accept(enteredColumns(measure.area));
  const lawn = readLawn([measure.piece]);
  return lawn.ok ? accept(measuredColumns(work, [measure.piece], lawn.value.area.amount)) : badField("measure.piece.use", lawn.refusal.sentence);
}

const LETTERS = Array.from({ length: 26 }, (_, index) => String.fromCharCode("A".charCodeAt(0) + index));

/** Adds a lawn to a property with its first measure; it takes the first letter that is free on the plan. */
export const addZone = useCase("properties/add-zone", addZoneSchema, async (work, form) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const { propertyId, name, measure, waterBeside } = form;
  const property = await work.tx.property.findUnique({ where: { companyId_propertyId: { companyId, propertyId } } });
  if (property === null) return notFound("property");
  const standing = await work.tx.zone.findMany({ where: { companyId, propertyId, removedAt: null }, select: { letter: true } });
  const letter = LETTERS.find((each) => !standing.some((zone) => zone.letter === each));
  if (letter === undefined) return badField("name", "This property has a lawn for every letter; join two of them.");
  const measured = firstColumns(work, measure);
  if (!measured.ok) return measured;
  const columns = measured.value;
  const zoneId = work.newId();
  await work.tx.zone.create({
    data: {
      ...{ companyId, zoneId, propertyId, letter, name, grasses: grassesOf(form), grassesAssumed: form.grassesKnown === "assumed" },
      ...columns,
      waterBeside,
      createdAt: work.now,
    },
  });
  const { area, areaOrigin } = columns;
  await writeDeed(work, zoneId, { deed: "zone-added", details: { letter, name, area: areaWords(area), areaOrigin } });
  return accept({ zoneId, propertyId });
});
