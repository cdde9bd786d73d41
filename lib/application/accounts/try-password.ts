import { returnSignInAttempt, takeSignInAttempt } from "#adapters/postgres/accounts";
import { isPassword } from "#adapters/password-hash";
import { type House } from "#application/use-case";

export const SIGN_IN_WINDOW_MINUTES = 15;
export const ATTEMPTS_PER_ACCOUNT = 10;

/**
 * Looks at the password of an email address for someone who is not signed in. Every door that takes a password
 * counts the try on the account first, so that no door is a way around the limit of another. Without a hash (an
 * unknown address) it counts and takes as long, and the answer is "wrong".
 */
export async function tryPassword(
  house: House,
  account: { readonly email: string; readonly passwordHash: string | undefined },
  password: string,
): Promise<"right" | "wrong" | "too-many"> {
  const key = `account:${account.email}`;
  const limit = { attempts: ATTEMPTS_PER_ACCOUNT, windowMinutes: SIGN_IN_WINDOW_MINUTES, now: house.now() };
  if (!(await takeSignInAttempt(house.client, key, limit))) return "too-many";
  if (!(await isPassword(account.passwordHash, password))) return "wrong";
  await returnSignInAttempt(house.client, key, "all");
  return "right";
}

/** What to say after too many tries. */
export const TOO_MANY_TRIES = `Too many tries. Wait ${String(SIGN_IN_WINDOW_MINUTES)} minutes, or ask the owner for a link to set a new password.`;
