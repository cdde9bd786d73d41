import { accountForSignIn, companiesOfAccount, returnSignInAttempt, takeSignInAttempt } from "#adapters/postgres/accounts";
import { type SessionKey } from "#adapters/postgres/company-work";
import { type Outcome, accept, refuse } from "#domain/foundation/outcome";
import { SIGN_IN_WINDOW_MINUTES, TOO_MANY_TRIES, tryPassword } from "#application/accounts/try-password";
import { signInSchema } from "#application/accounts/sign-in.schema";
import { checkInput, type House } from "#application/use-case";

export const ATTEMPTS_PER_ADDRESS = 50;

export type SignInRefusal =
  | { readonly kind: "wrong"; readonly sentence: string }
  | { readonly kind: "too-many"; readonly sentence: string }
  | { readonly kind: "no-company"; readonly sentence: string };

const WRONG: SignInRefusal = { kind: "wrong", sentence: "The email address or the password is not right." };
const TOO_MANY: SignInRefusal = { kind: "too-many", sentence: TOO_MANY_TRIES };
const NO_COMPANY: SignInRefusal = {
  kind: "no-company",
  sentence: "This account belongs to no company any more. Ask the owner of the company to invite you again.",
};

/**
 * Signs an account in. Attempts are counted by account and by network address before the password is looked
 * at, and an unknown email address takes as long and says the same as a wrong password.
 */
export async function signIn(
  house: House,
  input: { readonly email: unknown; readonly password: unknown },
  networkAddress: string,
): Promise<Outcome<SessionKey, SignInRefusal>> {
  const checked = checkInput(signInSchema, input);
  if (!checked.ok) return refuse(WRONG);
  const { email, password } = checked.value;
  const addressKey = `address:${networkAddress}`;
  const limit = { attempts: ATTEMPTS_PER_ADDRESS, windowMinutes: SIGN_IN_WINDOW_MINUTES, now: house.now() };
  if (!(await takeSignInAttempt(house.client, addressKey, limit))) return refuse(TOO_MANY);
  const account = await accountForSignIn(house.client, email);
  const tried = await tryPassword(house, { email, passwordHash: account?.passwordHash }, password);
  if (tried === "too-many") return refuse(TOO_MANY);
  if (tried === "wrong" || account === undefined) return refuse(WRONG);
  await returnSignInAttempt(house.client, addressKey, "one");
  const [company] = await companiesOfAccount(house.client, account.accountId);
  if (company === undefined) return refuse(NO_COMPANY);
  return accept({ accountId: account.accountId, companyId: company.companyId, sessionVersion: account.sessionVersion });
}
