import { isBehindTls, readEnvironment } from "#adapters/environment";
import { databaseClient } from "#adapters/postgres/client";

// What pages need to know about where this office stands, without reading the environment themselves.

/** The whole address of a path of this office, for links that are handed over outside of it. */
export function officeLink(path: string): string {
  return new URL(path, readEnvironment().NEXTAUTH_URL).href;
}

/** The secret that seals session cookies. */
export function sealingSecret(): string {
  return readEnvironment().NEXTAUTH_SECRET;
}

/** True where browsers come over TLS, so that cookies are marked secure. */
export function marksCookiesSecure(): boolean {
  return isBehindTls();
}

/** True while the database answers. */
export async function canServe(): Promise<boolean> {
  try {
    await databaseClient().$queryRaw`SELECT 1 AS one`;
    return true;
  } catch {
    return false;
  }
}
