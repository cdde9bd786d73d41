-- CreateTable
CREATE TABLE "delivery_price" (
    "company_id" UUID NOT NULL,
    "stock_posting_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "number" INTEGER NOT NULL,
    "request_id" UUID NOT NULL,
    "paid_per_container_cents" BIGINT,
    "said" TEXT,
    "stated_at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,

    CONSTRAINT "delivery_price_pkey" PRIMARY KEY ("company_id","stock_posting_id","line","number")
);

-- CreateIndex
CREATE UNIQUE INDEX "delivery_price_company_id_request_id_key" ON "delivery_price"("company_id", "request_id");

-- AddForeignKey
ALTER TABLE "delivery_price" ADD CONSTRAINT "delivery_price_company_id_stock_posting_id_line_fkey" FOREIGN KEY ("company_id", "stock_posting_id", "line") REFERENCES "stock_entry"("company_id", "stock_posting_id", "line") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "delivery_price" ADD CONSTRAINT "delivery_price_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

ALTER TABLE "delivery_price" ADD CONSTRAINT "delivery_price_is_no_debt" CHECK ("paid_per_container_cents" >= 0);
ALTER TABLE "delivery_price" ADD CONSTRAINT "delivery_price_counts_up" CHECK ("number" > 0);
ALTER TABLE "delivery_price" ADD CONSTRAINT "delivery_price_is_said_in_words" CHECK (btrim("said") <> '');

ALTER TABLE "delivery_price" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "delivery_price" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT ON "delivery_price" TO halfpass_app;

CREATE TRIGGER "delivery_price_only_grows" BEFORE UPDATE OR DELETE ON "delivery_price" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "delivery_price_is_never_emptied" BEFORE TRUNCATE ON "delivery_price" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
