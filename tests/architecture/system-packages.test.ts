import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, expect, test } from "vitest";
import { findProgram } from "../../scripts/test/system-packages.mjs";

let folder: string;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "halfpass-programs-"));
  const make = (path: string, script: string, mode: number) => {
    writeFileSync(join(folder, path), script);
    chmodSync(join(folder, path), mode);
  };
  mkdirSync(join(folder, "one"));
  mkdirSync(join(folder, "other"));
  mkdirSync(join(folder, "one", "a-folder"));
  // As some systems have it: a file of the program's name that only tells how to install it.
  make("one/stub", "#!/bin/sh\necho 'install it first' >&2\nexit 1\n", 0o755);
  make("one/plain", "#!/bin/sh\nexit 0\n", 0o644);
  make("other/stub", "#!/bin/sh\nexit 0\n", 0o755);
  make("other/real", "#!/bin/sh\nexit 0\n", 0o755);
});
afterAll(() => {
  rmSync(folder, { recursive: true });
});

const find = (...names: readonly string[]) => findProgram(names, ["one", "other", "missing"].map((name) => join(folder, name)));

test("the first name that runs is found, in the first folder where it does", () => {
  expect(find("real", "stub")).toBe(join(folder, "other/real"));
  expect(find("absent", "stub")).toBe(join(folder, "other/stub"));
});

test.each(["absent", "plain", "a-folder"])("what does not run is not found: %s", (name) => {
  expect(find(name)).toBeUndefined();
});
