-- AlterTable
ALTER TABLE "company" ADD COLUMN     "temperature_source" TEXT;

-- CreateTable
CREATE TABLE "daily_temperature" (
    "company_id" UUID NOT NULL,
    "source" TEXT NOT NULL,
    "date" DATE NOT NULL,
    "entry_number" INTEGER NOT NULL,
    "request_id" UUID NOT NULL,
    "scale" TEXT NOT NULL,
    "high_tenths" INTEGER NOT NULL,
    "low_tenths" INTEGER NOT NULL,
    "figures_from" TEXT NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,

    CONSTRAINT "daily_temperature_pkey" PRIMARY KEY ("company_id","source","date","entry_number")
);

-- CreateIndex
CREATE UNIQUE INDEX "daily_temperature_company_id_request_id_date_key" ON "daily_temperature"("company_id", "request_id", "date");

-- AddForeignKey
ALTER TABLE "daily_temperature" ADD CONSTRAINT "daily_temperature_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

ALTER TABLE "company" ADD CONSTRAINT "company_temperature_source_is_said" CHECK (btrim("temperature_source") <> '');
ALTER TABLE "daily_temperature" ADD CONSTRAINT "daily_temperature_source_is_said" CHECK (btrim("source") <> '' AND btrim("figures_from") <> '');
ALTER TABLE "daily_temperature" ADD CONSTRAINT "daily_temperature_entries_are_counted" CHECK ("entry_number" >= 1);
-- No air is colder than -90 °C or hotter than 75 °C; no day's low is above its high.
ALTER TABLE "daily_temperature" ADD CONSTRAINT "daily_temperature_is_weather" CHECK (
  "low_tenths" <= "high_tenths"
  AND CASE "scale"
    WHEN 'celsius' THEN "low_tenths" >= -900 AND "high_tenths" <= 750
    WHEN 'fahrenheit' THEN "low_tenths" >= -1300 AND "high_tenths" <= 1670
    ELSE false
  END
);

ALTER TABLE "daily_temperature" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "daily_temperature" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT ON "daily_temperature" TO halfpass_app;

CREATE TRIGGER "daily_temperature_only_grows" BEFORE UPDATE OR DELETE ON "daily_temperature" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "daily_temperature_is_never_emptied" BEFORE TRUNCATE ON "daily_temperature" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
