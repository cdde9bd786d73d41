import { type ActiveIngredient } from "#domain/label/label-facts";
import { codeOfGroup, isOfOneKind, kindOf } from "#domain/label/resistance-group";
import { type Substance, SUBSTANCES } from "#domain/label/substance-names";

/** Names of ingredients are compared without regard to capitals, because labels differ in them; a chemical name is its common name's. */
export function isSameIngredient(left: string, right: string): boolean {
  const [one, other] = [read(left), read(right)];
  return one.plain === other.plain || (one.named !== undefined && one.named === other.named);
}

/**
 * Whether a name stands in another as whole words, whatever the capitals: "iron" in "Rustwater Iron" and "2,4-D" in
 * "2,4-D, dimethylamine salt", and neither "iron" in "Environ Feed" nor "2,4-D" in "2,4-DB".
 */
export function isNamedIn(wanted: string, name: string): boolean {
  return standsIn(plain(wanted), plain(name));
}

function standsIn(part: string, whole: string): boolean {
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

/** An ingredient with the resistance group that its label prints. */
export type GroupedIngredient = NamedIngredient & Pick<ActiveIngredient, "modeOfAction">;

/** Whether an ingredient is, or is a form of, what a name says, under any name that either of them has. */
export function isIngredientNamed(wanted: string, { name, acid }: NamedIngredient): boolean {
  const { plain: own, named } = read(wanted);
  const names = [own, ...namesOf(named)];
  return isAnyNamedIn(names, name) || (acid !== undefined && isAnyNamedIn(names, acid.name));
}

/**
 * How an ingredient counts towards what a label limits by name: by its acid equivalent, as itself, or not at all.
 * Undecided where it is another form of what is limited ("2,4-D, dimethylamine salt" where the limit is of "2,4-D"; one
 * salt where it is of another) and no acid equivalent says how much of it counts.
 */
export function countsToward(limited: string, { name, acid }: NamedIngredient): "by-acid" | "as-itself" | "undecided" | "not" {
  if (acid !== undefined && isSameIngredient(acid.name, limited)) return "by-acid";
  if (isSameIngredient(name, limited)) return "as-itself";
  const isAForm = areForms(limited, name) || (acid !== undefined && areForms(limited, acid.name));
  return isAForm ? "undecided" : "not";
}

/**
 * Whether an ingredient that no name tells from it may be what a name says all the same: an acid, salt, ester or amine of
 * resistance group 4 whose names are none that are known here, where the name is one of that group's, or of none that is stated.
 * @param beside the ingredients of the label that has the name; what they say of its group counts where the name is not known here
 */
export function mayBeUnderAnotherName(wanted: string, { name, acid, modeOfAction }: GroupedIngredient, beside: readonly GroupedIngredient[] | "unknown"): boolean {
  const isUntold = isOfGroup4(modeOfAction) === "yes" && OF_A_FORM.test(name) && [name, ...(acid === undefined ? [] : [acid.name])].every((one) => read(one).within === undefined);
  if (!isUntold) return false;
  const known = read(wanted).within;
  if (known !== undefined) return known.isOfGroup4;
  return beside === "unknown" || beside.some((own) => countsToward(wanted, own) !== "not" && isOfGroup4(own.modeOfAction) !== "no");
}

const OF_A_FORM = /acid|salt|ester|amine/iu;

/** Group 4 of herbicides: the groups of insecticides and fungicides have that number too. */
function isOfGroup4(modeOfAction: ActiveIngredient["modeOfAction"]): "yes" | "no" | "not-stated" {
  if (modeOfAction === "none" || modeOfAction === "unknown") return "not-stated";
  return codeOfGroup(modeOfAction.group).split(/[ /]/u).includes("4") && isOfOneKind(kindOf(modeOfAction, "other"), "herbicide") ? "yes" : "no";
}

function areForms(one: string, other: string): boolean {
  const namesFor = ({ stem, within }: ReadName) => [stem, ...namesOf(within)];
  return isAnyNamedIn(namesFor(read(one)), other) || isAnyNamedIn(namesFor(read(other)), one);
}

/** Whether one of some plain names stands in a name, under any name that this has. */
function isAnyNamedIn(wanted: readonly string[], name: string): boolean {
  const { plain: own, within } = read(name);
  const names = [own, ...namesOf(within)];
  return wanted.some((one) => names.some((each) => standsIn(one, each)));
}

const IN_A_WORD = /[\p{L}\p{N}]/u;

/** Papers print some hyphens as dashes, and a line may break after the comma between two numbers. */
function plain(name: string): string {
  return name.trim().replace(/\s+/gu, " ").replace(/[\u2010-\u2015]/gu, "-").replace(/(?<=\d), (?=\d)/gu, ",").toLowerCase();
}

/** A name without what labels set differently in it: brackets, hyphens, spaces. The R of an isomer stays told apart. */
function squeezed(name: string): string {
  return plain(name).replace(/\(r\)|(?<![\p{L}\p{N}])r(?=-)/gu, "\u00ae").replace(/[^\p{L}\p{N}\u00ae]/gu, "");
}

/** "…acetic acid" is in "…acetate" too, by which esters and salts are printed. */
function rootOf(chemicalName: string): string {
  return squeezed(chemicalName).replace(/icacid$/u, "");
}

const PLAIN_NAMES: ReadonlyMap<Substance, readonly string[]> = new Map(SUBSTANCES.map((substance) => [substance, substance.names.map(plain)]));
const COMMON = SUBSTANCES.flatMap((substance) => substance.names.map((name) => ({ substance, name: plain(name) })));
const CHEMICAL = SUBSTANCES.flatMap((substance) => substance.chemicalNames.map((name) => ({ substance, whole: squeezed(name), root: rootOf(name) })));
const BY_WHOLE_NAME: ReadonlyMap<string, Substance> = new Map([
  ...COMMON.flatMap(({ name, substance }) => [squeezed(name), squeezed(`${name} acid`)].map((one) => [one, substance] as const)),
  ...CHEMICAL.map(({ whole, substance }) => [whole, substance] as const),
]);

/** A name as it is compared. */
interface ReadName {
  readonly plain: string;
  /** "2,4-D" of "2,4-D, dimethylamine salt", "Prodiamine" of "Prodiamine (a dinitroaniline)": the comma within a name has no space after it. */
  readonly stem: string;
  /** What it is the whole name of. */
  readonly named: Substance | undefined;
  /** What it, or a part of it, says. The longest part counts, because names of one substance may stand in those of another. */
  readonly within: Substance | undefined;
}

/** Names are few, are met again with each record of a lawn, and never come to mean anything else. */
const READ = new Map<string, ReadName>();
const MOST_READ = 5000;

function read(name: string): ReadName {
  const before = READ.get(name);
  if (before !== undefined) return before;
  const [text, chemical] = [plain(name), squeezed(name)];
  const named = BY_WHOLE_NAME.get(chemical);
  const now = { plain: text, stem: text.split(/, | \(/u)[0] ?? text, named, within: named ?? longestIn(text, chemical) };
  if (READ.size >= MOST_READ) READ.clear();
  READ.set(name, now);
  return now;
}

function longestIn(text: string, chemical: string): Substance | undefined {
  const found = [
    ...COMMON.filter(({ name }) => standsIn(name, text)).map(({ substance, name: { length } }) => ({ substance, length })),
    ...CHEMICAL.filter(({ root }) => chemical.includes(root)).map(({ substance, root: { length } }) => ({ substance, length })),
  ];
  return found.toSorted((one, other) => other.length - one.length)[0]?.substance;
}

function namesOf(substance: Substance | undefined): readonly string[] {
  return substance === undefined ? [] : (PLAIN_NAMES.get(substance) ?? []);
}
