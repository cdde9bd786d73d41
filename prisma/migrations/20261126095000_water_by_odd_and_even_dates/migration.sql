-- Local rules often let water run on odd or on even dates, and many go by the house number. Days of the week and dates are not
-- on file together: a property has the one or the other.
ALTER TABLE "property" ADD COLUMN "watering_dates" TEXT;
ALTER TABLE "property" ADD CONSTRAINT "property_watering_dates_are_known" CHECK ("watering_dates" IN ('odd', 'even', 'house-number'));
ALTER TABLE "property" ADD CONSTRAINT "property_waters_by_weekdays_or_dates" CHECK ("watering_dates" IS NULL OR "watering_weekdays" IS NULL);
