import { type LawnOnFile, type StationOnFile, type WaterEdgeOnFile } from "#application/properties/read-property";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { invariant } from "#domain/foundation/invariant";
import { depthPerHour } from "#domain/equipment/station-test";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { type Quantity } from "#domain/quantities/quantity";
import { measureArea } from "#domain/turf/field-area";

/** "12 ft". */
function feetWords(length: Quantity<"length">): string {
  return formatQuantityIn(length, "ft", 1);
}

/** "tall fescue with Kentucky bluegrass, assumed". */
export function grassWords({ grasses, grassesAssumed }: Pick<LawnOnFile, "grasses" | "grassesAssumed">): string {
  return `${grasses.join(" with ")}${grassesAssumed ? ", assumed" : ""}`;
}

/** How and when the size of a lawn came to be known. */
export function originWords({ areaOrigin, measuredOn, pieces }: LawnOnFile): string {
  switch (areaOrigin) {
    case "measured": {
      const count = pieces.filter(({ use }) => use !== "water").length;
      const day = measuredOn === null ? "" : `, ${formatShortDate(measuredOn)}`;
      return `measured in ${count === 1 ? "one piece" : `${String(count)} pieces`}${day}`;
    }
    case "entered":
      return "entered, not measured here";
    case "imported":
      return "from the customer list";
  }
}

/** What is kept clear along a water's edge: length times width as entered, or undefined where either is unknown. */
export function keptClearArea({ length, width }: WaterEdgeOnFile): Quantity<"area"> | undefined {
  if (length === null || width === null) return undefined;
  const strip = measureArea({ kind: "rectangle", length, width });
  invariant(strip.ok, "a stored length and width are above zero");
  return strip.value.area;
}

/** "15 ft along 60 ft of Pond"; what is unknown is said to be. */
export function waterWords({ name, length, width }: WaterEdgeOnFile): string {
  const clear = width === null ? "width not known" : `${feetWords(width)} kept clear`;
  return length === null ? `${name}: ${clear}, length not known` : `${name}: ${clear} along ${feetWords(length)}`;
}

const WATER_BESIDE_WORDS: Readonly<Record<LawnOnFile["waterBeside"], string>> = { none: "no water", yes: "water, not measured", "not-known": "water: nobody has looked" };

/** A lawn's water in words, each on its own; where none is on file, what somebody said of it. */
export function lawnWaterWords({ waterEdges, waterBeside }: LawnOnFile): readonly string[] {
  return waterEdges.length === 0 ? [WATER_BESIDE_WORDS[waterBeside]] : waterEdges.map(waterWords);
}

/** "0.72 in per hour", or that nobody tested. */
export function rateWords({ test }: StationOnFile): string {
  return test === null ? "not tested" : `${formatQuantityIn(depthPerHour(test), "in", 2)} per hour`;
}
