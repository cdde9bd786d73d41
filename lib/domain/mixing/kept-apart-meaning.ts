import { type GroupedIngredient, isIngredientNamed, isNamedIn, mayBeUnderAnotherName } from "#domain/label/ingredient-name";
import { type GuaranteedNutrient, type KeptApartMeaning, type ProductClass, readKeptApartWords } from "#domain/label/kept-apart-words";
import { type ClassFacts } from "#domain/label/label-facts";
import { kindOf, type PesticideKind } from "#domain/label/resistance-group";
import { type Grade } from "#domain/turf/nutrients";

/** A product as another label's words may mean it. */
export interface MeantProduct {
  readonly productName: string;
  readonly activeIngredients: readonly GroupedIngredient[] | "unknown";
  /** What its label is used for and what it was put down for, each in a label's words. */
  readonly serviceTypes: readonly string[];
  /** Unknown where no label is on file. */
  readonly classFacts: ClassFacts | "unknown";
}

/** What is not on file of a product, so that nobody can say whether it is meant, and what to do about it. */
export interface NotTold {
  readonly missing: string;
  readonly toDo: string;
}

/** Whether a product is meant. */
export type Meant = "yes" | "no" | NotTold;

/**
 * Whether the words of what a label keeps apart mean a product: by its name, its ingredients and the acids that those are
 * forms of, its guarantee of a nutrient, or its class. What is not on file is said by name where it could decide.
 */
export function isMeant(from: string, product: MeantProduct): Meant {
  const meaning = readKeptApartWords(from);
  if (meaning === undefined) return { missing: `which products "${from}" are is not on file`, toDo: `Enter the names of products or ingredients in place of "${from}".` };
  return meantBy(meaning, product);
}

function meantBy(meaning: KeptApartMeaning, product: MeantProduct): Meant {
  if (meaning.kind === "everything") return "yes";
  if (meaning.kind === "class") return both(isOfClass(meaning.of, product), meaning.form === "any" ? "yes" : isOfForm(meaning.form, product));
  if (meaning.kind === "name") return isNamed([meaning.name], product);
  if (meaning.kind === "thing") return either(isNamed(meaning.names, product), meaning.guaranteed === undefined ? "no" : brings(meaning.guaranteed, product));
  return either(isNamed([meaning.name], product), isMadeOf(meaning.guaranteed, product));
}

function either(one: Meant, other: Meant): Meant {
  if (one === "yes" || other === "yes") return "yes";
  return one === "no" ? other : one;
}

function both(one: Meant, other: Meant): Meant {
  if (one === "no" || other === "no") return "no";
  return one === "yes" ? other : one;
}

function labelMissing(productName: string): NotTold {
  return { missing: `the label of ${productName} is not on file`, toDo: `Enter the label of ${productName}.` };
}

function ingredientsMissing(productName: string): NotTold {
  return { missing: `the active ingredients of ${productName} are not on file`, toDo: `Enter the active ingredients of ${productName}, or that it has none.` };
}

function isNamed(names: readonly string[], { productName, activeIngredients }: MeantProduct): Meant {
  if (names.some((name) => isNamedIn(name, productName))) return "yes";
  if (activeIngredients === "unknown") return ingredientsMissing(productName);
  if (activeIngredients.some((active) => names.some((name) => isIngredientNamed(name, active)))) return "yes";
  const open = activeIngredients.find((active) => names.some((name) => mayBeUnderAnotherName(name, active, [])));
  if (open === undefined) return "no";
  return { missing: `${open.name} in ${productName} is under no common name`, toDo: `Enter the ingredient of ${productName} by its common name, or its acid equivalent by the acid's.` };
}

function gradeOf({ productName, classFacts }: MeantProduct): Grade | "none" | NotTold {
  if (classFacts === "unknown") return labelMissing(productName);
  if (classFacts.analysis === "unknown") return { missing: `the analysis of ${productName} is not on file`, toDo: `Enter the analysis of ${productName}, or that it has none.` };
  return classFacts.analysis === "none" ? "none" : classFacts.analysis.grade;
}

