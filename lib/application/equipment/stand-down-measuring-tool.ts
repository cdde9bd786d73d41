import { accept } from "#domain/foundation/outcome";
import { writeDeed } from "#application/audit-trail";
import { standDownMeasuringToolSchema } from "#application/equipment/stand-down-measuring-tool.schema";
import { conflict, notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** Stands a measuring tool down: no amount is rounded to its marks any more. */
export const standDownMeasuringTool = useCase("equipment/stand-down-measuring-tool", standDownMeasuringToolSchema, async (work, { measuringToolId }) => {
  const { companyId } = work.company;
  const tool = await work.tx.measuringTool.findUnique({ where: { companyId_measuringToolId: { companyId, measuringToolId } } });
  if (tool === null) return notFound("measuring tool");
  const { count } = await work.tx.measuringTool.updateMany({
    where: { companyId, measuringToolId, stoodDownAt: null },
    data: { stoodDownAt: work.now },
  });
  if (count === 0) return conflict("This measuring tool is stood down already.");
  await writeDeed(work, measuringToolId, { deed: "measuring-tool-stood-down", details: { name: tool.name, mark: tool.mark } });
  return accept(null);
});
