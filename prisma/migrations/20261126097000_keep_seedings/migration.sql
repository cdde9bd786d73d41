-- CreateTable
CREATE TABLE "seeding" (
    "company_id" UUID NOT NULL,
    "seeding_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "kind" TEXT NOT NULL,
    "method" TEXT,
    "standing" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "seeding_pkey" PRIMARY KEY ("company_id","seeding_id")
);

-- CreateIndex
CREATE INDEX "seeding_company_id_zone_id_idx" ON "seeding"("company_id", "zone_id");

-- AddForeignKey
ALTER TABLE "seeding" ADD CONSTRAINT "seeding_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AlterTable
ALTER TABLE "station" ADD COLUMN "test_cans" BIGINT[] DEFAULT ARRAY[]::BIGINT[],
ADD COLUMN "test_wind_mph" INTEGER;

-- What Prisma does not know from here on.

ALTER TABLE "seeding" ADD CONSTRAINT "seeding_kind_is_known" CHECK ("kind" IN ('new-lawn', 'sod', 'overseeding'));
ALTER TABLE "seeding" ADD CONSTRAINT "seeding_standing_is_known" CHECK ("standing" IN ('done', 'planned'));
-- Seed has a method, if only one that nobody knows; sod is laid and has none.
ALTER TABLE "seeding" ADD CONSTRAINT "seeding_method_is_of_seed" CHECK (("kind" = 'sod') = ("method" IS NULL) AND "method" IN ('broadcast', 'slit', 'unknown'));
CREATE UNIQUE INDEX "seeding_stands_once" ON "seeding"("company_id", "zone_id", "date", "kind") WHERE "removed_at" IS NULL;

-- How and when a lawn was established becomes its first seeding. The lawn's form said "Established by" seed or sod, so what
-- stands there is a new lawn by its own words, and only the company can tell whether an overseeding was written there for
-- want of another place: it stands in the list of the lawn's seedings now, where it can be changed. Nobody was asked how the
-- seed went in. A day ahead of the company's own today was a plan, as it was taken for until now.
INSERT INTO "seeding" ("company_id", "seeding_id", "zone_id", "date", "kind", "method", "standing", "created_at")
SELECT z."company_id", gen_random_uuid(), z."zone_id", z."established_on",
  CASE z."established_by" WHEN 'sod' THEN 'sod' ELSE 'new-lawn' END,
  CASE z."established_by" WHEN 'sod' THEN NULL ELSE 'unknown' END,
  CASE WHEN z."established_on" > (now() AT TIME ZONE c."time_zone")::date THEN 'planned' ELSE 'done' END,
  z."created_at"
FROM "zone" z JOIN "company" c ON c."company_id" = z."company_id"
WHERE z."established_on" IS NOT NULL;

ALTER TABLE "zone" DROP CONSTRAINT "zone_is_established_by_something";
ALTER TABLE "zone" DROP COLUMN "established_by", DROP COLUMN "established_on";

ALTER TABLE "seeding" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "seeding" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
GRANT SELECT, INSERT, UPDATE ON "seeding" TO halfpass_app;

-- Tests from before cans were kept have none, and an average that may be of three cans and of a day's run.
ALTER TABLE "station" ADD CONSTRAINT "station_test_of_cans_is_whole"
  CHECK ("test_cans" IS NOT NULL AND (cardinality("test_cans") = 0 OR ("test_depth" IS NOT NULL AND cardinality("test_cans") >= 4 AND "test_minutes" <= 240)));
ALTER TABLE "station" ADD CONSTRAINT "station_wind_is_of_a_test" CHECK ("test_wind_mph" IS NULL OR ("test_depth" IS NOT NULL AND "test_wind_mph" BETWEEN 0 AND 134));
