import { typedLines } from "#domain/equipment/typed-test";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { parseRate } from "#domain/quantities/parse-rate";
import { type Rate } from "#domain/quantities/rate";

/** What a bag's own table says of a spreader: with this product, at this setting, this rate. */
export interface BagSetting {
  readonly product: string;
  readonly setting: string;
  readonly rate: Rate<"product-mass-per-area">;
}

/** More lines than this are a paste of something else. */
const MOST_LINES = 100;
const LONGEST_SETTING = 20;

/**
 * Reads the settings that bags state for a spreader, one to a line: product; setting; rate. Refused: a line without its
 * three parts, a rate that can't be read or is nothing, one product twice, more than 100 lines.
 */
export function readBagSettings(field: string, text: string): Outcome<readonly BagSetting[]> {
  const lines = typedLines(text);
  if (lines.length > MOST_LINES) return badInput(field, String(lines.length), `up to ${String(MOST_LINES)} lines`, `These are ${String(lines.length)} lines; at most ${String(MOST_LINES)} are read.`);
  const settings: BagSetting[] = [];
  for (const line of lines) {
    const [product = "", setting = "", rate = "", ...more] = line.split(";").map((part) => part.trim());
    if (product === "" || setting === "" || rate === "" || more.length > 0 || setting.length > LONGEST_SETTING) {
      return badInput(field, line, "product; setting; rate", `"${line}" needs the product, the setting and the rate: Meadow 24-0-6; M; 3 lb per 1,000 sq ft.`);
    }
    const read = parseRate(rate, { field, bases: ["product-mass-per-area"] });
    if (!read.ok) return read;
    if (read.value.rate.amount === 0n) return badInput(field, line, "a rate above nothing", `"${line}" has a rate of nothing.`);
    if (settings.some((other) => isSameName(other.product, product))) return badInput(field, line, "each product once", `${product} is there twice. Keep the line that holds.`);
    settings.push({ product, setting, rate: read.value.rate });
  }
  return accept(settings);
}

/** The setting that a bag states for a product, by its name; undefined where none does. */
export function bagSettingFor(settings: readonly BagSetting[], product: string): BagSetting | undefined {
  return settings.find((one) => isSameName(one.product, product));
}

function isSameName(left: string, right: string): boolean {
  return left.trim().toLowerCase() === right.trim().toLowerCase();
}
