// @ts-check
// Read by whatever Node the machine has, so the syntax stays that of 2017.

/** The oldest Node that the product runs on, as package.json's "engines" says. */
export const OLDEST_NODE = "20.19.0";

/**
 * Says in one sentence why a Node is too old, or answers an empty text when it will do.
 *
 * @param {string} version a version as `process.versions.node` gives it, such as "20.19.1"
 * @returns {string}
 */
export function refuseOldNode(version) {
  const found = version.replace(/^v/, "").split(".").map(Number);
  const oldest = OLDEST_NODE.split(".").map(Number);
  for (let place = 0; place < oldest.length; place += 1) {
    const difference = (found[place] || 0) - (oldest[place] || 0);
    if (difference > 0) return "";
    if (difference < 0) {
      return (
        "Halfpass needs Node " + OLDEST_NODE + " or newer and this is Node " + version +
        ": install a newer one from nodejs.org and start again."
      );
    }
  }
  return "";
}
