import { type UseCaseRefusal } from "#application/refusal";

/** What an action answers to its form: strings only, because a form without scripts carries it in the page. */
export interface FormState {
  /** Counts up with each answer, so that the form notices two equal answers. */
  readonly answer: string;
  readonly sentence?: string;
  readonly fields?: Readonly<Record<string, string>>;
  /** What was typed, given back so that nothing is lost; never a password. */
  readonly values?: Readonly<Record<string, string>>;
}

export const UNSENT: FormState = { answer: "0" };

/** A form's fields as the schema wants them: dotted names become objects. Files are not taken here. */
export function readForm(form: FormData): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  for (const [name, value] of form.entries()) {
    if (typeof value !== "string" || name.startsWith("$ACTION")) continue;
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

/** The answer to a form whose use case refused. */
export function refusedForm(previous: FormState, form: FormData, refusal: UseCaseRefusal, secrets: readonly string[] = []): FormState {
  const values: Record<string, string> = {};
  for (const [name, value] of form.entries()) {
    if (typeof value === "string" && !name.startsWith("$ACTION") && !secrets.includes(name)) values[name] = value;
  }
  return {
    answer: String(Number(previous.answer) + 1),
    sentence: refusal.sentence,
    fields: refusal.kind === "bad-input" ? refusal.fields : {},
    values,
  };
}
