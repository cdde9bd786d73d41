/**
 * True for two names that are one as people type it, whatever their case and their spaces: "XR8004", "Xr 8004" and
 * " xr  8004 " are one. Only a space between two figures parts them, so that size 1 1 is not size 11.
 */
export function isSameName(left: string, right: string): boolean {
  return folded(left) === folded(right);
}

function folded(name: string): string {
  return name.replace(/\s+/gu, " ").replace(/(?<!\d) | (?!\d)/gu, "").toLowerCase();
}
