-- AlterTable
ALTER TABLE "lawn_look" ADD COLUMN     "water_depth" BIGINT,
ADD COLUMN     "water_told_by" TEXT,
ADD COLUMN     "watered_at" TIMESTAMPTZ(3),
ADD COLUMN     "watered_by" TEXT;

-- What Prisma does not know from here on.

-- A lawn that was not looked at is written down only where something is said of it, or that it was watered in.
ALTER TABLE "lawn_look" DROP CONSTRAINT "lawn_look_says_something";
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_says_something" CHECK ("blooms" IN ('yes', 'no') OR ("blooms" = 'not-looked' AND ("said" IS NOT NULL OR "watered_at" IS NOT NULL)));
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_tells_of_water_whole" CHECK (
    ("watered_at" IS NULL AND "watered_by" IS NULL AND "water_told_by" IS NULL AND "water_depth" IS NULL)
    OR ("watered_at" IS NOT NULL AND "watered_by" IN ('sprinklers', 'rain') AND "water_told_by" IN ('crew', 'customer') AND "watered_by" IS NOT NULL AND "water_told_by" IS NOT NULL)
);
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_water_has_come" CHECK ("watered_at" <= "entered_at" AND "water_depth" > 0);
