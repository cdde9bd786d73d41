import { US_STATE_CODES, US_STATES, type UsState } from "#domain/company/us-state";
import { accept, type InputRefusal, type Outcome, refuse } from "#domain/foundation/outcome";
import { type Quantity } from "#domain/quantities/quantity";
import { type CustomerCells, type CustomerColumn } from "#domain/properties/customer-columns";
import { type ListedGate, readGate } from "#domain/properties/gate-words";
import { type ListedGrasses, readGrasses } from "#domain/properties/grass-words";
import { type ListedSize, readLawnSize, type SizeMeaning } from "#domain/properties/lawn-size";
import { type MowingDay, readMowingDay } from "#domain/properties/mowing-day";

/** A customer with one property, as a line of a list says it. */
export interface CustomerRow {
  readonly name: string;
  readonly phone: string | null;
  readonly email: string | null;
  readonly street: string;
  readonly city: string;
  readonly state: UsState;
  readonly zip: string;
  /** The turf, where the list gave it as such. A lawn has an area and its grasses, or is not measured. */
  readonly lawn: { readonly area: Quantity<"area">; readonly grasses: ListedGrasses } | null;
  readonly lotArea: Quantity<"area"> | null;
  readonly mowingDay: MowingDay | null;
  readonly gate: ListedGate;
  readonly dogNote: string | null;
  readonly note: string | null;
}

/** What is wrong with one cell: what stands there, what would be accepted, and the same as a sentence. */
export interface CellComplaint {
  readonly column: CustomerColumn;
  readonly found: string;
  readonly allowed: string;
  readonly sentence: string;
  /** True where only the answer is missing whether a size is the lot's or the turf's. */
  readonly asksLotOrTurf: boolean;
}

const LONGEST_CELL = 200;
const LONGEST_NOTES = 2000;
const PHONE_DIGITS = 10;
const STATE_BY_NAME = new Map(US_STATE_CODES.flatMap((code) => [[code.toLowerCase(), code], [US_STATES[code].name.toLowerCase(), code]] as const));

function complaint(column: CustomerColumn, found: string, allowed: string, sentence: string): CellComplaint {
  return { column, found: found === "" ? "nothing" : found, allowed, sentence, asksLotOrTurf: false };
}

/** Reads one line's cells and gathers every complaint, so that a person sees all of them at once. */
class RowReader {
  readonly complaints: CellComplaint[] = [];
  constructor(readonly cells: CustomerCells) {}

  complain(column: CustomerColumn, allowed: string, sentence: string): void {
    this.complaints.push(complaint(column, this.cells[column], allowed, sentence));
  }

  take<Value>(column: CustomerColumn, answer: Outcome<Value, InputRefusal & { readonly asksLotOrTurf?: boolean }>): Value | null {
    if (answer.ok) return answer.value;
    const { found, allowed, sentence, asksLotOrTurf = false } = answer.refusal;
    this.complaints.push({ column, found, allowed, sentence, asksLotOrTurf });
    return null;
  }

  needed(column: CustomerColumn, allowed: string, sentence: string): string {
    if (this.cells[column] === "") this.complain(column, allowed, sentence);
    return this.cells[column];
  }

  orNone(column: CustomerColumn): string | null {
    return this.cells[column] === "" ? null : this.cells[column];
  }
}

/** The ten digits of a phone number of this country, or undefined. */
function phoneDigits(text: string): string | undefined {
  if (/[^\d\s().+/-]/u.test(text)) return undefined;
  const digits = text.replace(/\D/gu, "").replace(/^1(?=\d{10}$)/u, "");
  return digits.length === PHONE_DIGITS ? digits : undefined;
}

function readPhone(reader: RowReader): string | null {
  const typed = reader.cells.phone;
  if (typed === "") return null;
  const digits = phoneDigits(typed);
  if (digits === undefined) {
    reader.complain("phone", "ten digits, such as 219-555-0112", `"${typed}" is no phone number of ten digits. An extension goes into the notes.`);
    return null;
  }
  return `${digits.slice(0, 3)}-${digits.slice(3, 6)}-${digits.slice(6)}`;
}

function readEmail(reader: RowReader): string | null {
  const typed = reader.cells.email.toLowerCase();
  if (typed === "") return null;
  if (!/^[^\s@,;]+@[^\s@,;]+\.[^\s@,;.]+$/u.test(typed)) {
    reader.complain("email", "one address, such as name@somewhere.example", `"${reader.cells.email}" does not look like one email address.`);
  }
  return typed;
}

