-- CreateTable
CREATE TABLE "lawn_look" (
    "company_id" UUID NOT NULL,
    "lawn_look_id" UUID NOT NULL,
    "request_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,
    "seen_at" TIMESTAMPTZ(3) NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "seen_by_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "blooms" TEXT NOT NULL,
    "said" TEXT,

    CONSTRAINT "lawn_look_pkey" PRIMARY KEY ("company_id","lawn_look_id")
);

-- CreateIndex
CREATE INDEX "lawn_look_company_id_zone_id_seen_at_idx" ON "lawn_look"("company_id", "zone_id", "seen_at");

-- CreateIndex
CREATE UNIQUE INDEX "lawn_look_company_id_request_id_zone_id_key" ON "lawn_look"("company_id", "request_id", "zone_id");

-- AddForeignKey
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_company_id_seen_by_id_fkey" FOREIGN KEY ("company_id", "seen_by_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- What Prisma does not know from here on.

-- A lawn that was not looked at is written down only where something is said of it.
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_says_something" CHECK ("blooms" IN ('yes', 'no') OR ("blooms" = 'not-looked' AND "said" IS NOT NULL));
ALTER TABLE "lawn_look" ADD CONSTRAINT "lawn_look_is_said_in_words" CHECK (btrim("said") <> '');

ALTER TABLE "lawn_look" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "lawn_look" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT ON "lawn_look" TO halfpass_app;

CREATE TRIGGER "lawn_look_only_grows" BEFORE UPDATE OR DELETE ON "lawn_look" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "lawn_look_is_never_emptied" BEFORE TRUNCATE ON "lawn_look" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
