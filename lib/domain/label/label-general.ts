import { accept, refuse } from "#domain/foundation/outcome";
import { type Concentration, percentByWeight } from "#domain/quantities/active-ingredient";
import { type Density, densityFromSpecificGravity, densityFromWeighing, densityIn, type DensityUnit } from "#domain/quantities/density";
import { exactly } from "#domain/quantities/exact-quantity";
import { parseNumber } from "#domain/quantities/parse-number";
import { parseQuantity } from "#domain/quantities/parse-quantity";
import { compareRational, type Rational, rational } from "#domain/quantities/rational";
import { readUnit } from "#domain/quantities/unit-names";
import { units, type UnitOf } from "#domain/quantities/units";
import { type Grade, type NitrogenRelease, parseGrade, slowShareOfNitrogen } from "#domain/turf/nutrients";
import { answerOf, gather, type ReadAnswer, readOnFile, readWord, readYesOrNo } from "#domain/label/label-answer";
import { type ActiveIngredient, FORMULATIONS, type LabelFacts, SIGNAL_WORDS } from "#domain/label/label-facts";
import { type LabelText } from "#domain/label/label-fields";

const HUNDRED = { numerator: 100n, denominator: 1n };

/** What is weighed: a product or a spray of it; or what comes loose by the load, as sand, soil and compost do. */
export type WeighedMaterial = "product" | "loose-material";

interface DensityRange {
  readonly unit: DensityUnit;
  readonly lowest: bigint;
  readonly highest: bigint;
  readonly words: string;
}

/**
 * What a density can be; both ends belong to it. Outside of it a figure or a unit is a slip. Common practice: products go
 * from half the weight of water, as light granules, to three times it, and loose material from dry peat to wet sand and stone.
 */
const DENSITY_RANGES: Readonly<Record<WeighedMaterial, DensityRange>> = {
  product: { unit: "lb per gal", lowest: 4n, highest: 25n, words: "a gallon of a product or a spray weighs 4 to 25 lb, which is a specific gravity of 0.48 to 2.99" },
  "loose-material": { unit: "lb per cu yd", lowest: 100n, highest: 5000n, words: "a cubic yard of loose material weighs 100 to 5,000 lb" },
};

/** Reads "10.2 lb per gal", "1.2 kg/L" or "specific gravity 1.22". Refuses an ounce of either kind, what nothing weighs, and anything else. */
export function readDensity(value: string, of: WeighedMaterial): ReadAnswer<Density> {
  const density = readMassInVolume(value);
  if (!density.ok) return density;
  const { unit, lowest, highest, words } = DENSITY_RANGES[of];
  const found = densityIn(density.value, unit);
  const isMeant = compareRational(found, rational(lowest)) >= 0 && compareRational(found, rational(highest)) <= 0;
  return isMeant ? density : refuse(`"${value}" can't be meant: ${words}. Look at the figure and at its unit.`);
}

/** A weight in a volume, of whatever it is. */
function readMassInVolume(value: string): ReadAnswer<Density> {
  const [, gravity] = /^(?:specific gravity|relative density)[: ]*([\d.]+)$/iu.exec(value) ?? [];
  if (gravity !== undefined) {
    const read = parseNumber("density", gravity);
    if (!read.ok || read.value.numerator === 0n) return refuse("A specific gravity is a number above zero, as in 1.22.");
    return accept(densityFromSpecificGravity(read.value));
  }
  const [, mass, per] = /^(.+?)(?:\/| per )(.+)$/iu.exec(value) ?? [];
  const perUnit = per === undefined ? undefined : readUnit(per.replace(/^(?:US )?/iu, ""));
  if (mass === undefined || perUnit?.kind !== "unit" || units[perUnit.unit].dimension !== "volume") {
    return refuse(`"${value}" is not a weight in a volume. Write it as in 10.2 lb per gal, or specific gravity 1.22.`);
  }
  const weight = parseQuantity(mass, { field: "density", dimensions: ["mass"] });
  if (!weight.ok) return refuse(weight.refusal.sentence);
  if (weight.value.exact.exactAmount.numerator === 0n) return refuse("A density is above zero.");
  return accept(densityFromWeighing(weight.value.exact, exactly(perUnit.unit as UnitOf<"volume">, 1n)));
}

