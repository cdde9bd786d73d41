import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { type ClientStanding } from "#domain/properties/client-standing";
import { type MowingDay, mowingDayOf } from "#domain/properties/mowing-day";
import { type Quantity } from "#domain/quantities/quantity";
import { useCase } from "#application/use-case";

/** A property as a list shows it. */
export interface PropertyInList {
  readonly propertyId: string;
  readonly clientName: string;
  readonly phone: string | null;
  readonly standing: ClientStanding;
  readonly street: string;
  readonly city: string;
  readonly state: string;
  readonly zip: string;
  readonly lawns: number;
  /** All lawns together; null where none is on file. */
  readonly lawnArea: Quantity<"area"> | null;
  readonly mowingDay: MowingDay | null;
}

/** Every property of the company, by street within its town. Customers who left stay in the list and say so. */
export const listProperties = useCase("properties/list-properties", z.object({}), async (work) => {
  const { companyId } = work.company;
  const rows = await work.tx.property.findMany({
    where: { companyId },
    select: { propertyId: true, clientId: true, street: true, city: true, state: true, zip: true, mowingWeekday: true, mowsOnNoFixedDay: true },
    orderBy: [{ city: "asc" }, { street: "asc" }, { propertyId: "asc" }],
  });
  const clients = await work.tx.client.findMany({ where: { companyId }, select: { clientId: true, name: true, phone: true, standing: true } });
  const sums = await work.tx.zone.groupBy({ by: ["propertyId"], where: { companyId, removedAt: null }, _sum: { area: true }, _count: true });
  const clientOf = new Map(clients.map((client) => [client.clientId, client]));
  const sumOf = new Map(sums.map((sum) => [sum.propertyId, sum]));
  const properties = rows.map(({ clientId, mowingWeekday, mowsOnNoFixedDay, ...row }): PropertyInList => {
    const client = clientOf.get(clientId);
    const sum = sumOf.get(row.propertyId);
    const amount = sum?._sum.area ?? null;
    return {
      ...row,
      mowingDay: mowingDayOf({ mowingWeekday, mowsOnNoFixedDay }),
      clientName: client?.name ?? "",
      phone: client?.phone ?? null,
      standing: (client?.standing ?? "current") as ClientStanding,
      lawns: sum?._count ?? 0,
      lawnArea: amount === null ? null : { dimension: "area", amount },
    };
  });
  return accept({ properties });
});
