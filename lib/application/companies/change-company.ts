import { accept } from "#domain/foundation/outcome";
import { dayOrNone } from "#application/stored-day";
import { writeDeed } from "#application/audit-trail";
import { changeCompanySchema } from "#application/companies/change-company.schema";
import { companyDetails } from "#application/companies/read-company";
import { conflict } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Changes what the company's papers and computations start from. The loser of a race is told, not overwritten. */
export const changeCompany = useCase("companies/change-company", changeCompanySchema, async (work, { version, ...form }) => {
  const { companyId } = work.company;
  const before = await companyDetails(work);
  const { count } = await work.tx.company.updateMany({
    where: { companyId, version },
    data: {
      ...form,
      businessLicenseExpiresOn: dayOrNone(form.businessLicenseExpiresOn),
      insuranceExpiresOn: dayOrNone(form.insuranceExpiresOn),
      version: { increment: 1 },
    },
  });
  if (count === 0) return conflict("Someone else has changed the company since you opened this page. Load it again to see both.");
  await writeDeed(work, companyId, { deed: "company-changed", details: { before: { ...before }, after: form } });
  return accept({ version: version + 1 });
});
