import { type Finding, type FindingWords, hold } from "#domain/foundation/finding";

/** What to do about any fact of a label that nobody has read. */
export const READ_THE_LABEL = "Read the label and enter what it states, or that it states nothing.";

/**
 * The hold for a fact that nobody has read from a product's label. The office answers it by reading the label.
 * @param what the fact, as the end of a sentence: "how far from water it stays"
 */
export function notReadOnLabel(rule: string, productName: string, what: string, more: Pick<FindingWords, "figure" | "citation"> = {}): Finding {
  return hold("office", {
    rule,
    source: "label",
    what: `It has not been entered from the label of ${productName} ${what}.`,
    ...more,
    toDo: READ_THE_LABEL,
    about: [productName],
  });
}
