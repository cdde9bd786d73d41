import { type PesticideKind } from "#domain/label/resistance-group";

/** A class of products that labels keep theirs apart from. */
export type ProductClass = "fertilizer" | "pesticide" | "surfactant" | Exclude<PesticideKind, "unknown">;

/** A nutrient that a grade guarantees. */
export type GuaranteedNutrient = "iron" | "nitrogen" | "phosphate" | "potash";

/** What a label means by the words of what it keeps its product apart from. */
export type KeptApartMeaning =
  | { readonly kind: "everything" }
  | { readonly kind: "class"; readonly of: ProductClass; readonly form: "liquid" | "granular" | "any" }
  /** Something that is known here under several names; of a nutrient that is what its guarantee brings, too. */
  | { readonly kind: "thing"; readonly names: readonly string[]; readonly guaranteed?: GuaranteedNutrient }
  /** What a fertilizer may be made of without saying so in its grade; with a nutrient only one that guarantees that. */
  | { readonly kind: "made-of"; readonly name: string; readonly guaranteed?: GuaranteedNutrient }
  /** A name of a product or an ingredient, which may be one that nobody here owns. */
  | { readonly kind: "name"; readonly name: string };

const CLASS_OF_WORD: ReadonlyMap<string, ProductClass> = new Map([
  ["fertilizer", "fertilizer"],
  ["fertiliser", "fertilizer"],
  ["plant food", "fertilizer"],
  ["herbicide", "herbicide"],
  ["weed killer", "herbicide"],
  ["weedkiller", "herbicide"],
  ["insecticide", "insecticide"],
  ["fungicide", "fungicide"],
  ["pesticide", "pesticide"],
  ["surfactant", "surfactant"],
]);

/** Under what names a thing is met where a label has one of them. From memory. */
const NAMES: readonly { readonly names: readonly string[]; readonly guaranteed?: GuaranteedNutrient }[] = [
  { names: ["iron", "ferrous", "ferric"], guaranteed: "iron" },
  { names: ["nitrogen"], guaranteed: "nitrogen" },
  { names: ["phosphate", "phosphorus"], guaranteed: "phosphate" },
  { names: ["potash", "potassium"], guaranteed: "potash" },
  { names: ["lime", "limestone", "quicklime", "liming", "calcium carbonate", "calcium hydroxide", "calcium oxide", "dolomite", "dolomitic", "calcitic"] },
];

/** What feeds are made of. From memory. */
const MADE_OF = /^(?:urea|uan|ammonium (?:sul(?:f|ph)ate|nitrate|thiosulfate)|sul(?:f|ph)ur|calcium|magnesium|manganese|zinc|copper|boron|micronutrients?|trace elements?)$/u;
const FORM_OF_IRON = /^(?:chelated iron|(?:iron|ferrous|ferric) (?:sul(?:f|ph)ate|chelates?|oxide|citrate|gluconate|glucoheptonate|edta|dtpa|hedta|eddha))$/u;

const EVERYTHING = /^(?:others?|all|any|everything|anything|else|(?:everything|anything|all) else|products?|chemicals?|materials?|substances?)$/u;

/** Words of kinds of things: where they stand in what is no class that is known here, a name is not what is meant. */
const OF_A_KIND = new RegExp(
  `\\b(?:${[
    "(?:fertili[sz]er|herbicide|insecticide|fungicide|pesticide|miticide|nematicide|algaecide|biocide|surfactant|adjuvant|additive|regulator|inhibitor|amendment|nutrient|agent|formulation)s?",
    "(?:product|chemical|material|substance|compound)s?",
    "organophosphates?|organophosphorus|carbamates?|pyrethroids?|neonicotinoids?|sulfonylureas?|dinitroanilines?|triazines?|strobilurins?|phenoxy|phenoxies|auxins?",
    "solutions|mixtures|mixes|sprays|oils|esters|amines|(?<!fatty )acids|salts(?! of)|acidic|alkaline",
    "others?|except|else|anything|everything|all|any|groups?",
  ].join("|")})\\b`,
  "u",
);

/**
 * What a label means by what it keeps its product apart from: everything, a class of products, or something by its name.
 * Undefined where the words are of a kind of things that is not known here ("alkaline materials"), which no product's name
 * could ever meet.
 */
export function readKeptApartWords(from: string): KeptApartMeaning | undefined {
  const words = wordsOf(from);
  if (EVERYTHING.test(words)) return { kind: "everything" };
  const [, formWord = "", word = ""] = /^(?:(liquid|granular|dry) )?(.+?)s?$/u.exec(words) ?? [];
  const productClass = CLASS_OF_WORD.get(word);
  if (productClass !== undefined) return { kind: "class", of: productClass, form: formWord === "" ? "any" : formWord === "liquid" ? "liquid" : "granular" };
  if (words === "" || OF_A_KIND.test(words)) return undefined;
  if (words === "fe") return readKeptApartWords("iron");
  const known = NAMES.find(({ names }) => names.includes(words));
  if (known !== undefined) return { kind: "thing", ...known };
  if (FORM_OF_IRON.test(words)) return { kind: "made-of", name: words, guaranteed: "iron" };
  return MADE_OF.test(words) ? { kind: "made-of", name: words } : { kind: "name", name: nameOf(from) };
}

/** Without the words that say no more than that there may be several: "any other herbicide products", "products containing iron". */
function wordsOf(from: string): string {
  return nameOf(from).replace(/^(?:(?:any|all|every|each|the|other|another) )+(?=\S)/u, "").replace(/^products? (?:containing|that contain|with) /u, "");
}

/** A product's own name may begin with "all". */
function nameOf(from: string): string {
  const words = from.trim().replace(/\s+/gu, " ").replace(/\.$/u, "").toLowerCase();
  return words.replace(/^(?:any |(?:any |all )?other |another )(?=\S)/u, "").replace(/(?:[- ]containing)? products?$/u, "");
}

/** The words that are read as a class, for whoever has to choose others. */
export const KEPT_APART_WORDS = "fertilizers, liquid fertilizers, herbicides, insecticides, fungicides, pesticides, surfactants, iron, lime, all others";
