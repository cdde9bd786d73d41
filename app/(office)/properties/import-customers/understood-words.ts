import { squareFeetWords } from "#domain/properties/area-words";
import { type CustomerRow } from "#domain/properties/customer-row";
import { mowingDayWords } from "#domain/properties/mowing-day";
import { formatQuantityIn } from "#domain/quantities/format-quantity";

/** What was understood of a row's lawn: its size and grass, or that it stays unmeasured. */
export function lawnWords({ lawn, lotArea }: CustomerRow): string {
  if (lawn !== null) {
    const { grasses, assumed } = lawn.grasses;
    return `${squareFeetWords(lawn.area)}, ${grasses.join(" and ")}${assumed ? ", assumed" : ""}`;
  }
  return lotArea === null ? "not measured" : `not measured; lot ${squareFeetWords(lotArea)}`;
}

/** What was understood of a row's mowing day, gate and dog. */
export function accessWords({ mowingDay, gate, dogNote }: CustomerRow): string {
  return [
    mowingDay === null ? "" : `mowed ${mowingDayWords(mowingDay)}`,
    gate.width === null ? "" : `gate ${formatQuantityIn(gate.width, "in", 1)}`,
    gate.code === null ? "" : `code ${gate.code}`,
    gate.words ?? "",
    dogNote ?? "",
  ]
    .filter((part) => part !== "")
    .join("; ");
}
