-- CreateTable
CREATE TABLE "client" (
    "company_id" UUID NOT NULL,
    "client_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT,
    "email" TEXT,
    "standing" TEXT NOT NULL DEFAULT 'current',
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "client_pkey" PRIMARY KEY ("company_id","client_id")
);

-- CreateTable
CREATE TABLE "property" (
    "company_id" UUID NOT NULL,
    "property_id" UUID NOT NULL,
    "client_id" UUID NOT NULL,
    "street" TEXT NOT NULL,
    "city" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "zip" TEXT NOT NULL,
    "latitude" DOUBLE PRECISION,
    "longitude" DOUBLE PRECISION,
    "position_origin" TEXT,
    "access_note" TEXT,
    "gate_code" TEXT,
    "narrowest_gate" BIGINT,
    "dog_note" TEXT,
    "mowing_weekday" INTEGER,
    "mowed_by" TEXT,
    "lot_area" BIGINT,
    "watering_from_minute" INTEGER,
    "watering_until_minute" INTEGER,
    "watering_weekdays" TEXT,
    "note" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "property_pkey" PRIMARY KEY ("company_id","property_id")
);

-- CreateTable
CREATE TABLE "zone" (
    "company_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,
    "property_id" UUID NOT NULL,
    "letter" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "grasses" TEXT[],
    "grasses_assumed" BOOLEAN NOT NULL,
    "pieces" JSONB NOT NULL,
    "area" BIGINT NOT NULL,
    "area_origin" TEXT NOT NULL,
    "measured_on" DATE,
    "established_by" TEXT,
    "established_on" DATE,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "zone_pkey" PRIMARY KEY ("company_id","zone_id")
);

-- CreateTable
CREATE TABLE "water_edge" (
    "company_id" UUID NOT NULL,
    "water_edge_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "length" BIGINT,
    "width" BIGINT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),

    CONSTRAINT "water_edge_pkey" PRIMARY KEY ("company_id","water_edge_id")
);

-- CreateTable
CREATE TABLE "station" (
    "company_id" UUID NOT NULL,
    "station_id" UUID NOT NULL,
    "property_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "test_depth" BIGINT,
    "test_minutes" INTEGER,
    "tested_on" DATE,
    "longest_run_minutes" INTEGER,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "removed_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "station_pkey" PRIMARY KEY ("company_id","station_id")
);

-- CreateTable
CREATE TABLE "station_zone" (
    "company_id" UUID NOT NULL,
    "station_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,

    CONSTRAINT "station_zone_pkey" PRIMARY KEY ("company_id","station_id","zone_id")
);

-- CreateTable
CREATE TABLE "soil_test" (
    "company_id" UUID NOT NULL,
    "soil_test_id" UUID NOT NULL,
    "zone_id" UUID NOT NULL,
    "sampled_on" DATE NOT NULL,
    "laboratory" TEXT NOT NULL,
    "phosphorus_word" TEXT NOT NULL,
    "phosphorus" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "soil_test_pkey" PRIMARY KEY ("company_id","soil_test_id")
);

-- CreateTable
CREATE TABLE "product" (
    "company_id" UUID NOT NULL,
    "product_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "form" TEXT NOT NULL,
    "counted_by" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "product_pkey" PRIMARY KEY ("company_id","product_id")
);

-- CreateTable
CREATE TABLE "label_entry" (
    "company_id" UUID NOT NULL,
    "label_entry_id" UUID NOT NULL,
    "product_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "facts" JSONB NOT NULL,
    "person_id" UUID NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "label_entry_pkey" PRIMARY KEY ("company_id","label_entry_id")
);

-- CreateTable
CREATE TABLE "label_confirmation" (
    "company_id" UUID NOT NULL,
    "label_confirmation_id" UUID NOT NULL,
    "label_entry_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "confirmed_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "label_confirmation_pkey" PRIMARY KEY ("company_id","label_confirmation_id")
);

-- CreateTable
CREATE TABLE "lot" (
    "company_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "product_id" UUID NOT NULL,
    "number" TEXT NOT NULL,
    "expires_on" DATE,
    "container" TEXT NOT NULL,
    "container_size" BIGINT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "lot_pkey" PRIMARY KEY ("company_id","lot_id")
);

-- CreateTable
CREATE TABLE "stock_location" (
    "company_id" UUID NOT NULL,
    "stock_location_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "vehicle_id" UUID,
    "equipment_id" UUID,
    "latitude" DOUBLE PRECISION,
    "longitude" DOUBLE PRECISION,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "stock_location_pkey" PRIMARY KEY ("company_id","stock_location_id")
);

-- CreateTable
CREATE TABLE "stock_posting" (
    "company_id" UUID NOT NULL,
    "stock_posting_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "request_id" UUID NOT NULL,
    "happened_at" TIMESTAMPTZ(3) NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,
    "note" TEXT,

    CONSTRAINT "stock_posting_pkey" PRIMARY KEY ("company_id","stock_posting_id")
);

-- CreateTable
CREATE TABLE "stock_entry" (
    "company_id" UUID NOT NULL,
    "stock_posting_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "lot_id" UUID NOT NULL,
    "stock_location_id" UUID NOT NULL,
    "amount" BIGINT NOT NULL,

    CONSTRAINT "stock_entry_pkey" PRIMARY KEY ("company_id","stock_posting_id","line")
);

