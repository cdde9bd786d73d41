import { lockCompany } from "#adapters/postgres/company-work";
import { type Prisma } from "#adapters/postgres/generated/client";
import { accept, refuse } from "#domain/foundation/outcome";
import { type LabelText } from "#domain/label/label-fields";
import { readLabelText } from "#domain/label/label-text";
import { writeDeed } from "#application/audit-trail";
import { enterLabelSchema, partsOfForm } from "#application/products/enter-label.schema";
import { labelTextOf } from "#application/products/stored-label";
import { badField, conflict, notFound, type UseCaseRefusal } from "#application/refusal";
import { useCase } from "#application/use-case";

/**
 * Enters a product's label as it was typed, one use at a time: the general part, and one of its uses anew or one more.
 * It is a new entry with the next number and counts only when somebody has confirmed it; an entry that was confirmed
 * before stays as it was.
 */
export const enterLabel = useCase("products/enter-label", enterLabelSchema, async (work, form) => {
  const { companyId } = work.company;
  const { productId, basedOnNumber, useIndex } = form;
  await lockCompany(work.tx);
  const product = await work.tx.product.findUnique({ where: { companyId_productId: { companyId, productId } } });
  if (product === null) return notFound("product");
  if (product.retiredAt !== null) return conflict(`${product.name} was retired. Add it anew if it is used again.`);
  const latest = await work.tx.labelEntry.findFirst({ where: { companyId, productId }, orderBy: { number: "desc" } });
  if ((latest?.number ?? 0) !== basedOnNumber) {
    return conflict("Someone else has entered this label since you opened the page. Load it again to see both.");
  }
  const before = latest === null ? [] : labelTextOf(latest.facts).uses;
  if (useIndex > before.length) return badField("useIndex", "This use follows one that is not there. Load the page again.");
  const { general, use } = partsOfForm(form);
  const uses = [...before.slice(0, useIndex), use, ...before.slice(useIndex + 1)];
  const text: LabelText = { productName: product.name, form: product.form as LabelText["form"], general, uses };
  const facts = readLabelText(text);
  if (!facts.ok) return refuse(complaintsOfForm(facts.refusal, useIndex));
  const labelEntryId = work.newId();
  const number = basedOnNumber + 1;
  await work.tx.labelEntry.create({
    data: { companyId, labelEntryId, productId, number, facts: text as unknown as Prisma.InputJsonObject, personId: work.member.personId, enteredAt: work.now },
  });
  await writeDeed(work, productId, {
    deed: "label-entered",
    details: { productName: product.name, number, uses: facts.value.uses.map(({ useName }) => useName) },
  });
  return accept({ labelEntryId, number });
});

const GENERAL = "general.";

/** The complaints at the fields of the form, which shows one use; those about another use are told as a whole. */
function complaintsOfForm(complaints: Readonly<Record<string, string>>, useIndex: number): UseCaseRefusal {
  const shown = `uses.${String(useIndex)}.`;
  const fields: Record<string, string> = {};
  for (const [field, sentence] of Object.entries(complaints)) {
    if (field.startsWith(GENERAL)) fields[field.slice(GENERAL.length)] = sentence;
    else if (field.startsWith(shown)) fields[field.slice(shown.length)] = sentence;
    else fields["activeIngredients"] = `Another use of this label does not fit any more: ${sentence}`;
  }
  return { kind: "bad-input", sentence: "Nothing was saved. Please look at the marked fields.", fields };
}
