import { invariant } from "#domain/foundation/invariant";
import { accept } from "#domain/foundation/outcome";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { writeDeed } from "#application/audit-trail";
import { addMeasuringToolSchema } from "#application/equipment/add-measuring-tool.schema";
import { useCase } from "#application/use-case";

/** Adds what is measured out with: a cup or a scale, by one of its marks. The mark is kept as it was typed. */
export const addMeasuringTool = useCase("equipment/add-measuring-tool", addMeasuringToolSchema, async (work, { name, mark }) => {
  const { companyId } = work.company;
  const read = parseQuantity(mark, { field: "mark", dimensions: ["mass", "volume"] });
  invariant(read.ok, "the schema has read the mark");
  const measuringToolId = work.newId();
  const { dimension } = read.value.quantity;
  await work.tx.measuringTool.create({ data: { companyId, measuringToolId, name, dimension, mark, createdAt: work.now } });
  await writeDeed(work, measuringToolId, { deed: "measuring-tool-added", details: { name, mark } });
  return accept({ measuringToolId });
});
