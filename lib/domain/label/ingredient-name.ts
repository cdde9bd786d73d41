/** Names of ingredients are compared without regard to capitals, because labels differ in them. */
export function isSameIngredient(left: string, right: string): boolean {
  return plain(left) === plain(right);
}

/**
 * Whether a name stands in another as whole words, whatever the capitals: "iron" in "Rustwater Iron" and "2,4-D" in
 * "2,4-D, dimethylamine salt", and neither "iron" in "Environ Feed" nor "2,4-D" in "2,4-DB".
 */
export function isNamedIn(wanted: string, name: string): boolean {
  const [part, whole] = [plain(wanted), plain(name)];
  if (part === "") return false;
  for (let from = whole.indexOf(part); from >= 0; from = whole.indexOf(part, from + 1)) {
    if (!IN_A_WORD.test(whole.charAt(from - 1)) && !IN_A_WORD.test(whole.charAt(from + part.length))) return true;
  }
  return false;
}

const IN_A_WORD = /[\p{L}\p{N}]/u;

function plain(name: string): string {
  return name.trim().replace(/\s+/gu, " ").toLowerCase();
}
