import { type CalibrationOnFile, type EquipmentOnFile, type VehicleOnFile } from "#application/equipment/gear-on-file";
import { EQUIPMENT_KIND_WORDS, isSprayer } from "#domain/equipment/equipment-kind";
import { type OperatorStanding } from "#domain/equipment/operator-standing";
import { daysWords } from "#domain/foundation/days-words";
import { formatQuantity } from "#domain/quantities/format-quantity";

/** How a calibration stands, in a few words. */
export function standingWords(standing: OperatorStanding): string {
  switch (standing.kind) {
    case "good":
      return standing.daysLeft === 0 ? "last day today" : `good for ${daysWords(standing.daysLeft)}`;
    case "run-out":
      return `ran out ${daysWords(standing.daysAgo)} ago`;
    case "setup-changed":
      return "tip or pressure changed since";
  }
}

/** What a calibration was made with: tip and pressure, or product and setting. */
export function setupWords({ setup, figures }: CalibrationOnFile): string {
  if (setup.kind === "sprayer") return `${setup.tip}, ${String(setup.pressurePsi)} psi`;
  return `${setup.product.name}, setting ${figures.setting ?? "unknown"}`;
}

/** How a truck is called: "Truck 1, White flatbed". */
export function truckWords({ number, name }: VehicleOnFile): string {
  return `Truck ${String(number)}, ${name}`;
}

/** A piece of gear's facts, as one sentence. What nobody knows is said to be unknown. */
export function factsOf(piece: EquipmentOnFile): string {
  const capacity = formatQuantity(piece.capacity, "us");
  const swath = piece.swath === null ? "" : `, swath ${formatQuantity(piece.swath, "us")}`;
  const rest = isSprayer(piece.kind)
    ? piece.holdUp === null
      ? "pump and hose not measured"
      : `pump and hose hold ${formatQuantity(piece.holdUp, "us")}`
    : deflectorWords(piece.hasDeflector);
  return `${EQUIPMENT_KIND_WORDS[piece.kind]}, ${capacity}${swath}, ${rest}.`;
}

function deflectorWords(hasDeflector: boolean | null): string {
  if (hasDeflector === null) return "nobody looked for a deflector";
  return hasDeflector ? "with a deflector" : "without a deflector";
}