-- CreateTable
CREATE TABLE "stock_balance" (
    "company_id" UUID NOT NULL,
    "lot_id" UUID NOT NULL,
    "stock_location_id" UUID NOT NULL,
    "amount" BIGINT NOT NULL,

    CONSTRAINT "stock_balance_pkey" PRIMARY KEY ("company_id","lot_id","stock_location_id")
);

-- CreateTable
CREATE TABLE "vehicle" (
    "company_id" UUID NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "payload" BIGINT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "stood_down_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "vehicle_pkey" PRIMARY KEY ("company_id","vehicle_id")
);

-- CreateTable
CREATE TABLE "equipment" (
    "company_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "vehicle_id" UUID,
    "name" TEXT NOT NULL,
    "kind" TEXT NOT NULL,
    "capacity" BIGINT NOT NULL,
    "hold_up" BIGINT,
    "has_deflector" BOOLEAN,
    "swath" BIGINT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "stood_down_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "equipment_pkey" PRIMARY KEY ("company_id","equipment_id")
);

-- CreateTable
CREATE TABLE "measuring_tool" (
    "company_id" UUID NOT NULL,
    "measuring_tool_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "dimension" TEXT NOT NULL,
    "mark" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "stood_down_at" TIMESTAMPTZ(3),

    CONSTRAINT "measuring_tool_pkey" PRIMARY KEY ("company_id","measuring_tool_id")
);

-- CreateTable
CREATE TABLE "calibration" (
    "company_id" UUID NOT NULL,
    "calibration_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "operator_id" UUID NOT NULL,
    "product_id" UUID,
    "tip" TEXT,
    "pressure_psi" DOUBLE PRECISION,
    "setting" TEXT,
    "method" TEXT NOT NULL,
    "inputs" JSONB NOT NULL,
    "rate_basis" TEXT NOT NULL,
    "rate_amount" BIGINT NOT NULL,
    "rate_per" BIGINT NOT NULL,
    "made_on" DATE NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "calibration_pkey" PRIMARY KEY ("company_id","calibration_id")
);

-- CreateTable
CREATE TABLE "program" (
    "company_id" UUID NOT NULL,
    "program_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "season" INTEGER NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "program_pkey" PRIMARY KEY ("company_id","program_id")
);

-- CreateTable
CREATE TABLE "round" (
    "company_id" UUID NOT NULL,
    "round_id" UUID NOT NULL,
    "program_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "name" TEXT NOT NULL,
    "opens_on" DATE NOT NULL,
    "closes_on" DATE NOT NULL,
    "second_look_after_days" INTEGER,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "round_pkey" PRIMARY KEY ("company_id","round_id")
);

-- CreateTable
CREATE TABLE "round_treatment" (
    "company_id" UUID NOT NULL,
    "round_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "product_id" UUID NOT NULL,
    "label_use" TEXT NOT NULL,
    "rate_basis" TEXT NOT NULL,
    "rate_amount" BIGINT NOT NULL,
    "rate_per" BIGINT NOT NULL,
    "rate_text" TEXT NOT NULL,
    "reason" TEXT NOT NULL,

    CONSTRAINT "round_treatment_pkey" PRIMARY KEY ("company_id","round_id","line")
);

-- CreateTable
CREATE TABLE "visit" (
    "company_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "property_id" UUID NOT NULL,
    "round_id" UUID,
    "name" TEXT NOT NULL,
    "opens_on" DATE NOT NULL,
    "closes_on" DATE NOT NULL,
    "state" TEXT NOT NULL DEFAULT 'planned',
    "window_from_minute" INTEGER,
    "window_until_minute" INTEGER,
    "service_minutes" INTEGER NOT NULL,
    "second_look_after_days" INTEGER,
    "looks_again_at_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "visit_pkey" PRIMARY KEY ("company_id","visit_id")
);

-- CreateTable
CREATE TABLE "visit_task" (
    "company_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "product_id" UUID,
    "label_use" TEXT,
    "rate_basis" TEXT,
    "rate_amount" BIGINT,
    "rate_per" BIGINT,
    "rate_text" TEXT,
    "reason" TEXT NOT NULL,
    "equipment_id" UUID,

    CONSTRAINT "visit_task_pkey" PRIMARY KEY ("company_id","visit_id","line")
);

-- CreateTable
CREATE TABLE "visit_task_zone" (
    "company_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "zone_id" UUID NOT NULL,

    CONSTRAINT "visit_task_zone_pkey" PRIMARY KEY ("company_id","visit_id","line","zone_id")
);

-- CreateTable
CREATE TABLE "route_day" (
    "company_id" UUID NOT NULL,
    "route_day_id" UUID NOT NULL,
    "date" DATE NOT NULL,
    "vehicle_id" UUID NOT NULL,
    "operator_id" UUID NOT NULL,
    "starts_at_minute" INTEGER NOT NULL,
    "ends_at_minute" INTEGER NOT NULL,
    "forecast_high_f" INTEGER,
    "forecast_source" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "route_day_pkey" PRIMARY KEY ("company_id","route_day_id")
);

-- CreateTable
CREATE TABLE "stop" (
    "company_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "route_day_id" UUID NOT NULL,
    "position" INTEGER NOT NULL,
    "arrives_at_minute" INTEGER,
    "drive_minutes" INTEGER,
    "is_pinned" BOOLEAN NOT NULL DEFAULT false,

    CONSTRAINT "stop_pkey" PRIMARY KEY ("company_id","visit_id")
);

