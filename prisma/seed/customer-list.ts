// The customers that the demonstration begins with, as the CSV file that a crew would bring: invented people, streets
// and towns. The ZIP codes are real ones on both sides of the state line, so that distances are believable.

interface Town {
  readonly name: string;
  readonly state: "IN" | "IL";
  readonly zip: string;
}

const TOWNS: readonly Town[] = [
  { name: "Tansy Hollow", state: "IN", zip: "46307" },
  { name: "Bluestem", state: "IN", zip: "46303" },
  { name: "Marl Creek", state: "IN", zip: "46356" },
  { name: "Dunmere", state: "IN", zip: "46383" },
  { name: "Plover Ridge", state: "IN", zip: "46341" },
  { name: "Sedge Prairie", state: "IN", zip: "46349" },
  { name: "Larkspur Junction", state: "IL", zip: "60401" },
  { name: "Crane Grove", state: "IL", zip: "60417" },
  { name: "Wren Station", state: "IL", zip: "60940" },
  { name: "Ironfork", state: "IL", zip: "60964" },
  { name: "Quill Prairie", state: "IL", zip: "60955" },
];

const FIRST_NAMES = ["Avery", "Noor", "Tomas", "Ingrid", "Hollis", "Mei", "Desmond", "Paula", "Ansel", "Ruth", "Kofi", "Lena", "Milo", "Greta", "Osman"] as const;
const LAST_NAMES = ["Thorn", "Castellan", "Brigham", "Vesely", "Okoro", "Lindholm", "Maddox", "Sorensen", "Pruitt", "Halloran", "Iwata", "Drummond", "Fenwick"] as const;
const STREETS = ["Sorrel Lane", "Quarry Road", "Millrace Court", "Foxtail Drive", "Old Depot Street", "Heron Court", "Linden Row", "Gristmill Way", "Bobolink Trail"] as const;
const GRASSES = ["Kentucky bluegrass", "KBG / perennial rye", "tall fescue", "tall fescue / KBG", "Kentucky bluegrass (assumed)"] as const;
const DAYS = ["Mon", "Tue", "Wed", "Thu", "Fri", ""] as const;
const GATES = ["36 in", "48 in; code 4471", "none", "", "42 in, side gate", "#2280"] as const;
const DOGS = ["no", "yes", "", "Biscuit, friendly", "no", "Juno: keep the gate shut"] as const;

export const ROWS_IN_LIST = 60;
/** The first rows have no size in the list: they are measured by hand afterward. */
export const MEASURED_ROWS = 20;
/** The row of the property at the pond, on the Illinois side. */
export const POND_ROW = 6;

function pick<Item>(items: readonly Item[], index: number): Item {
  const item = items[index % items.length];
  if (item === undefined) throw new Error("a list to pick from is empty");
  return item;
}

/** The size as such a list has it: nothing, square feet in two manners, or a lot in acres. */
function sizeOf(index: number): string {
  if (index < MEASURED_ROWS || index % 10 === 9) return "";
  if (index % 7 === 3) return "1/4 acre lot";
  const squareFeet = 4200 + ((index * 1370) % 9000);
  return index % 2 === 0 ? `${squareFeet.toLocaleString("en-US")} sq ft` : String(squareFeet);
}

/** Two customers have two properties each: the last two rows are those of the first ones again. */
function personOf(index: number): number {
  return index >= ROWS_IN_LIST - 2 ? index - (ROWS_IN_LIST - 2) : index;
}

function lineOf(index: number): string {
  const person = personOf(index);
  const town = index === POND_ROW ? pick(TOWNS, 6) : pick(TOWNS, index);
  const name = `${pick(FIRST_NAMES, person)} ${pick(LAST_NAMES, person)}`;
  const phone = `${pick(TOWNS, person).state === "IN" ? "219" : "815"}-555-01${String(20 + person)}`;
  const email = person % 3 === 0 ? `${name.toLowerCase().replace(" ", ".")}@mail.example` : "";
  const street = index === POND_ROW ? "7 Heron Court" : `${String(11 + index * 17)} ${pick(STREETS, index)}`;
  const size = sizeOf(index);
  const cells = [
    ...[name, phone, email, street, town.name, town.state, town.zip, size],
    ...[size.endsWith("lot") ? "" : pick(GRASSES, index), pick(DAYS, index), pick(GATES, index), pick(DOGS, index), ""],
  ];
  return cells.map((cell) => (cell.includes(",") ? `"${cell}"` : cell)).join(",");
}

/** The list with its line of names, as a spreadsheet saves it. */
export function customerListText(): string {
  const heads = "Customer,Phone,Email,Street,City,State,ZIP,Lawn size,Grass,Mowing day,Gate,Dog,Notes";
  return [heads, ...Array.from({ length: ROWS_IN_LIST }, (_, index) => lineOf(index))].join("\r\n");
}
