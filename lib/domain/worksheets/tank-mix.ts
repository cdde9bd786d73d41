import { capitalized } from "#domain/foundation/capitalized";
import { type Finding, note, takeCare } from "#domain/foundation/finding";
import { accept, badInput, missingFact, type Outcome } from "#domain/foundation/outcome";
import { type Formulation, FORMULATIONS, isOverArea, type UseRate } from "#domain/label/label-facts";
import { amountIn } from "#domain/mixing/tank-fill";
import { waterShareOf } from "#domain/mixing/truck-weight";
import { type ExactQuantity, isNothing, multiplyExact, ratioExact } from "#domain/quantities/exact-quantity";
import { formatCompound } from "#domain/quantities/format-compound";
import { formatQuantityIn, writeQuantity } from "#domain/quantities/format-quantity";
import { formatRate } from "#domain/quantities/format-rate";
import { inUnit } from "#domain/mixing/ticket-working-words";
import { concentrationInSpray, coverage, times } from "#domain/quantities/rate";
import { rational, roundToWhole, subtractRational } from "#domain/quantities/rational";
import { amountBothWays, amountWords, areaAsTyped, areaInput, carrierAsTyped, isByAcre, withTyped } from "#domain/worksheets/figure-words";
import { readAmountField, readChoice, readRateField, readTogether, refuseOne } from "#domain/worksheets/read-fields";
import { type Fills, type MixLine, mixRateWords, tankMixLines, tanksOf } from "#domain/worksheets/tank-mix-lines";
import { type Typed, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/**
 * What goes into a tank, in the order in which it goes in: the formulations of labels without what is spread dry, and a
 * fertilizer or water conditioner after the water-soluble bags (Manitoba Guide to Crop Protection).
 */
export const MIX_KINDS = [
  "water-soluble bag",
  "fertilizer or water conditioner",
  ...FORMULATIONS.filter((kind): kind is Exclude<Formulation, "water-soluble bag" | "dry granule"> => kind !== "water-soluble bag" && kind !== "dry granule"),
] as const;
/** One of them. */
export type MixKind = (typeof MIX_KINDS)[number];

/** The rows for products; rows without a name and a rate stay empty. */
export const MIX_ROWS = ["1", "2", "3", "4"] as const;
type MixRow = (typeof MIX_ROWS)[number];
/** The fields of the worksheet. */
export type TankMixField = "tank" | "carrier" | "area" | `name${MixRow}` | `rate${MixRow}` | `kind${MixRow}`;

const OKLAHOMA = "Oklahoma State, Sprayer Calibration, http://www.turf.okstate.edu/FactSheets/sprayer.htm";
const ORDER = "Manitoba Guide to Crop Protection, quoted by the Canola Council of Canada (2013)";
const PARTNERS = "https://sprayers101.com/tankmix";

const EMPTY_ROWS = { name1: "", rate1: "", kind1: "", name2: "", rate2: "", kind2: "", name3: "", rate3: "", kind3: "", name4: "", rate4: "", kind4: "" } as const;

export const TANK_MIX_EXAMPLE: WorksheetExample<TankMixField> = {
  typed: { ...EMPTY_ROWS, tank: "20 gal", carrier: "20 gal per acre", area: "1 1/2 acres", name1: "Herbicide", rate1: "32 fl oz per acre", kind1: "soluble liquid", name2: "Surfactant", rate2: "0.25% v/v", kind2: "surfactant" },
  from: `${OKLAHOMA} (32 oz per acre at 20 gal per acre is 32 oz in 20 gal). The second tank and the surfactant are made up`,
};

interface MixProduct {
  readonly name: string;
  readonly rate: UseRate;
  /** The rate as it was typed. */
  readonly typedRate: string;
  readonly kind: MixKind;
}

function readRow(typed: Typed<TankMixField>, row: MixRow): Outcome<MixProduct | undefined> {
  const [name, rate, kind] = [typed[`name${row}`].trim(), typed[`rate${row}`], typed[`kind${row}`]];
  if (name === "" && rate.trim() === "" && kind === "") return row === "1" ? missingFact("rate1", "32 fl oz per acre", "Give a product and its rate, such as 32 fl oz per acre.") : accept(undefined);
  const read = readRateField({ field: `rate${row}`, what: "the rate of the product", such: "32 fl oz per acre" }, rate, {
    bases: ["product-volume-per-area", "product-mass-per-area", "product-volume-per-spray-volume", "product-mass-per-spray-volume"],
  });
  if (!read.ok) return read;
  const chosen = readChoice(`kind${row}`, kind, MIX_KINDS);
  // The reader answers with one rate of one of the four bases.
  const mixRate = read.value as UseRate;
  return chosen.ok ? accept({ name: name === "" ? `Product ${row}` : name, rate: mixRate, typedRate: rate.trim(), kind: chosen.value }) : chosen;
}

/** As it is measured out: large amounts in two units. */
function measuredWords(amount: MixLine["inFull"]): string {
  return formatCompound(amount, 2);
}

/** Full tanks, and the part of one that is left. */
function fillsOf(spray: ExactQuantity<"volume">, tank: ExactQuantity<"volume">): Fills {
  const tanks = ratioExact(spray, tank);
  const full = roundToWhole(tanks, "down");
  return { spray, full, part: multiplyExact(tank, subtractRational(tanks, rational(full))) };
}

/** "2 full tanks and one of 6 gal", "1 full tank"; "one tank of 6 gal" where none is full. */
function fillWords({ full, part }: Fills): string {
  if (full === 0n) return `one tank of ${amountWords(part)}`;
  return `${String(full)} full ${full === 1n ? "tank" : "tanks"}${isNothing(part) ? "" : ` and one of ${amountWords(part)}`}`;
}

function findingsOf(products: readonly MixProduct[]): readonly Finding[] {
  const jar = note({
    rule: "jar-test",
    source: "handbook",
    what: "Products that were never mixed before get a jar test first.",
    toDo: "Mix the same parts in a quart jar, let it stand 5 minutes, and look for flakes, sludge, layers or oil.",
    citation: "Kopec, University of Arizona (May 1999), http://turf.arizona.edu/ccps599.htm",
    about: [],
  });
  const many = takeCare({
    rule: "many-in-the-tank",
    source: "handbook",
    what: "More than three products in one tank are hard to keep from reacting.",
    figure: `${products.length} products; at most 3 are advised.`,
    toDo: "Split the mix into two tanks where the labels allow it.",
    citation: PARTNERS,
    about: [],
  });
  return [...(products.length > 3 ? [many] : []), ...(products.length > 1 ? [jar] : [])];
}

/**
 * What goes into full and part tanks, or into the one that a small job takes: the ground that a tank covers, and each
 * product at its concentration in the finished spray, in mixing order. Refused by field: what is missing or can't be read,
 * and products that together leave no room for water.
 */
export function tankMixWorksheet(typed: Typed<TankMixField>): WorksheetOutcome {
  const read = readTogether({
    tank: readAmountField({ field: "tank", what: "what the tank holds", such: "100 gal" }, typed.tank, { dimension: "volume", unitWhenNone: "gal" }),
    carrier: readRateField({ field: "carrier", what: "what the sprayer puts out", such: "2 gal per 1,000 sq ft" }, typed.carrier, { bases: ["carrier-volume-per-area"], unitWhenNone: "gal per 1,000 sq ft" }),
    area: readAmountField({ field: "area", what: "the area to spray", such: "25,000 sq ft" }, typed.area, { dimension: "area", unitWhenNone: "sq ft" }),
    row1: readRow(typed, "1"),
    row2: readRow(typed, "2"),
    row3: readRow(typed, "3"),
    row4: readRow(typed, "4"),
  });
  if (!read.ok) return read;
  const { tank, carrier, area, row1, row2, row3, row4 } = read.value;
  const products = [row1, row2, row3, row4].flatMap((row) => row ?? []).toSorted((left, right) => MIX_KINDS.indexOf(left.kind) - MIX_KINDS.indexOf(right.kind));
  const perTank = coverage(carrier, tank);
  const fills = fillsOf(times(carrier, area), tank);
  const lines = products.map((product) => {
    const concentration = isOverArea(product.rate) ? concentrationInSpray(product.rate, carrier) : product.rate;
    return { ...product, concentration, inFull: amountIn(concentration, tank), inPart: amountIn(concentration, fills.part), total: amountIn(concentration, fills.spray) };
  });
  const waterShare = waterShareOf(lines);
  if (waterShare.numerator === 0n) return refuseOne(badInput("rate1", "no room for water", "less product than spray", "These rates fill the tank with product and leave no room for water. Look at the rates and the sprayer's output.").refusal);
  const tanks = tanksOf(tank, fills);
  const [carrierWords, areaWords] = [carrierAsTyped(carrier, typed.carrier), areaAsTyped(area, typed.area)];
  const told = tankMixLines({ tank, carrier, area, fills, perTank, lines, isCarrierByAcre: isByAcre(typed.carrier), isAreaByAcre: isByAcre(typed.area) });
  return accept({
    answers: [
      { ...writeQuantity(perTank, "us"), of: `from one full tank (${formatQuantityIn(perTank, "acre", 2)})` },
      { ...writeQuantity(fills.spray, "us"), of: `finished spray for ${areaWords}: ${fillWords(fills)}` },
    ],
    working: {
      title: "Tank mix",
      formula: "Area per tank = tank ÷ spray per area. Product in a tank = rate × area per tank (or, where the rate is per gallon of spray, × the gallons). A part tank: the same with its gallons.",
      inputs: [
        { name: "Tank", figure: withTyped(inUnit(tank, "gal"), typed.tank) },
        { name: "Sprayer puts out", figure: withTyped(told.carrierWords, typed.carrier), from: "its calibration" },
        { name: "Area", figure: areaInput(area, typed.area) },
        ...lines.map((line) => ({ name: line.name, figure: `${withTyped(mixRateWords(line.rate, line.typedRate), line.typedRate)} (${line.kind})`, from: "the label" })),
      ],
      steps: [
        ...told.steps,
        `Mixing order: half the water and agitation first; then ${lines.map(({ name, kind }) => `${name} (${kind})`).join(", then ")}; then the rest of the water. Let each mix in before the next.`,
      ],
      result: `A full tank covers ${amountBothWays(perTank)} at ${carrierWords} (${formatRate(carrier, "metric")}); the job takes ${amountBothWays(fills.spray)}.`,
      source: `${OKLAHOMA}; mixing order: ${ORDER}. A label's own order goes before it`,
    },
    findings: findingsOf(products),
    tables: [
      {
        caption: "Into the tank, in this order",
        columns: [
          { head: "Product", align: "word" },
          ...tanks.map(({ name }) => ({ head: capitalized(name), align: "figure" }) as const),
        ],
        rows: [
          ...lines.map((line) => [line.name, ...tanks.map(({ amountOf }) => measuredWords(amountOf(line)))]),
          ["Water", ...tanks.map(({ spray }) => amountWords(multiplyExact(spray, waterShare)))],
          ["Finished spray", ...tanks.map(({ spray }) => amountWords(spray))],
        ],
      },
    ],
  });
}
