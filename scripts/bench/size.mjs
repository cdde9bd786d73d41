// @ts-check
import { existsSync, lstatSync, readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";

const BYTES_OF_MEGABYTE = 1_000_000;

/**
 * The sum of the lengths of all files below a folder; links are not followed.
 *
 * @param {string} folder
 * @param {(name: string) => boolean} [isLeftOut] folders of which names are not entered
 * @returns {number} megabytes
 */
export function folderMegabytes(folder, isLeftOut = () => false) {
  let bytes = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isFile()) bytes += lstatSync(path).size;
    else if (entry.isDirectory() && !isLeftOut(entry.name)) bytes += folderMegabytes(path, isLeftOut) * BYTES_OF_MEGABYTE;
  }
  return bytes / BYTES_OF_MEGABYTE;
}

/**
 * What the installed packages weigh: those that a start installs, and all of them.
 *
 * @param {string} checkout
 * @returns {{ product: number, all: number }} megabytes; equal where no test tools are installed
 */
export function packageMegabytes(checkout) {
  const { packages } = JSON.parse(readFileSync(join(checkout, "package-lock.json"), "utf8"));
  const megabytes = { product: 0, all: 0 };
  for (const [path, entry] of Object.entries(packages)) {
    const folder = join(checkout, path);
    if (path === "" || !existsSync(folder)) continue;
    // Packages within packages have entries of their own.
    const own = folderMegabytes(folder, (name) => name === "node_modules");
    megabytes.all += own;
    if (entry.dev !== true) megabytes.product += own;
  }
  return megabytes;
}
