-- Work may go on a stated share of a lawn, in hundredths of a percent. Empty is "all over the lawn", which is what every plan
-- until now meant. What is planned in a round goes into its visits; a look has no share.
ALTER TABLE "round_treatment" ADD COLUMN "spot_share_basis_points" INTEGER;
ALTER TABLE "round_treatment" ADD CONSTRAINT "round_treatment_spots_are_a_share" CHECK ("spot_share_basis_points" BETWEEN 1 AND 10000);

ALTER TABLE "visit_task" ADD COLUMN "spot_share_basis_points" INTEGER;
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_spots_are_a_share" CHECK ("spot_share_basis_points" BETWEEN 1 AND 10000);
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_look_has_no_share" CHECK ("kind" = 'treatment' OR "spot_share_basis_points" IS NULL);