-- CreateTable
CREATE TABLE "mix_ticket" (
    "company_id" UUID NOT NULL,
    "mix_ticket_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "snapshot" JSONB NOT NULL,
    "rules_version" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "issued_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "mix_ticket_pkey" PRIMARY KEY ("company_id","mix_ticket_id")
);

-- CreateTable
CREATE TABLE "hold_answer" (
    "company_id" UUID NOT NULL,
    "hold_answer_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "rule" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "license_id" UUID NOT NULL,
    "answered_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "hold_answer_pkey" PRIMARY KEY ("company_id","hold_answer_id")
);

-- CreateTable
CREATE TABLE "fill" (
    "company_id" UUID NOT NULL,
    "fill_id" UUID NOT NULL,
    "equipment_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "finished_volume" BIGINT NOT NULL,
    "filled_at" TIMESTAMPTZ(3) NOT NULL,
    "entered_at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,
    "mixing_place" TEXT NOT NULL,
    "stock_posting_id" UUID NOT NULL,
    "planned_visit_ids" UUID[],

    CONSTRAINT "fill_pkey" PRIMARY KEY ("company_id","fill_id")
);

-- CreateTable
CREATE TABLE "fill_draw" (
    "company_id" UUID NOT NULL,
    "fill_id" UUID NOT NULL,
    "visit_id" UUID NOT NULL,
    "register_entry_id" UUID NOT NULL,
    "volume" BIGINT NOT NULL,
    "is_measured" BOOLEAN NOT NULL,

    CONSTRAINT "fill_draw_pkey" PRIMARY KEY ("company_id","fill_id","visit_id")
);

-- CreateTable
CREATE TABLE "register_entry" (
    "company_id" UUID NOT NULL,
    "register_entry_id" UUID NOT NULL,
    "number" INTEGER NOT NULL,
    "kind" TEXT NOT NULL,
    "visit_id" UUID NOT NULL,
    "amends_id" UUID,
    "request_id" UUID NOT NULL,
    "content" TEXT NOT NULL,
    "hash" BYTEA NOT NULL,
    "previous_hash" BYTEA NOT NULL,
    "started_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3) NOT NULL,
    "applicator_id" UUID NOT NULL,
    "written_at" TIMESTAMPTZ(3) NOT NULL,
    "person_id" UUID NOT NULL,
    "stock_posting_id" UUID,

    CONSTRAINT "register_entry_pkey" PRIMARY KEY ("company_id","register_entry_id")
);

-- CreateTable
CREATE TABLE "issued_paper" (
    "company_id" UUID NOT NULL,
    "issued_paper_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "subject_id" UUID NOT NULL,
    "data" JSONB NOT NULL,
    "rules_version" TEXT NOT NULL,
    "person_id" UUID NOT NULL,
    "issued_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "issued_paper_pkey" PRIMARY KEY ("company_id","issued_paper_id")
);

-- CreateIndex
CREATE INDEX "property_company_id_client_id_idx" ON "property"("company_id", "client_id");

-- CreateIndex
CREATE INDEX "zone_company_id_property_id_idx" ON "zone"("company_id", "property_id");

-- CreateIndex
CREATE INDEX "water_edge_company_id_zone_id_idx" ON "water_edge"("company_id", "zone_id");

-- CreateIndex
CREATE INDEX "station_company_id_property_id_idx" ON "station"("company_id", "property_id");

-- CreateIndex
CREATE INDEX "soil_test_company_id_zone_id_idx" ON "soil_test"("company_id", "zone_id");

