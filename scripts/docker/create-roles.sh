#!/bin/sh
# Runs once, when the database's folder is new: makes the two roles that sign in, and their database.
# halfpass_owner owns the tables and migrates; halfpass_web serves, owns nothing, and has its rights from
# the group halfpass_app alone, so that row level security binds it.
set -eu

require_password() {
  case "$2" in
    "") echo "$1 is not set." >&2; exit 1 ;;
    *[!A-Za-z0-9_-]*) echo "$1 may have letters, digits, - and _ only, because it becomes part of an address." >&2; exit 1 ;;
  esac
  if [ "${#2}" -lt 16 ]; then echo "$1 must have at least 16 characters." >&2; exit 1; fi
}
require_password HALFPASS_OWNER_PASSWORD "${HALFPASS_OWNER_PASSWORD:-}"
require_password HALFPASS_WEB_PASSWORD "${HALFPASS_WEB_PASSWORD:-}"

# The passwords reach psql through its environment, never through arguments, which every process can read.
export HALFPASS_OWNER_PASSWORD HALFPASS_WEB_PASSWORD
psql --no-psqlrc --quiet --set=ON_ERROR_STOP=1 --username="${POSTGRES_USER:-postgres}" --dbname="${POSTGRES_DB:-postgres}" <<'SQL'
\getenv owner_password HALFPASS_OWNER_PASSWORD
\getenv web_password HALFPASS_WEB_PASSWORD
CREATE ROLE halfpass_owner LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS PASSWORD :'owner_password';
CREATE ROLE halfpass_app NOLOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS;
CREATE ROLE halfpass_web LOGIN NOSUPERUSER NOCREATEDB NOCREATEROLE NOBYPASSRLS PASSWORD :'web_password' IN ROLE halfpass_app;
CREATE DATABASE halfpass OWNER halfpass_owner TEMPLATE template0 ENCODING 'UTF8' LOCALE 'C';
REVOKE ALL ON DATABASE halfpass FROM PUBLIC;
GRANT CONNECT ON DATABASE halfpass TO halfpass_web;
SQL
