import { accountForSignIn, createAccount } from "#adapters/postgres/accounts";
import { type CompanyTransaction } from "#adapters/postgres/company-work";
import { hashPassword } from "#adapters/password-hash";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { TOO_MANY_TRIES, tryPassword } from "#application/accounts/try-password";
import { newPasswordField } from "#application/field.schema";
import { badField, type UseCaseRefusal } from "#application/refusal";
import { type House, rollBack } from "#application/use-case";

/** The account of someone who came by a link: the one that their address has, or one that is still to be made. */
export type GuestAccount =
  | { readonly kind: "known"; readonly accountId: string }
  | { readonly kind: "new"; readonly email: string; readonly passwordHash: string };

/**
 * Finds the account that a guest means. Where the address has one, the password must be the account's own, and the try
 * is counted; else it must do as a new one, and only then is it hashed, which is dear on purpose. Nothing of the
 * account is written yet. Refuses at the field `password`, a wrong one with the sentence that the form has for it.
 */
export async function accountOfGuest(
  house: House,
  form: { readonly email: string; readonly password: string },
  wrongPassword: string,
): Promise<Outcome<GuestAccount, UseCaseRefusal>> {
  const { email, password } = form;
  const known = await accountForSignIn(house.client, email);
  if (known !== undefined) {
    const tried = await tryPassword(house, { email, passwordHash: known.passwordHash }, password);
    if (tried === "too-many") return badField("password", TOO_MANY_TRIES);
    if (tried === "wrong") return badField("password", wrongPassword);
    return accept({ kind: "known", accountId: known.accountId });
  }
  const checked = newPasswordField.safeParse(password);
  if (!checked.success) return badField("password", checked.error.issues[0]?.message ?? "Choose another password.");
  return accept({ kind: "new", email, passwordHash: await hashPassword(password) });
}

/**
 * Makes the account where it is still to be made, and answers its id. When the address has got one since it was looked
 * at, the transaction is rolled back with the sentence that the form has for it.
 */
export async function keepAccountOfGuest(
  tx: CompanyTransaction,
  account: GuestAccount,
  moment: { readonly now: Date; readonly newId: () => string },
  justTaken: string,
): Promise<string> {
  if (account.kind === "known") return account.accountId;
  const { email, passwordHash } = account;
  const accountId = moment.newId();
  if (!(await createAccount(tx, { accountId, email, passwordHash, now: moment.now }))) rollBack({ kind: "conflict", sentence: justTaken });
  return accountId;
}
