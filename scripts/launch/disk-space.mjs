// @ts-check
import { existsSync, statfsSync } from "node:fs";
import { dirname } from "node:path";
import { Refusal } from "./say.mjs";

const BYTES_PER_MEGABYTE = 1024 * 1024;

/**
 * The free space, in megabytes, of the disk that a file or folder lies on or would lie on.
 *
 * @param {string} path
 */
export function freeMegabytes(path) {
  const disk = statfsSync(nearestExisting(path));
  return Math.floor((disk.bavail * disk.bsize) / BYTES_PER_MEGABYTE);
}

/**
 * Refuses when a disk has too little room for what comes next, before anything is half written.
 *
 * @param {string} path where it would be written
 * @param {number} neededMegabytes
 * @param {string} purpose the subject of the sentence, such as "installing its packages"
 */
export function requireFreeSpace(path, neededMegabytes, purpose) {
  const found = freeMegabytes(path);
  if (found >= neededMegabytes) return;
  throw new Refusal(
    `The disk is too full: ${purpose} needs ${neededMegabytes} MB free in ${path} and there are ${found} MB; ` +
      "make room and start again.",
  );
}

/**
 * The path itself where it exists, or else the nearest folder above it that does.
 *
 * @param {string} path
 * @returns {string}
 */
export function nearestExisting(path) {
  return existsSync(path) || dirname(path) === path ? path : nearestExisting(dirname(path));
}
