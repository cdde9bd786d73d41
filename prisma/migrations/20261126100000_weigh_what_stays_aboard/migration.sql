-- What rides on a truck every day besides products and spray: people, tank, pump, reel. The payload's field asked for the
-- door sticker's figure, which has them in it. Nobody was asked what they weigh, so that stays open for trucks on file.
-- AlterTable
ALTER TABLE "vehicle" ADD COLUMN "stays_aboard" BIGINT;

-- What Prisma does not know from here on.

ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_stays_aboard_is_not_below_zero" CHECK ("stays_aboard" >= 0);
