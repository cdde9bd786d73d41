/** The columns of a customer list, in the order in which a person would read them out. */
export const CUSTOMER_COLUMNS = {
  customer: "Customer",
  phone: "Phone",
  email: "Email",
  street: "Street",
  city: "City",
  state: "State",
  zip: "ZIP",
  lawnSize: "Lawn size",
  grass: "Grass",
  mowingDay: "Mowing day",
  gate: "Gate",
  dog: "Dog",
  notes: "Notes",
} as const;

/** A column of a customer list. */
export type CustomerColumn = keyof typeof CUSTOMER_COLUMNS;
/** The columns in the order in which they are offered. */
export const CUSTOMER_COLUMN_IDS = Object.keys(CUSTOMER_COLUMNS) as readonly CustomerColumn[] as readonly [CustomerColumn, ...CustomerColumn[]];

/** Columns without which no row can be read. */
export const NEEDED_COLUMNS: readonly CustomerColumn[] = ["customer", "street", "city", "state", "zip"];

/** Words in a head, reduced to letters and digits, that stand for a column; the first column that has the word takes it. */
const HEAD_WORDS: Readonly<Record<CustomerColumn, readonly string[]>> = {
  customer: ["customer", "customername", "client", "clientname", "name", "fullname", "account", "owner", "homeowner"],
  phone: ["phone", "phonenumber", "telephone", "tel", "cell", "cellphone", "mobile", "phone1", "homephone"],
  email: ["email", "emailaddress", "mail"],
  street: ["street", "address", "streetaddress", "address1", "serviceaddress", "propertyaddress", "addressline1", "addr"],
  city: ["city", "town", "place"],
  state: ["state", "st"],
  zip: ["zip", "zipcode", "postalcode", "postcode", "zip5"],
  lawnSize: ["lawnsize", "size", "lawn", "area", "sqft", "squarefeet", "turf", "turfsize", "lawnarea", "lawnsqft", "turfsqft"],
  grass: ["grass", "grasstype", "turftype", "species", "turfgrass", "typeofgrass"],
  mowingDay: ["mowingday", "mowday", "mowing", "mows", "mowed", "mowson", "dayofmowing"],
  gate: ["gate", "gatecode", "gateinfo", "access", "gatewidth", "code"],
  dog: ["dog", "dogs", "pet", "pets"],
  notes: ["notes", "note", "comment", "comments", "remarks", "remark", "instructions"],
};

function lettersOf(head: string): string {
  return head.toLowerCase().replace(/[^a-z0-9]/gu, "");
}

/** For each column the place of its head in the list's first line, or nothing. */
export type ColumnPlaces = Readonly<Partial<Record<CustomerColumn, number>>>;

/**
 * Offers which head of a list stands for which column: by the head's letters, whatever its case, spaces and signs.
 * What is offered is shown and can be changed before anything is read. No head is offered twice.
 */
export function offerColumns(heads: readonly string[]): ColumnPlaces {
  const letters = heads.map(lettersOf);
  const places: Partial<Record<CustomerColumn, number>> = {};
  const taken = new Set<number>();
  for (const column of CUSTOMER_COLUMN_IDS) {
    const word = HEAD_WORDS[column].find((wanted) => letters.some((head, place) => head === wanted && !taken.has(place)));
    const place = letters.findIndex((head, at) => head === word && !taken.has(at));
    if (place === -1) continue;
    places[column] = place;
    taken.add(place);
  }
  return places;
}

/** One line of the list, by column, as it was typed. */
export type CustomerCells = Readonly<Record<CustomerColumn, string>>;

/** Puts one line's cells under the columns; a column without a place, or past the line's end, is empty. */
export function cellsOf(line: readonly string[], places: ColumnPlaces): CustomerCells {
  const cell = (column: CustomerColumn) => {
    const place = places[column];
    return place === undefined ? "" : (line[place] ?? "").replace(/[\p{Cc}\p{Cs}\s]+/gu, " ").trim();
  };
  return Object.fromEntries(CUSTOMER_COLUMN_IDS.map((column) => [column, cell(column)])) as CustomerCells;
}
