import { accept } from "#domain/foundation/outcome";
import { conversionLine, figure, inUnit } from "#domain/mixing/ticket-working-words";
import { type Density, densityIn, massOf } from "#domain/quantities/density";
import { type ExactQuantity } from "#domain/quantities/exact-quantity";
import { formatQuantity, formatQuantityIn, writeQuantity, writeQuantityIn } from "#domain/quantities/format-quantity";
import { topdressingDepth, topdressingVolume } from "#domain/turf/topdressing";
import { acreLines, amountWords, areaInput, withTyped } from "#domain/worksheets/figure-words";
import { ifTyped, readAmountField, readDensityField, readTogether } from "#domain/worksheets/read-fields";
import { type Typed, type WorksheetAnswer, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";

/** The fields of material for a depth. */
export type TopdressingForDepthField = "area" | "depth" | "density";
/** The fields of the depth of a load. */
export type TopdressingDepthField = "volume" | "area";

const DESCHUTES = "Deschutes Recycling, https://deschutesrecycling.com/composting/";
const SAND = "https://www.waupacasand.com/2011/09/01/sand-math-how-much-sand-do-i-need-for-my-project/";

export const TOPDRESSING_FOR_DEPTH_EXAMPLE: WorksheetExample<TopdressingForDepthField> = {
  typed: { area: "2,000 sq ft", depth: "1/4 in", density: "" },
  from: `${DESCHUTES}, which multiplies by 0.0031 and prints 1.6 cu yd`,
};
export const TOPDRESSING_DEPTH_EXAMPLE: WorksheetExample<TopdressingDepthField> = {
  typed: { volume: "20.3 cu ft", area: "1,000 sq ft" },
  from: "Woods, 3 Aug 2020, updated sand topdressing by growth potential (Schmid et al.), 6 mm",
};

function readArea(text: string) {
  return readAmountField({ field: "area", what: "the area", such: "6,000 sq ft" }, text, { dimension: "area", unitWhenNone: "sq ft" });
}

function cubicYards(volume: ExactQuantity<"volume">): readonly string[] {
  return [`In cubic yards: ${conversionLine(volume, "cu ft", "cu yd")}.`];
}

function weighed(volume: ExactQuantity<"volume">, density: Density | undefined) {
  if (density === undefined) return undefined;
  const mass = massOf(volume, density);
  const perYard = figure(densityIn(density, "lb per cu yd"));
  return { mass, perYard, line: `Weight: ${inUnit(volume, "cu yd")} × ${perYard} lb = ${inUnit(mass, "lb")}.` };
}

/**
 * The loose material that covers an area to a depth, in cubic yards and by weight where its density is given. Refused by
 * field: what is missing or can't be read.
 */
export function topdressingForDepthWorksheet(typed: Typed<TopdressingForDepthField>): WorksheetOutcome {
  const read = readTogether({
    area: readArea(typed.area),
    depth: readAmountField({ field: "depth", what: "the depth", such: "1/4 in" }, typed.depth, { dimension: "length", unitWhenNone: "in" }),
    density: ifTyped(typed.density, (text) => readDensityField("density", text, "loose-material")),
  });
  if (!read.ok) return read;
  const { area, depth, density } = read.value;
  const volume = topdressingVolume(area, depth);
  const weight = weighed(volume, density);
  const answers: WorksheetAnswer[] = [{ ...writeQuantityIn(volume, "cu yd"), of: `material on ${amountWords(area)}` }];
  if (weight !== undefined) answers.push({ ...writeQuantity(weight.mass, "us"), of: "weight of the material" });
  return accept({
    answers,
    working: {
      title: "Topdressing to a depth",
      formula: "Volume = area × depth. 27 cu ft are a cubic yard.",
      inputs: [
        { name: "Area", figure: areaInput(area, typed.area) },
        { name: "Depth, loose as it is spread", figure: withTyped(inUnit(depth, "in"), typed.depth) },
        ...(weight === undefined ? [] : [{ name: "Weight of a cubic yard", figure: `${weight.perYard} lb` }]),
      ],
      steps: [
        ...acreLines(area, typed.area),
        `Volume: ${inUnit(area, "sq ft")} × ${inUnit(depth, "in")} ÷ 12 in = ${inUnit(volume, "cu ft")}.`,
        ...cubicYards(volume),
        ...(weight === undefined ? [] : [weight.line]),
      ],
      result: `${formatQuantityIn(volume, "cu yd")} (${formatQuantity(volume, "metric")}) of material${weight === undefined ? "" : `, ${amountWords(weight.mass)}`}.`,
      source: `area times depth; ${DESCHUTES}${weight === undefined ? "" : `; sand weighs about 2,700 lb to the cubic yard: ${SAND}`}`,
    },
    findings: [],
    tables: [],
  });
}

/** How deep a load lies on an area. Refused by field: what is missing or can't be read. */
export function topdressingDepthWorksheet(typed: Typed<TopdressingDepthField>): WorksheetOutcome {
  const read = readTogether({
    volume: readAmountField({ field: "volume", what: "the volume of the material", such: "2 cu yd" }, typed.volume, { dimension: "volume", unitWhenNone: "cu yd" }),
    area: readArea(typed.area),
  });
  if (!read.ok) return read;
  const { volume, area } = read.value;
  const depth = topdressingDepth(volume, area);
  return accept({
    answers: [{ ...writeQuantityIn(depth, "in"), of: `deep on ${amountWords(area)}` }],
    working: {
      title: "Depth of a load of topdressing",
      formula: "Depth = volume ÷ area.",
      inputs: [
        { name: "Volume, loose as it is spread", figure: withTyped(inUnit(volume, "cu ft"), typed.volume) },
        { name: "Area", figure: areaInput(area, typed.area) },
      ],
      steps: [...acreLines(area, typed.area), `Depth: ${inUnit(volume, "cu ft")} ÷ ${inUnit(area, "sq ft")} × 12 in = ${inUnit(depth, "in")}.`],
      result: `${formatQuantityIn(depth, "in")} (${formatQuantityIn(depth, "mm")}) deep.`,
      source: "volume over area; Woods 2020 prints 20.3 cu ft on 1,000 sq ft as 6 mm",
    },
    findings: [],
    tables: [],
  });
}