/** A label that guarantees iron brings it, whatever its product is called. Where it guarantees none there is none worth naming. */
function brings(nutrient: GuaranteedNutrient, product: MeantProduct): Meant {
  const grade = gradeOf(product);
  if (grade === "none") return "no";
  if ("missing" in grade) return grade;
  const percents = { iron: grade.ironPercent, nitrogen: grade.nitrogenPercent, phosphate: grade.phosphatePercent, potash: grade.potashPercent };
  const percent = percents[nutrient];
  return percent !== "not-stated" && percent.numerator > 0n ? "yes" : "no";
}

/** What the nutrients of a fertilizer are made of is no fact that is kept. */
function isMadeOf(nutrient: GuaranteedNutrient | undefined, product: MeantProduct): Meant {
  const mayBe = nutrient === undefined ? isFertilizer(product) : brings(nutrient, product);
  const { productName } = product;
  return mayBe === "yes" ? { missing: `what the nutrients of ${productName} are made of is not on file`, toDo: `Read on the label of ${productName} what its nutrients are made of.` } : mayBe;
}

/** A fertilizer has an analysis; what it was put down for tells where nobody has read that. */
function isFertilizer(product: MeantProduct): Meant {
  const grade = gradeOf(product);
  if (grade === "none") return "no";
  return "missing" in grade && !product.serviceTypes.includes("fertilizer") ? grade : "yes";
}

function isPesticide({ productName, activeIngredients, classFacts }: MeantProduct): Meant {
  if (activeIngredients !== "unknown" && activeIngredients.length > 0) return "yes";
  if (classFacts === "unknown") return labelMissing(productName);
  if (typeof classFacts.epaRegistrationNumber === "object") return "yes";
  if (activeIngredients === "unknown") return ingredientsMissing(productName);
  return classFacts.epaRegistrationNumber === "none" ? "no" : { missing: `whether ${productName} has an EPA registration number is not on file`, toDo: `Enter the EPA registration number of ${productName}, or that it has none.` };
}

function isOfKind(kind: PesticideKind, product: MeantProduct): Meant {
  const { productName, activeIngredients, serviceTypes } = product;
  const ofWork = serviceTypes.map((service) => kindOf("unknown", service)).filter((one) => one !== "unknown");
  const ofIngredients = activeIngredients === "unknown" ? [] : activeIngredients.map(({ modeOfAction }) => kindOf(modeOfAction, "other"));
  if ([...ofWork, ...ofIngredients].includes(kind)) return "yes";
  const pesticide = isPesticide(product);
  if (pesticide !== "yes") return pesticide;
  if (activeIngredients === "unknown") return ingredientsMissing(productName);
  // What an ingredient is against is told by its group, or else by what the label is used for.
  const isTold = ofWork.length > 0 || (ofIngredients.length > 0 && !ofIngredients.includes("unknown"));
  return isTold ? "no" : { missing: `what kind of pesticide ${productName} is is not on file`, toDo: `Enter the resistance groups of ${productName} with their kind, as in Group 4 herbicide.` };
}

function isOfClass(productClass: ProductClass, product: MeantProduct): Meant {
  if (productClass === "fertilizer") return isFertilizer(product);
  if (productClass === "pesticide") return isPesticide(product);
  if (productClass !== "surfactant") return isOfKind(productClass, product);
  if (product.classFacts === "unknown") return labelMissing(product.productName);
  return product.classFacts.formulation === "surfactant" ? "yes" : "no";
}

function isOfForm(form: "liquid" | "granular", { productName, classFacts }: MeantProduct): Meant {
  if (classFacts === "unknown") return labelMissing(productName);
  return classFacts.form === form ? "yes" : "no";
}
