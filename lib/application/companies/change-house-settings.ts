import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { changeHouseSettingsSchema } from "#application/companies/change-house-settings.schema";
import { settingsOnFile } from "#application/companies/house-settings";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Changes what the house holds to where label and law leave it open. From then on everything is worked out by it; an issued
 * mix ticket keeps the settings that it was worked out by. The loser of a race is told.
 */
export const changeHouseSettings = useCase("companies/change-house-settings", changeHouseSettingsSchema, async (work, { version, ...form }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const onFile = await settingsOnFile(work);
  if (onFile.version !== version) return conflict("Someone else has changed the settings since you opened this page. Load it again to see both.");
  const before = { ...onFile.settings, tankMark: onFile.tankMarkText };
  const data = { ...form, version: version + 1 };
  await work.tx.houseSettings.upsert({ where: { companyId }, create: { companyId, ...data }, update: data });
  await writeDeed(work, companyId, { deed: "house-settings-changed", details: { before, after: form } });
  return accept({ version: version + 1 });
});
