-- Whether there is water beside a lawn is somebody's answer: yes, none, or nobody has looked. A lawn whose water is on file,
-- measured or drawn, has one; of any other nobody has said that there is none, so that it stays not known.
ALTER TABLE "zone" ADD COLUMN "water_beside" TEXT NOT NULL DEFAULT 'not-known';
ALTER TABLE "zone" ADD CONSTRAINT "zone_water_beside_is_an_answer" CHECK ("water_beside" IN ('yes', 'none', 'not-known'));
UPDATE "zone" SET "water_beside" = 'yes'
WHERE jsonb_path_exists("pieces", '$[*] ? (@.use == "water")')
   OR EXISTS (
     SELECT FROM "water_edge" WHERE "water_edge"."company_id" = "zone"."company_id" AND "water_edge"."zone_id" = "zone"."zone_id" AND "water_edge"."removed_at" IS NULL
   );