-- CreateIndex
CREATE UNIQUE INDEX "label_entry_company_id_product_id_number_key" ON "label_entry"("company_id", "product_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "label_confirmation_company_id_label_entry_id_key" ON "label_confirmation"("company_id", "label_entry_id");

-- CreateIndex
CREATE UNIQUE INDEX "lot_company_id_product_id_number_container_size_key" ON "lot"("company_id", "product_id", "number", "container_size");

-- CreateIndex
CREATE UNIQUE INDEX "stock_posting_company_id_request_id_key" ON "stock_posting"("company_id", "request_id");

-- CreateIndex
CREATE INDEX "stock_entry_company_id_lot_id_stock_location_id_idx" ON "stock_entry"("company_id", "lot_id", "stock_location_id");

-- CreateIndex
CREATE UNIQUE INDEX "vehicle_company_id_number_key" ON "vehicle"("company_id", "number");

-- CreateIndex
CREATE INDEX "calibration_company_id_equipment_id_idx" ON "calibration"("company_id", "equipment_id");

-- CreateIndex
CREATE UNIQUE INDEX "program_company_id_season_name_key" ON "program"("company_id", "season", "name");

-- CreateIndex
CREATE UNIQUE INDEX "round_company_id_program_id_position_key" ON "round"("company_id", "program_id", "position");

-- CreateIndex
CREATE INDEX "visit_company_id_property_id_idx" ON "visit"("company_id", "property_id");

-- CreateIndex
CREATE INDEX "visit_company_id_opens_on_idx" ON "visit"("company_id", "opens_on");

-- CreateIndex
CREATE UNIQUE INDEX "route_day_company_id_date_vehicle_id_key" ON "route_day"("company_id", "date", "vehicle_id");

-- CreateIndex
CREATE INDEX "stop_company_id_route_day_id_position_idx" ON "stop"("company_id", "route_day_id", "position");

-- CreateIndex
CREATE INDEX "mix_ticket_company_id_visit_id_idx" ON "mix_ticket"("company_id", "visit_id");

-- CreateIndex
CREATE UNIQUE INDEX "mix_ticket_company_id_number_key" ON "mix_ticket"("company_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "hold_answer_company_id_visit_id_rule_key" ON "hold_answer"("company_id", "visit_id", "rule");

-- CreateIndex
CREATE UNIQUE INDEX "fill_company_id_number_key" ON "fill"("company_id", "number");

-- CreateIndex
CREATE INDEX "register_entry_company_id_started_at_idx" ON "register_entry"("company_id", "started_at");

-- CreateIndex
CREATE UNIQUE INDEX "register_entry_company_id_number_key" ON "register_entry"("company_id", "number");

-- CreateIndex
CREATE UNIQUE INDEX "register_entry_company_id_request_id_key" ON "register_entry"("company_id", "request_id");

-- CreateIndex
CREATE INDEX "issued_paper_company_id_subject_id_idx" ON "issued_paper"("company_id", "subject_id");

-- AddForeignKey
ALTER TABLE "client" ADD CONSTRAINT "client_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "property" ADD CONSTRAINT "property_company_id_client_id_fkey" FOREIGN KEY ("company_id", "client_id") REFERENCES "client"("company_id", "client_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "zone" ADD CONSTRAINT "zone_company_id_property_id_fkey" FOREIGN KEY ("company_id", "property_id") REFERENCES "property"("company_id", "property_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "water_edge" ADD CONSTRAINT "water_edge_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "station" ADD CONSTRAINT "station_company_id_property_id_fkey" FOREIGN KEY ("company_id", "property_id") REFERENCES "property"("company_id", "property_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "station_zone" ADD CONSTRAINT "station_zone_company_id_station_id_fkey" FOREIGN KEY ("company_id", "station_id") REFERENCES "station"("company_id", "station_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "station_zone" ADD CONSTRAINT "station_zone_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "soil_test" ADD CONSTRAINT "soil_test_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "product" ADD CONSTRAINT "product_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_entry" ADD CONSTRAINT "label_entry_company_id_product_id_fkey" FOREIGN KEY ("company_id", "product_id") REFERENCES "product"("company_id", "product_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_entry" ADD CONSTRAINT "label_entry_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_confirmation" ADD CONSTRAINT "label_confirmation_company_id_label_entry_id_fkey" FOREIGN KEY ("company_id", "label_entry_id") REFERENCES "label_entry"("company_id", "label_entry_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "label_confirmation" ADD CONSTRAINT "label_confirmation_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "lot" ADD CONSTRAINT "lot_company_id_product_id_fkey" FOREIGN KEY ("company_id", "product_id") REFERENCES "product"("company_id", "product_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_company_id_vehicle_id_fkey" FOREIGN KEY ("company_id", "vehicle_id") REFERENCES "vehicle"("company_id", "vehicle_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_posting" ADD CONSTRAINT "stock_posting_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_entry" ADD CONSTRAINT "stock_entry_company_id_stock_posting_id_fkey" FOREIGN KEY ("company_id", "stock_posting_id") REFERENCES "stock_posting"("company_id", "stock_posting_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_entry" ADD CONSTRAINT "stock_entry_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "lot_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_entry" ADD CONSTRAINT "stock_entry_company_id_stock_location_id_fkey" FOREIGN KEY ("company_id", "stock_location_id") REFERENCES "stock_location"("company_id", "stock_location_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_balance" ADD CONSTRAINT "stock_balance_company_id_lot_id_fkey" FOREIGN KEY ("company_id", "lot_id") REFERENCES "lot"("company_id", "lot_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stock_balance" ADD CONSTRAINT "stock_balance_company_id_stock_location_id_fkey" FOREIGN KEY ("company_id", "stock_location_id") REFERENCES "stock_location"("company_id", "stock_location_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_company_id_vehicle_id_fkey" FOREIGN KEY ("company_id", "vehicle_id") REFERENCES "vehicle"("company_id", "vehicle_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "measuring_tool" ADD CONSTRAINT "measuring_tool_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_company_id_operator_id_fkey" FOREIGN KEY ("company_id", "operator_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_company_id_product_id_fkey" FOREIGN KEY ("company_id", "product_id") REFERENCES "product"("company_id", "product_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "program" ADD CONSTRAINT "program_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round" ADD CONSTRAINT "round_company_id_program_id_fkey" FOREIGN KEY ("company_id", "program_id") REFERENCES "program"("company_id", "program_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_treatment" ADD CONSTRAINT "round_treatment_company_id_round_id_fkey" FOREIGN KEY ("company_id", "round_id") REFERENCES "round"("company_id", "round_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "round_treatment" ADD CONSTRAINT "round_treatment_company_id_product_id_fkey" FOREIGN KEY ("company_id", "product_id") REFERENCES "product"("company_id", "product_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_property_id_fkey" FOREIGN KEY ("company_id", "property_id") REFERENCES "property"("company_id", "property_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_round_id_fkey" FOREIGN KEY ("company_id", "round_id") REFERENCES "round"("company_id", "round_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit" ADD CONSTRAINT "visit_company_id_looks_again_at_id_fkey" FOREIGN KEY ("company_id", "looks_again_at_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_company_id_product_id_fkey" FOREIGN KEY ("company_id", "product_id") REFERENCES "product"("company_id", "product_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit_task_zone" ADD CONSTRAINT "visit_task_zone_company_id_visit_id_line_fkey" FOREIGN KEY ("company_id", "visit_id", "line") REFERENCES "visit_task"("company_id", "visit_id", "line") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "visit_task_zone" ADD CONSTRAINT "visit_task_zone_company_id_zone_id_fkey" FOREIGN KEY ("company_id", "zone_id") REFERENCES "zone"("company_id", "zone_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_company_id_vehicle_id_fkey" FOREIGN KEY ("company_id", "vehicle_id") REFERENCES "vehicle"("company_id", "vehicle_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_company_id_operator_id_fkey" FOREIGN KEY ("company_id", "operator_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stop" ADD CONSTRAINT "stop_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "stop" ADD CONSTRAINT "stop_company_id_route_day_id_fkey" FOREIGN KEY ("company_id", "route_day_id") REFERENCES "route_day"("company_id", "route_day_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mix_ticket" ADD CONSTRAINT "mix_ticket_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "mix_ticket" ADD CONSTRAINT "mix_ticket_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hold_answer" ADD CONSTRAINT "hold_answer_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hold_answer" ADD CONSTRAINT "hold_answer_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "hold_answer" ADD CONSTRAINT "hold_answer_company_id_license_id_fkey" FOREIGN KEY ("company_id", "license_id") REFERENCES "license"("company_id", "license_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill" ADD CONSTRAINT "fill_company_id_equipment_id_fkey" FOREIGN KEY ("company_id", "equipment_id") REFERENCES "equipment"("company_id", "equipment_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill" ADD CONSTRAINT "fill_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill" ADD CONSTRAINT "fill_company_id_stock_posting_id_fkey" FOREIGN KEY ("company_id", "stock_posting_id") REFERENCES "stock_posting"("company_id", "stock_posting_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_draw" ADD CONSTRAINT "fill_draw_company_id_fill_id_fkey" FOREIGN KEY ("company_id", "fill_id") REFERENCES "fill"("company_id", "fill_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_draw" ADD CONSTRAINT "fill_draw_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "fill_draw" ADD CONSTRAINT "fill_draw_company_id_register_entry_id_fkey" FOREIGN KEY ("company_id", "register_entry_id") REFERENCES "register_entry"("company_id", "register_entry_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_company_id_visit_id_fkey" FOREIGN KEY ("company_id", "visit_id") REFERENCES "visit"("company_id", "visit_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_company_id_applicator_id_fkey" FOREIGN KEY ("company_id", "applicator_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_company_id_stock_posting_id_fkey" FOREIGN KEY ("company_id", "stock_posting_id") REFERENCES "stock_posting"("company_id", "stock_posting_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_company_id_amends_id_fkey" FOREIGN KEY ("company_id", "amends_id") REFERENCES "register_entry"("company_id", "register_entry_id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "issued_paper" ADD CONSTRAINT "issued_paper_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;

------------------------------------------------------------------------------------------------------
-- What Prisma does not know: checks, policies, grants, triggers.

ALTER TABLE "client" ADD CONSTRAINT "client_standing_is_known" CHECK ("standing" IN ('current', 'paused', 'left'));
ALTER TABLE "property" ADD CONSTRAINT "property_zip_is_five_or_nine_digits" CHECK ("zip" ~ '^[0-9]{5}(-[0-9]{4})?$');
ALTER TABLE "property" ADD CONSTRAINT "property_position_is_whole" CHECK (("latitude" IS NULL) = ("longitude" IS NULL) AND ("latitude" IS NULL) = ("position_origin" IS NULL));
ALTER TABLE "property" ADD CONSTRAINT "property_position_is_on_earth" CHECK ("latitude" BETWEEN -90 AND 90 AND "longitude" BETWEEN -180 AND 180);
ALTER TABLE "property" ADD CONSTRAINT "property_position_origin_is_known" CHECK ("position_origin" IN ('zip-centroid', 'entered'));
ALTER TABLE "property" ADD CONSTRAINT "property_mowing_weekday_is_one" CHECK ("mowing_weekday" BETWEEN 1 AND 7);
ALTER TABLE "property" ADD CONSTRAINT "property_mowed_by_is_known" CHECK ("mowed_by" IN ('customer', 'us', 'another-crew'));
ALTER TABLE "property" ADD CONSTRAINT "property_measures_are_positive" CHECK ("lot_area" > 0 AND "narrowest_gate" > 0);
ALTER TABLE "property" ADD CONSTRAINT "property_watering_hours_are_whole" CHECK (("watering_from_minute" IS NULL) = ("watering_until_minute" IS NULL));
ALTER TABLE "property" ADD CONSTRAINT "property_watering_hours_lie_in_a_day" CHECK ("watering_from_minute" BETWEEN 0 AND 1439 AND "watering_until_minute" BETWEEN 1 AND 1440 AND "watering_from_minute" <> "watering_until_minute");
ALTER TABLE "property" ADD CONSTRAINT "property_watering_weekdays_are_some" CHECK ("watering_weekdays" ~ '^[1-7]{1,7}$');
ALTER TABLE "zone" ADD CONSTRAINT "zone_area_is_positive" CHECK ("area" > 0);
ALTER TABLE "zone" ADD CONSTRAINT "zone_area_origin_is_known" CHECK ("area_origin" IN ('measured', 'entered', 'imported'));
ALTER TABLE "zone" ADD CONSTRAINT "zone_grasses_are_named" CHECK (cardinality("grasses") > 0);
ALTER TABLE "zone" ADD CONSTRAINT "zone_is_established_by_something" CHECK ("established_by" IN ('seed', 'sod') AND ("established_by" IS NULL) = ("established_on" IS NULL));
CREATE UNIQUE INDEX "zone_letter_stands_once" ON "zone"("company_id", "property_id", "letter") WHERE "removed_at" IS NULL;
ALTER TABLE "water_edge" ADD CONSTRAINT "water_edge_measures_are_positive" CHECK ("length" > 0 AND "width" > 0);
ALTER TABLE "station" ADD CONSTRAINT "station_test_is_whole" CHECK (("test_depth" IS NULL) = ("test_minutes" IS NULL) AND ("test_depth" IS NULL) = ("tested_on" IS NULL));
ALTER TABLE "station" ADD CONSTRAINT "station_measures_are_positive" CHECK ("test_depth" > 0 AND "test_minutes" > 0 AND "longest_run_minutes" > 0 AND "number" > 0);
CREATE UNIQUE INDEX "station_number_stands_once" ON "station"("company_id", "property_id", "number") WHERE "removed_at" IS NULL;
ALTER TABLE "soil_test" ADD CONSTRAINT "soil_test_phosphorus_is_known" CHECK ("phosphorus" IN ('deficient', 'sufficient', 'not-tested'));
ALTER TABLE "product" ADD CONSTRAINT "product_form_is_known" CHECK ("form" IN ('granular', 'liquid'));
ALTER TABLE "product" ADD CONSTRAINT "product_is_counted_by_mass_or_volume" CHECK ("counted_by" IN ('mass', 'volume'));
CREATE UNIQUE INDEX "product_name_stands_once" ON "product"("company_id", lower("name")) WHERE "retired_at" IS NULL;
ALTER TABLE "label_entry" ADD CONSTRAINT "label_entry_counts_from_one" CHECK ("number" > 0);
ALTER TABLE "lot" ADD CONSTRAINT "lot_container_holds_something" CHECK ("container_size" > 0);
ALTER TABLE "lot" ADD CONSTRAINT "lot_container_is_known" CHECK ("container" IN ('bag', 'jug', 'bottle', 'drum', 'box'));
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_kind_is_known" CHECK ("kind" IN ('shop', 'truck', 'tank', 'supplier', 'lawn', 'rinsate', 'loss', 'count-difference'));
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_truck_has_its_vehicle" CHECK (("kind" = 'truck') = ("vehicle_id" IS NOT NULL));
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_tank_has_its_equipment" CHECK (("kind" = 'tank') = ("equipment_id" IS NOT NULL));
ALTER TABLE "stock_location" ADD CONSTRAINT "stock_location_position_is_whole" CHECK (("latitude" IS NULL) = ("longitude" IS NULL) AND "latitude" BETWEEN -90 AND 90 AND "longitude" BETWEEN -180 AND 180);
CREATE UNIQUE INDEX "stock_location_beyond_the_house_is_one" ON "stock_location"("company_id", "kind") WHERE "kind" IN ('supplier', 'lawn', 'rinsate', 'loss', 'count-difference');
CREATE UNIQUE INDEX "stock_location_of_a_vehicle_is_one" ON "stock_location"("company_id", "vehicle_id") WHERE "vehicle_id" IS NOT NULL;
CREATE UNIQUE INDEX "stock_location_of_a_tank_is_one" ON "stock_location"("company_id", "equipment_id") WHERE "equipment_id" IS NOT NULL;
ALTER TABLE "stock_posting" ADD CONSTRAINT "stock_posting_kind_is_known" CHECK ("kind" IN ('receive', 'move', 'fill', 'apply', 'return', 'lose', 'count'));
ALTER TABLE "stock_entry" ADD CONSTRAINT "stock_entry_moves_something" CHECK ("amount" <> 0);
ALTER TABLE "vehicle" ADD CONSTRAINT "vehicle_measures_are_positive" CHECK ("number" > 0 AND "payload" > 0);
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_kind_is_known" CHECK ("kind" IN ('boom-sprayer', 'backpack-sprayer', 'hose-and-gun', 'broadcast-spreader', 'drop-spreader'));
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_measures_are_positive" CHECK ("capacity" > 0 AND "hold_up" >= 0 AND "swath" > 0);
ALTER TABLE "equipment" ADD CONSTRAINT "equipment_deflector_is_a_spreaders" CHECK ("has_deflector" IS NULL OR "kind" IN ('broadcast-spreader', 'drop-spreader'));
ALTER TABLE "measuring_tool" ADD CONSTRAINT "measuring_tool_dimension_is_known" CHECK ("dimension" IN ('mass', 'volume'));
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_rate_is_positive" CHECK ("rate_amount" > 0 AND "rate_per" > 0 AND "pressure_psi" > 0);
ALTER TABLE "calibration" ADD CONSTRAINT "calibration_basis_is_known" CHECK ("rate_basis" IN ('carrier-volume-per-area', 'product-mass-per-area'));
ALTER TABLE "program" ADD CONSTRAINT "program_season_is_a_year" CHECK ("season" BETWEEN 2000 AND 2999);
ALTER TABLE "round" ADD CONSTRAINT "round_closes_after_it_opens" CHECK ("closes_on" >= "opens_on");
ALTER TABLE "round" ADD CONSTRAINT "round_numbers_are_positive" CHECK ("position" > 0 AND "second_look_after_days" BETWEEN 1 AND 60);
ALTER TABLE "round_treatment" ADD CONSTRAINT "round_treatment_rate_is_whole" CHECK ("rate_amount" > 0 AND "rate_per" > 0);
ALTER TABLE "visit" ADD CONSTRAINT "visit_closes_after_it_opens" CHECK ("closes_on" >= "opens_on");
ALTER TABLE "visit" ADD CONSTRAINT "visit_state_is_known" CHECK ("state" IN ('planned', 'done', 'part-done', 'not-done'));
ALTER TABLE "visit" ADD CONSTRAINT "visit_window_lies_in_a_day" CHECK (("window_from_minute" IS NULL) = ("window_until_minute" IS NULL) AND "window_from_minute" BETWEEN 0 AND 1439 AND "window_until_minute" BETWEEN 1 AND 1440 AND "window_from_minute" < "window_until_minute");
ALTER TABLE "visit" ADD CONSTRAINT "visit_numbers_are_positive" CHECK ("service_minutes" BETWEEN 1 AND 1440 AND "second_look_after_days" BETWEEN 1 AND 60);
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_is_a_treatment_or_a_look" CHECK (("kind" = 'look' AND num_nonnulls("product_id", "label_use", "rate_basis", "rate_amount", "rate_per", "rate_text", "equipment_id") = 0) OR ("kind" = 'treatment' AND num_nulls("product_id", "label_use", "rate_basis", "rate_amount", "rate_per", "rate_text") = 0));
ALTER TABLE "visit_task" ADD CONSTRAINT "visit_task_rate_is_positive" CHECK ("rate_amount" > 0 AND "rate_per" > 0);
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_hours_lie_in_a_day" CHECK ("starts_at_minute" BETWEEN 0 AND 1439 AND "ends_at_minute" BETWEEN 1 AND 1440 AND "starts_at_minute" < "ends_at_minute");
ALTER TABLE "route_day" ADD CONSTRAINT "route_day_forecast_is_whole" CHECK (("forecast_high_f" IS NULL) = ("forecast_source" IS NULL) AND "forecast_high_f" BETWEEN -60 AND 140);
ALTER TABLE "stop" ADD CONSTRAINT "stop_counts_from_one" CHECK ("position" > 0);
ALTER TABLE "mix_ticket" ADD CONSTRAINT "mix_ticket_counts_from_one" CHECK ("number" > 0);
ALTER TABLE "fill" ADD CONSTRAINT "fill_holds_something" CHECK ("finished_volume" > 0 AND "number" > 0);
ALTER TABLE "fill_draw" ADD CONSTRAINT "fill_draw_takes_something" CHECK ("volume" > 0);
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_kind_is_known" CHECK ("kind" IN ('record', 'amendment'));
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_amends_as_an_amendment" CHECK (("kind" = 'amendment') = ("amends_id" IS NOT NULL));
ALTER TABLE "register_entry" ADD CONSTRAINT "register_entry_ends_no_earlier_than_it_starts" CHECK ("ended_at" >= "started_at");
CREATE UNIQUE INDEX "register_entry_of_a_visit_is_one" ON "register_entry"("company_id", "visit_id") WHERE "kind" = 'record';
ALTER TABLE "issued_paper" ADD CONSTRAINT "issued_paper_kind_is_known" CHECK ("kind" IN ('route-sheet', 'loading-list', 'mix-ticket', 'application-record', 'customer-notice', 'posting-sign'));

ALTER TABLE "client" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "client" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "property" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "property" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "zone" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "zone" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "water_edge" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "water_edge" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "station" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "station" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "station_zone" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "station_zone" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "soil_test" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "soil_test" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "product" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "product" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "label_entry" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "label_entry" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "label_confirmation" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "label_confirmation" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "lot" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "lot" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "stock_location" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "stock_location" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "stock_posting" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "stock_posting" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "stock_entry" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "stock_entry" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "stock_balance" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "stock_balance" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "vehicle" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "vehicle" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "equipment" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "equipment" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "measuring_tool" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "measuring_tool" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "calibration" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "calibration" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "program" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "program" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "round" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "round" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "round_treatment" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "round_treatment" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "visit" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "visit" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "visit_task" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "visit_task" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "visit_task_zone" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "visit_task_zone" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "route_day" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "route_day" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "stop" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "stop" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "mix_ticket" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "mix_ticket" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "hold_answer" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "hold_answer" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "fill" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "fill" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "fill_draw" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "fill_draw" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "register_entry" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "register_entry" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "issued_paper" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "issued_paper" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT, UPDATE ON "client", "property", "zone", "water_edge", "station", "station_zone", "soil_test", "product", "lot", "stock_location", "vehicle", "equipment", "measuring_tool", "program", "round", "round_treatment", "visit", "visit_task", "visit_task_zone", "route_day", "stop" TO halfpass_app;
-- Plans are made anew; what was done is not in these.
GRANT DELETE ON "round_treatment", "visit_task", "visit_task_zone", "station_zone", "stop" TO halfpass_app;
GRANT SELECT, INSERT ON "label_entry", "label_confirmation", "stock_posting", "stock_entry", "calibration", "mix_ticket", "hold_answer", "fill", "fill_draw", "register_entry", "issued_paper" TO halfpass_app;
GRANT SELECT ON "stock_balance" TO halfpass_app;

CREATE TRIGGER "label_entry_only_grows" BEFORE UPDATE OR DELETE ON "label_entry" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "label_entry_is_never_emptied" BEFORE TRUNCATE ON "label_entry" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "label_confirmation_only_grows" BEFORE UPDATE OR DELETE ON "label_confirmation" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "label_confirmation_is_never_emptied" BEFORE TRUNCATE ON "label_confirmation" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "stock_posting_only_grows" BEFORE UPDATE OR DELETE ON "stock_posting" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "stock_posting_is_never_emptied" BEFORE TRUNCATE ON "stock_posting" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "stock_entry_only_grows" BEFORE UPDATE OR DELETE ON "stock_entry" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "stock_entry_is_never_emptied" BEFORE TRUNCATE ON "stock_entry" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "calibration_only_grows" BEFORE UPDATE OR DELETE ON "calibration" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "calibration_is_never_emptied" BEFORE TRUNCATE ON "calibration" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "mix_ticket_only_grows" BEFORE UPDATE OR DELETE ON "mix_ticket" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "mix_ticket_is_never_emptied" BEFORE TRUNCATE ON "mix_ticket" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "hold_answer_only_grows" BEFORE UPDATE OR DELETE ON "hold_answer" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "hold_answer_is_never_emptied" BEFORE TRUNCATE ON "hold_answer" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_only_grows" BEFORE UPDATE OR DELETE ON "fill" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_is_never_emptied" BEFORE TRUNCATE ON "fill" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_draw_only_grows" BEFORE UPDATE OR DELETE ON "fill_draw" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "fill_draw_is_never_emptied" BEFORE TRUNCATE ON "fill_draw" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "register_entry_only_grows" BEFORE UPDATE OR DELETE ON "register_entry" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "register_entry_is_never_emptied" BEFORE TRUNCATE ON "register_entry" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "issued_paper_only_grows" BEFORE UPDATE OR DELETE ON "issued_paper" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "issued_paper_is_never_emptied" BEFORE TRUNCATE ON "issued_paper" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

------------------------------------------------------------------------------------------------------
-- The ledger of stock: every posting adds up to nothing, lot by lot, and every entry moves its balance.

CREATE FUNCTION move_stock_balance() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
BEGIN
  INSERT INTO stock_balance AS b (company_id, lot_id, stock_location_id, amount)
  VALUES (NEW.company_id, NEW.lot_id, NEW.stock_location_id, NEW.amount)
  ON CONFLICT (company_id, lot_id, stock_location_id) DO UPDATE SET amount = b.amount + excluded.amount;
  RETURN NULL;
END
$$;
CREATE TRIGGER "stock_entry_moves_its_balance" AFTER INSERT ON "stock_entry" FOR EACH ROW EXECUTE FUNCTION move_stock_balance();

CREATE FUNCTION require_balanced_posting() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
DECLARE
  v_sum numeric;
BEGIN
  SELECT sum(amount) INTO v_sum FROM stock_entry
  WHERE company_id = NEW.company_id AND stock_posting_id = NEW.stock_posting_id AND lot_id = NEW.lot_id;
  IF v_sum <> 0 THEN
    RAISE EXCEPTION 'stock posting % leaves % of lot % without a place', NEW.stock_posting_id, v_sum, NEW.lot_id
      USING ERRCODE = 'check_violation';
  END IF;
  RETURN NULL;
END
$$;
CREATE CONSTRAINT TRIGGER "stock_entry_balances" AFTER INSERT ON "stock_entry" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION require_balanced_posting();

------------------------------------------------------------------------------------------------------
-- The register: numbers without a gap, and each entry's hash over the hash before it and its own bytes.
-- After the row, because a policy judges the row first. Two at once can't both take the next number.

CREATE FUNCTION require_continued_register() RETURNS trigger
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
DECLARE
  v_hash bytea := decode(repeat('00', 32), 'hex');
BEGIN
  IF NEW.number <> 1 THEN
    SELECT hash INTO v_hash FROM register_entry WHERE company_id = NEW.company_id AND number = NEW.number - 1;
  END IF;
  IF v_hash IS NULL OR NEW.previous_hash <> v_hash OR NEW.hash <> sha256(v_hash || convert_to(NEW.content, 'UTF8')) THEN
    RAISE EXCEPTION 'register entry % does not continue the register', NEW.number USING ERRCODE = 'check_violation';
  END IF;
  RETURN NULL;
END
$$;
CREATE TRIGGER "register_entry_continues" AFTER INSERT ON "register_entry" FOR EACH ROW EXECUTE FUNCTION require_continued_register();

REVOKE EXECUTE ON FUNCTION move_stock_balance(), require_balanced_posting(), require_continued_register() FROM PUBLIC;
