import { type DataColumn, type DataRow } from "#ui/data-table.client";

/** The columns of the sample table: words, figures, and one that can't be sorted. */
export const propertyColumns = [
  { id: "address", head: "Address" },
  { id: "customer", head: "Customer" },
  { id: "lawns", head: "Lawns", align: "figure" },
  { id: "size", head: "Treated, sq ft", align: "figure" },
  { id: "next", head: "Next visit" },
  { id: "note", head: "Access", sortable: false },
] as const satisfies readonly [DataColumn, ...DataColumn[]];

const streets = ["Alder Ct", "Birch Ln", "Cooper St", "Dell Rd", "Elm Hollow", "Fern Way", "Grange Ave", "Hazel Ct"] as const;
const names = ["Marta Ellery", "Sol Brandt", "Ines Okafor", "Piet Vance", "Lena Ruiz", "Abel Thorne"] as const;
const access = ["gate left of the garage", "dog until 9 am", "call first", "park on the street", ""] as const;

/** As many invented properties as asked for; the same ones every time. */
export function propertyRows(count: number): readonly DataRow[] {
  return Array.from({ length: count }, (_, index) => {
    const squareFeet = 1800 + ((index * 7919) % 9200);
    const day = 1 + ((index * 11) % 28);
    const note = access[index % access.length];
    return {
      id: `p${index}`,
      href: `#p${index}`,
      cells: {
        address: `${((index * 37) % 980) + 4} ${streets[index % streets.length] ?? ""}`,
        customer: names[index % names.length] ?? "",
        lawns: { text: String(1 + (index % 4)), sortBy: 1 + (index % 4) },
        size: { text: squareFeet.toLocaleString("en-US"), sortBy: squareFeet },
        next: { text: `April ${day}`, sortBy: day },
        ...(note === undefined || note === "" ? {} : { note }),
      },
    };
  });
}

/** One row whose every cell is longer than its column. */
export const longRow: DataRow = {
  id: "long",
  href: "#long",
  cells: {
    address: "11804 Oberammergauerstraßenverlängerung, Building 14, rear entrance by the loading dock",
    customer: "Genossenschaftliche Wohnungsbaugesellschaft Rasenfreunde Nordwesthang",
    lawns: { text: "128", sortBy: 128 },
    size: { text: "1,204,800", sortBy: 1_204_800 },
    next: "not on a program for 2026",
    note: "Bewässerungssteuerungsschlüsselkasten behind the third door; call the caretaker an hour before",
  },
};
