-- A town's hours that end before they begin are either the early and late hours of each of its days, or run into the next
-- morning; towns publish both. Until now the form did not ask which, so that it stays open for the rules that are on file.
-- AlterTable
ALTER TABLE "property" ADD COLUMN "town_rule_past_midnight" TEXT;

-- What Prisma does not know from here on.

ALTER TABLE "property" ADD CONSTRAINT "property_town_rule_past_midnight_is_known" CHECK ("town_rule_past_midnight" IN ('same-day', 'next-morning'));
-- Only of hours that pass midnight is anything said; a comparison with hours that are not on file would let it through.
ALTER TABLE "property" ADD CONSTRAINT "property_town_rule_past_midnight_is_of_hours_that_pass_it"
  CHECK ("town_rule_past_midnight" IS NULL OR COALESCE("town_rule_until_minute" < "town_rule_from_minute", false));
