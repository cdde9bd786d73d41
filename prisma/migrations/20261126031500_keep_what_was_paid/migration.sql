-- What was paid for one container, in whole cents, stands with the entry by which a delivery came: the same lot may come
-- again at another price. Empty is "not on file", never nothing paid; what came free was paid with zero.
ALTER TABLE "stock_entry" ADD COLUMN "paid_per_container_cents" BIGINT;
ALTER TABLE "stock_entry" ADD CONSTRAINT "stock_entry_price_is_of_what_came"
  CHECK ("paid_per_container_cents" IS NULL OR ("paid_per_container_cents" >= 0 AND "amount" > 0));
