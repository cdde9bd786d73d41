-- What stands in where a piece of gear has no calibration, as it was typed: a sprayer's tip, pressure and pace, a spreader's
-- settings by the bags, the droplet classes of tips. Null is "nobody entered any", never a usual figure.
ALTER TABLE "equipment" ADD COLUMN "nominal" JSONB;
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_nominal_is_an_object" CHECK ("nominal" IS NULL OR jsonb_typeof("nominal") = 'object');
