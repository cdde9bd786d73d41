#!/bin/sh
# Writes PgBouncer's configuration from the environment and becomes PgBouncer, in transaction mode: a connection
# to the database is lent for one transaction, so nothing may outlive one, and nothing of the app does.
set -eu
umask 077

for name in DATABASE_HOST DATABASE_PORT HALFPASS_WEB_PASSWORD POOLER_ADDRESS POOLER_PORT; do
  eval "value=\${$name:-}"
  if [ -z "$value" ]; then echo "$name is not set." >&2; exit 1; fi
done
case "$HALFPASS_WEB_PASSWORD" in
  *[!A-Za-z0-9_-]*) echo "HALFPASS_WEB_PASSWORD may have letters, digits, - and _ only." >&2; exit 1 ;;
esac

folder=$(mktemp -d)
printf '"halfpass_web" "%s"\n' "$HALFPASS_WEB_PASSWORD" > "$folder/users.txt"
unset HALFPASS_WEB_PASSWORD
cat > "$folder/pgbouncer.ini" <<INI
[databases]
halfpass = host=$DATABASE_HOST port=$DATABASE_PORT dbname=halfpass

[pgbouncer]
listen_addr = $POOLER_ADDRESS
listen_port = $POOLER_PORT
unix_socket_dir =
auth_type = scram-sha-256
auth_file = $folder/users.txt
pool_mode = transaction
default_pool_size = 20
max_client_conn = 500
ignore_startup_parameters = extra_float_digits
server_reset_query =
INI
exec pgbouncer "$folder/pgbouncer.ini"
