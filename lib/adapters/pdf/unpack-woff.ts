import { inflateSync } from "node:zlib";
import { BrokenInvariant } from "#domain/foundation/invariant";

// W3C, WOFF File Format 1.0, sections 3 and 4: the header has 44 bytes, each entry of its table directory 20.
const SIGNATURE = "wOFF";
const HEADER = 44;
const ENTRY = 20;
// The OpenType specification, "Table Directory": a header of 12 bytes, entries of 16, tables begin at multiples of 4.
const SFNT_HEADER = 12;
const SFNT_ENTRY = 16;

const padded = (length: number) => Math.ceil(length / 4) * 4;

/**
 * Unpacks a WOFF 1.0 file into the OpenType font inside it. PDFKit can read the packed file, but unpacks it slowly and
 * anew for each document, which took most of the time that a paper took.
 */
export function unpackWoff(packed: Buffer): Buffer {
  if (packed.toString("latin1", 0, 4) !== SIGNATURE) throw new BrokenInvariant("a font file of the packages is WOFF 1.0");
  const count = packed.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, index) => {
    const entry = HEADER + index * ENTRY;
    const offset = packed.readUInt32BE(entry + 4);
    const packedLength = packed.readUInt32BE(entry + 8);
    const length = packed.readUInt32BE(entry + 12);
    const bytes = packed.subarray(offset, offset + packedLength);
    return { tag: packed.subarray(entry, entry + 4), checksum: packed.readUInt32BE(entry + 16), bytes: packedLength < length ? inflateSync(bytes) : bytes };
  });
  const directory = Buffer.alloc(SFNT_HEADER + count * SFNT_ENTRY);
  packed.copy(directory, 0, 4, 8);
  directory.writeUInt16BE(count, 4);
  const power = Math.floor(Math.log2(count));
  directory.writeUInt16BE(2 ** power * 16, 6);
  directory.writeUInt16BE(power, 8);
  directory.writeUInt16BE(count * 16 - 2 ** power * 16, 10);
  let offset = directory.length;
  for (const [index, { tag, checksum, bytes }] of tables.entries()) {
    const entry = SFNT_HEADER + index * SFNT_ENTRY;
    tag.copy(directory, entry);
    directory.writeUInt32BE(checksum, entry + 4);
    directory.writeUInt32BE(offset, entry + 8);
    directory.writeUInt32BE(bytes.length, entry + 12);
    offset += padded(bytes.length);
  }
  return Buffer.concat([directory, ...tables.flatMap(({ bytes }) => [bytes, Buffer.alloc(padded(bytes.length) - bytes.length)])]);
}
