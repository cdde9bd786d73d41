-- The ground floor: companies, their people, licenses and invitations, the audit trail; accounts and
-- sign-in as global tables behind functions.

-- The web server's login role is made by whoever sets up the server and is a member of halfpass_app.
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'halfpass_app') THEN
    CREATE ROLE halfpass_app NOLOGIN;
  END IF;
EXCEPTION WHEN duplicate_object THEN NULL; -- Another database of the same server made it just now.
END
$$;

REVOKE CREATE ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO halfpass_app;

-- The company that this transaction works for; null outside a unit of work.
CREATE FUNCTION current_company() RETURNS uuid
LANGUAGE sql STABLE PARALLEL SAFE
RETURN nullif(current_setting('halfpass.company', true), '')::uuid;

-- Fires on tables that only ever grow.
CREATE FUNCTION refuse_change() RETURNS trigger
LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'table % is append-only: % refused', TG_TABLE_NAME, TG_OP
    USING ERRCODE = 'restrict_violation', HINT = 'Write a correction as a new entry.';
END
$$;

------------------------------------------------------------------------------------------------------
-- Tables

CREATE TABLE "company" (
    "company_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "time_zone" TEXT NOT NULL,
    "phone" TEXT,
    "address" TEXT,
    "business_license_number" TEXT,
    "business_license_expires_on" DATE,
    "insurance_expires_on" DATE,
    "is_demonstration" BOOLEAN NOT NULL DEFAULT false,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "company_pkey" PRIMARY KEY ("company_id"),
    CONSTRAINT "company_name_is_given" CHECK (length(btrim("name")) BETWEEN 1 AND 200),
    CONSTRAINT "company_state_is_a_usps_code" CHECK ("state" ~ '^[A-Z]{2}$'),
    CONSTRAINT "company_time_zone_is_given" CHECK (length("time_zone") BETWEEN 1 AND 64)
);

CREATE TABLE "person" (
    "company_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "phone" TEXT,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "left_on" DATE,
    "version" INTEGER NOT NULL DEFAULT 1,

    CONSTRAINT "person_pkey" PRIMARY KEY ("company_id","person_id"),
    CONSTRAINT "person_name_is_given" CHECK (length(btrim("name")) BETWEEN 1 AND 200)
);

CREATE TABLE "membership" (
    "company_id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "ended_at" TIMESTAMPTZ(3),

    CONSTRAINT "membership_pkey" PRIMARY KEY ("company_id","account_id"),
    CONSTRAINT "membership_role_is_known" CHECK ("role" IN ('owner', 'office', 'applicator', 'technician', 'inspector')),
    CONSTRAINT "membership_ends_after_it_begins" CHECK ("ended_at" >= "created_at")
);

CREATE TABLE "license" (
    "company_id" UUID NOT NULL,
    "license_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "state" TEXT NOT NULL,
    "number" TEXT NOT NULL,
    "category" TEXT NOT NULL,
    "issued_on" DATE,
    "expires_on" DATE NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "license_pkey" PRIMARY KEY ("company_id","license_id"),
    CONSTRAINT "license_kind_is_known" CHECK ("kind" IN ('certified-applicator', 'registered-technician')),
    CONSTRAINT "license_state_is_a_usps_code" CHECK ("state" ~ '^[A-Z]{2}$'),
    CONSTRAINT "license_number_is_given" CHECK (length(btrim("number")) BETWEEN 1 AND 80),
    CONSTRAINT "license_expires_after_it_is_issued" CHECK ("expires_on" > "issued_on")
);

CREATE TABLE "invitation" (
    "company_id" UUID NOT NULL,
    "invitation_id" UUID NOT NULL,
    "person_id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "role" TEXT NOT NULL,
    "secret_hash" BYTEA NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "accepted_at" TIMESTAMPTZ(3),
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "invitation_pkey" PRIMARY KEY ("company_id","invitation_id"),
    CONSTRAINT "invitation_role_is_known" CHECK ("role" IN ('owner', 'office', 'applicator', 'technician', 'inspector')),
    CONSTRAINT "invitation_email_is_lower_case" CHECK ("email" = lower("email") AND "email" LIKE '%_@_%'),
    CONSTRAINT "invitation_secret_is_a_sha256" CHECK (octet_length("secret_hash") = 32),
    CONSTRAINT "invitation_ends_once" CHECK ("accepted_at" IS NULL OR "withdrawn_at" IS NULL),
    CONSTRAINT "invitation_expires_after_it_is_made" CHECK ("expires_at" > "created_at")
);

