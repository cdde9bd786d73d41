import { z } from "zod";
import { accept } from "#domain/foundation/outcome";
import { dayOnFile } from "#application/documents/day-to-print";
import { issuesAbout, refuseOthersPaper } from "#application/documents/issued-papers";
import { packetOfDay } from "#application/documents/print-packet";
import { idField } from "#application/field.schema";
import { notFound } from "#application/refusal";
import { useCase } from "#application/use-case";

/** What a truck's day would print now, what it could not print and why, and what was printed before. */
export const readPacket = useCase("documents/read-packet", z.object({ routeDayId: idField }), async (work, { routeDayId }) => {
  const day = await dayOnFile(work, routeDayId);
  if (day === undefined) return notFound("truck on that day");
  const refusal = refuseOthersPaper(work, day);
  if (refusal !== undefined) return { ok: false, refusal };
  const { papers, leftOut } = await packetOfDay(work, day);
  const issues = await issuesAbout(work, [routeDayId]);
  return accept({ routeDayId, truck: day.truck, date: day.date, papers: papers.map(({ about, data: { kind } }) => ({ about, kind })), leftOut, issues });
});
