import { type PrismaClient } from "#adapters/postgres/generated/client";

interface RoleRow {
  role_name: string;
  is_superuser: boolean;
  bypasses_policies: boolean;
  owns_tables: bigint;
  is_member: boolean;
}

/**
 * What is wrong with the role that the web server connects as, a sentence for each fault. Row level security
 * keeps companies apart only for a role that owns no table, is no superuser and can't bypass policies.
 */
export async function webRoleFaults(client: PrismaClient): Promise<readonly string[]> {
  const rows = await client.$queryRaw<RoleRow[]>`
    SELECT r.rolname::text AS role_name, r.rolsuper AS is_superuser, r.rolbypassrls AS bypasses_policies,
      (SELECT count(*) FROM pg_class c WHERE c.relkind IN ('r', 'p') AND pg_has_role(r.oid, c.relowner, 'MEMBER')) AS owns_tables,
      pg_has_role(r.oid, 'halfpass_app', 'USAGE') AS is_member
    FROM pg_roles r WHERE r.rolname = current_user`;
  const role = rows[0];
  if (role === undefined) return ["The database does not know the role that the web server connects as."];
  const faults: string[] = [];
  if (role.is_superuser) faults.push(`The web role ${role.role_name} is a superuser.`);
  if (role.bypasses_policies) faults.push(`The web role ${role.role_name} has BYPASSRLS.`);
  if (!role.is_superuser && role.owns_tables > 0n) faults.push(`The web role ${role.role_name} owns tables, or may become the role that does.`);
  if (!role.is_member) faults.push(`The web role ${role.role_name} is not a member of halfpass_app.`);
  return faults;
}
