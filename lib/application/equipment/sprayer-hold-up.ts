import { holdUpOf } from "#domain/equipment/tank-hold-up";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { settle } from "#domain/quantities/exact-quantity";
import { fromAmount, zero } from "#domain/quantities/quantity";
import { type EquipmentForm } from "#application/equipment/add-equipment.schema";
import { amountOf, quantityOf } from "#application/equipment/typed-amount";
import { badField, type UseCaseRefusal } from "#application/refusal";

type SprayerForm = Extract<EquipmentForm, { holdUp: string }>;

/**
 * What pump and hose of a sprayer hold, in canonical units: as typed, or from the hose and what the pump holds, or null
 * where nobody measured it. Refused: both ways at once, half a hose, a hose without a pump (a pump that holds nothing is
 * typed as zero).
 */
export function holdUpOfForm(form: SprayerForm): Outcome<bigint | null, UseCaseRefusal> {
  const { holdUp, hoseLength, hoseDiameter, pumpHolds } = form;
  const isComputed = hoseLength !== "" || hoseDiameter !== "" || pumpHolds !== "";
  if (!isComputed) return accept(holdUp === "" ? null : quantityOf("holdUp", holdUp, "volume").amount);
  if (holdUp !== "") return badField("holdUp", "Give it here, or by the hose and the pump below, not both ways.");
  if (hoseLength === "") return badField("hoseLength", "Give the length of the hose too.");
  if (hoseDiameter === "") return badField("hoseDiameter", "Give the inner diameter of the hose too; it is printed on it.");
  if (pumpHolds === "") return badField("pumpHolds", "What the pump holds is not known. Drain it into a measure once; nothing is 0 gal.");
  const hose = {
    name: "the hose",
    length: fromAmount("length", amountOf("hoseLength", hoseLength, "length")),
    innerDiameter: fromAmount("length", amountOf("hoseDiameter", hoseDiameter, "length")),
  };
  // What the tank keeps under its outlet is no part of what reaches the next lawn.
  const held = holdUpOf({ hoses: [hose], pump: quantityOf("pumpHolds", pumpHolds, "volume"), tankRemainder: zero("volume") });
  return held.ok ? accept(settle(held.value.inLine, "nearest").amount) : badField("hoseLength", held.refusal.sentence);
}
