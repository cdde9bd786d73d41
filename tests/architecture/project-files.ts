import { execFileSync } from "node:child_process";
import { existsSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { projectFolder } from "./project-graph";

/** A file of the project: its path from the project's folder, with forward slashes, and its text. */
export interface ProjectFile {
  readonly path: string;
  readonly text: string;
}

const PLANTED = "tests/architecture/planted/";

/**
 * Every text file that is committed or about to be: what Git tracks or would, less what is planted to be
 * found. Files with a zero byte are not text.
 */
export function readProjectFiles(): ProjectFile[] {
  const options = { cwd: projectFolder, encoding: "utf8", maxBuffer: 64 * 1024 * 1024 } as const;
  const listed = execFileSync("git", ["ls-files", "-z", "--cached", "--others", "--exclude-standard"], options);
  const paths = listed.split("\0").filter((path) => path !== "" && !path.startsWith(PLANTED));
  return paths
    .filter((path) => existsSync(join(projectFolder, path)) && statSync(join(projectFolder, path)).isFile())
    .map((path) => ({ path, text: readFileSync(join(projectFolder, path), "utf8") }))
    .filter(({ text }) => !text.includes("\0"));
}
