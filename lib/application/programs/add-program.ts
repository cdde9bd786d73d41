import { lockCompany } from "#adapters/postgres/company-work";
import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { addProgramSchema } from "#application/programs/add-program.schema";
import { badField } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Begins a program of a season; its rounds are added one by one. Two of one name in a season are refused. */
export const addProgram = useCase("programs/add-program", addProgramSchema, async (work, { name, season }) => {
  const { companyId } = work.company;
  await lockCompany(work.tx);
  const [same] = await work.tx.$queryRaw<{ name: string }[]>`
    SELECT name FROM program WHERE company_id = ${companyId}::uuid AND season = ${season} AND lower(name) = lower(${name})`;
  if (same !== undefined) return badField("name", `${same.name} is a program of ${String(season)} already.`);
  const programId = work.newId();
  await work.tx.program.create({ data: { companyId, programId, name, season, createdAt: work.now } });
  await writeDeed(work, programId, { deed: "program-added", details: { name, season } });
  return accept({ programId });
});