CREATE TABLE "audit_event" (
    "company_id" UUID NOT NULL,
    "audit_event_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "account_id" UUID,
    "person_name" TEXT NOT NULL,
    "deed" TEXT NOT NULL,
    "subject_id" UUID,
    "details" JSONB NOT NULL,

    CONSTRAINT "audit_event_pkey" PRIMARY KEY ("company_id","audit_event_id")
);

CREATE TABLE "account" (
    "account_id" UUID NOT NULL,
    "email" TEXT NOT NULL,
    "password_hash" TEXT NOT NULL,
    "session_version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "account_pkey" PRIMARY KEY ("account_id"),
    CONSTRAINT "account_email_is_lower_case" CHECK ("email" = lower("email") AND "email" LIKE '%_@_%'),
    CONSTRAINT "account_password_is_argon2id" CHECK ("password_hash" LIKE '$argon2id$%')
);

CREATE TABLE "sign_in_throttle" (
    "throttle_key" TEXT NOT NULL,
    "window_start" TIMESTAMPTZ(3) NOT NULL,
    "failures" INTEGER NOT NULL,

    CONSTRAINT "sign_in_throttle_pkey" PRIMARY KEY ("throttle_key"),
    CONSTRAINT "sign_in_throttle_counts_up" CHECK ("failures" >= 0)
);

CREATE TABLE "one_time_link" (
    "link_id" UUID NOT NULL,
    "purpose" TEXT NOT NULL,
    "secret_hash" BYTEA NOT NULL,
    "account_id" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "one_time_link_pkey" PRIMARY KEY ("link_id"),
    CONSTRAINT "one_time_link_purpose_is_known" CHECK (
        ("purpose" = 'first-run' AND "account_id" IS NULL)
        OR ("purpose" = 'password-reset' AND "account_id" IS NOT NULL)),
    CONSTRAINT "one_time_link_secret_is_a_sha256" CHECK (octet_length("secret_hash") = 32)
);

CREATE TABLE "installation" (
    "one" BOOLEAN NOT NULL DEFAULT true,
    "bind_address" TEXT NOT NULL DEFAULT '127.0.0.1',
    "demonstration_seeded_at" TIMESTAMPTZ(3),

    CONSTRAINT "installation_pkey" PRIMARY KEY ("one"),
    CONSTRAINT "installation_is_one_row" CHECK ("one"),
    CONSTRAINT "installation_bind_address_is_known" CHECK ("bind_address" IN ('127.0.0.1', '0.0.0.0'))
);
INSERT INTO "installation" DEFAULT VALUES;

CREATE UNIQUE INDEX "membership_company_id_person_id_key" ON "membership"("company_id", "person_id");
CREATE UNIQUE INDEX "invitation_company_id_secret_hash_key" ON "invitation"("company_id", "secret_hash");
CREATE INDEX "audit_event_company_id_at_idx" ON "audit_event"("company_id", "at");
CREATE UNIQUE INDEX "account_email_key" ON "account"("email");
CREATE UNIQUE INDEX "one_time_link_secret_hash_key" ON "one_time_link"("secret_hash");

-- A license number is entered once among those that stand.
CREATE UNIQUE INDEX "license_stands_once" ON "license"("company_id", "person_id", "state", "number", "category", "expires_on")
  WHERE "withdrawn_at" IS NULL;

ALTER TABLE "person" ADD CONSTRAINT "person_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "membership" ADD CONSTRAINT "membership_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "membership" ADD CONSTRAINT "membership_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("account_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "license" ADD CONSTRAINT "license_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "invitation" ADD CONSTRAINT "invitation_company_id_person_id_fkey" FOREIGN KEY ("company_id", "person_id") REFERENCES "person"("company_id", "person_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "audit_event" ADD CONSTRAINT "audit_event_company_id_fkey" FOREIGN KEY ("company_id") REFERENCES "company"("company_id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "one_time_link" ADD CONSTRAINT "one_time_link_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("account_id") ON DELETE RESTRICT ON UPDATE CASCADE;

------------------------------------------------------------------------------------------------------
-- Policies and grants. ENABLE and not FORCE: the owner role migrates and backs up; the web role owns nothing.

ALTER TABLE "company" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "company" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "person" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "person" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "membership" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "membership" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "license" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "license" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "invitation" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "invitation" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());
ALTER TABLE "audit_event" ENABLE ROW LEVEL SECURITY;
CREATE POLICY "own_company" ON "audit_event" USING ("company_id" = current_company()) WITH CHECK ("company_id" = current_company());

