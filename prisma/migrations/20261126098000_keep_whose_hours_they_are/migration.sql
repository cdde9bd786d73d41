-- The town's watering rule and the hours of a customer's controller are two facts: one is law, the other is only set so. Until
-- now a property kept one set of days and hours, entered "as the town's rules have it, or as the controller is set", and nobody
-- can tell any more which of the two was meant. What stands there becomes the town's rule: read so, nobody is advised to set a
-- controller anew against a rule, and who knows better moves it at the property. The controller is not on file then.
ALTER TABLE "property" RENAME COLUMN "watering_from_minute" TO "town_rule_from_minute";
ALTER TABLE "property" RENAME COLUMN "watering_until_minute" TO "town_rule_until_minute";
ALTER TABLE "property" RENAME COLUMN "watering_weekdays" TO "town_rule_weekdays";
ALTER TABLE "property" RENAME COLUMN "watering_dates" TO "town_rule_dates";
ALTER TABLE "property" RENAME CONSTRAINT "property_watering_hours_are_whole" TO "property_town_rule_hours_are_whole";
ALTER TABLE "property" RENAME CONSTRAINT "property_watering_hours_lie_in_a_day" TO "property_town_rule_hours_lie_in_a_day";
ALTER TABLE "property" RENAME CONSTRAINT "property_watering_weekdays_are_some" TO "property_town_rule_weekdays_are_some";
ALTER TABLE "property" RENAME CONSTRAINT "property_watering_dates_are_known" TO "property_town_rule_dates_are_known";
ALTER TABLE "property" RENAME CONSTRAINT "property_waters_by_weekdays_or_dates" TO "property_town_rule_goes_by_weekdays_or_dates";

-- AlterTable
ALTER TABLE "property" ADD COLUMN "town_rule" TEXT,
ADD COLUMN "controller" TEXT,
ADD COLUMN "controller_from_minute" INTEGER,
ADD COLUMN "controller_until_minute" INTEGER,
ADD COLUMN "controller_weekdays" TEXT,
ADD COLUMN "controller_dates" TEXT,
ADD COLUMN "mows_on_no_fixed_day" BOOLEAN NOT NULL DEFAULT false;

UPDATE "property" SET "town_rule" = 'on-file' WHERE num_nonnulls("town_rule_from_minute", "town_rule_weekdays", "town_rule_dates") > 0;

-- What Prisma does not know from here on.

ALTER TABLE "property" ADD CONSTRAINT "property_town_rule_is_known" CHECK ("town_rule" IN ('on-file', 'none'));
-- On file is what says something; of what is not there, or of which nobody has said anything, there are neither days nor hours.
ALTER TABLE "property" ADD CONSTRAINT "property_town_rule_says_something"
  CHECK (("town_rule" IS NOT DISTINCT FROM 'on-file') = (num_nonnulls("town_rule_from_minute", "town_rule_weekdays", "town_rule_dates") > 0));
ALTER TABLE "property" ADD CONSTRAINT "property_controller_is_known" CHECK ("controller" IN ('on-file', 'none'));
ALTER TABLE "property" ADD CONSTRAINT "property_controller_says_something"
  CHECK (("controller" IS NOT DISTINCT FROM 'on-file') = (num_nonnulls("controller_from_minute", "controller_weekdays", "controller_dates") > 0));
ALTER TABLE "property" ADD CONSTRAINT "property_controller_hours_are_whole" CHECK (("controller_from_minute" IS NULL) = ("controller_until_minute" IS NULL));
ALTER TABLE "property" ADD CONSTRAINT "property_controller_hours_lie_in_a_day"
  CHECK ("controller_from_minute" BETWEEN 0 AND 1439 AND "controller_until_minute" BETWEEN 1 AND 1440 AND "controller_from_minute" <> "controller_until_minute");
ALTER TABLE "property" ADD CONSTRAINT "property_controller_weekdays_are_some" CHECK ("controller_weekdays" ~ '^[1-7]{1,7}$');
ALTER TABLE "property" ADD CONSTRAINT "property_controller_dates_are_known" CHECK ("controller_dates" IN ('odd', 'even'));
ALTER TABLE "property" ADD CONSTRAINT "property_controller_goes_by_weekdays_or_dates" CHECK ("controller_dates" IS NULL OR "controller_weekdays" IS NULL);
ALTER TABLE "property" ADD CONSTRAINT "property_mows_on_a_day_or_on_no_fixed_one" CHECK (NOT "mows_on_no_fixed_day" OR "mowing_weekday" IS NULL);
