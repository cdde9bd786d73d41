import { accept, type Outcome, refuse } from "#domain/foundation/outcome";
import { countsToward } from "#domain/label/ingredient-name";
import { type ActiveIngredient, areOverArea, type LabelFacts, type LabelUse } from "#domain/label/label-facts";
import { type LabelText } from "#domain/label/label-fields";
import { readGeneral } from "#domain/label/label-general";
import { readLabelUse } from "#domain/label/label-use";

/** One sentence for each field that needs another look, by its dotted name: "general.density", "uses.0.rates". */
export type LabelComplaints = Readonly<Record<string, string>>;

function under(prefix: string, complaints: LabelComplaints): LabelComplaints {
  return Object.fromEntries(Object.entries(complaints).map(([field, sentence]) => [`${prefix}.${field}`, sentence]));
}

/**
 * Reads a label as it was typed into the facts that everything else computes with. Nothing is filled in: what was left
 * empty is unknown, "none" is none, and what can't be read is refused at its field. Refused too: two uses of one name,
 * and a season limit of an ingredient that the label does not have.
 */
export function readLabelText(text: LabelText): Outcome<LabelFacts, LabelComplaints> {
  const general = readGeneral(text);
  let complaints: LabelComplaints = general.ok ? {} : under("general", general.refusal);
  const uses: LabelUse[] = [];
  for (const [index, typed] of text.uses.entries()) {
    const prefix = `uses.${String(index)}`;
    const use = readLabelUse(text.productName, typed);
    if (!use.ok) {
      complaints = { ...complaints, ...under(prefix, use.refusal) };
      continue;
    }
    if (uses.some(({ useName }) => useName.toLowerCase() === use.value.useName.toLowerCase())) {
      complaints = { ...complaints, [`${prefix}.useName`]: "Another use of this label has this name already." };
    }
    if (text.form === "granular" && !areOverArea(use.value.rates)) {
      complaints = { ...complaints, [`${prefix}.rates`]: "A rate in finished spray is for what is sprayed, and this product is spread." };
    }
    const foreign = general.ok ? ingredientWithoutLine(general.value, use.value) : undefined;
    if (foreign !== undefined) {
      complaints = { ...complaints, [`${prefix}.seasonLimits`]: `${foreign} is not among the active ingredients of this label. Write it as it stands there, or add its acid equivalent to them.` };
    }
    uses.push(use.value);
  }
  if (!general.ok || Object.keys(complaints).length > 0) return refuse(complaints);
  return accept({ ...general.value, uses });
}

/** A limit counts what goes down of an ingredient, so the label must say how much of it the product holds. */
function ingredientWithoutLine(general: Omit<LabelFacts, "uses">, use: LabelUse): string | undefined {
  const { activeIngredients } = general;
  if (activeIngredients === "unknown" || typeof use.seasonLimits === "string") return undefined;
  return use.seasonLimits.limits.find((limit) => !activeIngredients.some((active) => isLimitedBy(limit.activeIngredient, active)))?.activeIngredient;
}

/** A limit names the ingredient, its acid, or the acid of a form that is named after it ("2,4-D" of "2,4-D, dimethylamine salt"). */
function isLimitedBy(limited: string, active: ActiveIngredient): boolean {
  const counts = countsToward(limited, active);
  return counts === "by-acid" || counts === "as-itself" || active.name.toLowerCase().startsWith(`${limited.toLowerCase()},`);
}
