-- What burns in heat burns in the heat of the days after the work too, and a label may limit the heat of two or three days.
-- Their highs may be entered with the day's own, from the same source, and never without it. Empty is "nobody entered it".
ALTER TABLE "route_day" ADD COLUMN "forecast_second_high_f" INTEGER, ADD COLUMN "forecast_third_high_f" INTEGER;
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_coming_highs_go_with_their_forecast" CHECK (
  ("forecast_second_high_f" IS NULL OR ("forecast_high_f" IS NOT NULL AND "forecast_second_high_f" BETWEEN -60 AND 140))
  AND ("forecast_third_high_f" IS NULL OR ("forecast_high_f" IS NOT NULL AND "forecast_third_high_f" BETWEEN -60 AND 140))
);
