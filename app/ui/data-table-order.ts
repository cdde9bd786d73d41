/** What a cell sorts by. Dates sort by their written form 2026-04-14. */
export type SortValue = string | number;

// One collator for all: making one costs more than a thousand comparisons.
const collator = new Intl.Collator("en-US", { numeric: true, sensitivity: "base" });

/** Orders numbers by size and words as a person would ("Elm St 9" before "Elm St 10"); numbers before words. */
export function compareSortValues(one: SortValue, other: SortValue): number {
  if (typeof one === "number" && typeof other === "number") return one - other;
  if (typeof one === "number") return -1;
  if (typeof other === "number") return 1;
  return collator.compare(one, other);
}

/** True if every word that is wanted is somewhere in the text, whatever its case and accents. */
export function matchesFilter(text: string, wanted: string): boolean {
  const plain = withoutAccents(text);
  return withoutAccents(wanted)
    .split(/\s+/)
    .every((word) => plain.includes(word));
}

function withoutAccents(text: string): string {
  return text.normalize("NFD").replace(/\p{Diacritic}/gu, "").toLowerCase().trim();
}
