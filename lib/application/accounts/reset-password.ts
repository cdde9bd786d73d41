import { resetPasswordBy, standingLink } from "#adapters/postgres/accounts";
import { hashOfSecret } from "#adapters/link-secret";
import { hashPassword } from "#adapters/password-hash";
import { type Outcome, accept } from "#domain/foundation/outcome";
import { resetPasswordSchema } from "#application/accounts/reset-password.schema";
import { secretField } from "#application/field.schema";
import { conflict, type UseCaseRefusal } from "#application/refusal";
import { checkInput, type House } from "#application/use-case";

const NO_LONGER = "This link was used already, has run out, or was replaced by a newer one. Ask for a new link.";

/** The address that a reset link is for, while the link stands. */
export async function readResetLink(house: House, secret: unknown): Promise<Outcome<{ readonly email: string }, UseCaseRefusal>> {
  const checked = checkInput(secretField, secret);
  if (!checked.ok) return conflict(NO_LONGER);
  const link = await standingLink(house.client, "password-reset", hashOfSecret(checked.value), house.now());
  return link === undefined ? conflict(NO_LONGER) : accept({ email: link.email ?? "" });
}

/** Sets a new password by a one-time link, ends every session of the account, and forgets its failed sign-ins. */
export async function resetPassword(house: House, input: unknown): Promise<Outcome<null, UseCaseRefusal>> {
  const checked = checkInput(resetPasswordSchema, input);
  if (!checked.ok) return checked;
  const { secret, password } = checked.value;
  // Hashing is dear on purpose, so it is done for whoever holds a link and not for everyone who asks.
  const link = await readResetLink(house, secret);
  if (!link.ok) return link;
  const accountId = await resetPasswordBy(house.client, hashOfSecret(secret), await hashPassword(password), house.now());
  return accountId === undefined ? conflict(NO_LONGER) : accept(null);
}
