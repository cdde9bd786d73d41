import { type Finding, hold, note } from "#domain/foundation/finding";
import { exactly, settle } from "#domain/quantities/exact-quantity";
import { formatQuantityIn } from "#domain/quantities/format-quantity";
import { compare, type Quantity } from "#domain/quantities/quantity";
import { decimal, roundQuotient } from "#domain/quantities/rational";
import { LENGTHS_SQUARED_PER_AREA } from "#domain/quantities/units";
import { type OnFile } from "#domain/weather/spray-limits";
import { type DistanceToWater } from "#domain/label/label-distance";
import { notReadOnLabel } from "#domain/label/not-read";
import { type PackFact, type StatutoryLength, type WaterDistanceRule } from "#domain/rules/rule-pack";

/** Where a lawn runs along water, as somebody measured it; "unknown" where nobody did. */
export interface WaterEdge {
  readonly name: string;
  readonly length: Quantity<"length"> | "unknown";
  /** What the crew keeps clear in any case. */
  readonly width: Quantity<"length"> | "unknown";
}

/** Whether there is water beside a lawn: somebody looked and there is, or there is none, or nobody has said. */
export const WATER_BESIDE = ["none", "yes", "not-known"] as const;
export type WaterBeside = (typeof WATER_BESIDE)[number];

/** A lawn, as far as distances to water ask about it. */
export interface LawnAtWater {
  readonly name: string;
  readonly waterBeside: WaterBeside;
  /** What is on file of its water; where there is any, the lawn has water whatever was said. */
  readonly waterEdges: readonly WaterEdge[];
}

/** How a product gets onto the lawn, as far as distances depend on it. */
export interface Placement {
  readonly productName: string;
  readonly isFertilizer: boolean;
  /** Spreaders only; "unknown" counts as none. */
  readonly deflector: "yes" | "no" | "unknown" | "not-a-spreader";
  /** What the label of this use asks for. */
  readonly label: OnFile<DistanceToWater>;
}

/** Whose width it is that is kept clear: the widest of three, and of equal ones the company's own, then the label's. */
type WhoseWidth = "company" | "label" | "law";

/** One strip along water: its length as measured, and the width that crew, label or law keep clear. */
export interface ClearStrip {
  readonly name: string;
  readonly length: Quantity<"length">;
  readonly width: Quantity<"length">;
  readonly area: Quantity<"area">;
  /** Tickets that were issued before a label's own distance was kept say neither this nor the next. */
  readonly whose?: WhoseWidth;
  /** Where it is written, for what is not the company's own. */
  readonly citation?: string;
}

/** What is kept clear along a lawn's water, strip by strip. */
export interface KeptClear {
  /** Length times width along all water; what can't be computed adds nothing and holds the ticket. */
  readonly area: Quantity<"area">;
  readonly edges: readonly ClearStrip[];
  readonly findings: readonly Finding[];
}

/**
 * A length that a law states, up to the next canonical unit (0.125 micrometers). Throws for what is no plain decimal.
 */
export function statutoryLength({ value, unit }: StatutoryLength): Quantity<"length"> {
  return settle(exactly(unit, decimal(value)), "up");
}

/** A width that something asks for along water, with where it is written. */
interface AskedWidth {
  readonly whose: WhoseWidth;
  readonly width: Quantity<"length">;
  readonly citation?: string;
}

/** What label and law on file ask for along water with this equipment, the label first. */
function askedWidths(rule: PackFact<WaterDistanceRule> | undefined, { label, isFertilizer, deflector }: Placement): readonly AskedWidth[] {
  const asked: AskedWidth[] = [];
  if (typeof label === "object") asked.push({ whose: "label", width: deflector === "yes" ? label.withDeflector : label.otherwise, citation: label.source });
  if (rule?.onFile === true && isFertilizer) {
    asked.push({ whose: "law", width: statutoryLength(deflector === "yes" ? rule.value.withDeflector : rule.value.otherwise), citation: rule.citation });
  }
  return asked;
}

function areaOf(length: Quantity<"length">, width: Quantity<"length">): Quantity<"area"> {
  return { dimension: "area", amount: roundQuotient(length.amount * width.amount, LENGTHS_SQUARED_PER_AREA, "up") };
}