/**
 * Reads how much of an active ingredient is in the product: "0.37 %", "4 lb per gal". Refused: a percentage of nothing or
 * above 100, a density of nothing or above what any product weighs, and anything else.
 */
export function readConcentration(value: string): ReadAnswer<Concentration> {
  const [, percent] = /^([\d.]+) ?%(?: by weight)?$/iu.exec(value) ?? [];
  if (percent === undefined) {
    const read = readMassInVolume(value);
    if (!read.ok) return refuse(`"${value}" can't be read. Write how much is in it as in 0.37 % or 4 lb per gal.`);
    const { unit, highest, words } = DENSITY_RANGES.product;
    if (compareRational(densityIn(read.value, unit), rational(highest)) > 0) return refuse(`"${value}" can't be meant: ${words}. Look at the figure and at its unit.`);
    return accept({ kind: "mass-in-volume", massInVolume: read.value });
  }
  const read = parseNumber("concentration", percent);
  if (!read.ok) return refuse(read.refusal.sentence);
  if (read.value.numerator === 0n || compareRational(read.value, HUNDRED) > 0) return refuse("A percentage is above 0 and at most 100.");
  return accept(percentByWeight(read.value));
}

/** Reads "2,4-D, acid equivalent 38.4 %". Refuses more acid than there is of the ingredient: a salt or ester weighs more than its acid. */
function readAcid(text: string, ofIngredient: Concentration): ReadAnswer<NonNullable<ActiveIngredient["acid"]>> {
  const [, name = "", amount = ""] = /^(.+?),? acid equivalent:? (.+)$/iu.exec(text) ?? [];
  if (name === "") return refuse(`"${text}" can't be read. Write the acid and how much of it there is: 2,4-D, acid equivalent 38.4 %.`);
  const equivalent = readConcentration(amount);
  if (!equivalent.ok) return equivalent;
  const [acid, whole] = [ratioOf(equivalent.value), ratioOf(ofIngredient)];
  if (equivalent.value.kind === ofIngredient.kind && compareRational(acid, whole) > 0) return refuse(`"${text}" is more acid than there is of the ingredient.`);
  return accept({ name, equivalent: equivalent.value });
}

function ratioOf(concentration: Concentration): Rational {
  return concentration.kind === "part-of-weight" ? concentration.part : { numerator: concentration.massInVolume.mass, denominator: concentration.massInVolume.volume };
}

/**
 * Reads one ingredient a line: "Prodiamine; 0.37 %; Group 3 herbicide". The group may be none, and is unread when left
 * out. A fourth part has the acid equivalent where the label prints one: "2,4-D, acid equivalent 38.4 %". Refused: a
 * line without a name or an amount, an amount that can't be read, more acid than ingredient, one ingredient twice.
 */
export function readActiveIngredients(value: string): ReadAnswer<readonly ActiveIngredient[]> {
  const ingredients: ActiveIngredient[] = [];
  for (const line of value.split("\n")) {
    const [name = "", amount = "", group = "", acidText = "", ...more] = line.split(";").map((part) => part.trim());
    if (name === "" || amount === "" || more.length > 0) {
      return refuse(`"${line}" needs a name and how much is in it, separated by semicolons: Prodiamine; 0.37 %; Group 3 herbicide.`);
    }
    const concentration = readConcentration(amount);
    if (!concentration.ok) return concentration;
    const modeOfAction = group === "" ? "unknown" : /^none$/iu.test(group) ? "none" : { group };
    const acid = acidText === "" ? undefined : readAcid(acidText, concentration.value);
    if (acid?.ok === false) return acid;
    ingredients.push({ name, concentration: concentration.value, modeOfAction, ...(acid === undefined ? {} : { acid: acid.value }) });
  }
  if (new Set(ingredients.map(({ name }) => name.toLowerCase())).size < ingredients.length) return refuse("The same ingredient stands there twice.");
  return accept(ingredients);
}

