import { type CalendarDate, calendarDateIn } from "#domain/foundation/calendar-date";
import { groupedBy } from "#domain/foundation/grouping";
import { type Finding } from "#domain/foundation/finding";
import { accept } from "#domain/foundation/outcome";
import { isCleanSince } from "#domain/mixing/clean-out";
import { addUpFill } from "#domain/mixing/tank-day";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { equipmentOnFile, type EquipmentOnFile } from "#application/equipment/gear-on-file";
import { type CleanOutOnFile, latestCleanOuts } from "#application/fills/clean-outs-on-file";
import { listFillsSchema } from "#application/fills/list-fills.schema";
import { useCase, type Work } from "#application/use-case";

/** What a visit took from a fill. */
export interface DrawOfFill {
  readonly visitId: string;
  readonly visitName: string;
  readonly street: string;
  readonly registerEntryId: string;
  readonly recordNumber: number;
  readonly volume: Quantity<"volume">;
  readonly isMeasured: boolean;
  /** What that volume brought of each product: gallons times the fill's concentration. */
  readonly products: readonly ProductInFill[];
}

export interface ProductInFill {
  readonly productId: string;
  readonly name: string;
  /** Canonical units of the product's own dimension: all that went in, over all lots. */
  readonly amount: Quantity<"mass"> | Quantity<"volume">;
}

/** A filling of a tank with what was drawn from it since. */
export interface FillOnFile {
  readonly fillId: string;
  readonly number: number;
  readonly filledOn: CalendarDate;
  readonly filledAt: Date;
  readonly filledBy: string;
  readonly mixingPlace: string;
  readonly finished: Quantity<"volume">;
  readonly products: readonly ProductInFill[];
  readonly draws: readonly DrawOfFill[];
  /** Nothing where as much or more was sprayed than went in. */
  readonly left: Quantity<"volume">;
  /** What does not add up, with where to post it. */
  readonly findings: readonly Finding[];
}

/** A sprayer's tank with its fills, the newest first. */
export interface TankOnFile {
  readonly equipmentId: string;
  readonly name: string;
  readonly vehicleId: string | null;
  readonly capacity: Quantity<"volume">;
  /** What pump and hose hold beyond the tank; null where nobody measured it. */
  readonly holdUp: Quantity<"volume"> | null;
  /** Over all fills. */
  readonly left: Quantity<"volume">;
  readonly fills: readonly FillOnFile[];
  /** The fill that went in last by the clock; null where none is on record. */
  readonly lastFillNumber: number | null;
  /** The latest on file. */
  readonly cleanOut: CleanOutOnFile | null;
  /** True from a clean-out to the next fill. */
  readonly isClean: boolean;
}

/** So many fills of all tanks are looked back upon. */
const MOST_FILLS = 200;

type FillRow = Awaited<ReturnType<Work["tx"]["fill"]["findMany"]>>[number];

function volume(amount: bigint): Quantity<"volume"> {
  return fromAmount("volume", amount < 0n ? 0n : amount);
}

/** What went into each fill of each product, from its posting in the ledger. */
async function productsOf(work: Work, fills: readonly FillRow[]): Promise<ReadonlyMap<string, readonly ProductInFill[]>> {
  const { companyId } = work.company;
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank" } });
  const entries = await work.tx.stockEntry.findMany({
    where: {
      companyId,
      stockPostingId: { in: fills.map(({ stockPostingId }) => stockPostingId) },
      stockLocationId: { in: tanks.map(({ stockLocationId }) => stockLocationId) },
    },
  });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: lots.map(({ productId }) => productId) } } });
  const productOfLot = new Map(lots.map(({ lotId, productId }) => [lotId, productId]));
  const entriesOf = groupedBy(entries, ({ stockPostingId }) => stockPostingId);
  return new Map(
    fills.map(({ fillId, stockPostingId }) => [
      fillId,
      products
        .map(({ productId, name, countedBy }) => {
          const own = (entriesOf.get(stockPostingId) ?? []).filter(({ lotId }) => productOfLot.get(lotId) === productId);
          return { productId, name, amount: fromAmount(countedBy === "mass" ? "mass" : "volume", own.reduce((total, { amount }) => total + amount, 0n)) };
        })
        .filter(({ amount }) => amount.amount > 0n)
        .toSorted((one, other) => one.name.localeCompare(other.name, "en")),
    ]),
  );
}

