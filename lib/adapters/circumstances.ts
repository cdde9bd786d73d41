import { randomBytes, randomUUID } from "node:crypto";
import { readEnvironment } from "#adapters/environment";

/** The clock and the dice, handed to every use case so that tests and seeds can hand in their own. */
export interface Circumstances {
  readonly now: () => Date;
  readonly newId: () => string;
  /** A secret for a link: 256 random bits, base64url. */
  readonly newSecret: () => string;
}

/** The real clock and the real dice; in test mode the clock stands where the test set it. */
export function realCircumstances(): Circumstances {
  const { HALFPASS_TEST_MODE, HALFPASS_TEST_NOW } = readEnvironment();
  const now = HALFPASS_TEST_MODE === "1" && HALFPASS_TEST_NOW !== undefined ? () => new Date(HALFPASS_TEST_NOW) : () => new Date();
  return { now, newId: randomUUID, newSecret: () => randomBytes(32).toString("base64url") };
}
