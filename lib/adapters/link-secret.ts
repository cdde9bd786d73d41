import { createHash } from "node:crypto";

/** What the database keeps of a link's secret: its sha256, so that a copy of the database opens nothing. */
export function hashOfSecret(secret: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(createHash("sha256").update(secret).digest());
}
