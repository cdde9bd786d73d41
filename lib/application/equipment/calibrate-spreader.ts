import { isSprayer } from "#domain/equipment/equipment-kind";
import { rateOnFile } from "#domain/equipment/rate-on-file";
import { rateFromCollected } from "#domain/equipment/spreader-calibration";
import { readSpreaderTest, type TypedSpreaderPace } from "#domain/equipment/typed-test";
import { accept } from "#domain/foundation/outcome";
import { formatRate } from "#domain/quantities/format-rate";
import { writeDeed } from "#application/audit-trail";
import { calibrateSpreaderSchema } from "#application/equipment/calibrate-spreader.schema";
import { calibrationParties } from "#application/equipment/calibration-of-operator";
import { badField, conflict, notFound } from "#application/refusal";
import { dayOf } from "#application/stored-day";
import { useCase } from "#application/use-case";

/** A complaint where a pace is given twice, or by a speed without any swath. None at all may stay open. */
function paceRefusal({ swath = "", speedMph = "", minutesPerThousand = "" }: TypedSpreaderPace, hasSwath: boolean) {
  if (speedMph !== "" && minutesPerThousand !== "") return badField("minutesPerThousand", "Give the speed or the minutes for 1,000 sq ft, not both.");
  return speedMph !== "" && swath === "" && !hasSwath ? badField("swath", "Give the swath too: a speed alone does not say how much ground is covered.") : undefined;
}

/** Writes what an operator measured with a spreader and one granular product at one setting. */
export const calibrateSpreader = useCase("equipment/calibrate-spreader", calibrateSpreaderSchema, async (work, form) => {
  const { companyId } = work.company;
  const { equipmentId, operatorId, madeOn, productId, setting, ...inputs } = form;
  const parties = await calibrationParties(work, form);
  if (!parties.ok) return parties;
  const { equipment, operator } = parties.value;
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } } });
  if (product === null) return notFound("product");
  if (isSprayer(equipment.kind)) return conflict("This is a sprayer. Calibrate it as one.");
  if (product.form !== "granular") return badField("productId", `${product.name} is no granular product.`);
  if (product.retiredAt !== null) return badField("productId", `${product.name} is used no more.`);
  const pace = paceRefusal(inputs, equipment.hasSwath);
  if (pace !== undefined) return pace;
  const runs = readSpreaderTest(inputs);
  if (!runs.ok) return badField(runs.refusal.field, runs.refusal.sentence);
  const result = rateFromCollected(runs.value);
  if (!result.ok) return badField("collected", result.refusal.sentence);
  const rate = rateOnFile("collected", result.value.rate);
  if (!rate.ok) return badField("collected", rate.refusal.sentence);
  const calibrationId = work.newId();
  await work.tx.calibration.create({
    data: {
      companyId,
      calibrationId,
      equipmentId,
      operatorId,
      productId,
      setting,
      method: result.value.method,
      inputs: { ...inputs },
      rateBasis: "product-mass-per-area",
      ...rate.value,
      madeOn: dayOf(madeOn),
      enteredAt: work.now,
    },
  });
  const rateInWords = formatRate(result.value.rate, "us");
  await writeDeed(work, calibrationId, {
    deed: "spreader-calibrated",
    details: { equipment: equipment.name, operator: operator.name, product: product.name, setting, rate: rateInWords, madeOn },
  });
  return accept({ calibrationId });
});
