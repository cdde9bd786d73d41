// The letters that papers are set in, read from the installed font packages. Sans is the house's own words, serif is
// quoted words of a label or a law, mono is for numbers that are copied character by character.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import process from "node:process";
import { unpackWoff } from "./unpack-woff";

export const FACES = {
  sans: { family: "atkinson-hyperlegible-next", weight: 400 },
  semibold: { family: "atkinson-hyperlegible-next", weight: 600 },
  bold: { family: "atkinson-hyperlegible-next", weight: 700 },
  serif: { family: "source-serif-4", weight: 400 },
  mono: { family: "atkinson-hyperlegible-mono", weight: 600 },
} as const;
export type FaceName = keyof typeof FACES;

/** A package splits a face by script; names of customers need the second file now and then. */
export const SCRIPTS = ["latin", "latin-ext"] as const;
export type Script = (typeof SCRIPTS)[number];

const files = new Map<string, Buffer>();

/**
 * The font of a face for a script. The server is started in the folder that holds node_modules, and so are the
 * tests; `outputFileTracingIncludes` in next.config.ts brings the files along into the built server.
 */
export function fontFile(face: FaceName, script: Script): Buffer {
  const { family, weight } = FACES[face];
  const name = `${family}-${script}-${weight}-normal.woff`;
  const held = files.get(name);
  if (held !== undefined) return held;
  const font = unpackWoff(readFileSync(join(process.cwd(), "node_modules", "@fontsource", family, "files", name)));
  files.set(name, font);
  return font;
}
