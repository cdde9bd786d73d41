import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { withdrawLicenseSchema } from "#application/people/withdraw-license.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Takes back a license that was entered by mistake. One that ran out is left alone: it says so itself. */
export const withdrawLicense = useCase("people/withdraw-license", withdrawLicenseSchema, async (work, { licenseId }) => {
  const { companyId } = work.company;
  const license = await work.tx.license.findUnique({ where: { companyId_licenseId: { companyId, licenseId } } });
  if (license === null) return notFound("license");
  const { count } = await work.tx.license.updateMany({
    where: { companyId, licenseId, withdrawnAt: null },
    data: { withdrawnAt: work.now },
  });
  if (count === 0) return conflict("This license entry was taken back already.");
  await writeDeed(work, licenseId, { deed: "license-withdrawn", details: { number: license.number } });
  return accept(null);
});
