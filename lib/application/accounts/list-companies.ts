import { type CompanyOfAccount, companiesOfAccount } from "#adapters/postgres/accounts";
import { type House } from "#application/use-case";

/** The companies among which a signed-in account can choose. Whether the session stands is asked at each use. */
export function listCompanies(house: House, accountId: string): Promise<readonly CompanyOfAccount[]> {
  return companiesOfAccount(house.client, accountId);
}
