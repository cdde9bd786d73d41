import { accept } from "#domain/foundation/outcome";
import { dayOf, dayOrNone } from "#application/stored-day";
import { writeDeed } from "#application/audit-trail";
import { addLicenseSchema } from "#application/people/add-license.schema";
import { badField, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Enters a license as the state printed it. A renewal is a new entry with its own dates. */
export const addLicense = useCase("people/add-license", addLicenseSchema, async (work, form) => {
  const { companyId } = work.company;
  const { personId, kind, state, number, category, issuedOn, expiresOn } = form;
  const person = await work.tx.person.findUnique({ where: { companyId_personId: { companyId, personId } } });
  if (person === null) return notFound("person");
  const same = { companyId, personId, state, number, category, expiresOn: dayOf(expiresOn) };
  const standing = await work.tx.license.findFirst({ where: { ...same, withdrawnAt: null } });
  if (standing !== null) return badField("number", `${person.name} has this license with these dates already.`);
  const licenseId = work.newId();
  await work.tx.license.create({ data: { ...same, licenseId, kind, issuedOn: dayOrNone(issuedOn), createdAt: work.now } });
  await writeDeed(work, licenseId, { deed: "license-added", details: { kind, state, number, expiresOn } });
  return accept({ licenseId });
});
