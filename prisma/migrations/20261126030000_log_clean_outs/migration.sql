-- CreateTable
CREATE TABLE "clean_out" (
    "company_id" UUID NOT NULL,
    "clean_out_id" UUID NOT NULL,
    "request_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "cleaned_at" TIMESTAMPTZ(3) NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "done_by_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "how" TEXT NOT NULL,
    "rinsate_went" TEXT NOT NULL,
    "rinsate_visit_id" UUID,
    "rinsate_where" TEXT,

    CONSTRAINT "clean_out_pkey" PRIMARY KEY ("company_id","clean_out_id")
);

-- CreateIndex
CREATE INDEX "clean_out_company_id_equipment_id_cleaned_at_idx" ON "clean_out"("company_id", "equipment_id", "cleaned_at");

-- CreateIndex
CREATE UNIQUE INDEX "clean_out_company_id_request_id_key" ON "clean_out"("company_id", "request_id");

-- AddForeignKey
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_company_id_done_by_id_fkey" FOREIGN KEY ("company_id", "done_by_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_company_id_rinsate_visit_id_fkey" FOREIGN KEY ("company_id", "rinsate_visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_is_said_in_words" CHECK (btrim("how") <> '');
-- A labeled site is a visit or words, elsewhere is words, and the shop's rinsate tank needs neither.
ALTER TABLE "clean_out" ADD CONSTRAINT "clean_out_rinsate_went_somewhere" CHECK (
  CASE "rinsate_went"
    WHEN 'labeled-site' THEN num_nonnulls("rinsate_visit_id", "rinsate_where") = 1
    WHEN 'shop-tank' THEN num_nonnulls("rinsate_visit_id", "rinsate_where") = 0
    WHEN 'elsewhere' THEN "rinsate_visit_id" IS NULL AND "rinsate_where" IS NOT NULL
    ELSE false
  END
);

ALTER TABLE "clean_out" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "clean_out" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT ON "clean_out" TO halfpass_app;

CREATE TRIGGER "clean_out_only_grows" BEFORE UPDATE OR DELETE ON "clean_out" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "clean_out_is_never_emptied" BEFORE TRUNCATE ON "clean_out" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
