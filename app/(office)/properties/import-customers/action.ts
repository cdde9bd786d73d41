"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { checkCustomerList, type RowVerdict } from "#application/properties/check-customer-list";
import { type CustomerListRow } from "#application/properties/customer-list.schema";
import { importCustomers } from "#application/properties/import-customers";
import { readCustomerList } from "#application/properties/read-customer-list";
import { cellsOf, CUSTOMER_COLUMN_IDS, CUSTOMER_COLUMNS, type CustomerColumn, NEEDED_COLUMNS } from "#domain/properties/customer-columns";
import { asMember } from "../../../session";
import { accessWords, lawnWords } from "./understood-words";
import { cellField, type FaultyRow, type ImportState, meaningField, type UnderstoodRow } from "./import-state";

type RowsState = Extract<ImportState, { step: "rows" }>;
type ColumnsState = Extract<ImportState, { step: "columns" }>;

function textOf(form: FormData, name: string): string | undefined {
  const value = form.get(name);
  return typeof value === "string" ? value : undefined;
}

/** The text of a file as spreadsheets write it: UTF-8, or the older encoding of Windows where it is none. */
async function textOfFile(file: File): Promise<string> {
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

async function readText(answer: string, form: FormData): Promise<ImportState> {
  const file = form.get("file");
  const text = file instanceof File && file.size > 0 ? await textOfFile(file) : (textOf(form, "text") ?? "");
  const read = await asMember(readCustomerList, { text });
  if (!read.ok) {
    const sentence = read.refusal.kind === "bad-input" ? (read.refusal.fields["text"] ?? read.refusal.sentence) : read.refusal.sentence;
    return { answer, step: "text", text, sentence };
  }
  return { answer, step: "columns", ...read.value, missing: [] };
}

async function chooseColumns(answer: string, previous: ColumnsState, form: FormData): Promise<ImportState> {
  const places: Partial<Record<CustomerColumn, number>> = {};
  for (const column of CUSTOMER_COLUMN_IDS) {
    const chosen = textOf(form, `place.${column}`) ?? "";
    if (/^\d+$/.test(chosen)) places[column] = Number(chosen);
  }
  const missing = NEEDED_COLUMNS.filter((column) => places[column] === undefined);
  if (missing.length > 0) {
    const sentence = `Say which column holds: ${missing.map((column) => CUSTOMER_COLUMNS[column]).join(", ")}.`;
    return { ...previous, answer, places, missing, sentence };
  }
  const rows = previous.lines.map(({ number, cells }): CustomerListRow => ({ number, cells: cellsOf(cells, places), sizeMeaning: "" }));
  return judge({ answer, step: "rows", listId: previous.listId, rows, faulty: [], understood: [] });
}

/** The rows as they stand on the screen: each typed cell in its place. */
function edited(rows: readonly CustomerListRow[], form: FormData): readonly CustomerListRow[] {
  return rows.map((row) => {
    const typed = CUSTOMER_COLUMN_IDS.flatMap((column) => {
      const text = textOf(form, cellField(row.number, column));
      return text === undefined ? [] : [[column, text.trim()] as const];
    });
    const meaning = textOf(form, meaningField(row.number));
    return { ...row, cells: { ...row.cells, ...Object.fromEntries(typed) }, sizeMeaning: meaning === "lot" || meaning === "turf" ? meaning : row.sizeMeaning };
  });
}

function understood(verdict: Extract<RowVerdict, { kind: "good" }>): UnderstoodRow {
  const { name, street, city, state, zip } = verdict.row;
  return { number: verdict.number, customer: name, address: `${street}, ${city}, ${state} ${zip}`, lawn: lawnWords(verdict.row), access: accessWords(verdict.row) };
}

const byNumber = (one: { readonly number: number }, other: { readonly number: number }) => one.number - other.number;

/** Judges the rows, or some of them; what was found of the others stays. */
async function judge(state: RowsState, only?: readonly number[]): Promise<RowsState> {
  const answer = await asMember(checkCustomerList, { rows: [...state.rows], ...(only === undefined ? {} : { only: [...only] }) });
  if (!answer.ok) return { ...state, sentence: answer.refusal.sentence };
  const { verdicts } = answer.value;
  const judged = new Set(verdicts.map(({ number }) => number));
  const faulty = verdicts.flatMap((verdict): readonly FaultyRow[] => (verdict.kind === "complaints" ? [verdict] : []));
  const good = verdicts.flatMap((verdict) => (verdict.kind === "good" ? [understood(verdict)] : []));
  const keep = <Row extends { readonly number: number }>(rows: readonly Row[]) => rows.filter(({ number }) => !judged.has(number));
  return {
    ...state,
    faulty: [...keep(state.faulty), ...faulty].sort(byNumber),
    understood: [...keep(state.understood), ...good].sort(byNumber),
  };
}

async function importAll(state: RowsState): Promise<ImportState> {
  const answer = await asMember(importCustomers, { listId: state.listId, rows: [...state.rows] });
  if (!answer.ok) return { ...(await judge(state)), sentence: answer.refusal.sentence };
  revalidatePath("/properties", "layout");
  redirect("/properties");
}

async function workOnRows(answer: string, previous: RowsState, form: FormData): Promise<ImportState> {
  const rows = edited(previous.rows, form);
  const { sentence: _said, ...rest } = previous;
  const state: RowsState = { ...rest, answer, rows };
  const [intent = "", number = ""] = (textOf(form, "intent") ?? "").split(" ");
  const at = Number(number);
  switch (intent) {
    case "import":
      return importAll(state);
    case "check":
      return judge(state, [at]);
    case "leave-out": {
      const without = <Row extends { readonly number: number }>(list: readonly Row[]) => list.filter((row) => row.number !== at);
      const left = { ...state, rows: without(state.rows), faulty: without(state.faulty), understood: without(state.understood) };
      // A row that was the same property as the one left out may be good now.
      return left.rows.length === 0 ? { answer, step: "text", text: "" } : judge(left);
    }
    case "lot":
    case "turf": {
      const asked = new Set(state.faulty.filter(({ complaints }) => complaints.some(({ asksLotOrTurf }) => asksLotOrTurf)).map((row) => row.number));
      return judge({ ...state, rows: rows.map((row) => (asked.has(row.number) ? { ...row, sizeMeaning: intent } : row)) }, [...asked]);
    }
    default:
      return judge(state);
  }
}

/** One press on the import's form: the text is read, the columns are chosen, a row is checked again, all is imported. */
export async function importCustomersAction(previous: ImportState, form: FormData): Promise<ImportState> {
  const answer = String(Number(previous.answer) + 1);
  if (textOf(form, "intent") === "begin-anew") return { answer, step: "text", text: "" };
  switch (previous.step) {
    case "text":
      return readText(answer, form);
    case "columns":
      return chooseColumns(answer, previous, form);
    case "rows":
      return workOnRows(answer, previous, form);
  }
}
