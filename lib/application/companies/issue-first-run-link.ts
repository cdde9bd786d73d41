import { issueFirstRunLink as keepLink, readInstallation } from "#adapters/postgres/accounts";
import { hashOfSecret } from "#adapters/link-secret";
import { type House } from "#application/use-case";

export const FIRST_RUN_LINK_HOURS = 24;

/** Makes the one-time link that opens the first-run page. Only someone at the terminal can. */
export async function issueFirstRunLink(house: House): Promise<{ readonly secret: string; readonly expiresAt: Date; readonly isFirstCompany: boolean }> {
  const secret = house.newSecret();
  const now = house.now();
  const expiresAt = new Date(now.getTime() + FIRST_RUN_LINK_HOURS * 3_600_000);
  await keepLink(house.client, { linkId: house.newId(), secretHash: hashOfSecret(secret), now, expiresAt });
  const { hasCompany } = await readInstallation(house.client);
  return { secret, expiresAt, isFirstCompany: !hasCompany };
}
