-- A label may limit the heat of the hours after the work, which reach into the day after. Its high may be entered with the
-- day's own and never without it: both are from the same source. Empty is "nobody entered it", never "no heat".
ALTER TABLE "route_day" ADD COLUMN "forecast_next_high_f" INTEGER;
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_next_high_goes_with_its_forecast"
  CHECK ("forecast_next_high_f" IS NULL OR ("forecast_high_f" IS NOT NULL AND "forecast_next_high_f" BETWEEN -60 AND 140));
