import { createHash } from "node:crypto";

/** SHA-256 over the hash of the entry before and the UTF-8 bytes of this one: whoever rewrites one must rewrite all after it. */
export function registerHash(previousHash: Uint8Array, content: string): Uint8Array<ArrayBuffer> {
  return new Uint8Array(createHash("sha256").update(previousHash).update(content, "utf8").digest());
}
