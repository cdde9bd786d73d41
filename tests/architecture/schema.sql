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
  constraint company_pkey PRIMARY KEY (company_id),
  constraint company_name_is_given CHECK (((length(btrim(name)) >= 1) AND (length(btrim(name)) <= 200))),
  constraint company_state_is_a_usps_code CHECK ((state ~ '^[A-Z]{2}$'::text)),
  constraint company_time_zone_is_given CHECK (((length(time_zone) >= 1) AND (length(time_zone) <= 64)))
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

create table sign_in_throttle (
  throttle_key text not null,
  window_start timestamp(3) with time zone not null,
  failures integer not null,
  constraint sign_in_throttle_pkey PRIMARY KEY (throttle_key),
  constraint sign_in_throttle_counts_up CHECK ((failures >= 0))
);

-- Indexes that are no constraint's

CREATE UNIQUE INDEX account_email_key ON public.account USING btree (email);
CREATE INDEX audit_event_company_id_at_idx ON public.audit_event USING btree (company_id, at);
CREATE UNIQUE INDEX invitation_company_id_secret_hash_key ON public.invitation USING btree (company_id, secret_hash);
CREATE UNIQUE INDEX license_stands_once ON public.license USING btree (company_id, person_id, state, number, category, expires_on) WHERE (withdrawn_at IS NULL);
CREATE UNIQUE INDEX membership_company_id_person_id_key ON public.membership USING btree (company_id, person_id);
CREATE UNIQUE INDEX one_time_link_secret_hash_key ON public.one_time_link USING btree (secret_hash);

-- Row level security

alter table audit_event enable row level security;
alter table company enable row level security;
alter table invitation enable row level security;
alter table license enable row level security;
alter table membership enable row level security;
alter table person enable row level security;

-- Policies

create policy own_company on audit_event
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on company
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on invitation
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on license
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on membership
  using ((company_id = current_company()))
  with check ((company_id = current_company()));

create policy own_company on person
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

-- Rights

grant usage on schema public to halfpass_app;
grant usage on schema public to public;
grant insert, select on table audit_event to halfpass_app;
grant insert, select, update on table company to halfpass_app;
grant insert, select, update on table invitation to halfpass_app;
grant insert, select, update on table license to halfpass_app;
grant insert, select, update on table membership to halfpass_app;
grant insert, select, update on table person to halfpass_app;
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
