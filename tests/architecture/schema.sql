-- What the migrations add up to, read from a fresh database by tests/architecture/schema.test.ts. Not run by anything.

-- Tables

create table account (
  account_id uuid not null,
  email text not null,
  password_hash text not null,
  session_version integer not null default 1,
  created_at timestamp(3) with time zone not null,
  constraint account_pkey PRIMARY KEY (account_id),
  constraint account_email_is_lower_case CHECK (((email = lower(email)) AND (email ~~ '%_@_%'::text))),
  constraint account_password_is_argon2id CHECK ((password_hash ~~ '$argon2id$%'::text))
);

create table audit_event (
  company_id uuid not null,
  audit_event_id uuid not null,
  at timestamp(3) with time zone not null,
  account_id uuid,
  person_name text not null,
  deed text not null,
  subject_id uuid,
  details jsonb not null,
  constraint audit_event_pkey PRIMARY KEY (company_id, audit_event_id),
  constraint audit_event_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table calibration (
  company_id uuid not null,
  calibration_id uuid not null,
  equipment_id uuid not null,
  operator_id uuid not null,
  product_id uuid,
  tip text,
  pressure_psi double precision,
  setting text,
  method text not null,
  inputs jsonb not null,
  rate_basis text not null,
  rate_amount bigint not null,
  rate_per bigint not null,
  made_on date not null,
  entered_at timestamp(3) with time zone not null,
  constraint calibration_pkey PRIMARY KEY (company_id, calibration_id),
  constraint calibration_basis_is_known CHECK ((rate_basis = ANY (ARRAY['carrier-volume-per-area'::text, 'product-mass-per-area'::text]))),
  constraint calibration_rate_is_positive CHECK (((rate_amount > 0) AND (rate_per > 0) AND (pressure_psi > (0)::double precision))),
  constraint calibration_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint calibration_company_id_operator_id_fkey FOREIGN KEY (company_id, operator_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint calibration_company_id_product_id_fkey FOREIGN KEY (company_id, product_id) REFERENCES product(company_id, product_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table clean_out (
  company_id uuid not null,
  clean_out_id uuid not null,
  request_id uuid not null,
  equipment_id uuid not null,
  cleaned_at timestamp(3) with time zone not null,
  entered_at timestamp(3) with time zone not null,
  done_by_id uuid not null,
  person_id uuid not null,
  how text not null,
  rinsate_went text not null,
  rinsate_visit_id uuid,
  rinsate_where text,
  stock_posting_id uuid,
  constraint clean_out_pkey PRIMARY KEY (company_id, clean_out_id),
  constraint clean_out_is_said_in_words CHECK ((btrim(how) <> ''::text)),
  constraint clean_out_rinsate_went_somewhere CHECK (
CASE rinsate_went
    WHEN 'labeled-site'::text THEN (num_nonnulls(rinsate_visit_id, rinsate_where) = 1)
    WHEN 'shop-tank'::text THEN (num_nonnulls(rinsate_visit_id, rinsate_where) = 0)
    WHEN 'elsewhere'::text THEN ((rinsate_visit_id IS NULL) AND (rinsate_where IS NOT NULL))
    ELSE false
END),
  constraint clean_out_company_id_done_by_id_fkey FOREIGN KEY (company_id, done_by_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint clean_out_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint clean_out_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint clean_out_company_id_rinsate_visit_id_fkey FOREIGN KEY (company_id, rinsate_visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint clean_out_company_id_stock_posting_id_fkey FOREIGN KEY (company_id, stock_posting_id) REFERENCES stock_posting(company_id, stock_posting_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table client (
  company_id uuid not null,
  client_id uuid not null,
  name text not null,
  phone text,
  email text,
  standing text not null default 'current'::text,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  constraint client_pkey PRIMARY KEY (company_id, client_id),
  constraint client_standing_is_known CHECK ((standing = ANY (ARRAY['current'::text, 'paused'::text, 'left'::text]))),
  constraint client_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table company (
  company_id uuid not null,
  name text not null,
  state text not null,
  time_zone text not null,
  phone text,
  address text,
  business_license_number text,
  business_license_expires_on date,
  insurance_expires_on date,
  is_demonstration boolean not null default false,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  temperature_source text,
  constraint company_pkey PRIMARY KEY (company_id),
  constraint company_name_is_given CHECK (((length(btrim(name)) >= 1) AND (length(btrim(name)) <= 200))),
  constraint company_state_is_a_usps_code CHECK ((state ~ '^[A-Z]{2}$'::text)),
  constraint company_temperature_source_is_said CHECK ((btrim(temperature_source) <> ''::text)),
  constraint company_time_zone_is_given CHECK (((length(time_zone) >= 1) AND (length(time_zone) <= 64)))
);

create table daily_temperature (
  company_id uuid not null,
  source text not null,
  date date not null,
  entry_number integer not null,
  request_id uuid not null,
  scale text not null,
  high_tenths integer not null,
  low_tenths integer not null,
  figures_from text not null,
  entered_at timestamp(3) with time zone not null,
  person_id uuid not null,
  constraint daily_temperature_pkey PRIMARY KEY (company_id, source, date, entry_number),
  constraint daily_temperature_entries_are_counted CHECK ((entry_number >= 1)),
  constraint daily_temperature_is_weather CHECK (((low_tenths <= high_tenths) AND
CASE scale
    WHEN 'celsius'::text THEN ((low_tenths >= '-900'::integer) AND (high_tenths <= 750))
    WHEN 'fahrenheit'::text THEN ((low_tenths >= '-1300'::integer) AND (high_tenths <= 1670))
    ELSE false
END)),
  constraint daily_temperature_source_is_said CHECK (((btrim(source) <> ''::text) AND (btrim(figures_from) <> ''::text))),
  constraint daily_temperature_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table delivery_price (
  company_id uuid not null,
  stock_posting_id uuid not null,
  line integer not null,
  number integer not null,
  request_id uuid not null,
  paid_per_container_cents bigint,
  said text,
  stated_at timestamp(3) with time zone not null,
  person_id uuid not null,
  constraint delivery_price_pkey PRIMARY KEY (company_id, stock_posting_id, line, number),
  constraint delivery_price_counts_up CHECK ((number > 0)),
  constraint delivery_price_is_no_debt CHECK ((paid_per_container_cents >= 0)),
  constraint delivery_price_is_said_in_words CHECK ((btrim(said) <> ''::text)),
  constraint delivery_price_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint delivery_price_company_id_stock_posting_id_line_fkey FOREIGN KEY (company_id, stock_posting_id, line) REFERENCES stock_entry(company_id, stock_posting_id, line) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table equipment (
  company_id uuid not null,
  equipment_id uuid not null,
  vehicle_id uuid,
  name text not null,
  kind text not null,
  capacity bigint not null,
  hold_up bigint,
  has_deflector boolean,
  swath bigint,
  created_at timestamp(3) with time zone not null,
  stood_down_at timestamp(3) with time zone,
  version integer not null default 1,
  nominal jsonb,
  constraint equipment_pkey PRIMARY KEY (company_id, equipment_id),
  constraint equipment_deflector_is_a_spreaders CHECK (((has_deflector IS NULL) OR (kind = ANY (ARRAY['broadcast-spreader'::text, 'drop-spreader'::text])))),
  constraint equipment_kind_is_known CHECK ((kind = ANY (ARRAY['boom-sprayer'::text, 'backpack-sprayer'::text, 'hose-and-gun'::text, 'broadcast-spreader'::text, 'drop-spreader'::text]))),
  constraint equipment_measures_are_positive CHECK (((capacity > 0) AND (hold_up >= 0) AND (swath > 0))),
  constraint equipment_nominal_is_an_object CHECK (((nominal IS NULL) OR (jsonb_typeof(nominal) = 'object'::text))),
  constraint equipment_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint equipment_company_id_vehicle_id_fkey FOREIGN KEY (company_id, vehicle_id) REFERENCES vehicle(company_id, vehicle_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table fill (
  company_id uuid not null,
  fill_id uuid not null,
  equipment_id uuid not null,
  number integer not null,
  finished_volume bigint not null,
  filled_at timestamp(3) with time zone not null,
  entered_at timestamp(3) with time zone not null,
  person_id uuid not null,
  mixing_place text not null,
  stock_posting_id uuid not null,
  planned_visit_ids uuid[],
  findings jsonb not null default '[]'::jsonb,
  gauge_after bigint,
  gauge_before bigint,
  in_the_books bigint,
  constraint fill_pkey PRIMARY KEY (company_id, fill_id),
  constraint fill_holds_something CHECK (((finished_volume > 0) AND (number > 0))),
  constraint fill_is_the_difference_of_its_readings CHECK (((num_nonnulls(gauge_before, gauge_after, in_the_books) = 0) OR ((num_nonnulls(gauge_before, gauge_after, in_the_books) = 3) AND (gauge_before >= 0) AND (in_the_books >= 0) AND (finished_volume = (gauge_after - gauge_before))))),
  constraint fill_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_company_id_stock_posting_id_fkey FOREIGN KEY (company_id, stock_posting_id) REFERENCES stock_posting(company_id, stock_posting_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table fill_draw (
  company_id uuid not null,
  fill_id uuid not null,
  visit_id uuid not null,
  register_entry_id uuid not null,
  volume bigint not null,
  is_measured boolean not null,
  fill_rest_id uuid,
  constraint fill_draw_pkey PRIMARY KEY (company_id, fill_id, visit_id),
  constraint fill_draw_takes_something CHECK ((volume > 0)),
  constraint fill_draw_company_id_fill_id_fkey FOREIGN KEY (company_id, fill_id) REFERENCES fill(company_id, fill_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_draw_company_id_fill_rest_id_fkey FOREIGN KEY (company_id, fill_rest_id) REFERENCES fill_rest(company_id, fill_rest_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_draw_company_id_register_entry_id_fkey FOREIGN KEY (company_id, register_entry_id) REFERENCES register_entry(company_id, register_entry_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_draw_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table fill_rest (
  company_id uuid not null,
  fill_rest_id uuid not null,
  fill_id uuid not null,
  tank_reading_id uuid,
  clean_out_id uuid,
  settled_at timestamp(3) with time zone not null,
  in_the_books bigint not null,
  remaining bigint not null,
  went_to_id uuid,
  constraint fill_rest_pkey PRIMARY KEY (company_id, fill_rest_id),
  constraint fill_rest_is_of_a_reading_or_a_clean_out CHECK ((num_nonnulls(tank_reading_id, clean_out_id) = 1)),
  constraint fill_rest_of_a_clean_out_is_nothing CHECK (((clean_out_id IS NULL) OR (remaining = 0))),
  constraint fill_rest_volumes_are_not_below_zero CHECK (((in_the_books >= 0) AND (remaining >= 0))),
  constraint fill_rest_company_id_clean_out_id_fkey FOREIGN KEY (company_id, clean_out_id) REFERENCES clean_out(company_id, clean_out_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_rest_company_id_fill_id_fkey FOREIGN KEY (company_id, fill_id) REFERENCES fill(company_id, fill_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_rest_company_id_tank_reading_id_fkey FOREIGN KEY (company_id, tank_reading_id) REFERENCES tank_reading(company_id, tank_reading_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint fill_rest_company_id_went_to_id_fkey FOREIGN KEY (company_id, went_to_id) REFERENCES stock_location(company_id, stock_location_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table hold_answer (
  company_id uuid not null,
  hold_answer_id uuid not null,
  visit_id uuid not null,
  rule text not null,
  reason text not null,
  person_id uuid not null,
  license_id uuid not null,
  answered_at timestamp(3) with time zone not null,
  answered_hold text not null,
  constraint hold_answer_pkey PRIMARY KEY (company_id, hold_answer_id),
  constraint hold_answer_company_id_license_id_fkey FOREIGN KEY (company_id, license_id) REFERENCES license(company_id, license_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint hold_answer_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint hold_answer_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table house_settings (
  company_id uuid not null,
  calibration_valid_days integer not null,
  same_pressure_within_psi integer not null,
  granular_passes text not null,
  tank_loads text not null,
  heat_caution_from_f integer not null,
  heat_caution_warm_from_f integer not null,
  minutes_per_stop integer not null,
  minutes_per_thousand_square_feet integer not null,
  tank_mark text not null,
  line_at_the_end text not null,
  version integer not null,
  constraint house_settings_pkey PRIMARY KEY (company_id),
  constraint house_settings_are_figures CHECK (((calibration_valid_days >= 1) AND (same_pressure_within_psi >= 0) AND (minutes_per_stop >= 0) AND (minutes_per_thousand_square_feet >= 1) AND (version >= 2))),
  constraint house_settings_are_ways_to_work CHECK (((granular_passes = ANY (ARRAY['one-with-overlap'::text, 'two-at-half-rate-crosswise'::text])) AND (tank_loads = ANY (ARRAY['same-size-every-time'::text, 'full-tanks-then-a-short-one'::text])) AND (line_at_the_end = ANY (ARRAY['pushed-out-with-water'::text, 'left-as-it-is'::text])) AND (btrim(tank_mark) <> ''::text))),
  constraint house_settings_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table installation (
  one boolean not null default true,
  bind_address text not null default '127.0.0.1'::text,
  demonstration_seeded_at timestamp(3) with time zone,
  constraint installation_pkey PRIMARY KEY (one),
  constraint installation_bind_address_is_known CHECK ((bind_address = ANY (ARRAY['127.0.0.1'::text, '0.0.0.0'::text]))),
  constraint installation_is_one_row CHECK (one)
);

create table invitation (
  company_id uuid not null,
  invitation_id uuid not null,
  person_id uuid not null,
  email text not null,
  role text not null,
  secret_hash bytea not null,
  created_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  accepted_at timestamp(3) with time zone,
  withdrawn_at timestamp(3) with time zone,
  constraint invitation_pkey PRIMARY KEY (company_id, invitation_id),
  constraint invitation_email_is_lower_case CHECK (((email = lower(email)) AND (email ~~ '%_@_%'::text))),
  constraint invitation_ends_once CHECK (((accepted_at IS NULL) OR (withdrawn_at IS NULL))),
  constraint invitation_expires_after_it_is_made CHECK ((expires_at > created_at)),
  constraint invitation_role_is_known CHECK ((role = ANY (ARRAY['owner'::text, 'office'::text, 'applicator'::text, 'technician'::text, 'inspector'::text]))),
  constraint invitation_secret_is_a_sha256 CHECK ((octet_length(secret_hash) = 32)),
  constraint invitation_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table issued_paper (
  company_id uuid not null,
  issued_paper_id uuid not null,
  kind text not null,
  subject_id uuid not null,
  data jsonb not null,
  rules_version text not null,
  person_id uuid not null,
  issued_at timestamp(3) with time zone not null,
  constraint issued_paper_pkey PRIMARY KEY (company_id, issued_paper_id),
  constraint issued_paper_kind_is_known CHECK ((kind = ANY (ARRAY['route-sheet'::text, 'loading-list'::text, 'mix-ticket'::text, 'application-record'::text, 'customer-notice'::text, 'posting-sign'::text]))),
  constraint issued_paper_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table label_confirmation (
  company_id uuid not null,
  label_confirmation_id uuid not null,
  label_entry_id uuid not null,
  person_id uuid not null,
  confirmed_at timestamp(3) with time zone not null,
  constraint label_confirmation_pkey PRIMARY KEY (company_id, label_confirmation_id),
  constraint label_confirmation_company_id_label_entry_id_fkey FOREIGN KEY (company_id, label_entry_id) REFERENCES label_entry(company_id, label_entry_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint label_confirmation_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table label_entry (
  company_id uuid not null,
  label_entry_id uuid not null,
  product_id uuid not null,
  number integer not null,
  facts jsonb not null,
  person_id uuid not null,
  entered_at timestamp(3) with time zone not null,
  constraint label_entry_pkey PRIMARY KEY (company_id, label_entry_id),
  constraint label_entry_counts_from_one CHECK ((number > 0)),
  constraint label_entry_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint label_entry_company_id_product_id_fkey FOREIGN KEY (company_id, product_id) REFERENCES product(company_id, product_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table lawn_look (
  company_id uuid not null,
  lawn_look_id uuid not null,
  request_id uuid not null,
  zone_id uuid not null,
  seen_at timestamp(3) with time zone not null,
  entered_at timestamp(3) with time zone not null,
  seen_by_id uuid not null,
  person_id uuid not null,
  blooms text not null,
  said text,
  water_depth bigint,
  water_told_by text,
  watered_at timestamp(3) with time zone,
  watered_by text,
  constraint lawn_look_pkey PRIMARY KEY (company_id, lawn_look_id),
  constraint lawn_look_is_said_in_words CHECK ((btrim(said) <> ''::text)),
  constraint lawn_look_says_something CHECK (((blooms = ANY (ARRAY['yes'::text, 'no'::text])) OR ((blooms = 'not-looked'::text) AND ((said IS NOT NULL) OR (watered_at IS NOT NULL))))),
  constraint lawn_look_tells_of_water_whole CHECK ((((watered_at IS NULL) AND (watered_by IS NULL) AND (water_told_by IS NULL) AND (water_depth IS NULL)) OR ((watered_at IS NOT NULL) AND (watered_by = ANY (ARRAY['sprinklers'::text, 'rain'::text])) AND (water_told_by = ANY (ARRAY['crew'::text, 'customer'::text])) AND (watered_by IS NOT NULL) AND (water_told_by IS NOT NULL)))),
  constraint lawn_look_water_has_come CHECK (((watered_at <= entered_at) AND (water_depth > 0))),
  constraint lawn_look_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint lawn_look_company_id_seen_by_id_fkey FOREIGN KEY (company_id, seen_by_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint lawn_look_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table license (
  company_id uuid not null,
  license_id uuid not null,
  person_id uuid not null,
  kind text not null,
  state text not null,
  number text not null,
  category text not null,
  issued_on date,
  expires_on date not null,
  created_at timestamp(3) with time zone not null,
  withdrawn_at timestamp(3) with time zone,
  constraint license_pkey PRIMARY KEY (company_id, license_id),
  constraint license_expires_after_it_is_issued CHECK ((expires_on > issued_on)),
  constraint license_kind_is_known CHECK ((kind = ANY (ARRAY['certified-applicator'::text, 'registered-technician'::text]))),
  constraint license_number_is_given CHECK (((length(btrim(number)) >= 1) AND (length(btrim(number)) <= 80))),
  constraint license_state_is_a_usps_code CHECK ((state ~ '^[A-Z]{2}$'::text)),
  constraint license_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table lot (
  company_id uuid not null,
  lot_id uuid not null,
  product_id uuid not null,
  number text not null,
  expires_on date,
  container text not null,
  container_size bigint not null,
  created_at timestamp(3) with time zone not null,
  constraint lot_pkey PRIMARY KEY (company_id, lot_id),
  constraint lot_container_holds_something CHECK ((container_size > 0)),
  constraint lot_container_is_known CHECK ((container = ANY (ARRAY['bag'::text, 'jug'::text, 'bottle'::text, 'drum'::text, 'box'::text]))),
  constraint lot_company_id_product_id_fkey FOREIGN KEY (company_id, product_id) REFERENCES product(company_id, product_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table measuring_tool (
  company_id uuid not null,
  measuring_tool_id uuid not null,
  name text not null,
  dimension text not null,
  mark text not null,
  created_at timestamp(3) with time zone not null,
  stood_down_at timestamp(3) with time zone,
  constraint measuring_tool_pkey PRIMARY KEY (company_id, measuring_tool_id),
  constraint measuring_tool_dimension_is_known CHECK ((dimension = ANY (ARRAY['mass'::text, 'volume'::text]))),
  constraint measuring_tool_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table membership (
  company_id uuid not null,
  account_id uuid not null,
  person_id uuid not null,
  role text not null,
  created_at timestamp(3) with time zone not null,
  ended_at timestamp(3) with time zone,
  constraint membership_pkey PRIMARY KEY (company_id, account_id),
  constraint membership_ends_after_it_begins CHECK ((ended_at >= created_at)),
  constraint membership_role_is_known CHECK ((role = ANY (ARRAY['owner'::text, 'office'::text, 'applicator'::text, 'technician'::text, 'inspector'::text]))),
  constraint membership_account_id_fkey FOREIGN KEY (account_id) REFERENCES account(account_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint membership_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table mix_ticket (
  company_id uuid not null,
  mix_ticket_id uuid not null,
  visit_id uuid not null,
  number integer not null,
  snapshot jsonb not null,
  rules_version text not null,
  person_id uuid not null,
  issued_at timestamp(3) with time zone not null,
  constraint mix_ticket_pkey PRIMARY KEY (company_id, mix_ticket_id),
  constraint mix_ticket_counts_from_one CHECK ((number > 0)),
  constraint mix_ticket_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint mix_ticket_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table one_time_link (
  link_id uuid not null,
  purpose text not null,
  secret_hash bytea not null,
  account_id uuid,
  created_at timestamp(3) with time zone not null,
  expires_at timestamp(3) with time zone not null,
  used_at timestamp(3) with time zone,
  constraint one_time_link_pkey PRIMARY KEY (link_id),
  constraint one_time_link_purpose_is_known CHECK ((((purpose = 'first-run'::text) AND (account_id IS NULL)) OR ((purpose = 'password-reset'::text) AND (account_id IS NOT NULL)))),
  constraint one_time_link_secret_is_a_sha256 CHECK ((octet_length(secret_hash) = 32)),
  constraint one_time_link_account_id_fkey FOREIGN KEY (account_id) REFERENCES account(account_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table person (
  company_id uuid not null,
  person_id uuid not null,
  name text not null,
  phone text,
  created_at timestamp(3) with time zone not null,
  left_on date,
  version integer not null default 1,
  constraint person_pkey PRIMARY KEY (company_id, person_id),
  constraint person_name_is_given CHECK (((length(btrim(name)) >= 1) AND (length(btrim(name)) <= 200))),
  constraint person_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table product (
  company_id uuid not null,
  product_id uuid not null,
  name text not null,
  form text not null,
  counted_by text not null,
  created_at timestamp(3) with time zone not null,
  retired_at timestamp(3) with time zone,
  version integer not null default 1,
  constraint product_pkey PRIMARY KEY (company_id, product_id),
  constraint product_form_is_known CHECK ((form = ANY (ARRAY['granular'::text, 'liquid'::text]))),
  constraint product_is_counted_by_mass_or_volume CHECK ((counted_by = ANY (ARRAY['mass'::text, 'volume'::text]))),
  constraint product_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table program (
  company_id uuid not null,
  program_id uuid not null,
  name text not null,
  season integer not null,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  constraint program_pkey PRIMARY KEY (company_id, program_id),
  constraint program_season_is_a_year CHECK (((season >= 2000) AND (season <= 2999))),
  constraint program_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table property (
  company_id uuid not null,
  property_id uuid not null,
  client_id uuid not null,
  street text not null,
  city text not null,
  state text not null,
  zip text not null,
  latitude double precision,
  longitude double precision,
  position_origin text,
  access_note text,
  gate_code text,
  narrowest_gate bigint,
  dog_note text,
  mowing_weekday integer,
  mowed_by text,
  lot_area bigint,
  town_rule_from_minute integer,
  town_rule_until_minute integer,
  town_rule_weekdays text,
  note text,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  tank_water text,
  town_rule_dates text,
  town_rule text,
  controller text,
  controller_from_minute integer,
  controller_until_minute integer,
  controller_weekdays text,
  controller_dates text,
  mows_on_no_fixed_day boolean not null default false,
  constraint property_pkey PRIMARY KEY (company_id, property_id),
  constraint property_controller_dates_are_known CHECK ((controller_dates = ANY (ARRAY['odd'::text, 'even'::text]))),
  constraint property_controller_goes_by_weekdays_or_dates CHECK (((controller_dates IS NULL) OR (controller_weekdays IS NULL))),
  constraint property_controller_hours_are_whole CHECK (((controller_from_minute IS NULL) = (controller_until_minute IS NULL))),
  constraint property_controller_hours_lie_in_a_day CHECK ((((controller_from_minute >= 0) AND (controller_from_minute <= 1439)) AND ((controller_until_minute >= 1) AND (controller_until_minute <= 1440)) AND (controller_from_minute <> controller_until_minute))),
  constraint property_controller_is_known CHECK ((controller = ANY (ARRAY['on-file'::text, 'none'::text]))),
  constraint property_controller_says_something CHECK (((NOT (controller IS DISTINCT FROM 'on-file'::text)) = (num_nonnulls(controller_from_minute, controller_weekdays, controller_dates) > 0))),
  constraint property_controller_weekdays_are_some CHECK ((controller_weekdays ~ '^[1-7]{1,7}$'::text)),
  constraint property_measures_are_positive CHECK (((lot_area > 0) AND (narrowest_gate > 0))),
  constraint property_mowed_by_is_known CHECK ((mowed_by = ANY (ARRAY['customer'::text, 'us'::text, 'another-crew'::text]))),
  constraint property_mowing_weekday_is_one CHECK (((mowing_weekday >= 1) AND (mowing_weekday <= 7))),
  constraint property_mows_on_a_day_or_on_no_fixed_one CHECK (((NOT mows_on_no_fixed_day) OR (mowing_weekday IS NULL))),
  constraint property_position_is_on_earth CHECK ((((latitude >= ('-90'::integer)::double precision) AND (latitude <= (90)::double precision)) AND ((longitude >= ('-180'::integer)::double precision) AND (longitude <= (180)::double precision)))),
  constraint property_position_is_whole CHECK ((((latitude IS NULL) = (longitude IS NULL)) AND ((latitude IS NULL) = (position_origin IS NULL)))),
  constraint property_position_origin_is_known CHECK ((position_origin = ANY (ARRAY['zip-centroid'::text, 'entered'::text]))),
  constraint property_tank_water_is_said CHECK ((tank_water = ANY (ARRAY['yes'::text, 'no'::text]))),
  constraint property_town_rule_dates_are_known CHECK ((town_rule_dates = ANY (ARRAY['odd'::text, 'even'::text, 'house-number'::text]))),
  constraint property_town_rule_goes_by_weekdays_or_dates CHECK (((town_rule_dates IS NULL) OR (town_rule_weekdays IS NULL))),
  constraint property_town_rule_hours_are_whole CHECK (((town_rule_from_minute IS NULL) = (town_rule_until_minute IS NULL))),
  constraint property_town_rule_hours_lie_in_a_day CHECK ((((town_rule_from_minute >= 0) AND (town_rule_from_minute <= 1439)) AND ((town_rule_until_minute >= 1) AND (town_rule_until_minute <= 1440)) AND (town_rule_from_minute <> town_rule_until_minute))),
  constraint property_town_rule_is_known CHECK ((town_rule = ANY (ARRAY['on-file'::text, 'none'::text]))),
  constraint property_town_rule_says_something CHECK (((NOT (town_rule IS DISTINCT FROM 'on-file'::text)) = (num_nonnulls(town_rule_from_minute, town_rule_weekdays, town_rule_dates) > 0))),
  constraint property_town_rule_weekdays_are_some CHECK ((town_rule_weekdays ~ '^[1-7]{1,7}$'::text)),
  constraint property_zip_is_five_or_nine_digits CHECK ((zip ~ '^[0-9]{5}(-[0-9]{4})?$'::text)),
  constraint property_company_id_client_id_fkey FOREIGN KEY (company_id, client_id) REFERENCES client(company_id, client_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table register_entry (
  company_id uuid not null,
  register_entry_id uuid not null,
  number integer not null,
  kind text not null,
  visit_id uuid not null,
  amends_id uuid,
  request_id uuid not null,
  content text not null,
  hash bytea not null,
  previous_hash bytea not null,
  started_at timestamp(3) with time zone not null,
  ended_at timestamp(3) with time zone not null,
  applicator_id uuid not null,
  written_at timestamp(3) with time zone not null,
  person_id uuid not null,
  stock_posting_id uuid,
  constraint register_entry_pkey PRIMARY KEY (company_id, register_entry_id),
  constraint register_entry_amends_as_an_amendment CHECK (((kind = 'amendment'::text) = (amends_id IS NOT NULL))),
  constraint register_entry_ends_no_earlier_than_it_starts CHECK ((ended_at >= started_at)),
  constraint register_entry_kind_is_known CHECK ((kind = ANY (ARRAY['record'::text, 'amendment'::text]))),
  constraint register_entry_company_id_amends_id_fkey FOREIGN KEY (company_id, amends_id) REFERENCES register_entry(company_id, register_entry_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint register_entry_company_id_applicator_id_fkey FOREIGN KEY (company_id, applicator_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint register_entry_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint register_entry_company_id_stock_posting_id_fkey FOREIGN KEY (company_id, stock_posting_id) REFERENCES stock_posting(company_id, stock_posting_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint register_entry_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table round (
  company_id uuid not null,
  round_id uuid not null,
  program_id uuid not null,
  "position" integer not null,
  name text not null,
  opens_on date not null,
  closes_on date not null,
  second_look_after_days integer,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  constraint round_pkey PRIMARY KEY (company_id, round_id),
  constraint round_closes_after_it_opens CHECK ((closes_on >= opens_on)),
  constraint round_numbers_are_positive CHECK ((("position" > 0) AND ((second_look_after_days >= 1) AND (second_look_after_days <= 60)))),
  constraint round_company_id_program_id_fkey FOREIGN KEY (company_id, program_id) REFERENCES program(company_id, program_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table round_treatment (
  company_id uuid not null,
  round_id uuid not null,
  line integer not null,
  product_id uuid not null,
  label_use text not null,
  rate_basis text not null,
  rate_amount bigint not null,
  rate_per bigint not null,
  rate_text text not null,
  reason text not null,
  spot_share_basis_points integer,
  constraint round_treatment_pkey PRIMARY KEY (company_id, round_id, line),
  constraint round_treatment_rate_is_whole CHECK (((rate_amount > 0) AND (rate_per > 0))),
  constraint round_treatment_spots_are_a_share CHECK (((spot_share_basis_points >= 1) AND (spot_share_basis_points <= 10000))),
  constraint round_treatment_company_id_product_id_fkey FOREIGN KEY (company_id, product_id) REFERENCES product(company_id, product_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint round_treatment_company_id_round_id_fkey FOREIGN KEY (company_id, round_id) REFERENCES round(company_id, round_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table route_day (
  company_id uuid not null,
  route_day_id uuid not null,
  date date not null,
  vehicle_id uuid not null,
  operator_id uuid not null,
  starts_at_minute integer not null,
  ends_at_minute integer not null,
  forecast_high_f integer,
  forecast_source text,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  forecast_next_high_f integer,
  forecast_second_high_f integer,
  forecast_third_high_f integer,
  constraint route_day_pkey PRIMARY KEY (company_id, route_day_id),
  constraint route_day_coming_highs_go_with_their_forecast CHECK ((((forecast_second_high_f IS NULL) OR ((forecast_high_f IS NOT NULL) AND ((forecast_second_high_f >= '-60'::integer) AND (forecast_second_high_f <= 140)))) AND ((forecast_third_high_f IS NULL) OR ((forecast_high_f IS NOT NULL) AND ((forecast_third_high_f >= '-60'::integer) AND (forecast_third_high_f <= 140)))))),
  constraint route_day_forecast_is_whole CHECK ((((forecast_high_f IS NULL) = (forecast_source IS NULL)) AND ((forecast_high_f >= '-60'::integer) AND (forecast_high_f <= 140)))),
  constraint route_day_hours_lie_in_a_day CHECK ((((starts_at_minute >= 0) AND (starts_at_minute <= 1439)) AND ((ends_at_minute >= 1) AND (ends_at_minute <= 1440)) AND (starts_at_minute < ends_at_minute))),
  constraint route_day_next_high_goes_with_its_forecast CHECK (((forecast_next_high_f IS NULL) OR ((forecast_high_f IS NOT NULL) AND ((forecast_next_high_f >= '-60'::integer) AND (forecast_next_high_f <= 140))))),
  constraint route_day_company_id_operator_id_fkey FOREIGN KEY (company_id, operator_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint route_day_company_id_vehicle_id_fkey FOREIGN KEY (company_id, vehicle_id) REFERENCES vehicle(company_id, vehicle_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table seeding (
  company_id uuid not null,
  seeding_id uuid not null,
  zone_id uuid not null,
  date date not null,
  kind text not null,
  method text,
  standing text not null,
  created_at timestamp(3) with time zone not null,
  removed_at timestamp(3) with time zone,
  version integer not null default 1,
  constraint seeding_pkey PRIMARY KEY (company_id, seeding_id),
  constraint seeding_kind_is_known CHECK ((kind = ANY (ARRAY['new-lawn'::text, 'sod'::text, 'overseeding'::text]))),
  constraint seeding_method_is_of_seed CHECK ((((kind = 'sod'::text) = (method IS NULL)) AND (method = ANY (ARRAY['broadcast'::text, 'slit'::text, 'unknown'::text])))),
  constraint seeding_standing_is_known CHECK ((standing = ANY (ARRAY['done'::text, 'planned'::text]))),
  constraint seeding_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table sign_in_throttle (
  throttle_key text not null,
  window_start timestamp(3) with time zone not null,
  failures integer not null,
  constraint sign_in_throttle_pkey PRIMARY KEY (throttle_key),
  constraint sign_in_throttle_counts_up CHECK ((failures >= 0))
);

create table soil_test (
  company_id uuid not null,
  soil_test_id uuid not null,
  zone_id uuid not null,
  sampled_on date not null,
  laboratory text not null,
  phosphorus_word text not null,
  phosphorus text not null,
  created_at timestamp(3) with time zone not null,
  constraint soil_test_pkey PRIMARY KEY (company_id, soil_test_id),
  constraint soil_test_phosphorus_is_known CHECK ((phosphorus = ANY (ARRAY['deficient'::text, 'sufficient'::text, 'not-tested'::text]))),
  constraint soil_test_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table station (
  company_id uuid not null,
  station_id uuid not null,
  property_id uuid not null,
  number integer not null,
  name text not null,
  test_depth bigint,
  test_minutes integer,
  tested_on date,
  longest_run_minutes integer,
  created_at timestamp(3) with time zone not null,
  removed_at timestamp(3) with time zone,
  version integer not null default 1,
  test_cans bigint[] default ARRAY[]::bigint[],
  test_wind_mph integer,
  constraint station_pkey PRIMARY KEY (company_id, station_id),
  constraint station_measures_are_positive CHECK (((test_depth > 0) AND (test_minutes > 0) AND (longest_run_minutes > 0) AND (number > 0))),
  constraint station_test_is_whole CHECK ((((test_depth IS NULL) = (test_minutes IS NULL)) AND ((test_depth IS NULL) = (tested_on IS NULL)))),
  constraint station_test_of_cans_is_whole CHECK (((test_cans IS NOT NULL) AND ((cardinality(test_cans) = 0) OR ((test_depth IS NOT NULL) AND (cardinality(test_cans) >= 4) AND (test_minutes <= 240))))),
  constraint station_wind_is_of_a_test CHECK (((test_wind_mph IS NULL) OR ((test_depth IS NOT NULL) AND ((test_wind_mph >= 0) AND (test_wind_mph <= 134))))),
  constraint station_company_id_property_id_fkey FOREIGN KEY (company_id, property_id) REFERENCES property(company_id, property_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table station_zone (
  company_id uuid not null,
  station_id uuid not null,
  zone_id uuid not null,
  constraint station_zone_pkey PRIMARY KEY (company_id, station_id, zone_id),
  constraint station_zone_company_id_station_id_fkey FOREIGN KEY (company_id, station_id) REFERENCES station(company_id, station_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint station_zone_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table stock_balance (
  company_id uuid not null,
  lot_id uuid not null,
  stock_location_id uuid not null,
  amount bigint not null,
  constraint stock_balance_pkey PRIMARY KEY (company_id, lot_id, stock_location_id),
  constraint stock_balance_company_id_lot_id_fkey FOREIGN KEY (company_id, lot_id) REFERENCES lot(company_id, lot_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stock_balance_company_id_stock_location_id_fkey FOREIGN KEY (company_id, stock_location_id) REFERENCES stock_location(company_id, stock_location_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table stock_entry (
  company_id uuid not null,
  stock_posting_id uuid not null,
  line integer not null,
  lot_id uuid not null,
  stock_location_id uuid not null,
  amount bigint not null,
  paid_per_container_cents bigint,
  constraint stock_entry_pkey PRIMARY KEY (company_id, stock_posting_id, line),
  constraint stock_entry_moves_something CHECK ((amount <> 0)),
  constraint stock_entry_price_is_of_what_came CHECK (((paid_per_container_cents IS NULL) OR ((paid_per_container_cents >= 0) AND (amount > 0)))),
  constraint stock_entry_company_id_lot_id_fkey FOREIGN KEY (company_id, lot_id) REFERENCES lot(company_id, lot_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stock_entry_company_id_stock_location_id_fkey FOREIGN KEY (company_id, stock_location_id) REFERENCES stock_location(company_id, stock_location_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stock_entry_company_id_stock_posting_id_fkey FOREIGN KEY (company_id, stock_posting_id) REFERENCES stock_posting(company_id, stock_posting_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table stock_location (
  company_id uuid not null,
  stock_location_id uuid not null,
  kind text not null,
  name text not null,
  vehicle_id uuid,
  equipment_id uuid,
  latitude double precision,
  longitude double precision,
  created_at timestamp(3) with time zone not null,
  constraint stock_location_pkey PRIMARY KEY (company_id, stock_location_id),
  constraint stock_location_kind_is_known CHECK ((kind = ANY (ARRAY['shop'::text, 'truck'::text, 'tank'::text, 'supplier'::text, 'lawn'::text, 'rinsate'::text, 'loss'::text, 'count-difference'::text]))),
  constraint stock_location_position_is_whole CHECK ((((latitude IS NULL) = (longitude IS NULL)) AND ((latitude >= ('-90'::integer)::double precision) AND (latitude <= (90)::double precision)) AND ((longitude >= ('-180'::integer)::double precision) AND (longitude <= (180)::double precision)))),
  constraint stock_location_tank_has_its_equipment CHECK (((kind = 'tank'::text) = (equipment_id IS NOT NULL))),
  constraint stock_location_truck_has_its_vehicle CHECK (((kind = 'truck'::text) = (vehicle_id IS NOT NULL))),
  constraint stock_location_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stock_location_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stock_location_company_id_vehicle_id_fkey FOREIGN KEY (company_id, vehicle_id) REFERENCES vehicle(company_id, vehicle_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table stock_posting (
  company_id uuid not null,
  stock_posting_id uuid not null,
  kind text not null,
  request_id uuid not null,
  happened_at timestamp(3) with time zone not null,
  entered_at timestamp(3) with time zone not null,
  person_id uuid not null,
  note text,
  constraint stock_posting_pkey PRIMARY KEY (company_id, stock_posting_id),
  constraint stock_posting_kind_is_known CHECK ((kind = ANY (ARRAY['receive'::text, 'move'::text, 'fill'::text, 'apply'::text, 'return'::text, 'lose'::text, 'count'::text]))),
  constraint stock_posting_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table stop (
  company_id uuid not null,
  visit_id uuid not null,
  route_day_id uuid not null,
  "position" integer not null,
  arrives_at_minute integer,
  drive_minutes integer,
  is_pinned boolean not null default false,
  constraint stop_pkey PRIMARY KEY (company_id, visit_id),
  constraint stop_counts_from_one CHECK (("position" > 0)),
  constraint stop_company_id_route_day_id_fkey FOREIGN KEY (company_id, route_day_id) REFERENCES route_day(company_id, route_day_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint stop_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table tank_reading (
  company_id uuid not null,
  tank_reading_id uuid not null,
  request_id uuid not null,
  equipment_id uuid not null,
  read_at timestamp(3) with time zone not null,
  entered_at timestamp(3) with time zone not null,
  read_by_id uuid not null,
  person_id uuid not null,
  how text not null,
  volume bigint not null,
  in_the_books bigint not null,
  of_no_fill bigint not null,
  missing_went text,
  note text,
  stock_posting_id uuid,
  constraint tank_reading_pkey PRIMARY KEY (company_id, tank_reading_id),
  constraint tank_reading_is_said_in_words CHECK ((btrim(how) <> ''::text)),
  constraint tank_reading_missing_went_is_known CHECK ((missing_went = ANY (ARRAY['loss'::text, 'rinsate'::text, 'count-difference'::text]))),
  constraint tank_reading_volumes_are_not_below_zero CHECK (((volume >= 0) AND (in_the_books >= 0) AND ((of_no_fill >= 0) AND (of_no_fill <= volume)))),
  constraint tank_reading_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint tank_reading_company_id_person_id_fkey FOREIGN KEY (company_id, person_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint tank_reading_company_id_read_by_id_fkey FOREIGN KEY (company_id, read_by_id) REFERENCES person(company_id, person_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint tank_reading_company_id_stock_posting_id_fkey FOREIGN KEY (company_id, stock_posting_id) REFERENCES stock_posting(company_id, stock_posting_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table vehicle (
  company_id uuid not null,
  vehicle_id uuid not null,
  number integer not null,
  name text not null,
  payload bigint,
  created_at timestamp(3) with time zone not null,
  stood_down_at timestamp(3) with time zone,
  version integer not null default 1,
  stays_aboard bigint,
  constraint vehicle_pkey PRIMARY KEY (company_id, vehicle_id),
  constraint vehicle_measures_are_positive CHECK (((number > 0) AND (payload > 0))),
  constraint vehicle_stays_aboard_is_not_below_zero CHECK ((stays_aboard >= 0)),
  constraint vehicle_company_id_fkey FOREIGN KEY (company_id) REFERENCES company(company_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table visit (
  company_id uuid not null,
  visit_id uuid not null,
  property_id uuid not null,
  round_id uuid,
  name text not null,
  opens_on date not null,
  closes_on date not null,
  state text not null default 'planned'::text,
  window_from_minute integer,
  window_until_minute integer,
  service_minutes integer not null,
  second_look_after_days integer,
  looks_again_at_id uuid,
  created_at timestamp(3) with time zone not null,
  version integer not null default 1,
  constraint visit_pkey PRIMARY KEY (company_id, visit_id),
  constraint visit_closes_after_it_opens CHECK ((closes_on >= opens_on)),
  constraint visit_numbers_are_positive CHECK ((((service_minutes >= 1) AND (service_minutes <= 1440)) AND ((second_look_after_days >= 1) AND (second_look_after_days <= 60)))),
  constraint visit_state_is_known CHECK ((state = ANY (ARRAY['planned'::text, 'done'::text, 'part-done'::text, 'not-done'::text]))),
  constraint visit_window_lies_in_a_day CHECK ((((window_from_minute IS NULL) = (window_until_minute IS NULL)) AND ((window_from_minute >= 0) AND (window_from_minute <= 1439)) AND ((window_until_minute >= 1) AND (window_until_minute <= 1440)) AND (window_from_minute < window_until_minute))),
  constraint visit_company_id_looks_again_at_id_fkey FOREIGN KEY (company_id, looks_again_at_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint visit_company_id_property_id_fkey FOREIGN KEY (company_id, property_id) REFERENCES property(company_id, property_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint visit_company_id_round_id_fkey FOREIGN KEY (company_id, round_id) REFERENCES round(company_id, round_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table visit_task (
  company_id uuid not null,
  visit_id uuid not null,
  line integer not null,
  kind text not null,
  product_id uuid,
  label_use text,
  rate_basis text,
  rate_amount bigint,
  rate_per bigint,
  rate_text text,
  reason text not null,
  equipment_id uuid,
  spot_share_basis_points integer,
  constraint visit_task_pkey PRIMARY KEY (company_id, visit_id, line),
  constraint visit_task_is_a_treatment_or_a_look CHECK ((((kind = 'look'::text) AND (num_nonnulls(product_id, label_use, rate_basis, rate_amount, rate_per, rate_text, equipment_id) = 0)) OR ((kind = 'treatment'::text) AND (num_nulls(product_id, label_use, rate_basis, rate_amount, rate_per, rate_text) = 0)))),
  constraint visit_task_look_has_no_share CHECK (((kind = 'treatment'::text) OR (spot_share_basis_points IS NULL))),
  constraint visit_task_rate_is_positive CHECK (((rate_amount > 0) AND (rate_per > 0))),
  constraint visit_task_spots_are_a_share CHECK (((spot_share_basis_points >= 1) AND (spot_share_basis_points <= 10000))),
  constraint visit_task_company_id_equipment_id_fkey FOREIGN KEY (company_id, equipment_id) REFERENCES equipment(company_id, equipment_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint visit_task_company_id_product_id_fkey FOREIGN KEY (company_id, product_id) REFERENCES product(company_id, product_id) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint visit_task_company_id_visit_id_fkey FOREIGN KEY (company_id, visit_id) REFERENCES visit(company_id, visit_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table visit_task_zone (
  company_id uuid not null,
  visit_id uuid not null,
  line integer not null,
  zone_id uuid not null,
  constraint visit_task_zone_pkey PRIMARY KEY (company_id, visit_id, line, zone_id),
  constraint visit_task_zone_company_id_visit_id_line_fkey FOREIGN KEY (company_id, visit_id, line) REFERENCES visit_task(company_id, visit_id, line) ON UPDATE CASCADE ON DELETE RESTRICT,
  constraint visit_task_zone_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table water_edge (
  company_id uuid not null,
  water_edge_id uuid not null,
  zone_id uuid not null,
  name text not null,
  length bigint,
  width bigint,
  created_at timestamp(3) with time zone not null,
  removed_at timestamp(3) with time zone,
  constraint water_edge_pkey PRIMARY KEY (company_id, water_edge_id),
  constraint water_edge_measures_are_positive CHECK (((length > 0) AND (width > 0))),
  constraint water_edge_company_id_zone_id_fkey FOREIGN KEY (company_id, zone_id) REFERENCES zone(company_id, zone_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

create table zone (
  company_id uuid not null,
  zone_id uuid not null,
  property_id uuid not null,
  letter text not null,
  name text not null,
  grasses text[],
  grasses_assumed boolean not null,
  pieces jsonb not null,
  area bigint not null,
  area_origin text not null,
  measured_on date,
  created_at timestamp(3) with time zone not null,
  removed_at timestamp(3) with time zone,
  version integer not null default 1,
  water_beside text not null default 'not-known'::text,
  constraint zone_pkey PRIMARY KEY (company_id, zone_id),
  constraint zone_area_is_positive CHECK ((area > 0)),
  constraint zone_area_origin_is_known CHECK ((area_origin = ANY (ARRAY['measured'::text, 'entered'::text, 'imported'::text]))),
  constraint zone_grasses_are_named CHECK ((cardinality(grasses) > 0)),
  constraint zone_water_beside_is_an_answer CHECK ((water_beside = ANY (ARRAY['yes'::text, 'none'::text, 'not-known'::text]))),
  constraint zone_company_id_property_id_fkey FOREIGN KEY (company_id, property_id) REFERENCES property(company_id, property_id) ON UPDATE CASCADE ON DELETE RESTRICT
);

-- Indexes that are no constraint's

CREATE UNIQUE INDEX account_email_key ON public.account USING btree (email);
CREATE INDEX audit_event_company_id_at_idx ON public.audit_event USING btree (company_id, at);
CREATE INDEX calibration_company_id_equipment_id_idx ON public.calibration USING btree (company_id, equipment_id);
CREATE INDEX clean_out_company_id_equipment_id_cleaned_at_idx ON public.clean_out USING btree (company_id, equipment_id, cleaned_at);
CREATE UNIQUE INDEX clean_out_company_id_request_id_key ON public.clean_out USING btree (company_id, request_id);
CREATE UNIQUE INDEX daily_temperature_company_id_request_id_date_key ON public.daily_temperature USING btree (company_id, request_id, date);
CREATE UNIQUE INDEX delivery_price_company_id_request_id_key ON public.delivery_price USING btree (company_id, request_id);
CREATE UNIQUE INDEX fill_company_id_number_key ON public.fill USING btree (company_id, number);
CREATE INDEX fill_rest_company_id_fill_id_settled_at_idx ON public.fill_rest USING btree (company_id, fill_id, settled_at);
CREATE UNIQUE INDEX hold_answer_of_a_hold_is_one ON public.hold_answer USING btree (company_id, visit_id, rule, md5(answered_hold));
CREATE UNIQUE INDEX invitation_company_id_secret_hash_key ON public.invitation USING btree (company_id, secret_hash);
CREATE INDEX issued_paper_company_id_subject_id_idx ON public.issued_paper USING btree (company_id, subject_id);
CREATE UNIQUE INDEX label_confirmation_company_id_label_entry_id_key ON public.label_confirmation USING btree (company_id, label_entry_id);
CREATE UNIQUE INDEX label_entry_company_id_product_id_number_key ON public.label_entry USING btree (company_id, product_id, number);
CREATE UNIQUE INDEX lawn_look_company_id_request_id_zone_id_key ON public.lawn_look USING btree (company_id, request_id, zone_id);
CREATE INDEX lawn_look_company_id_zone_id_seen_at_idx ON public.lawn_look USING btree (company_id, zone_id, seen_at);
CREATE UNIQUE INDEX license_stands_once ON public.license USING btree (company_id, person_id, state, number, category, expires_on) WHERE (withdrawn_at IS NULL);
CREATE UNIQUE INDEX lot_company_id_product_id_number_container_size_key ON public.lot USING btree (company_id, product_id, number, container_size);
CREATE UNIQUE INDEX membership_company_id_person_id_key ON public.membership USING btree (company_id, person_id);
CREATE UNIQUE INDEX mix_ticket_company_id_number_key ON public.mix_ticket USING btree (company_id, number);
CREATE INDEX mix_ticket_company_id_visit_id_idx ON public.mix_ticket USING btree (company_id, visit_id);
CREATE UNIQUE INDEX one_time_link_secret_hash_key ON public.one_time_link USING btree (secret_hash);
CREATE UNIQUE INDEX product_name_stands_once ON public.product USING btree (company_id, lower(name)) WHERE (retired_at IS NULL);
CREATE UNIQUE INDEX program_company_id_season_name_key ON public.program USING btree (company_id, season, name);
CREATE INDEX property_company_id_client_id_idx ON public.property USING btree (company_id, client_id);
CREATE UNIQUE INDEX register_entry_company_id_number_key ON public.register_entry USING btree (company_id, number);
CREATE UNIQUE INDEX register_entry_company_id_request_id_key ON public.register_entry USING btree (company_id, request_id);
CREATE INDEX register_entry_company_id_started_at_idx ON public.register_entry USING btree (company_id, started_at);
CREATE UNIQUE INDEX register_entry_of_a_visit_is_one ON public.register_entry USING btree (company_id, visit_id) WHERE (kind = 'record'::text);
CREATE UNIQUE INDEX round_company_id_program_id_position_key ON public.round USING btree (company_id, program_id, "position");
CREATE UNIQUE INDEX route_day_company_id_date_vehicle_id_key ON public.route_day USING btree (company_id, date, vehicle_id);
CREATE INDEX seeding_company_id_zone_id_idx ON public.seeding USING btree (company_id, zone_id);
CREATE UNIQUE INDEX seeding_stands_once ON public.seeding USING btree (company_id, zone_id, date, kind) WHERE (removed_at IS NULL);
CREATE INDEX soil_test_company_id_zone_id_idx ON public.soil_test USING btree (company_id, zone_id);
CREATE INDEX station_company_id_property_id_idx ON public.station USING btree (company_id, property_id);
CREATE UNIQUE INDEX station_number_stands_once ON public.station USING btree (company_id, property_id, number) WHERE (removed_at IS NULL);
CREATE INDEX stock_entry_company_id_lot_id_stock_location_id_idx ON public.stock_entry USING btree (company_id, lot_id, stock_location_id);
CREATE UNIQUE INDEX stock_location_beyond_the_house_is_one ON public.stock_location USING btree (company_id, kind) WHERE (kind = ANY (ARRAY['supplier'::text, 'lawn'::text, 'rinsate'::text, 'loss'::text, 'count-difference'::text]));
CREATE UNIQUE INDEX stock_location_of_a_tank_is_one ON public.stock_location USING btree (company_id, equipment_id) WHERE (equipment_id IS NOT NULL);
CREATE UNIQUE INDEX stock_location_of_a_vehicle_is_one ON public.stock_location USING btree (company_id, vehicle_id) WHERE (vehicle_id IS NOT NULL);
CREATE UNIQUE INDEX stock_posting_company_id_request_id_key ON public.stock_posting USING btree (company_id, request_id);
CREATE INDEX stop_company_id_route_day_id_position_idx ON public.stop USING btree (company_id, route_day_id, "position");
CREATE UNIQUE INDEX tank_reading_company_id_equipment_id_read_at_key ON public.tank_reading USING btree (company_id, equipment_id, read_at);
CREATE UNIQUE INDEX tank_reading_company_id_request_id_key ON public.tank_reading USING btree (company_id, request_id);
CREATE UNIQUE INDEX vehicle_company_id_number_key ON public.vehicle USING btree (company_id, number);
CREATE INDEX visit_company_id_opens_on_idx ON public.visit USING btree (company_id, opens_on);
CREATE INDEX visit_company_id_property_id_idx ON public.visit USING btree (company_id, property_id);
CREATE INDEX water_edge_company_id_zone_id_idx ON public.water_edge USING btree (company_id, zone_id);
CREATE INDEX zone_company_id_property_id_idx ON public.zone USING btree (company_id, property_id);
CREATE UNIQUE INDEX zone_letter_stands_once ON public.zone USING btree (company_id, property_id, letter) WHERE (removed_at IS NULL);

-- Row level security

alter table audit_event enable row level security;
alter table calibration enable row level security;
alter table clean_out enable row level security;
alter table client enable row level security;
alter table company enable row level security;
alter table daily_temperature enable row level security;
alter table delivery_price enable row level security;
alter table equipment enable row level security;
alter table fill enable row level security;
alter table fill_draw enable row level security;
alter table fill_rest enable row level security;
alter table hold_answer enable row level security;
alter table house_settings enable row level security;
alter table invitation enable row level security;
alter table issued_paper enable row level security;
alter table label_confirmation enable row level security;
alter table label_entry enable row level security;
alter table lawn_look enable row level security;
alter table license enable row level security;
alter table lot enable row level security;
alter table measuring_tool enable row level security;
alter table membership enable row level security;
alter table mix_ticket enable row level security;
alter table person enable row level security;
alter table product enable row level security;
alter table program enable row level security;
alter table property enable row level security;
alter table register_entry enable row level security;
alter table round enable row level security;
alter table round_treatment enable row level security;
alter table route_day enable row level security;
alter table seeding enable row level security;
alter table soil_test enable row level security;
alter table station enable row level security;
alter table station_zone enable row level security;
alter table stock_balance enable row level security;
alter table stock_entry enable row level security;
alter table stock_location enable row level security;
alter table stock_posting enable row level security;
alter table stop enable row level security;
alter table tank_reading enable row level security;
alter table vehicle enable row level security;
alter table visit enable row level security;
alter table visit_task enable row level security;
alter table visit_task_zone enable row level security;
alter table water_edge enable row level security;
alter table zone enable row level security;

-- Policies

create policy own_company on audit_event
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on calibration
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on clean_out
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on client
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on company
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on daily_temperature
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on delivery_price
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on equipment
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on fill
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on fill_draw
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on fill_rest
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on hold_answer
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on house_settings
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on invitation
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on issued_paper
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on label_confirmation
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on label_entry
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on lawn_look
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on license
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on lot
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on measuring_tool
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on membership
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on mix_ticket
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on person
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on product
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on program
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on property
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on register_entry
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on round
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on round_treatment
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on route_day
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on seeding
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on soil_test
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on station
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on station_zone
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on stock_balance
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on stock_entry
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on stock_location
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on stock_posting
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on stop
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on tank_reading
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on vehicle
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on visit
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on visit_task
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on visit_task_zone
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on water_edge
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on zone
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

-- Functions

CREATE OR REPLACE FUNCTION public.account_for_sign_in(p_email text)
 RETURNS TABLE(account_id uuid, password_hash text, session_version integer)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT a.account_id, a.password_hash, a.session_version FROM account a WHERE a.email = lower(btrim(p_email))
$function$;

CREATE OR REPLACE FUNCTION public.account_of_session(p_account uuid, p_session_version integer)
 RETURNS TABLE(email text, password_hash text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT a.email, a.password_hash FROM account a
  WHERE a.account_id = p_account AND a.session_version = p_session_version
$function$;

CREATE OR REPLACE FUNCTION public.change_password(p_account uuid, p_session_version integer, p_password_hash text)
 RETURNS integer
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  UPDATE account SET password_hash = p_password_hash, session_version = session_version + 1
  WHERE account_id = p_account AND session_version = p_session_version
  RETURNING session_version
$function$;

CREATE OR REPLACE FUNCTION public.companies_of_account(p_account uuid)
 RETURNS TABLE(company_id uuid, company_name text, role text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT c.company_id, c.name, m.role FROM membership m JOIN company c ON c.company_id = m.company_id
  WHERE m.account_id = p_account AND m.ended_at IS NULL ORDER BY m.created_at, c.company_id
$function$;

CREATE OR REPLACE FUNCTION public.create_account(p_account uuid, p_email text, p_password_hash text, p_now timestamp with time zone)
 RETURNS boolean
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
BEGIN
  INSERT INTO account (account_id, email, password_hash, created_at)
  VALUES (p_account, lower(btrim(p_email)), p_password_hash, p_now)
  ON CONFLICT (email) DO NOTHING;
  RETURN FOUND;
END
$function$;

CREATE OR REPLACE FUNCTION public.current_company()
 RETURNS uuid
 LANGUAGE sql
 STABLE PARALLEL SAFE
RETURN (NULLIF(current_setting('halfpass.company'::text, true), ''::text))::uuid;

CREATE OR REPLACE FUNCTION public.emails_of_members()
 RETURNS TABLE(account_id uuid, email text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT a.account_id, a.email FROM membership m JOIN account a ON a.account_id = m.account_id
  WHERE m.company_id = current_company()
$function$;

CREATE OR REPLACE FUNCTION public.has_joined_since(p_account uuid, p_moment timestamp with time zone)
 RETURNS boolean
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT EXISTS (SELECT FROM membership m WHERE m.account_id = p_account AND m.created_at > p_moment)
$function$;

CREATE OR REPLACE FUNCTION public.issue_first_run_link(p_link uuid, p_secret_hash bytea, p_now timestamp with time zone, p_expires timestamp with time zone)
 RETURNS void
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  INSERT INTO one_time_link (link_id, purpose, secret_hash, created_at, expires_at)
  VALUES (p_link, 'first-run', p_secret_hash, p_now, p_expires)
$function$;

CREATE OR REPLACE FUNCTION public.issue_password_reset(p_link uuid, p_account uuid, p_secret_hash bytea, p_now timestamp with time zone, p_expires timestamp with time zone, p_from_terminal boolean)
 RETURNS text
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
BEGIN
  IF NOT EXISTS (
    SELECT FROM membership m WHERE m.company_id = current_company() AND m.account_id = p_account AND m.ended_at IS NULL
  ) THEN
    RETURN 'not-a-member';
  END IF;
  IF NOT p_from_terminal AND EXISTS (
    SELECT FROM membership m WHERE m.company_id <> current_company() AND m.account_id = p_account AND m.ended_at IS NULL
  ) THEN
    RETURN 'in-other-companies';
  END IF;
  UPDATE one_time_link SET used_at = p_now
  WHERE purpose = 'password-reset' AND account_id = p_account AND used_at IS NULL;
  INSERT INTO one_time_link (link_id, purpose, secret_hash, account_id, created_at, expires_at)
  VALUES (p_link, 'password-reset', p_secret_hash, p_account, p_now, p_expires);
  RETURN 'issued';
END
$function$;

CREATE OR REPLACE FUNCTION public.move_stock_balance()
 RETURNS trigger
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
BEGIN
  INSERT INTO stock_balance AS b (company_id, lot_id, stock_location_id, amount)
  VALUES (NEW.company_id, NEW.lot_id, NEW.stock_location_id, NEW.amount)
  ON CONFLICT (company_id, lot_id, stock_location_id) DO UPDATE SET amount = b.amount + excluded.amount;
  RETURN NULL;
END
$function$;

CREATE OR REPLACE FUNCTION public.note_demonstration(p_now timestamp with time zone)
 RETURNS void
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  UPDATE installation SET demonstration_seeded_at = p_now
$function$;

CREATE OR REPLACE FUNCTION public.open_company_work(p_company uuid, p_account uuid, p_session_version integer)
 RETURNS TABLE(person_id uuid, person_name text, role text, company_name text, state text, time_zone text, is_demonstration boolean)
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
BEGIN
  PERFORM set_config('halfpass.company', '', true);
  RETURN QUERY
    SELECT m.person_id, p.name, m.role, c.name, c.state, c.time_zone, c.is_demonstration
    FROM membership m
    JOIN account a ON a.account_id = m.account_id
    JOIN person p ON p.company_id = m.company_id AND p.person_id = m.person_id
    JOIN company c ON c.company_id = m.company_id
    WHERE m.company_id = p_company AND m.account_id = p_account AND m.ended_at IS NULL
      AND a.session_version = p_session_version;
  IF FOUND THEN
    PERFORM set_config('halfpass.company', p_company::text, true);
  END IF;
END
$function$;

CREATE OR REPLACE FUNCTION public.open_guest_work(p_company uuid)
 RETURNS void
 LANGUAGE sql
AS $function$ SELECT set_config('halfpass.company', p_company::text, true) $function$;

CREATE OR REPLACE FUNCTION public.read_installation()
 RETURNS TABLE(bind_address text, demonstration_seeded_at timestamp with time zone, has_company boolean)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT i.bind_address, i.demonstration_seeded_at, EXISTS (SELECT FROM company) FROM installation i
$function$;

CREATE OR REPLACE FUNCTION public.refuse_change()
 RETURNS trigger
 LANGUAGE plpgsql
AS $function$
BEGIN
  RAISE EXCEPTION 'table % is append-only: % refused', TG_TABLE_NAME, TG_OP
    USING ERRCODE = 'restrict_violation', HINT = 'Write a correction as a new entry.';
END
$function$;

CREATE OR REPLACE FUNCTION public.require_balanced_posting()
 RETURNS trigger
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
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
$function$;

CREATE OR REPLACE FUNCTION public.require_continued_register()
 RETURNS trigger
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
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
$function$;

CREATE OR REPLACE FUNCTION public.reset_password(p_secret_hash bytea, p_password_hash text, p_now timestamp with time zone)
 RETURNS uuid
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
DECLARE
  v_account uuid;
  v_email text;
BEGIN
  UPDATE one_time_link SET used_at = p_now
  WHERE purpose = 'password-reset' AND secret_hash = p_secret_hash AND used_at IS NULL AND expires_at > p_now
    AND NOT has_joined_since(account_id, created_at)
  RETURNING account_id INTO v_account;
  IF v_account IS NULL THEN
    RETURN NULL;
  END IF;
  UPDATE account SET password_hash = p_password_hash, session_version = session_version + 1
  WHERE account_id = v_account RETURNING email INTO v_email;
  DELETE FROM sign_in_throttle WHERE throttle_key = 'account:' || v_email;
  RETURN v_account;
END
$function$;

CREATE OR REPLACE FUNCTION public.return_sign_in_attempt(p_key text, p_all boolean)
 RETURNS void
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  UPDATE sign_in_throttle SET failures = CASE WHEN p_all THEN 0 ELSE greatest(failures - 1, 0) END WHERE throttle_key = p_key
$function$;

CREATE OR REPLACE FUNCTION public.set_bind_address(p_bind_address text)
 RETURNS void
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  UPDATE installation SET bind_address = p_bind_address
$function$;

CREATE OR REPLACE FUNCTION public.standing_link(p_purpose text, p_secret_hash bytea, p_now timestamp with time zone)
 RETURNS TABLE(link_id uuid, email text)
 LANGUAGE sql
 STABLE SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  SELECT l.link_id, a.email FROM one_time_link l LEFT JOIN account a ON a.account_id = l.account_id
  WHERE l.purpose = p_purpose AND l.secret_hash = p_secret_hash AND l.used_at IS NULL AND l.expires_at > p_now
    AND NOT has_joined_since(l.account_id, l.created_at)
$function$;

CREATE OR REPLACE FUNCTION public.take_sign_in_attempt(p_key text, p_limit integer, p_now timestamp with time zone, p_window interval)
 RETURNS boolean
 LANGUAGE sql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
  -- Windows that have passed go, a few at a time and none that someone else is at.
  DELETE FROM sign_in_throttle WHERE throttle_key IN (
    SELECT o.throttle_key FROM sign_in_throttle o
    WHERE o.window_start <= p_now - p_window AND o.throttle_key <> p_key LIMIT 100 FOR UPDATE SKIP LOCKED);
  INSERT INTO sign_in_throttle AS t (throttle_key, window_start, failures) VALUES (p_key, p_now, 1)
  ON CONFLICT (throttle_key) DO UPDATE SET
    window_start = CASE WHEN t.window_start <= p_now - p_window THEN p_now ELSE t.window_start END,
    failures = CASE WHEN t.window_start <= p_now - p_window THEN 1 ELSE least(t.failures + 1, p_limit + 1) END
  RETURNING failures <= p_limit
$function$;

CREATE OR REPLACE FUNCTION public.use_first_run_link(p_secret_hash bytea, p_now timestamp with time zone)
 RETURNS boolean
 LANGUAGE plpgsql
 SECURITY DEFINER
 SET search_path TO 'pg_catalog', 'public', 'pg_temp'
AS $function$
BEGIN
  UPDATE one_time_link SET used_at = p_now
  WHERE purpose = 'first-run' AND secret_hash = p_secret_hash AND used_at IS NULL AND expires_at > p_now;
  RETURN FOUND;
END
$function$;

-- Triggers

CREATE TRIGGER audit_event_is_never_emptied BEFORE TRUNCATE ON public.audit_event FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER audit_event_only_grows BEFORE DELETE OR UPDATE ON public.audit_event FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER calibration_is_never_emptied BEFORE TRUNCATE ON public.calibration FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER calibration_only_grows BEFORE DELETE OR UPDATE ON public.calibration FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER clean_out_is_never_emptied BEFORE TRUNCATE ON public.clean_out FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER clean_out_only_grows BEFORE DELETE OR UPDATE ON public.clean_out FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER daily_temperature_is_never_emptied BEFORE TRUNCATE ON public.daily_temperature FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER daily_temperature_only_grows BEFORE DELETE OR UPDATE ON public.daily_temperature FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER delivery_price_is_never_emptied BEFORE TRUNCATE ON public.delivery_price FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER delivery_price_only_grows BEFORE DELETE OR UPDATE ON public.delivery_price FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_is_never_emptied BEFORE TRUNCATE ON public.fill FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_only_grows BEFORE DELETE OR UPDATE ON public.fill FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_draw_is_never_emptied BEFORE TRUNCATE ON public.fill_draw FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_draw_only_grows BEFORE DELETE OR UPDATE ON public.fill_draw FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_rest_is_never_emptied BEFORE TRUNCATE ON public.fill_rest FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER fill_rest_only_grows BEFORE DELETE OR UPDATE ON public.fill_rest FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER hold_answer_is_never_emptied BEFORE TRUNCATE ON public.hold_answer FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER hold_answer_only_grows BEFORE DELETE OR UPDATE ON public.hold_answer FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER issued_paper_is_never_emptied BEFORE TRUNCATE ON public.issued_paper FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER issued_paper_only_grows BEFORE DELETE OR UPDATE ON public.issued_paper FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER label_confirmation_is_never_emptied BEFORE TRUNCATE ON public.label_confirmation FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER label_confirmation_only_grows BEFORE DELETE OR UPDATE ON public.label_confirmation FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER label_entry_is_never_emptied BEFORE TRUNCATE ON public.label_entry FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER label_entry_only_grows BEFORE DELETE OR UPDATE ON public.label_entry FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lawn_look_is_never_emptied BEFORE TRUNCATE ON public.lawn_look FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER lawn_look_only_grows BEFORE DELETE OR UPDATE ON public.lawn_look FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER mix_ticket_is_never_emptied BEFORE TRUNCATE ON public.mix_ticket FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER mix_ticket_only_grows BEFORE DELETE OR UPDATE ON public.mix_ticket FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER register_entry_continues AFTER INSERT ON public.register_entry FOR EACH ROW EXECUTE FUNCTION require_continued_register();
CREATE TRIGGER register_entry_is_never_emptied BEFORE TRUNCATE ON public.register_entry FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER register_entry_only_grows BEFORE DELETE OR UPDATE ON public.register_entry FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE CONSTRAINT TRIGGER stock_entry_balances AFTER INSERT ON public.stock_entry DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION require_balanced_posting();
CREATE TRIGGER stock_entry_is_never_emptied BEFORE TRUNCATE ON public.stock_entry FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER stock_entry_moves_its_balance AFTER INSERT ON public.stock_entry FOR EACH ROW EXECUTE FUNCTION move_stock_balance();
CREATE TRIGGER stock_entry_only_grows BEFORE DELETE OR UPDATE ON public.stock_entry FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER stock_posting_is_never_emptied BEFORE TRUNCATE ON public.stock_posting FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER stock_posting_only_grows BEFORE DELETE OR UPDATE ON public.stock_posting FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER tank_reading_is_never_emptied BEFORE TRUNCATE ON public.tank_reading FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER tank_reading_only_grows BEFORE DELETE OR UPDATE ON public.tank_reading FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- Rights

grant usage on schema public to halfpass_app;
grant usage on schema public to public;
grant insert, select on table audit_event to halfpass_app;
grant insert, select on table calibration to halfpass_app;
grant insert, select on table clean_out to halfpass_app;
grant insert, select, update on table client to halfpass_app;
grant insert, select, update on table company to halfpass_app;
grant insert, select on table daily_temperature to halfpass_app;
grant insert, select on table delivery_price to halfpass_app;
grant insert, select, update on table equipment to halfpass_app;
grant insert, select on table fill to halfpass_app;
grant insert, select on table fill_draw to halfpass_app;
grant insert, select on table fill_rest to halfpass_app;
grant insert, select on table hold_answer to halfpass_app;
grant insert, select, update on table house_settings to halfpass_app;
grant insert, select, update on table invitation to halfpass_app;
grant insert, select on table issued_paper to halfpass_app;
grant insert, select on table label_confirmation to halfpass_app;
grant insert, select on table label_entry to halfpass_app;
grant insert, select on table lawn_look to halfpass_app;
grant insert, select, update on table license to halfpass_app;
grant insert, select, update on table lot to halfpass_app;
grant insert, select, update on table measuring_tool to halfpass_app;
grant insert, select, update on table membership to halfpass_app;
grant insert, select on table mix_ticket to halfpass_app;
grant insert, select, update on table person to halfpass_app;
grant insert, select, update on table product to halfpass_app;
grant insert, select, update on table program to halfpass_app;
grant insert, select, update on table property to halfpass_app;
grant insert, select on table register_entry to halfpass_app;
grant delete, insert, select, update on table round to halfpass_app;
grant delete, insert, select, update on table round_treatment to halfpass_app;
grant insert, select, update on table route_day to halfpass_app;
grant insert, select, update on table seeding to halfpass_app;
grant insert, select, update on table soil_test to halfpass_app;
grant insert, select, update on table station to halfpass_app;
grant delete, insert, select, update on table station_zone to halfpass_app;
grant select on table stock_balance to halfpass_app;
grant insert, select on table stock_entry to halfpass_app;
grant insert, select, update on table stock_location to halfpass_app;
grant insert, select on table stock_posting to halfpass_app;
grant delete, insert, select, update on table stop to halfpass_app;
grant insert, select on table tank_reading to halfpass_app;
grant insert, select, update on table vehicle to halfpass_app;
grant insert, select, update on table visit to halfpass_app;
grant delete, insert, select, update on table visit_task to halfpass_app;
grant delete, insert, select, update on table visit_task_zone to halfpass_app;
grant insert, select, update on table water_edge to halfpass_app;
grant insert, select, update on table zone to halfpass_app;
grant execute on function account_for_sign_in(p_email text) to halfpass_app;
grant execute on function account_of_session(p_account uuid, p_session_version integer) to halfpass_app;
grant execute on function change_password(p_account uuid, p_session_version integer, p_password_hash text) to halfpass_app;
grant execute on function companies_of_account(p_account uuid) to halfpass_app;
grant execute on function create_account(p_account uuid, p_email text, p_password_hash text, p_now timestamp with time zone) to halfpass_app;
grant execute on function current_company() to halfpass_app;
grant execute on function emails_of_members() to halfpass_app;
grant execute on function has_joined_since(p_account uuid, p_moment timestamp with time zone) to halfpass_app;
grant execute on function issue_first_run_link(p_link uuid, p_secret_hash bytea, p_now timestamp with time zone, p_expires timestamp with time zone) to halfpass_app;
grant execute on function issue_password_reset(p_link uuid, p_account uuid, p_secret_hash bytea, p_now timestamp with time zone, p_expires timestamp with time zone, p_from_terminal boolean) to halfpass_app;
grant execute on function note_demonstration(p_now timestamp with time zone) to halfpass_app;
grant execute on function open_company_work(p_company uuid, p_account uuid, p_session_version integer) to halfpass_app;
grant execute on function open_guest_work(p_company uuid) to halfpass_app;
grant execute on function read_installation() to halfpass_app;
grant execute on function refuse_change() to halfpass_app;
grant execute on function reset_password(p_secret_hash bytea, p_password_hash text, p_now timestamp with time zone) to halfpass_app;
grant execute on function return_sign_in_attempt(p_key text, p_all boolean) to halfpass_app;
grant execute on function set_bind_address(p_bind_address text) to halfpass_app;
grant execute on function standing_link(p_purpose text, p_secret_hash bytea, p_now timestamp with time zone) to halfpass_app;
grant execute on function take_sign_in_attempt(p_key text, p_limit integer, p_now timestamp with time zone, p_window interval) to halfpass_app;
grant execute on function use_first_run_link(p_secret_hash bytea, p_now timestamp with time zone) to halfpass_app;
