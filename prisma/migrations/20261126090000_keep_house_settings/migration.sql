-- AlterTable
ALTER TABLE "property" ADD COLUMN     "tank_water" TEXT;

-- CreateTable
CREATE TABLE "house_settings" (
    "company_id" UUID NOT NULL,
    "calibration_valid_days" INTEGER NOT NULL,
    "same_pressure_within_psi" INTEGER NOT NULL,
    "granular_passes" TEXT NOT NULL,
    "tank_loads" TEXT NOT NULL,
    "heat_caution_from_f" INTEGER NOT NULL,
    "heat_caution_warm_from_f" INTEGER NOT NULL,
    "minutes_per_stop" INTEGER NOT NULL,
    "minutes_per_thousand_square_feet" INTEGER NOT NULL,
    "tank_mark" TEXT NOT NULL,
    "line_at_the_end" TEXT NOT NULL,
    "version" INTEGER NOT NULL,

    CONSTRAINT "house_settings_pkey" PRIMARY KEY ("company_id")
);

-- AddForeignKey
ALTER TABLE "house_settings" ADD CONSTRAINT "house_settings_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

ALTER TABLE "property" ADD CONSTRAINT "property_tank_water_is_said" CHECK ("tank_water" IN ('yes', 'no'));
ALTER TABLE "house_settings" ADD CONSTRAINT "house_settings_are_ways_to_work" CHECK (
  "granular_passes" IN ('one-with-overlap', 'two-at-half-rate-crosswise')
  AND "tank_loads" IN ('same-size-every-time', 'full-tanks-then-a-short-one')
  AND "line_at_the_end" IN ('pushed-out-with-water', 'left-as-it-is')
  AND btrim("tank_mark") <> ''
);
ALTER TABLE "house_settings" ADD CONSTRAINT "house_settings_are_figures" CHECK (
  "calibration_valid_days" >= 1 AND "same_pressure_within_psi" >= 0 AND "minutes_per_stop" >= 0
  AND "minutes_per_thousand_square_feet" >= 1 AND "version" >= 2
);

ALTER TABLE "house_settings" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "house_settings" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT, UPDATE ON "house_settings" TO halfpass_app;
