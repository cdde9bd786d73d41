import { accept } from "#domain/foundation/outcome";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { OF_CLEAN_OUTS } from "#domain/mixing/mix-change";
import { sprayForGround } from "#domain/mixing/spray-mix";
import { type Quantity } from "#domain/quantities/quantity";
import { equipmentOnFile } from "#application/equipment/gear-on-file";
import { fillsToName, type SprayAsked } from "#application/register/fills-to-name";
import { type MixAsked, mixesAsked } from "#application/register/mixes-asked";
import { readRecordPlanSchema } from "#application/register/read-record-plan.schema";
import { recordPlan, type RecordPlan, treatmentOnLine } from "#application/register/record-plan";
import { notFound } from "#application/refusal";
import { visitOnFile } from "#application/visits/read-visit";
import { useCase } from "#application/use-case";

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
  /** The fills that it is to come out of, in the order in which they were filled: see fillsToName. */
  readonly fillIds: readonly string[];
  /** Of a product without a mix ticket what else is sprayed on the same lawns, and may have been in the same fill. */
  readonly mayBeOneWith: readonly string[];
}

/** A visit with what its record will ask about: its lawns and its mixes, and the clean-outs that were to be done before and are not on file. */
export const readRecordPlan = useCase("register/read-record-plan", readRecordPlanSchema, async (work, { visitId }) => {
  const found = await visitOnFile(work, visitId);
  if (found === undefined) return notFound("visit");
  const plan = await recordPlan(work, found);
  const gear = await equipmentOnFile(work);
  const sprayers = new Map(gear.filter(({ kind }) => isSprayer(kind)).map(({ name, equipmentId }) => [name, equipmentId]));
  const asked = mixesAsked(plan).map((one) => ({ one, mix: mixOf(one, sprayers) }));
  const sprays = new Map(asked.flatMap(({ one, mix }) => (mix.kind === "granular" ? [] : [[one.key, sprayOf(one, plan, mix.equipmentId)] as const])));
  const fillIdsOf = await fillsToName(work, found, [...sprays.values()], gear);
  const mixes = asked.map(({ one, mix }): MixToRecord => {
    const spray = sprays.get(one.key);
    const others = "mix" in one || spray === undefined ? [] : asked.filter((other) => other.one !== one && other.one.ground === one.ground && other.mix.kind === "spray");
    return { ...mix, fillIds: spray === undefined ? [] : fillIdsOf(spray), mayBeOneWith: others.flatMap((other) => other.mix.productNames) };
  });
  return accept({ visit: found.visit, record: found.record, lawns: plan.lawns, mixes, cleanOuts: plan.findings.filter(({ rule }) => OF_CLEAN_OUTS.has(rule)) });
});

function sprayOf(asked: MixAsked, { treatments }: RecordPlan, equipmentId: string | null): SprayAsked {
  return { asked, productIds: asked.lines.map((line) => treatmentOnLine(treatments, line).productId), equipmentId };
}

function mixOf(asked: MixAsked, equipmentIdOf: ReadonlyMap<string, string>): Omit<MixToRecord, "fillIds" | "mayBeOneWith"> {
  const { key } = asked;
  if ("treatment" in asked) {
    const { productName, countedBy, equipmentName } = asked.treatment;
    const equipmentId = equipmentIdOf.get(equipmentName) ?? null;
    return { key, kind: countedBy === "mass" && equipmentId === null ? "granular" : "spray", productNames: [productName], planned: null, mixedAlone: null, equipmentId };
  }
  const { mix } = asked;
  const equipmentId = equipmentIdOf.get(mix.gearName) ?? null;
  if (mix.kind === "granular") return { key, kind: "granular", productNames: [mix.productName], planned: mix.total, mixedAlone: null, equipmentId };
  return { key, kind: "spray", productNames: mix.products.map(({ productName }) => productName), planned: sprayForGround(mix.carrier, mix.lawns), mixedAlone: mix.finished, equipmentId };
}