function readState(reader: RowReader): UsState | undefined {
  const typed = reader.cells.state;
  const state = STATE_BY_NAME.get(typed.toLowerCase().replace(/\.$/u, ""));
  if (state === undefined) {
    reader.complain("state", "IN, IL or another state", typed === "" ? "Give the state: its law holds there." : `"${typed}" is no state that is known here.`);
  }
  return state;
}

function readZip(reader: RowReader): string {
  const typed = reader.cells.zip;
  if (!/^\d{5}(-\d{4})?$/u.test(typed)) {
    const lost = /^\d{4}$/u.test(typed) ? ` A spreadsheet drops a leading zero: write 0${typed} if that is meant.` : "";
    reader.complain("zip", "five digits, such as 46304", typed === "" ? "Give the ZIP code." : `"${typed}" is no ZIP code.${lost}`);
  }
  return typed;
}

function readDog(text: string): string | null {
  if (/^(|n|no|none|no dogs?|-|0|false)$/iu.test(text)) return null;
  return /^(y|yes|x|1|true|dog)$/iu.test(text) ? "Dog on the property" : text;
}

function readLawn(reader: RowReader, size: ListedSize | null): CustomerRow["lawn"] {
  // A size that can't be read is no reason to keep quiet about the grass beside it; one that is only asked about is.
  const isUnreadable = size === null && reader.complaints.some(({ column, asksLotOrTurf }) => column === "lawnSize" && !asksLotOrTurf);
  if (isUnreadable && reader.cells.grass !== "") reader.take("grass", readGrasses("grass", reader.cells.grass));
  if (size?.kind !== "turf") return null;
  const grasses = reader.take("grass", readGrasses("grass", reader.cells.grass));
  return grasses === null ? null : { area: size.area, grasses };
}

/** What the list says of the grass where there is no measured lawn to write it at: it goes into the notes. */
function noteOf(cells: CustomerCells, size: ListedSize | null): string | null {
  const grass = size?.kind !== "turf" && cells.grass !== "" ? `Grass, as listed: ${cells.grass}.` : "";
  const note = [cells.notes, grass].filter((part) => part !== "").join(" ");
  return note === "" ? null : note;
}

/**
 * Reads one line of a customer list. Refused with every complaint about its cells in the order of the columns: what is
 * missing, what can't be read, a size in acres of which nobody said whether it is the lot or the turf (`sizeMeaning`
 * answers that). Nothing is filled in: a lawn without a size stays unmeasured, a size without a grass is asked for.
 */
export function readCustomerRow(cells: CustomerCells, sizeMeaning?: SizeMeaning): Outcome<CustomerRow, readonly CellComplaint[]> {
  const reader = new RowReader(cells);
  for (const [column, text] of Object.entries(cells) as [CustomerColumn, string][]) {
    const longest = column === "notes" ? LONGEST_NOTES : LONGEST_CELL;
    if (text.length > longest) reader.complain(column, `at most ${String(longest)} characters`, "This is too long for its cell.");
  }
  const name = reader.needed("customer", "a name", "Give the customer's name.");
  const phone = readPhone(reader);
  const email = readEmail(reader);
  const street = reader.needed("street", "a house number and street", "Give the street with its house number.");
  const city = reader.needed("city", "a town", "Give the town.");
  const state = readState(reader);
  const zip = readZip(reader);
  const size = reader.take("lawnSize", readLawnSize(cells.lawnSize, sizeMeaning));
  const lawn = readLawn(reader, size);
  const mowingDay = reader.take("mowingDay", readMowingDay("mowingDay", cells.mowingDay));
  const gate = reader.take("gate", readGate(cells.gate)) ?? { code: null, width: null, words: null };
  if (reader.complaints.length > 0 || state === undefined) return refuse(reader.complaints);
  return accept({
    name, phone, email, street, city, state, zip, lawn, mowingDay, gate,
    lotArea: size?.kind === "lot" ? size.area : null,
    dogNote: readDog(cells.dog),
    note: noteOf(cells, size),
  });
}

/** What two properties have in common that are one: street and ZIP, whatever their case, spaces and points. */
export function addressKey(street: string, zip: string): string {
  return `${street.toLowerCase().replace(/[.,#]/gu, " ").replace(/\s+/gu, " ").trim()} ${zip.slice(0, 5)}`;
}

/** What two lines have in common that are one customer: the name and the phone. Without a phone nobody can tell. */
export function customerKey(name: string, phone: string | null): string | undefined {
  const digits = phone === null ? "" : phone.replace(/\D/gu, "").replace(/^1(?=\d{10}$)/u, "");
  return digits === "" ? undefined : `${name.toLowerCase().replace(/\s+/gu, " ").trim()} ${digits}`;
}
