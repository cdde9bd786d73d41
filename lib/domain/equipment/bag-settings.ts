import { readTypedTable } from "#domain/equipment/typed-test";
import { accept, badInput, type Outcome } from "#domain/foundation/outcome";
import { isSameName } from "#domain/foundation/same-name";
import { parseRate } from "#domain/quantities/parse-rate";
import { type Rate } from "#domain/quantities/rate";

/** What a bag's own table says of a spreader: with this product, at this setting, this rate. */
export interface BagSetting {
  readonly product: string;
  readonly setting: string;
  readonly rate: Rate<"product-mass-per-area">;
}

/** A setting is a number or a letter, with a part of a mark: anything longer is no setting. Common practice. */
const LONGEST_SETTING = 20;

/**
 * Reads the settings that bags state for a spreader, one to a line: product; setting; rate. Refused at `field`: a line
 * without its three parts, a setting of over 20 characters, a rate that can't be read or is nothing, one product twice,
 * more than 100 lines.
 */
export function readBagSettings(field: string, text: string): Outcome<readonly BagSetting[]> {
  return readTypedTable<BagSetting>(field, text, ({ line, parts, before }) => {
    if (parts === undefined || parts[1].length > LONGEST_SETTING) {
      return badInput(field, line, "product; setting; rate", `"${line}" needs the product, the setting and the rate: Meadow 24-0-6; M; 3 lb per 1,000 sq ft.`);
    }
    const [product, setting, rate] = parts;
    const read = parseRate(rate, { field, bases: ["product-mass-per-area"] });
    if (!read.ok) return read;
    if (read.value.rate.amount === 0n) return badInput(field, line, "a rate above nothing", `"${line}" has a rate of nothing.`);
    if (before.some((other) => isSameName(other.product, product))) return badInput(field, line, "each product once", `${product} is there twice. Keep the line that holds.`);
    return accept({ product, setting, rate: read.value.rate });
  });
}

/** The setting that a bag states for a product, by its name; undefined where none does. */
export function bagSettingFor(settings: readonly BagSetting[], product: string): BagSetting | undefined {
  return settings.find((one) => isSameName(one.product, product));
}
