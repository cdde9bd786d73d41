/** Names as a sentence lists them: "Front", "Front and Back", "Front, Side and Back"; nothing for none. */
export function listWords(names: readonly string[]): string {
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
