-- A fill was asked for what the gauge showed and taken for what was mixed: on top of a rest its product came out too thin. From
-- here on both readings are asked for and their difference is the fill. Of the fills on file nobody knows what was in the tank
-- before them, so it stays open there. What was found of a fill stays with it.
-- AlterTable
ALTER TABLE "fill" ADD COLUMN "findings" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN "gauge_after" BIGINT,
ADD COLUMN "gauge_before" BIGINT,
ADD COLUMN "in_the_books" BIGINT;

-- What Prisma does not know from here on.

ALTER TABLE "fill" ADD CONSTRAINT "fill_is_the_difference_of_its_readings" CHECK (
  num_nonnulls("gauge_before", "gauge_after", "in_the_books") = 0
  OR (num_nonnulls("gauge_before", "gauge_after", "in_the_books") = 3 AND "gauge_before" >= 0 AND "in_the_books" >= 0 AND "finished_volume" = "gauge_after" - "gauge_before")
);
