// Walks every table of the database and tries, as the web server's role, to reach another company's rows.
import pg from "pg";

/** The tables that belong to no company. The web role may not touch them but through the database's functions. */
export const GLOBAL_TABLES: readonly string[] = ["_prisma_migrations", "account", "installation", "one_time_link", "sign_in_throttle"];

export interface Walk {
  /** As the role that owns the tables. */
  readonly ownerUrl: string;
  /** As the web server's role, directly or through a pooler. */
  readonly webUrl: string;
  /** The company whose rows are tried for; it must have a row in every table. */
  readonly victimId: string;
  /** The company as which they are tried for. */
  readonly intruderId: string;
}

interface Relation {
  readonly name: string;
  readonly kind: string;
  readonly secured: boolean;
  readonly policies: readonly { readonly using: string | null; readonly check: string | null; readonly command: string }[];
}

/** What a statement came to: how many rows, or the error that refused it. */
type Attempt = { readonly rows: number } | { readonly code: string; readonly message: string };

const OWN_COMPANY = "(company_id = current_company())";

/** One sentence for each way in which a table does not keep companies apart; empty when all do. */
export async function tenancyFaults(walk: Walk): Promise<string[]> {
  const owner = new pg.Client({ connectionString: walk.ownerUrl });
  const web = new pg.Client({ connectionString: walk.webUrl });
  await Promise.all([owner.connect(), web.connect()]);
  try {
    const faults: string[] = [];
    for (const relation of await relationsOf(owner)) {
      if (!["r", "p"].includes(relation.kind)) faults.push(`${relation.name} is no plain table, and policies do not bind what it shows`);
      else if (GLOBAL_TABLES.includes(relation.name)) faults.push(...(await faultsOfGlobal(web, relation.name)));
      else faults.push(...policyFaults(relation), ...(await faultsOfTenant(owner, web, relation.name, walk)));
    }
    return faults;
  } finally {
    await Promise.all([owner.end(), web.end()]);
  }
}

/** The tables, views and foreign tables of our schema, as the catalog has them. */
async function relationsOf(owner: pg.Client): Promise<readonly Relation[]> {
  const { rows } = await owner.query<Relation>(
    `select c.relname::text as name, c.relkind::text as kind, c.relrowsecurity as secured,
       coalesce((select json_agg(json_build_object(
           'using', pg_get_expr(p.polqual, p.polrelid), 'check', pg_get_expr(p.polwithcheck, p.polrelid), 'command', p.polcmd))
         from pg_policy p where p.polrelid = c.oid), '[]') as policies
     from pg_class c
     where c.relnamespace = 'public'::regnamespace and c.relkind in ('r', 'p', 'v', 'm', 'f') order by c.relname`,
  );
  if (rows.length === 0) throw new Error("The catalog shows no table at all: this is not a migrated database.");
  return rows;
}

function policyFaults({ name, secured, policies }: Relation): string[] {
  if (!secured) return [`${name} is under no policy and not on the list of global tables`];
  if (policies.length === 0) return [`${name} has row level security and no policy`];
  const strange = policies.filter(({ using, check, command }) => using !== OWN_COMPANY || check !== OWN_COMPANY || command !== "*");
  return strange.map(({ using, check }) => `${name} has a policy that is not the company's: using ${String(using)} check ${String(check)}`);
}

async function faultsOfGlobal(web: pg.Client, name: string): Promise<string[]> {
  const table = pg.escapeIdentifier(name);
  const verbs = {
    select: `select from ${table}`,
    insert: `insert into ${table} default values`,
    update: `update ${table} set ${await anyColumnOf(web, name)} = null`,
    delete: `delete from ${table}`,
    truncate: `truncate ${table} cascade`,
  };
  const faults: string[] = [];
  for (const [verb, sql] of Object.entries(verbs)) {
    const attempt = await tryAs(web, null, sql);
    if (!isDenied(attempt)) faults.push(`${name}: the web role may try to ${verb}: ${JSON.stringify(attempt)}`);
  }
  return faults;
}

async function anyColumnOf(web: pg.Client, name: string): Promise<string> {
  const { rows } = await web.query<{ name: string }>("select attname::text as name from pg_attribute where attrelid = $1::regclass and attnum = 1", [
    pg.escapeIdentifier(name),
  ]);
  return pg.escapeIdentifier(rows[0]?.name ?? "");
}

async function faultsOfTenant(owner: pg.Client, web: pg.Client, name: string, { victimId, intruderId }: Walk): Promise<string[]> {
  const table = pg.escapeIdentifier(name);
  const rowsOfVictim = async () =>
    (await owner.query<{ row: object }>(`select to_jsonb(t) as row from ${table} t where company_id = $1 order by t::text`, [victimId])).rows;
  const before = await rowsOfVictim();
  const copied = before[0]?.row;
  if (copied === undefined) return [`${name} holds no row of the first company, so nothing was tried`];
  const faults: string[] = [];
  const own = await tryAs(web, victimId, `select from ${table} where company_id = $1`, [victimId]);
  if (!("rows" in own) || own.rows !== before.length) faults.push(`${name}: the company does not see its own rows: ${JSON.stringify(own)}`);

  for (const [who, companyId] of [["another company", intruderId], ["no company", null]] as const) {
    const reach = {
      select: await tryAs(web, companyId, `select from ${table} where company_id = $1`, [victimId]),
      "select without a filter": await tryAs(web, companyId, `select from ${table} where company_id is distinct from $1`, [companyId]),
      update: await tryAs(web, companyId, `update ${table} set company_id = company_id where company_id = $1`, [victimId]),
      delete: await tryAs(web, companyId, `delete from ${table} where company_id = $1`, [victimId]),
    };
    for (const [verb, attempt] of Object.entries(reach)) {
      if (!isDenied(attempt) && !("rows" in attempt && attempt.rows === 0)) faults.push(`${name}: ${verb} as ${who}: ${JSON.stringify(attempt)}`);
    }
    const copy = `insert into ${table} select (jsonb_populate_record(null::${table}, $1::jsonb)).*`;
    // Without a filter: a statement that reads no column is not checked against the policy for reading.
    const giveAway = `update ${table} set company_id = $1`;
    const planting = {
      insert: await tryAs(web, companyId, copy, [JSON.stringify(copied)]),
      truncate: await tryAs(web, companyId, `truncate ${table} cascade`),
      ...(companyId === null ? {} : { "update of its own rows into the first": await tryAs(web, companyId, giveAway, [victimId]) }),
    };
    for (const [verb, attempt] of Object.entries(planting)) {
      if (!isDenied(attempt)) faults.push(`${name}: ${verb} as ${who}: ${JSON.stringify(attempt)}`);
    }
  }
  const after = await rowsOfVictim();
  if (JSON.stringify(after) !== JSON.stringify(before)) faults.push(`${name}: the first company's rows are not what they were`);
  return faults;
}

/** Insufficient privilege: no grant, or a row that a policy refuses. */
function isDenied(attempt: Attempt): boolean {
  return "code" in attempt && attempt.code === "42501";
}

/** Tries a statement in a transaction that works for a company, or for none, and takes it back. */
async function tryAs(web: pg.Client, companyId: string | null, sql: string, values: readonly unknown[] = []): Promise<Attempt> {
  await web.query("begin");
  try {
    if (companyId !== null) await web.query("select open_guest_work($1)", [companyId]);
    return { rows: (await web.query(sql, [...values])).rowCount ?? 0 };
  } catch (error) {
    if (!(error instanceof pg.DatabaseError)) throw error;
    return { code: error.code ?? "", message: error.message };
  } finally {
    await web.query("rollback");
  }
}
