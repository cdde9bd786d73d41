import { type Finding, hold } from "#domain/foundation/finding";
import { aftercareFactNames, type AftercareKind, unreadFacts } from "#domain/label/aftercare-constraint";
import { READ_THE_LABEL } from "#domain/label/not-read";
import { type AppliedProduct, appliedName } from "#domain/mixing/applied-product";
import { ONLY_AT_APPLICATION } from "#domain/mixing/earlier-products";

/** The unread facts of a product that still matter. */
function missingFacts({ label, appliedIn, wateredInAtEpochMilliseconds: at }: AppliedProduct): readonly AftercareKind[] {
  const isPast = (kind: AftercareKind) =>
    appliedIn === "earlier-visit" && (ONLY_AT_APPLICATION.includes(kind) || (kind === "watering-in" && typeof at === "number"));
  return unreadFacts(label).filter((kind) => !isPast(kind));
}

/** A hold for each product of which nobody has read a fact that still matters, in the order of their names. */
export function unreadFindings(products: readonly AppliedProduct[], timeZone: string): readonly Finding[] {
  const unread = products.map((applied) => ({
    name: appliedName(applied, timeZone),
    productName: applied.label.productName,
    facts: missingFacts(applied).map((kind) => aftercareFactNames[kind]),
  }));
  return unread
    .filter(({ facts }) => facts.length > 0)
    .toSorted((one, other) => (one.name < other.name ? -1 : 1))
    .map(({ name, productName, facts }) =>
      hold("nobody", {
        rule: "aftercare-fact-missing",
        source: "label",
        what: `For ${name} it has not been entered from its label ${facts.join("; ")}.`,
        toDo: READ_THE_LABEL,
        about: [productName],
      }),
    );
}