/**
 * What is kept clear of one product along a lawn's water: length times the widest of what the crew keeps clear, what the
 * label states and what the law asks for with this equipment; each strip says whose width it is. A length that nobody
 * measured, or a width that none of them gives, is a hold that names what is missing; the office answers it by measuring.
 * A label that nobody has read for it holds too, where the lawn runs along water. Where nobody has said whether there is
 * water, a distance that label or law asks for can't be kept and holds; the office answers it by looking.
 */
export function keptClearOf(lawn: LawnAtWater, placement: Placement, rule: PackFact<WaterDistanceRule> | undefined): KeptClear {
  const { name: lawnName } = lawn;
  const asked = askedWidths(rule, placement);
  if (lawn.waterBeside === "not-known" && lawn.waterEdges.length === 0) {
    return { area: { dimension: "area", amount: 0n }, edges: [], findings: notLookedAt(lawnName, placement, asked) };
  }
  const waterEdges = lawn.waterBeside === "yes" && lawn.waterEdges.length === 0 ? [NOT_ENTERED] : lawn.waterEdges;
  const edges: ClearStrip[] = [];
  const findings: Finding[] = waterEdges.length > 0 && placement.label === "unknown" ? [notReadOnLabel("distance-to-water-not-read", placement.productName, "how far from water it stays")] : [];
  for (const edge of waterEdges) {
    const widest = widestOf(edge.width, asked);
    if (widest === undefined || edge.length === "unknown") {
      findings.push(unmeasured(lawnName, edge, widest?.width));
      continue;
    }
    edges.push({ name: edge.name, length: edge.length, area: areaOf(edge.length, widest.width), ...widest });
    if (widest.whose !== "company") findings.push(widened(lawnName, edge.name, placement, widest));
  }
  const area: Quantity<"area"> = { dimension: "area", amount: edges.reduce((total, edge) => total + edge.area.amount, 0n) };
  return { area, edges, findings };
}

/** Water that somebody saw and nobody entered. */
const NOT_ENTERED: WaterEdge = { name: "the water", length: "unknown", width: "unknown" };

function notLookedAt(lawnName: string, { productName, label }: Placement, asked: readonly AskedWidth[]): readonly Finding[] {
  const widest = widestOf("unknown", asked);
  const unread = label === "unknown";
  if (widest === undefined && !unread) return [];
  const figures = [
    ...(widest === undefined ? [] : [`${askerWords(widest, productName)} asks for ${formatQuantityIn(widest.width, "ft", 1)}.`]),
    ...(unread ? [`Nobody has read how far from water the label of ${productName} keeps it.`] : []),
  ];
  return [
    hold("office", {
      rule: "water-not-looked-at",
      source: widest?.whose === "law" ? "law" : "label",
      what: `Whether there is water beside ${lawnName} is not on file, and ${productName} may have to stay clear of it.`,
      figure: figures.join(" "),
      toDo: `Look, and say of ${lawnName} that there is none, or enter the water and its length.`,
      ...(widest?.citation === undefined ? {} : { citation: widest.citation }),
      about: [productName, lawnName],
    }),
  ];
}

function widestOf(entered: Quantity<"length"> | "unknown", asked: readonly AskedWidth[]): AskedWidth | undefined {
  const own: readonly AskedWidth[] = entered === "unknown" ? [] : [{ whose: "company", width: entered }];
  const [first, ...others] = [...own, ...asked];
  return first === undefined ? undefined : others.reduce((widest, one) => (compare(one.width, widest.width) > 0 ? one : widest), first);
}

function askerWords({ whose }: Pick<AskedWidth, "whose">, productName: string): string {
  return whose === "label" ? `The label of ${productName}` : "The law";
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

function widened(lawnName: string, edgeName: string, { productName, deflector }: Placement, { whose, width, citation }: AskedWidth): Finding {
  const how = deflector === "yes" ? "with the deflector" : "without a deflector";
  return note({
    rule: "distance-to-water",
    source: whose === "label" ? "label" : "law",
    what: `Keep ${formatQuantityIn(width, "ft", 1)} clear of ${edgeName}.`,
    figure: `${askerWords({ whose }, productName)} asks for it ${how}; the strip is taken off ${lawnName}.`,
    ...(citation === undefined ? {} : { citation }),
    about: [productName, lawnName],
  });
}
