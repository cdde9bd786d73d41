import { type Measure, measureInUnit } from "#domain/quantities/exact-quantity";
import { formatFigure } from "#domain/quantities/format-number";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { roundToWhole } from "#domain/quantities/rational";
import { type Dimension, type Unit, units } from "#domain/quantities/units";

/** A large unit and the small one of which it is a whole number. An area is never said in two units. */
const PAIRS: Readonly<Record<Exclude<Dimension, "area">, { readonly large: Unit; readonly small: Unit }>> = {
  mass: { large: "lb", small: "oz wt" },
  volume: { large: "gal", small: "fl oz" },
  length: { large: "ft", small: "in" },
};

/**
 * "1 gal 24 fl oz", "2 lb 4½ oz wt", "12 ft 6 in": how a large amount is measured out with a small tool. The small
 * unit is rounded to the nearest at so many digits after the point (0 to 3); quarters are written as characters.
 */
export function formatCompound(measure: Measure<Exclude<Dimension, "area">>, decimals: 0 | 1 | 2 | 3): string {
  const { large, small } = PAIRS[measure.dimension];
  const scale = 10n ** BigInt(decimals);
  const inSmall = measureInUnit<Dimension>(measure, small);
  const rounded = roundToWhole({ numerator: inSmall.numerator * scale, denominator: inSmall.denominator }, "nearest");
  if (rounded === 0n) return formatQuantity(measure, "us");
  const smallPerLarge = (units[large].canonicalAmount / units[small].canonicalAmount) * scale;
  const whole = formatFigure({ numerator: rounded / smallPerLarge, denominator: 1n }, { decimals: 0, quarters: false });
  const rest = { numerator: rounded % smallPerLarge, denominator: scale };
  if (rest.numerator === 0n) return `${whole} ${large}`;
  const restFigure = `${formatFigure(rest, { decimals, quarters: true })} ${small}`;
  return rounded < smallPerLarge ? restFigure : `${whole} ${large} ${restFigure}`;
}
