import { z } from "zod";
import { RINSATE_WENT } from "#domain/mixing/clean-out";
import { requiredClockTime } from "#application/clock-time.schema";
import { idField, optionalLine, requiredDate, requiredLine } from "#application/field.schema";

const visitOrNone = z.union([idField, z.literal("")], "Choose a visit, or leave it empty.").transform((id) => (id === "" ? null : id));

interface Rinsate {
  readonly rinsateWent: (typeof RINSATE_WENT)[number];
  readonly rinsateVisitId: string | null;
  readonly rinsateWhere: string | null;
}

/** A labeled site is a visit or words, elsewhere is words, and the shop's rinsate tank needs neither. */
function checkRinsate({ rinsateWent, rinsateVisitId, rinsateWhere }: Rinsate, context: z.RefinementCtx): void {
  const complain = (field: keyof Rinsate, message: string) => {
    context.addIssue({ code: "custom", path: [field], message });
  };
  if (rinsateWent !== "labeled-site" && rinsateVisitId !== null) complain("rinsateVisitId", "Leave it empty where the rinsate went on no labeled site.");
  if (rinsateWent === "shop-tank" && rinsateWhere !== null) complain("rinsateWhere", "Leave it empty where the rinsate went into the shop's tank.");
  if (rinsateWent === "elsewhere" && rinsateWhere === null) complain("rinsateWhere", "Say where the rinsate went.");
  if (rinsateWent !== "labeled-site") return;
  if (rinsateVisitId === null && rinsateWhere === null) complain("rinsateVisitId", "Choose the visit whose lawn took it, or write the site below.");
  if (rinsateVisitId !== null && rinsateWhere !== null) complain("rinsateWhere", "Choose the visit or write the site, not both.");
}

export const recordCleanOutSchema = z
  .object({
    /** Made with the form, so that a second press of its button does nothing. */
    requestId: idField,
    equipmentId: z.uuid("Choose the sprayer."),
    cleanedOn: requiredDate("the day of the clean-out"),
    cleanedAt: requiredClockTime("when it was done"),
    doneById: z.uuid("Choose who did it."),
    how: requiredLine("how it was done", 300),
    rinsateWent: z.enum(RINSATE_WENT, "Say where the rinsate went."),
    /** Of a labeled site: the visit whose lawn took it. */
    rinsateVisitId: visitOrNone,
    /** In words: a labeled site that no visit stands for, or where else. */
    rinsateWhere: optionalLine(200),
  })
  .superRefine(checkRinsate);

export type CleanOutForm = z.output<typeof recordCleanOutSchema>;
