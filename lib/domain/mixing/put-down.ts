import { formatQuantity } from "#domain/quantities/format-quantity";
import { fromAmount } from "#domain/quantities/quantity";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { sprayForGround, type SprayMix } from "#domain/mixing/spray-mix";
import { treatedWords } from "#domain/mixing/treated-area";

/** What one lawn gets, in words. */
export interface LawnPutDown {
  readonly lawn: string;
  readonly treatedArea: string;
  readonly amount: string;
}

/** What goes down from one mix, in the words of a list. */
export interface PutDown {
  /** "13½ lb Harrowgate 32", "12 gal with 18 fl oz Rustwater Iron". */
  readonly words: string;
  readonly gearName: string;
  /** "setting 14, two passes at half rate, crosswise" or "one load, 25.6 fl oz in all, of which 6.4 fl oz are left"; what the ticket says of it in full stands there. */
  readonly how: string;
  readonly lawns: readonly LawnPutDown[];
}

/** What a visit puts down in short words, mix by mix; lawns on which nothing goes down are left out. */
export function putDownOf(mixes: MixTicket["mixes"]): readonly PutDown[] {
  return mixes.map((mix) => {
    if (mix.kind === "spray") return sprayed(mix);
    const passes = mix.passes === "two-at-half-rate-crosswise" ? "two passes at half rate, crosswise" : "one pass with overlap";
    return {
      words: `${formatQuantity(mix.total, "us")} ${mix.productName}`,
      gearName: mix.gearName,
      how: mix.setting === "not-calibrated" ? passes : `setting ${mix.setting.setting}, ${passes}`,
      lawns: mix.lawns
        .filter(({ amount }) => amount.amount > 0n)
        .map(({ name, amount, ...lawn }) => ({ lawn: name, treatedArea: treatedWords(lawn), amount: formatQuantity(amount, "us") })),
    };
  });
}

function sprayed(mix: SprayMix) {
  const products = mix.products.map(({ line, productName, total }) => `${formatQuantity(fromAmount(total.dimension, putDownOn(mix, line)), "us")} ${productName}`);
  const loads = mix.loads.length === 1 ? "one load" : `${String(mix.loads.length)} loads`;
  const left = mix.rest === undefined || mix.rest.finished.amount === 0n ? "" : `, ${formatQuantity(mix.finished, "us")} in all, of which ${formatQuantity(mix.rest.finished, "us")} are left`;
  return {
    words: `${formatQuantity(sprayForGround(mix.carrier, mix.lawns), "us")} with ${products.join(" and ")}`,
    gearName: mix.gearName,
    how: `${loads}${left}`,
    lawns: mix.lawns
      .filter(({ finished }) => finished.amount > 0n)
      .map(({ name, finished, ...lawn }) => ({ lawn: name, treatedArea: treatedWords(lawn), amount: formatQuantity(finished, "us") })),
  };
}

/** What all the lawns get of a product; what is left in the tank goes on none. */
function putDownOn({ lawns }: SprayMix, line: number): bigint {
  return lawns.flatMap(({ products }) => products.filter((product) => product.line === line)).reduce((total, { amount }) => total + amount.amount, 0n);
}
