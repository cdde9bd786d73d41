import { refuse } from "#domain/foundation/outcome";

/** Why a use case did nothing. Each is an expected answer; whatever is not is a defect and throws. */
export type UseCaseRefusal =
  | { readonly kind: "signed-out"; readonly sentence: string }
  | { readonly kind: "not-allowed"; readonly sentence: string }
  | { readonly kind: "not-found"; readonly sentence: string }
  | { readonly kind: "conflict"; readonly sentence: string }
  | { readonly kind: "bad-input"; readonly sentence: string; readonly fields: Readonly<Record<string, string>> };

/** The session ended: the password changed, the membership ended, or it never stood. */
export const SIGNED_OUT: UseCaseRefusal = {
  kind: "signed-out",
  sentence: "Your sign-in has ended. Sign in again; what you typed is still here.",
};

/** An id that the company does not have, whether another company has it or nobody. */
export function notFound(thing: string): { readonly ok: false; readonly refusal: UseCaseRefusal } {
  return refuse({ kind: "not-found", sentence: `There is no such ${thing} here. It may have been removed, or the address is wrong.` });
}

/** Something changed since the person last looked. */
export function conflict(sentence: string): { readonly ok: false; readonly refusal: UseCaseRefusal } {
  return refuse({ kind: "conflict", sentence });
}

/** One field that only the database could judge. */
export function badField(field: string, sentence: string): { readonly ok: false; readonly refusal: UseCaseRefusal } {
  return refuse({ kind: "bad-input", sentence: "Nothing was saved. Please look at the marked field.", fields: { [field]: sentence } });
}