GRANT SELECT, INSERT, UPDATE ON "company", "person", "membership", "license", "invitation" TO halfpass_app;
GRANT SELECT, INSERT ON "audit_event" TO halfpass_app;

CREATE TRIGGER "audit_event_only_grows" BEFORE UPDATE OR DELETE ON "audit_event" FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "audit_event_is_never_emptied" BEFORE TRUNCATE ON "audit_event" FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

------------------------------------------------------------------------------------------------------
-- Doors: what the web role may do with the global tables, and nothing else.

-- Opens a unit of work for a signed-in account: sets the company for this transaction only when the
-- membership stands and the session is of the account's present password. No row: signed out.
CREATE FUNCTION open_company_work(p_company uuid, p_account uuid, p_session_version integer)
RETURNS TABLE (person_id uuid, person_name text, role text, company_name text, state text, time_zone text, is_demonstration boolean)
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
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
$$;

-- Opens a unit of work for a guest's link or a terminal command. The use case checks the link.
CREATE FUNCTION open_guest_work(p_company uuid) RETURNS void
LANGUAGE sql AS $$ SELECT set_config('halfpass.company', p_company::text, true) $$;

CREATE FUNCTION account_for_sign_in(p_email text)
RETURNS TABLE (account_id uuid, password_hash text, session_version integer)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT a.account_id, a.password_hash, a.session_version FROM account a WHERE a.email = lower(btrim(p_email))
$$;

