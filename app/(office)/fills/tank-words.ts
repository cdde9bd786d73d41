import { type ProductInFill } from "#application/fills/fills-in-books";
import { type MovedFromTank } from "#application/fills/moved-from-tank";
import { type MissingFromTankWent } from "#application/fills/record-tank-reading.schema";
import { listWords } from "#domain/foundation/list-words";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { stockInWords } from "#domain/stock/container-words";
import { type ReadBackWords } from "../../form-state";

/** Where what was missing went, as the end of a sentence. */
export const WENT_TO: Readonly<Record<MissingFromTankWent, string>> = {
  loss: "to loss, as spilled or dumped",
  rinsate: "to rinsate, as kept in the rinsate tank",
  "count-difference": "to count difference, because nobody knows",
};

function lotWords({ productName, lotNumber, dimension, leaves }: MovedFromTank): string {
  return `${formatQuantity({ dimension, amount: leaves < 0n ? -leaves : leaves }, "us")} of ${productName}, lot ${lotNumber}`;
}

/** "10.7 fl oz of Ironside and 3 fl oz of Kelp": what a fill, or the rest of one, holds of products. */
export function productsWords(products: readonly ProductInFill[]): string {
  return listWords(products.map(({ name, amount }) => `${formatQuantity(amount, "us")} of ${name}`));
}

/** What leaves the tank and what comes into it, as lists of words; empty where nothing does. */
export function movedWords(lots: readonly MovedFromTank[]): { readonly out: string; readonly in: string } {
  return {
    out: listWords(lots.filter(({ leaves }) => leaves > 0n).map(lotWords)),
    in: listWords(lots.filter(({ leaves }) => leaves < 0n).map(lotWords)),
  };
}

/** What the ledger moves with a reading or a clean-out, to be read back: from the tank to somewhere, or from count difference into it. */
export function postedSentence(lots: readonly MovedFromTank[], wentTo: string): readonly ReadBackWords[] {
  const moved = movedWords(lots);
  if (moved.out === "" && moved.in === "") return [" No stock is posted."];
  return [
    ...(moved.out === "" ? [] : [" Posted out of the tank ", { fact: wentTo }, ": ", { fact: moved.out }, "."]),
    ...(moved.in === "" ? [] : [" Posted into the tank from ", { fact: "count difference" }, ": ", { fact: moved.in }, "."]),
  ];
}

/** "Ironside, lot IR-1: 33 fl oz, 38 fl oz in the books" for each lot: what was found beside the books. */
export function lotsBesideBooks(lots: readonly (MovedFromTank & { readonly inTheBooks: bigint; readonly found: bigint })[]): string {
  return lots
    .map(({ productName, lotNumber, dimension, inTheBooks, found }) => `${productName}, lot ${lotNumber}: ${stockInWords(found, dimension)}, ${stockInWords(inTheBooks, dimension)} in the books`)
    .join("; ");
}
