/** A path of this site to go on to, or the front door. Anything that could lead elsewhere is not followed. */
export function ownPath(next: unknown): string {
  if (typeof next !== "string" || !next.startsWith("/") || next.startsWith("//") || next.includes("\\")) return "/";
  const base = "https://office.invalid";
  return URL.canParse(next, base) && new URL(next, base).origin === base ? next : "/";
}
