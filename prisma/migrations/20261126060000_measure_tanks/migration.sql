-- AlterTable
ALTER TABLE "clean_out" ADD COLUMN     "stock_posting_id" UUID;

-- AlterTable
ALTER TABLE "fill_draw" ADD COLUMN     "fill_rest_id" UUID;

-- CreateTable
CREATE TABLE "tank_reading" (
    "company_id" UUID NOT NULL,
    "tank_reading_id" UUID NOT NULL,
    "request_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "read_at" TIMESTAMPTZ(3) NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "read_by_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "how" TEXT NOT NULL,
    "volume" BIGINT NOT NULL,
    "in_the_books" BIGINT NOT NULL,
    "of_no_fill" BIGINT NOT NULL,
    "missing_went" TEXT,
    "note" TEXT,
    "stock_posting_id" UUID,

    CONSTRAINT "tank_reading_pkey" PRIMARY KEY ("company_id","tank_reading_id")
);

-- CreateTable
CREATE TABLE "fill_rest" (
    "company_id" UUID NOT NULL,
    "fill_rest_id" UUID NOT NULL,
    "fill_id" UUID NOT NULL,
    "tank_reading_id" UUID,
    "clean_out_id" UUID,
    "settled_at" TIMESTAMPTZ(3) NOT NULL,
    "in_the_books" BIGINT NOT NULL,
    "remaining" BIGINT NOT NULL,
    "went_to_id" UUID,

    CONSTRAINT "fill_rest_pkey" PRIMARY KEY ("company_id","fill_rest_id")
);

-- CreateIndex
CREATE UNIQUE INDEX "tank_reading_company_id_request_id_key" ON "tank_reading"("company_id", "request_id");

-- CreateIndex
CREATE UNIQUE INDEX "tank_reading_company_id_equipment_id_read_at_key" ON "tank_reading"("company_id", "equipment_id", "read_at");

-- CreateIndex
CREATE INDEX "fill_rest_company_id_fill_id_settled_at_idx" ON "fill_rest"("company_id", "fill_id", "settled_at");

-- AddForeignKey
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_company_id_stock_posting_id_fkey" FOREIGN KEY ("company_id", "stock_posting_id") REFERENCES "stock_posting"("company_id", "stock_posting_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_company_id_read_by_id_fkey" FOREIGN KEY ("company_id", "read_by_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_company_id_stock_posting_id_fkey" FOREIGN KEY ("company_id", "stock_posting_id") REFERENCES "stock_posting"("company_id", "stock_posting_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_company_id_fill_id_fkey" FOREIGN KEY ("company_id", "fill_id") REFERENCES "fill"("company_id", "fill_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_company_id_tank_reading_id_fkey" FOREIGN KEY ("company_id", "tank_reading_id") REFERENCES "tank_reading"("company_id", "tank_reading_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_company_id_clean_out_id_fkey" FOREIGN KEY ("company_id", "clean_out_id") REFERENCES "clean_out"("company_id", "clean_out_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_company_id_went_to_id_fkey" FOREIGN KEY ("company_id", "went_to_id") REFERENCES "stock_location"("company_id", "stock_location_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_draw" ADD CONSTRAINT "fill_draw_company_id_fill_rest_id_fkey" FOREIGN KEY ("company_id", "fill_rest_id") REFERENCES "fill_rest"("company_id", "fill_rest_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_is_said_in_words" CHECK (btrim("how") <> '');
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_volumes_are_not_below_zero" CHECK ("volume" >= 0 AND "in_the_books" >= 0 AND "of_no_fill" BETWEEN 0 AND "volume");
ALTER TABLE "tank_reading" ADD CONSTRAINT "tank_reading_missing_went_is_known" CHECK ("missing_went" IN ('loss', 'rinsate', 'count-difference'));
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_is_of_a_reading_or_a_clean_out" CHECK (num_nonnulls("tank_reading_id", "clean_out_id") = 1);
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_volumes_are_not_below_zero" CHECK ("in_the_books" >= 0 AND "remaining" >= 0);
-- A clean-out leaves nothing.
ALTER TABLE "fill_rest" ADD CONSTRAINT "fill_rest_of_a_clean_out_is_nothing" CHECK ("clean_out_id" IS NULL OR "remaining" = 0);

ALTER TABLE "tank_reading" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "tank_reading" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "fill_rest" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "fill_rest" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT ON "tank_reading" TO halfpass_app;
GRANT SELECT, INSERT ON "fill_rest" TO halfpass_app;

CREATE TRIGGER "tank_reading_only_grows" BEFORE UPDATE OR DELETE ON "tank_reading" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "tank_reading_is_never_emptied" BEFORE TRUNCATE ON "tank_reading" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_rest_only_grows" BEFORE UPDATE OR DELETE ON "fill_rest" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_rest_is_never_emptied" BEFORE TRUNCATE ON "fill_rest" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
