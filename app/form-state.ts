/** What an action answers to its form: strings only, because a form without scripts carries it in the page. */
export interface FormState {
  /** Counts up with each answer, so that the form notices two equal answers. */
  readonly answer: string;
  readonly kind: "unsent" | "done" | "refused" | "read-back";
  readonly sentence?: string;
  readonly fields?: Readonly<Record<string, string>>;
  /** What was typed, given back so that nothing is lost; never a password. */
  readonly values?: Readonly<Record<string, string>>;
  /** What will be written, as a sentence of words and facts, to be read before it is written. */
  readonly readBack?: readonly ReadBackWords[];
  /** What wants care in what will be written. */
  readonly cares?: readonly CareOfForm[];
  /** Something to show this once, such as a link that is stored nowhere. */
  readonly shownOnce?: string;
}

/** A piece of a sentence that is read back: words, or a fact; one that is missing says so. */
export type ReadBackWords = string | { readonly fact: string; readonly missing?: boolean };

/** A finding that does not keep a form from being sent. */
export interface CareOfForm {
  readonly level: "hold" | "take-care" | "note";
  readonly what: string;
  readonly figure?: string;
  readonly toDo?: string;
  readonly source: string;
}

export type FormAction = (previous: FormState, form: FormData) => Promise<FormState>;

export const UNSENT: FormState = { answer: "0", kind: "unsent" };

function nextAnswer(previous: FormState): string {
  return String(Number(previous.answer) + 1);
}

/** The dotted names of a flat record as nested objects, as the schemas have them. */
export function nested(flat: Readonly<Record<string, string>>): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const [name, value] of Object.entries(flat)) {
    const path = name.split(".");
    const last = path.pop();
    if (last === undefined || [...path, last].some((part) => part === "__proto__" || part === "constructor")) continue;
    let place = result;
    for (const part of path) {
      const inner = place[part];
      place = (typeof inner === "object" && inner !== null ? inner : (place[part] = {})) as Record<string, unknown>;
    }
    place[last] = value;
  }
  return result;
}

/** A form's text fields by name; files, and what the framework adds, are left out. */
export function textFields(form: FormData): Record<string, string> {
  const fields: Record<string, string> = {};
  for (const [name, value] of form.entries()) {
    if (typeof value === "string" && !name.startsWith("$ACTION")) fields[name] = value;
  }
  return fields;
}

/** A form's fields as its use case's schema takes them. What they are worth, the schema decides. */
export function readForm(form: FormData): Record<string, unknown> {
  return nested(textFields(form));
}

/** A use case's refusal, as far as a form shows it. */
export interface FormRefusal {
  readonly sentence: string;
  readonly fields?: Readonly<Record<string, string>>;
}

/** The answer to a form whose use case refused. */
export function refusedForm(previous: FormState, form: FormData, refusal: FormRefusal, secrets: readonly string[] = []): FormState {
  const values = Object.fromEntries(Object.entries(textFields(form)).filter(([name]) => !secrets.includes(name)));
  return {
    answer: nextAnswer(previous),
    kind: "refused",
    sentence: refusal.sentence,
    fields: refusal.fields ?? {},
    values,
  };
}

/** The answer to a form that is read back before it does what it is for. */
export function readBackForm(previous: FormState, form: FormData, readBack: readonly ReadBackWords[], cares: readonly CareOfForm[]): FormState {
  return { answer: nextAnswer(previous), kind: "read-back", readBack, cares, values: textFields(form) };
}

/** The answer to a form that was read back and is to be changed: everything typed is still there. */
export function changedForm(previous: FormState, form: FormData): FormState {
  return { answer: nextAnswer(previous), kind: "unsent", values: textFields(form) };
}

/** The answer to a form that did what it was for and stays on the screen. */
export function doneForm(previous: FormState, sentence: string, shownOnce?: string): FormState {
  return { answer: nextAnswer(previous), kind: "done", sentence, ...(shownOnce === undefined ? {} : { shownOnce }) };
}
