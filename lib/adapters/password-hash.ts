import { hash, verify } from "@node-rs/argon2";

// OWASP Password Storage Cheat Sheet, argon2id: 19 MiB, 2 passes, 1 lane.
const OPTIONS = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/** Hashes a password with argon2id and a salt of its own. */
export function hashPassword(password: string): Promise<string> {
  return hash(password, OPTIONS);
}

// The hash of a password that nobody has, so that an unknown address takes as long as a known one.
const NOBODYS_HASH =
  "$argon2id$v=19$m=19456,t=2,p=1$0Vt0JXl/QmSLn+N/y9kdig$9n1l/OamdszpnbUfkPTXCGh765mpMBpib5e2GNLE9dw";

/** True when the password is the hashed one. Without a hash (unknown address) it takes as long and is false. */
export async function isPassword(passwordHash: string | undefined, password: string): Promise<boolean> {
  const isRight = await verify(passwordHash ?? NOBODYS_HASH, password);
  return passwordHash !== undefined && isRight;
}