async function drawsOf(work: Work, fills: readonly FillRow[]): Promise<ReadonlyMap<string, readonly DrawOfFill[]>> {
  const { companyId } = work.company;
  const rows = await work.tx.fillDraw.findMany({ where: { companyId, fillId: { in: fills.map(({ fillId }) => fillId) } } });
  const visits = await work.tx.visit.findMany({ where: { companyId, visitId: { in: rows.map(({ visitId }) => visitId) } } });
  const properties = await work.tx.property.findMany({ where: { companyId, propertyId: { in: visits.map(({ propertyId }) => propertyId) } } });
  const records = await work.tx.registerEntry.findMany({
    where: { companyId, registerEntryId: { in: rows.map(({ registerEntryId }) => registerEntryId) } },
    select: { registerEntryId: true, number: true },
  });
  const visitOf = new Map(visits.map((visit) => [visit.visitId, visit]));
  const streetOf = new Map(properties.map(({ propertyId, street }) => [propertyId, street]));
  const numberOf = new Map(records.map(({ registerEntryId, number }) => [registerEntryId, number]));
  const draws = rows.map(({ fillId, visitId, registerEntryId, isMeasured, volume: drawn }) => ({
    fillId,
    draw: {
      visitId,
      visitName: visitOf.get(visitId)?.name ?? "",
      street: streetOf.get(visitOf.get(visitId)?.propertyId ?? "") ?? "",
      registerEntryId,
      recordNumber: numberOf.get(registerEntryId) ?? 0,
      volume: volume(drawn),
      isMeasured,
      products: [],
    },
  }));
  const byFill = groupedBy(
    draws.toSorted((one, other) => one.draw.recordNumber - other.draw.recordNumber),
    ({ fillId }) => fillId,
  );
  return new Map([...byFill].map(([fillId, own]) => [fillId, own.map(({ draw }) => draw)]));
}

function tankOf(equipment: EquipmentOnFile, fills: readonly FillOnFile[], cleanOut: CleanOutOnFile | undefined): readonly TankOnFile[] {
  const { equipmentId, name, vehicleId, capacity, holdUp } = equipment;
  if (capacity.dimension !== "volume") return [];
  const left = volume(fills.reduce((total, fill) => total + fill.left.amount, 0n));
  const [last] = fills.toSorted((one, other) => other.filledAt.getTime() - one.filledAt.getTime() || other.number - one.number);
  const isClean = isCleanSince(
    cleanOut && { cleanedAt: cleanOut.cleanedAt.getTime() },
    last && { number: last.number, filledAt: last.filledAt.getTime() },
  );
  return [{ equipmentId, name, vehicleId, capacity, holdUp, left, fills, lastFillNumber: last?.number ?? null, cleanOut: cleanOut ?? null, isClean }];
}

/** The tanks of the sprayers with their last fills: what went in, who drew what, and what is left of each. */
export const listFills = useCase("fills/list-fills", listFillsSchema, async (work, { vehicleId }) => {
  const { companyId, timeZone } = work.company;
  const equipment = (await equipmentOnFile(work)).filter((one) => isSprayer(one.kind) && (vehicleId === undefined || one.vehicleId === vehicleId));
  const rows = await work.tx.fill.findMany({
    where: { companyId, equipmentId: { in: equipment.map(({ equipmentId }) => equipmentId) } },
    orderBy: { number: "desc" },
    take: MOST_FILLS,
  });
  const people = await work.tx.person.findMany({ where: { companyId, personId: { in: rows.map(({ personId }) => personId) } } });
  const nameOf = new Map(people.map(({ personId, name }) => [personId, name]));
  const products = await productsOf(work, rows);
  const draws = await drawsOf(work, rows);
  const fills = rows.map((row): FillOnFile & { readonly equipmentId: string } => {
    const { fillId, equipmentId, number, filledAt, mixingPlace, finishedVolume } = row;
    const wentIn = products.get(fillId) ?? [];
    const finished = volume(finishedVolume);
    const own = draws.get(fillId) ?? [];
    const lots = wentIn.map(({ productId, amount: { amount } }) => ({ lotId: productId, amount }));
    // Nobody enters what a dip found at the end of the day, so what the books have left is no more than that.
    const added = addUpFill({ name: `fill ${String(number)}`, finished, lots }, own.map(({ visitId, volume: sprayed }) => ({ visitId, sprayed })), "not-measured");
    return {
      ...{ fillId, equipmentId, number, filledAt, mixingPlace, finished },
      filledOn: calendarDateIn(timeZone, filledAt.getTime()),
      filledBy: nameOf.get(row.personId) ?? "",
      products: wentIn,
      draws: own.map((draw, index) => ({ ...draw, products: wentIn.map((product, line) => ({ ...product, amount: { ...product.amount, amount: added.visits[index]?.lots[line]?.amount ?? 0n } })) })),
      left: added.left,
      findings: added.findings,
    };
  });
  const fillsOf = groupedBy(fills, ({ equipmentId }) => equipmentId);
  const cleanOuts = await latestCleanOuts(work);
  const inUse = equipment.filter((one) => !one.isStoodDown || fillsOf.has(one.equipmentId));
  return accept({ tanks: inUse.flatMap((one) => tankOf(one, fillsOf.get(one.equipmentId) ?? [], cleanOuts.get(one.equipmentId))) });
});
