import { accept } from "#domain/foundation/outcome";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { OF_CLEAN_OUTS } from "#domain/mixing/mix-change";
import { sprayForGround } from "#domain/mixing/spray-mix";
import { type Quantity } from "#domain/quantities/quantity";
import { leftBy } from "#domain/mixing/tank-books";
import { equipmentOnFile } from "#application/equipment/gear-on-file";
import { type FillOfTank, fillsInBooks } from "#application/fills/fills-in-books";
import { readRecordPlanSchema } from "#application/register/read-record-plan.schema";
import { linesOf, recordPlan, type RecordPlan } from "#application/register/record-plan";
import { notFound } from "#application/refusal";
import { visitOnFile } from "#application/visits/read-visit";
import { useCase, type Work } from "#application/use-case";

/** What the record of a visit asks of once: a mix, or a product for which no mix could be worked out. */
export interface MixToRecord {
  /** The line under which the form names it. */
  readonly key: string;
  readonly kind: "granular" | "spray";
  readonly productNames: readonly string[];
  /** What was planned in all: of a spray what the ground takes out of a fill. Null where no mix could be worked out. */
  readonly planned: Quantity<"mass"> | Quantity<"volume"> | null;
  /** Of a spray what was planned where it was mixed for this visit alone, to the mark of the gauge. */
  readonly mixedAlone: Quantity<"volume"> | null;
  /** The gear that puts it down, by id; null where it is not on file. */
  readonly equipmentId: string | null;
  /** The fills that were recorded for this visit with any of its products, in the order in which they were filled. */
  readonly fillIds: readonly string[];
}

/** A visit with what its record will ask about: its lawns and its mixes, and the clean-outs that were to be done before and are not on file. */
export const readRecordPlan = useCase("register/read-record-plan", readRecordPlanSchema, async (work, { visitId }) => {
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  const plan = await recordPlan(work, found);
  const sprayers = new Map((await equipmentOnFile(work)).filter(({ kind }) => isSprayer(kind)).map(({ name, equipmentId }) => [name, equipmentId]));
  const fills = await fillsMadeFor(work, visitId);
  const mixes = mixesOf(plan, sprayers).map((mix) => ({ ...mix, fillIds: fillIdsOf(mix, plan, fills) }));
  return accept({ visit: found.visit, record: found.record, lawns: plan.lawns, mixes, cleanOuts: plan.findings.filter(({ rule }) => OF_CLEAN_OUTS.has(rule)) });
});

async function fillsMadeFor(work: Work, visitId: string): Promise<readonly FillOfTank[]> {
  const { companyId } = work.company;
  const rows = await work.tx.fill.findMany({ where: { companyId, plannedVisitIds: { has: visitId } }, orderBy: [{ filledAt: "asc" }, { number: "asc" }] });
  return [...(await fillsInBooks(work, rows)).values()];
}

/**
 * The fills that a mix is to come out of: those made for its visit that still have something, or whose tank was measured
 * since, which its record takes from what was missing then. Where none is left the last one made: something came out of it.
 */
function fillIdsOf({ key, kind, equipmentId }: MixAsked, { mixes, treatments }: RecordPlan, fills: readonly FillOfTank[]): readonly string[] {
  if (kind === "granular") return [];
  const lines = mixes.map(linesOf).find(([first]) => String(first) === key) ?? [Number(key)];
  const productIds = treatments.filter(({ line }) => lines.includes(line)).map(({ productId }) => productId);
  const own = fills.filter((fill) => (equipmentId === null || fill.row.equipmentId === equipmentId) && fill.products.some(({ productId }) => productIds.includes(productId)));
  const atHand = own.filter((fill) => fill.rests.length > 0 || leftBy(fill, Infinity).amount > 0n);
  return (atHand.length === 0 ? own.slice(-1) : atHand).map(({ fillId }) => fillId);
}

type MixAsked = Omit<MixToRecord, "fillIds">;

function mixesOf({ mixes, treatments }: RecordPlan, equipmentIdOf: ReadonlyMap<string, string>): readonly MixAsked[] {
  const mixed = new Set(mixes.flatMap(linesOf));
  const worked = mixes.map((mix): MixAsked => {
    const key = String(linesOf(mix)[0]);
    const equipmentId = equipmentIdOf.get(mix.gearName) ?? null;
    if (mix.kind === "granular") return { key, kind: "granular", productNames: [mix.productName], planned: mix.total, mixedAlone: null, equipmentId };
    return { key, kind: "spray", productNames: mix.products.map(({ productName }) => productName), planned: sprayForGround(mix.carrier, mix.lawns), mixedAlone: mix.finished, equipmentId };
  });
  const without = treatments.filter(({ line }) => !mixed.has(line));
  return [
    ...worked,
    ...without.map(({ line, productName, countedBy, equipmentName }): MixAsked => ({
      key: String(line),
      kind: countedBy === "mass" ? "granular" : "spray",
      productNames: [productName],
      planned: null,
      mixedAlone: null,
      equipmentId: equipmentIdOf.get(equipmentName) ?? null,
    })),
  ];
}
