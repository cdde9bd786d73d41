import { type Finding, hold, takeCare } from "#domain/foundation/finding";
import { WHY_UNWANTED, whyUnwanted } from "#domain/mixing/mix-change";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { formatQuantity } from "#domain/quantities/format-quantity";
import { type LabelPutDown } from "#domain/register/put-down";
import { type Grass } from "#domain/turf/grass";

/** A product that came out of a fill onto lawns for which nobody had planned it. */
export interface NotPlanned {
  readonly productName: string;
  readonly label: LabelPutDown;
  readonly amount: ProductAmount;
  readonly fillNumber: number;
  /** Of all the lawns that it went on. */
  readonly grasses: readonly Grass[];
}

/**
 * Says that a product went down which nobody planned: a hold where it is a pesticide, or where its label does not name the
 * grass or is not on file; else with care. Neither keeps the record from being written.
 */
export function productNotPlanned({ productName, label, amount, fillNumber, grasses }: NotPlanned): Finding {
  const why = whyUnwanted(label === "not-on-file" ? "unknown" : label.label, grasses);
  const words = {
    rule: "product-not-planned",
    source: "house",
    what: `${productName} was in fill ${String(fillNumber)} and was not planned here.`,
    figure: `${formatQuantity(amount, "us")} of it came out with what was sprayed.${why === undefined ? "" : ` It ${WHY_UNWANTED[why]}.`}`,
    toDo: "Tell the license holder today, and hold its label against these lawns.",
    about: [productName],
  } as const;
  return why === undefined ? takeCare(words) : hold("nobody", words);
}

/** The same of a product that was planned on these lawns and has a line of its own: both amounts count. */
export function besideItsLine({ productName, amount, fillNumber }: NotPlanned): Finding {
  return takeCare({
    rule: "product-beside-its-line",
    source: "house",
    what: `${productName} was in fill ${String(fillNumber)} and has a line of its own here.`,
    figure: `${formatQuantity(amount, "us")} of it came out with what was sprayed, and counts beside what its line says.`,
    toDo: "Look whether it really went down twice, and amend the record where it did not.",
    about: [productName],
  });
}
