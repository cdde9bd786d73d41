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

/** An ingredient by its name, and by that of the acid that it is a form of where a label prints that. */
export interface NamedIngredient {
  readonly name: string;
  readonly acid?: { readonly name: string };
}

/**
 * How an ingredient counts towards what a label limits by name: by its acid equivalent, as itself, or not at all.
 * Undecided where it is another form of what is limited ("2,4-D, dimethylamine salt" where the limit is of "2,4-D"; one
 * salt where it is of another) and no acid equivalent says how much of it counts.
 */
export function countsToward(limited: string, { name, acid }: NamedIngredient): "by-acid" | "as-itself" | "undecided" | "not" {
  if (acid !== undefined && isSameIngredient(acid.name, limited)) return "by-acid";
  if (isSameIngredient(name, limited)) return "as-itself";
  const isAForm = isNamedIn(stemOf(limited), name) || isNamedIn(stemOf(name), limited) || (acid !== undefined && isNamedIn(stemOf(limited), acid.name));
  return isAForm ? "undecided" : "not";
}

/** "2,4-D" of "2,4-D, dimethylamine salt", "Prodiamine" of "Prodiamine (a dinitroaniline)": the comma within a name has no space after it. */
function stemOf(name: string): string {
  return name.split(/, | \(/u)[0] ?? name;
}

const IN_A_WORD = /[\p{L}\p{N}]/u;

function plain(name: string): string {
  return name.trim().replace(/\s+/gu, " ").toLowerCase();
}
