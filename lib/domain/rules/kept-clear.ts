import { type Finding, hold, note } from "#domain/foundation/finding";
import { exactly, settle } from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { compare, largest, type Quantity } from "#domain/quantities/quantity";
import { decimal, roundQuotient } from "#domain/quantities/rational";
import { LENGTHS_SQUARED_PER_AREA } from "#domain/quantities/units";
import { type PackFact, type StatutoryLength, type WaterDistanceRule } from "#domain/rules/rule-pack";

/** Where a lawn runs along water, as somebody measured it; "unknown" where nobody did. */
export interface WaterEdge {
  readonly name: string;
  readonly length: Quantity<"length"> | "unknown";
  /** What the crew keeps clear in any case. */
  readonly width: Quantity<"length"> | "unknown";
}

/** How a product gets onto the lawn, as far as distances depend on it. */
export interface Placement {
  readonly productName: string;
  readonly isFertilizer: boolean;
  /** Spreaders only; "unknown" counts as none. */
  readonly deflector: "yes" | "no" | "unknown" | "not-a-spreader";
}

/** One strip along water: its length as measured, and the width that crew or law keep clear. */
export interface ClearStrip {
  readonly name: string;
  readonly length: Quantity<"length">;
  readonly width: Quantity<"length">;
  readonly area: Quantity<"area">;
}

export interface KeptClear {
  /** Length times width along all water; what can't be computed adds nothing and holds the ticket. */
  readonly area: Quantity<"area">;
  readonly edges: readonly ClearStrip[];
  readonly findings: readonly Finding[];
}

/** A length that a law states, exactly. */
export function statutoryLength({ value, unit }: StatutoryLength): Quantity<"length"> {
  return settle(exactly(unit, decimal(value)), "up");
}

/** The width that law asks for along water, or undefined where no law on file does. */
function legalWidth(rule: PackFact<WaterDistanceRule> | undefined, placement: Placement): Quantity<"length"> | undefined {
  if (rule?.onFile !== true || !placement.isFertilizer) return undefined;
  return statutoryLength(placement.deflector === "yes" ? rule.value.withDeflector : rule.value.otherwise);
}

function areaOf(length: Quantity<"length">, width: Quantity<"length">): Quantity<"area"> {
  return { dimension: "area", amount: roundQuotient(length.amount * width.amount, LENGTHS_SQUARED_PER_AREA, "up") };
}

/**
 * What is kept clear of one product along a lawn's water: length times the wider of what the crew keeps clear and what
 * the law asks for with this equipment. A length that nobody measured, or a width that neither gives, is a hold that
 * names what is missing; the office answers it by measuring.
 */
export function keptClearOf(
  lawnName: string,
  waterEdges: readonly WaterEdge[],
  placement: Placement,
  rule: PackFact<WaterDistanceRule> | undefined,
): KeptClear {
  const legal = legalWidth(rule, placement);
  const citation = rule?.onFile === true ? rule.citation : undefined;
  const edges: ClearStrip[] = [];
  const findings: Finding[] = [];
  for (const edge of waterEdges) {
    const width = wider(edge.width, legal);
    if (width === undefined || edge.length === "unknown") {
      findings.push(unmeasured(lawnName, edge, width));
      continue;
    }
    edges.push({ name: edge.name, length: edge.length, width, area: areaOf(edge.length, width) });
    if (legal !== undefined && (edge.width === "unknown" || compare(legal, edge.width) > 0)) {
      findings.push(widened(lawnName, edge.name, placement, legal, citation));
    }
  }
  const area: Quantity<"area"> = { dimension: "area", amount: edges.reduce((total, edge) => total + edge.area.amount, 0n) };
  return { area, edges, findings };
}

function wider(entered: Quantity<"length"> | "unknown", legal: Quantity<"length"> | undefined): Quantity<"length"> | undefined {
  if (entered === "unknown") return legal;
  return legal === undefined ? entered : largest(entered, legal);
}

function unmeasured(lawnName: string, edge: WaterEdge, width: Quantity<"length"> | undefined): Finding {
  const missing = edge.length === "unknown" ? "How long the lawn runs along it" : "How wide a strip to keep clear";
  return hold("office", {
    rule: "water-not-measured",
    source: "house",
    what: `The strip along ${edge.name} is not known.`,
    figure: `${missing} is not on file${width === undefined ? "" : `; ${formatQuantityIn(width, "ft", 1)} must stay clear`}.`,
    toDo: `Measure the edge of ${lawnName} along ${edge.name}.`,
    about: [lawnName, edge.name],
  });
}

function widened(lawnName: string, edgeName: string, placement: Placement, legal: Quantity<"length">, citation: string | undefined): Finding {
  const how = placement.deflector === "yes" ? "with the deflector" : "without a deflector";
  return note({
    rule: "distance-to-water",
    source: "law",
    what: `Keep ${formatQuantityIn(legal, "ft", 1)} clear of ${edgeName}.`,
    figure: `The law asks for it ${how}; the strip is taken off ${lawnName}.`,
    ...(citation === undefined ? {} : { citation }),
    about: [placement.productName, lawnName],
  });
}
