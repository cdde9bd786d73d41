import { z } from "zod";
import { requiredDate } from "#application/field.schema";
import { SEEDING_KINDS, SEEDING_STANDINGS, type SeedingKind, SOWING_METHODS, type SowingMethod } from "#domain/properties/lawn-seeding";

/** What seed or sod on a lawn is asked for. */
export const seedingFields = {
  date: requiredDate("the day of the seed or sod"),
  kind: z.enum(SEEDING_KINDS, "Choose whether it is a new lawn or overseeding."),
  method: z.enum(SOWING_METHODS, "Choose how the seed goes in, or that nobody knows."),
  standing: z.enum(SEEDING_STANDINGS, "Choose whether it is done or planned."),
};

/** Complains about a method of sowing for sod, which is laid. */
export function checkMethod({ kind, method }: { readonly kind: SeedingKind; readonly method: SowingMethod }, context: z.RefinementCtx): void {
  if (kind !== "sod" || method === "unknown") return;
  context.addIssue({ code: "custom", path: ["method"], message: "Sod is laid and not sown: leave this at not known." });
}
