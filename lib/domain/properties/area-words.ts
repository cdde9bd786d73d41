import { formatFigure } from "#domain/quantities/format-number";
import { inUnit, type Quantity } from "#domain/quantities/quantity";

/** An area of ground in whole square feet, as a lawn's size is spoken of: "5,420 sq ft". Rounded for reading only. */
export function squareFeetWords(area: Quantity<"area">): string {
  return `${formatFigure(inUnit(area, "sq ft"), { decimals: 0, quarters: false })} sq ft`;
}