-- The password hash of the account that a standing session belongs to, to check it before a change.
CREATE FUNCTION account_of_session(p_account uuid, p_session_version integer)
RETURNS TABLE (email text, password_hash text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT a.email, a.password_hash FROM account a
  WHERE a.account_id = p_account AND a.session_version = p_session_version
$$;

CREATE FUNCTION companies_of_account(p_account uuid)
RETURNS TABLE (company_id uuid, company_name text, role text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT c.company_id, c.name, m.role FROM membership m JOIN company c ON c.company_id = m.company_id
  WHERE m.account_id = p_account AND m.ended_at IS NULL ORDER BY m.created_at, c.company_id
$$;

-- Email addresses of the members of the company that is open now.
CREATE FUNCTION emails_of_members() RETURNS TABLE (account_id uuid, email text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT a.account_id, a.email FROM membership m JOIN account a ON a.account_id = m.account_id
  WHERE m.company_id = current_company()
$$;

-- Makes an account; false when the address has one already.
CREATE FUNCTION create_account(p_account uuid, p_email text, p_password_hash text, p_now timestamptz) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
BEGIN
  INSERT INTO account (account_id, email, password_hash, created_at)
  VALUES (p_account, lower(btrim(p_email)), p_password_hash, p_now)
  ON CONFLICT (email) DO NOTHING;
  RETURN FOUND;
END
$$;

-- Sets a new password and ends every session begun under the old one. Null: the session was stale.
CREATE FUNCTION change_password(p_account uuid, p_session_version integer, p_password_hash text) RETURNS integer
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  UPDATE account SET password_hash = p_password_hash, session_version = session_version + 1
  WHERE account_id = p_account AND session_version = p_session_version
  RETURNING session_version
$$;

-- Counts one attempt against a key before the password is looked at, so that parallel guesses count too.
-- False: the key has used up its attempts in this window.
CREATE FUNCTION take_sign_in_attempt(p_key text, p_limit integer, p_now timestamptz, p_window interval) RETURNS boolean
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  -- Windows that have passed go, a few at a time and none that someone else is at.
  DELETE FROM sign_in_throttle WHERE throttle_key IN (
    SELECT o.throttle_key FROM sign_in_throttle o
    WHERE o.window_start <= p_now - p_window AND o.throttle_key <> p_key LIMIT 100 FOR UPDATE SKIP LOCKED);
  INSERT INTO sign_in_throttle AS t (throttle_key, window_start, failures) VALUES (p_key, p_now, 1)
  ON CONFLICT (throttle_key) DO UPDATE SET
    window_start = CASE WHEN t.window_start <= p_now - p_window THEN p_now ELSE t.window_start END,
    failures = CASE WHEN t.window_start <= p_now - p_window THEN 1 ELSE least(t.failures + 1, p_limit + 1) END
  RETURNING failures <= p_limit
$$;

-- Gives an attempt back after a password that was right.
CREATE FUNCTION return_sign_in_attempt(p_key text, p_all boolean) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  UPDATE sign_in_throttle SET failures = CASE WHEN p_all THEN 0 ELSE greatest(failures - 1, 0) END WHERE throttle_key = p_key
$$;

CREATE FUNCTION issue_first_run_link(p_link uuid, p_secret_hash bytea, p_now timestamptz, p_expires timestamptz) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  INSERT INTO one_time_link (link_id, purpose, secret_hash, created_at, expires_at)
  VALUES (p_link, 'first-run', p_secret_hash, p_now, p_expires)
$$;

-- Only for a member of the company that is open now. An older link for the same account stops working.
-- Whoever holds the link can sign in as the account, in every company it belongs to: so an owner gets no link for
-- an account that belongs to another company as well, and only the terminal of the installation does.
-- Answers issued, not-a-member, or in-other-companies.
CREATE FUNCTION issue_password_reset(
  p_link uuid, p_account uuid, p_secret_hash bytea, p_now timestamptz, p_expires timestamptz, p_from_terminal boolean
) RETURNS text
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
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
$$;

-- True when the account has joined a company after the link was made: the link was not given for that company.
CREATE FUNCTION has_joined_since(p_account uuid, p_moment timestamptz) RETURNS boolean
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT EXISTS (SELECT FROM membership m WHERE m.account_id = p_account AND m.created_at > p_moment)
$$;

-- A link that can still be used, with the address it is for (none for a first run).
CREATE FUNCTION standing_link(p_purpose text, p_secret_hash bytea, p_now timestamptz) RETURNS TABLE (link_id uuid, email text)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT l.link_id, a.email FROM one_time_link l LEFT JOIN account a ON a.account_id = l.account_id
  WHERE l.purpose = p_purpose AND l.secret_hash = p_secret_hash AND l.used_at IS NULL AND l.expires_at > p_now
    AND NOT has_joined_since(l.account_id, l.created_at)
$$;

-- Uses up a first-run link; false when someone was faster or it no longer stands.
CREATE FUNCTION use_first_run_link(p_secret_hash bytea, p_now timestamptz) RETURNS boolean
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
BEGIN
  UPDATE one_time_link SET used_at = p_now
  WHERE purpose = 'first-run' AND secret_hash = p_secret_hash AND used_at IS NULL AND expires_at > p_now;
  RETURN FOUND;
END
$$;

-- Uses up a reset link: sets the password, ends the sessions, forgets the failed attempts. Null: no such link.
CREATE FUNCTION reset_password(p_secret_hash bytea, p_password_hash text, p_now timestamptz) RETURNS uuid
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
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
$$;

CREATE FUNCTION read_installation() RETURNS TABLE (bind_address text, demonstration_seeded_at timestamptz, has_company boolean)
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  SELECT i.bind_address, i.demonstration_seeded_at, EXISTS (SELECT FROM company) FROM installation i
$$;

CREATE FUNCTION set_bind_address(p_bind_address text) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  UPDATE installation SET bind_address = p_bind_address
$$;

CREATE FUNCTION note_demonstration(p_now timestamptz) RETURNS void
LANGUAGE sql SECURITY DEFINER SET search_path = pg_catalog, public, pg_temp AS $$
  UPDATE installation SET demonstration_seeded_at = p_now
$$;

REVOKE EXECUTE ON ALL FUNCTIONS IN SCHEMA public FROM PUBLIC;
GRANT EXECUTE ON ALL FUNCTIONS IN SCHEMA public TO halfpass_app;
