import { groupedBy } from "#domain/foundation/grouping";
import { type DrawInBooks, type FillInBooks, type RestOfFill } from "#domain/mixing/tank-books";
import { fromAmount, type Quantity } from "#domain/quantities/quantity";
import { type Work } from "#application/use-case";

type FillRow = Awaited<ReturnType<Work["tx"]["fill"]["findMany"]>>[number];
type RestRow = Awaited<ReturnType<Work["tx"]["fillRest"]["findMany"]>>[number];

/** A product in a fill: all that went in, over all lots. */
export interface ProductInFill {
  readonly productId: string;
  readonly name: string;
  /** Canonical units of the product's own dimension. */
  readonly amount: Quantity<"mass"> | Quantity<"volume">;
}

/** A draw with its record. */
interface DrawOnFile extends DrawInBooks {
  readonly registerEntryId: string;
  readonly recordNumber: number;
  readonly isMeasured: boolean;
}

/** A fill as the books have it: what went in by its posting, what was drawn, and what was found of it. */
export interface FillOfTank extends FillInBooks {
  readonly row: FillRow;
  /** The tank's location in the ledger; null where none was made. */
  readonly tankLocationId: string | null;
  readonly draws: readonly DrawOnFile[];
  readonly products: readonly ProductInFill[];
  readonly productOfLot: ReadonlyMap<string, string>;
  readonly numberOfLot: ReadonlyMap<string, string>;
  readonly rests: readonly RestOnFile[];
}

/** What was found of a fill, with where in the ledger what was missing went; null where nothing was. */
interface RestOnFile extends RestOfFill {
  readonly wentToId: string | null;
}

/**
 * Reads fills as the books have them, by id. It is the one place that says what went into a fill and what is gone of it.
 * The number of queries does not hang on that of fills.
 */
export async function fillsInBooks(work: Pick<Work, "tx" | "company">, rows: readonly FillRow[]): Promise<ReadonlyMap<string, FillOfTank>> {
  if (rows.length === 0) return new Map();
  const { companyId } = work.company;
  const fillIds = rows.map(({ fillId }) => fillId);
  const went = await wentIn(work, rows);
  const draws = groupedBy(await drawsOf(work, fillIds), ({ fillId }) => fillId);
  const rests = groupedBy(await work.tx.fillRest.findMany({ where: { companyId, fillId: { in: fillIds } } }), ({ fillId }) => fillId);
  return new Map(
    rows.map((row): readonly [string, FillOfTank] => {
      const { fillId, number, filledAt, finishedVolume } = row;
      const { lots, ...inTank } = went(row);
      const own = (draws.get(fillId) ?? []).map(({ draw }) => draw);
      return [
        fillId,
        {
          ...{ row, fillId, number, lots, ...inTank },
          filledAt: filledAt.getTime(),
          finished: fromAmount("volume", finishedVolume),
          draws: own.toSorted((one, other) => one.recordNumber - other.recordNumber),
          rests: inTheirOrder(rests.get(fillId) ?? []).map(({ fillRestId, settledAt, inTheBooks, remaining, wentToId }) => ({
            ...{ fillRestId, wentToId, settledAt: settledAt.getTime() },
            ...{ inTheBooks: fromAmount("volume", inTheBooks), left: fromAmount("volume", remaining) },
          })),
        },
      ];
    }),
  );
}

/** A reading in the minute of a clean-out came before it. */
function inTheirOrder(rests: readonly RestRow[]): readonly RestRow[] {
  return rests.toSorted((one, other) => one.settledAt.getTime() - other.settledAt.getTime() || Number(one.cleanOutId !== null) - Number(other.cleanOutId !== null));
}

type WentIn = Pick<FillOfTank, "lots" | "products" | "productOfLot" | "numberOfLot" | "tankLocationId" | "isPostedAway">;

/** What went into each fill, from its posting in the ledger, and whether the ledger still has any of it in the tank. */
async function wentIn(work: Pick<Work, "tx" | "company">, rows: readonly FillRow[]): Promise<(row: FillRow) => WentIn> {
  const { companyId } = work.company;
  const tanks = await work.tx.stockLocation.findMany({ where: { companyId, kind: "tank", equipmentId: { in: rows.map(({ equipmentId }) => equipmentId) } } });
  const tankIds = tanks.map(({ stockLocationId }) => stockLocationId);
  const entries = await work.tx.stockEntry.findMany({
    where: { companyId, stockPostingId: { in: rows.map(({ stockPostingId }) => stockPostingId) }, stockLocationId: { in: tankIds } },
    orderBy: { line: "asc" },
  });
  const lots = await work.tx.lot.findMany({ where: { companyId, lotId: { in: entries.map(({ lotId }) => lotId) } } });
  const products = await work.tx.product.findMany({ where: { companyId, productId: { in: lots.map(({ productId }) => productId) } } });
  const balances = await work.tx.stockBalance.findMany({ where: { companyId, stockLocationId: { in: tankIds }, lotId: { in: lots.map(({ lotId }) => lotId) }, amount: { gt: 0 } } });
  const productOfLot = new Map(lots.map(({ lotId, productId }) => [lotId, productId]));
  const numberOfLot = new Map(lots.map(({ lotId, number }) => [lotId, number]));
  const entriesOf = groupedBy(entries, ({ stockPostingId }) => stockPostingId);
  return ({ equipmentId, stockPostingId }) => {
    const tankLocationId = tanks.find((tank) => tank.equipmentId === equipmentId)?.stockLocationId ?? null;
    const own = (entriesOf.get(stockPostingId) ?? []).map(({ lotId, amount }) => ({ lotId, amount }));
    const amountOf = (productId: string) => own.reduce((total, { lotId, amount }) => total + (productOfLot.get(lotId) === productId ? amount : 0n), 0n);
    const inFill = products
      .map(({ productId, name, countedBy }) => ({ productId, name, amount: fromAmount(countedBy === "mass" ? "mass" : "volume", amountOf(productId)) }))
      .filter(({ amount }) => amount.amount > 0n)
      .toSorted((one, other) => one.name.localeCompare(other.name, "en"));
    const isPostedAway = !balances.some(({ lotId, stockLocationId }) => stockLocationId === tankLocationId && own.some((entry) => entry.lotId === lotId));
    return { lots: own, products: inFill, productOfLot, numberOfLot, tankLocationId, isPostedAway };
  };
}

async function drawsOf(work: Pick<Work, "tx" | "company">, fillIds: readonly string[]): Promise<readonly { readonly fillId: string; readonly draw: DrawOnFile }[]> {
  const { companyId } = work.company;
  const rows = await work.tx.fillDraw.findMany({ where: { companyId, fillId: { in: [...fillIds] } } });
  const records = await work.tx.registerEntry.findMany({
    where: { companyId, registerEntryId: { in: rows.map(({ registerEntryId }) => registerEntryId) } },
    select: { registerEntryId: true, number: true, endedAt: true },
  });
  const recordOf = new Map(records.map((record) => [record.registerEntryId, record]));
  return rows.map(({ fillId, visitId, registerEntryId, isMeasured, fillRestId, volume }) => ({
    fillId,
    draw: {
      ...{ visitId, registerEntryId, isMeasured, fillRestId },
      recordNumber: recordOf.get(registerEntryId)?.number ?? 0,
      sprayed: fromAmount("volume", volume),
      endedAt: recordOf.get(registerEntryId)?.endedAt.getTime() ?? 0,
    },
  }));
}