/**
 * Reads the slow-release statement: "slow 16 % of product", "7 % WIN", "slow 50 % of nitrogen". Refused: anything else.
 * Whether it fits the grade is held elsewhere (readGeneral).
 */
export function readRelease(value: string): ReadAnswer<NitrogenRelease> {
  const [, figure, ofWhat] = /^(?:slow:? ?)?([\d.]+) ?% ?(?:of (?:the )?)?(product|nitrogen|WIN)$/iu.exec(value) ?? [];
  const percent = figure === undefined ? undefined : parseNumber("release", figure);
  if (percent?.ok !== true || ofWhat === undefined) {
    return refuse(`"${value}" can't be read. Write slow 16 % of product, or slow 50 % of nitrogen, as the label states it.`);
  }
  const kind = ofWhat.toLowerCase() === "nitrogen" ? "slow-percent-of-nitrogen" : "slow-percent-of-product";
  return accept({ kind, percent: percent.value });
}

function readGrade(value: string): ReadAnswer<Grade> {
  const grade = parseGrade("grade", value);
  return grade.ok ? grade : refuse(grade.refusal.sentence);
}

/** Holds grade and release together: more slow nitrogen than nitrogen, or a release without a grade, can't be. */
function readReleaseOf(text: string, grade: ReadAnswer<Grade | "none" | "unknown">): ReadAnswer<NitrogenRelease> {
  const release = readOnFile(text, readRelease);
  if (!release.ok) return release;
  // What nobody has read and what the label leaves out both leave quick and slow untold, and are refused later by name.
  if (release.value === "none" || release.value === "unknown") return accept({ kind: "not-stated" });
  if (!grade.ok) return accept(release.value);
  if (grade.value === "none" || grade.value === "unknown") return refuse("Write the grade too: a slow part is a part of something.");
  const share = slowShareOfNitrogen(grade.value, release.value);
  return share.ok ? accept(release.value) : refuse(share.refusal.sentence);
}

function readFormulation(text: string, form: LabelText["form"]) {
  const answer = answerOf(text);
  if (answer.kind !== "printed") return refuse("Choose how the product is made.");
  const word = readWord(FORMULATIONS, answer.value);
  if (!word.ok) return word;
  if ((form === "granular") === (word.value === "dry granule")) return word;
  return refuse(
    form === "granular"
      ? "This product is on file as one that is spread dry: it is a dry granule."
      : "This product is on file as one that is sprayed: a dry granule is not.",
  );
}

/** What holds for the product whatever it is used for, or, refused, every complaint by its field. */
export function readGeneral(label: LabelText) {
  const text = label.general;
  const grade = readOnFile(text.grade, readGrade);
  const read = gather({
    formulation: readFormulation(text.formulation, label.form),
    epaRegistrationNumber: readOnFile(text.epaRegistrationNumber, (number) => accept({ number })),
    restrictedUse: readYesOrNo(text.restrictedUse),
    signalWord: readOnFile(text.signalWord, (value) => readWord(SIGNAL_WORDS, value)),
    grade,
    nitrogenRelease: readReleaseOf(text.nitrogenRelease, grade),
    density: readOnFile(text.density, (value) => readDensity(value, "product")),
    activeIngredients: readOnFile(text.activeIngredients, readActiveIngredients),
  });
  if (!read.ok) return read;
  const { restrictedUse, grade: stated, nitrogenRelease, density, activeIngredients, ...rest } = read.value;
  const general: Omit<LabelFacts, "uses"> = {
    ...rest,
    productName: label.productName,
    form: label.form,
    isRestrictedUse: restrictedUse,
    analysis: stated === "none" || stated === "unknown" ? stated : { grade: stated, release: nitrogenRelease },
    // A label that says nothing about its density leaves it as untold as one that nobody has read.
    density: density === "none" ? "unknown" : density,
    activeIngredients: activeIngredients === "none" ? [] : activeIngredients,
  };
  return accept(general);
}
