import { type ReactNode } from "react";
import { type InputRefusal } from "#domain/foundation/outcome";
import { type Typed, type WorkedWorksheet, type WorksheetExample, type WorksheetOutcome } from "#domain/worksheets/worksheet";
import { type Choice } from "#ui/select-field";

/** How one field of a worksheet looks. Fields of one group stand under one name. */
export type FieldLook = {
  readonly label: string;
  readonly hint?: string;
  readonly optional?: boolean;
  readonly group?: string;
} & (
  | { readonly look: "line"; readonly width?: "short" | "medium" | "full" }
  | { readonly look: "lines"; readonly rows: number }
  | { readonly look: "rows"; readonly choices: readonly [Choice, ...Choice[]] }
  | { readonly look: "list"; readonly choices: readonly Choice[]; readonly chooseWords: string }
);

/** The area that most worksheets ask for. */
export const AREA = { look: "line", label: "Area", hint: "6,000 sq ft, 1/4 acre" } as const;

/** A field with its name. */
export type SheetField = FieldLook & { readonly name: string };

/** What a worksheet came to: nothing was asked yet, it was refused by field, or it is worked out. */
export type SheetAnswer =
  | { readonly kind: "not-asked" }
  | { readonly kind: "refused"; readonly refusals: readonly InputRefusal[] }
  | { readonly kind: "worked"; readonly worked: WorkedWorksheet; readonly drawing: ReactNode };

/** One way to ask a worksheet, such as a boom or a hose and gun. */
export interface SheetKind {
  readonly key: string;
  readonly name: string;
  readonly fields: readonly SheetField[];
  readonly exampleQuery: string;
  readonly exampleFrom: string;
  readonly typedIn: (asked: Asked) => Readonly<Record<string, string>>;
  readonly answer: (asked: Asked) => SheetAnswer;
}

/** What stands in the address. */
export type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

export interface WorksheetPageProps {
  readonly searchParams: Promise<Asked>;
}

/** The first value of a name in the address. */
export function askedText(asked: Asked, name: string): string {
  const value = asked[name];
  return typeof value === "string" ? value : (value?.[0] ?? "");
}

interface KindWords<Name extends string, Worked extends WorkedWorksheet> {
  readonly key: string;
  readonly name: string;
  readonly fields: Readonly<Record<Name, FieldLook>>;
  readonly example: WorksheetExample<Name>;
  readonly work: (typed: Typed<Name>) => WorksheetOutcome<Worked>;
  readonly draw?: (worked: Worked) => ReactNode;
}

/** Makes a kind of worksheet of its fields, its example and the function that works it out. */
export function sheetKind<Name extends string, Worked extends WorkedWorksheet>({ key, name, fields, example, work, draw }: KindWords<Name, Worked>): SheetKind {
  const named = Object.entries<FieldLook>(fields).map(([field, look]): SheetField => ({ ...look, name: field }));
  // The fields are those of the names, each once.
  const typedIn = (asked: Asked) => Object.fromEntries(named.map((field) => [field.name, askedText(asked, field.name)])) as Typed<Name>;
  const query = new URLSearchParams([["kind", key], ...Object.entries<string>(example.typed)]);
  return {
    key,
    name,
    fields: named,
    exampleQuery: query.toString(),
    exampleFrom: example.from,
    typedIn,
    answer: (asked) => {
      if (!named.some((field) => asked[field.name] !== undefined)) return { kind: "not-asked" };
      const outcome = work(typedIn(asked));
      if (!outcome.ok) return { kind: "refused", refusals: outcome.refusal };
      return { kind: "worked", worked: outcome.value, drawing: draw?.(outcome.value) };
    },
  };
}
