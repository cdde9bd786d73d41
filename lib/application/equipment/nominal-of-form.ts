import { readBagSettings } from "#domain/equipment/bag-settings";
import { isSprayer } from "#domain/equipment/equipment-kind";
import { NO_NOMINAL_SPRAYER, nominalSprayer, type TypedNominalSprayer } from "#domain/equipment/nominal-sprayer";
import { invariant } from "#domain/foundation/invariant";
import { accept, type Outcome } from "#domain/foundation/outcome";
import { isSameName } from "#domain/foundation/same-name";
import { fromAmount } from "#domain/quantities/quantity";
import { type EquipmentForm } from "#application/equipment/add-equipment.schema";
import { badField, type UseCaseRefusal } from "#application/refusal";
import { type Work } from "#application/use-case";

/** Nominal figures and what was looked up in charts as they are kept: the words that were typed. A spreader has none of a sprayer's, and the other way. */
export interface NominalOnFile extends TypedNominalSprayer {
  /** Settings by the bags, one to a line. */
  readonly bagSettings: string;
  /** The droplet classes of a sprayer's tips by their makers' charts, one to a line. */
  readonly tipDroplets: string;
}

/** Gear for which nobody has entered any. */
export const NO_NOMINAL_FIGURES: NominalOnFile = { ...NO_NOMINAL_SPRAYER, bagSettings: "", tipDroplets: "" };

/** The figures of a row, whatever of them it has. */
export function storedNominal(stored: unknown): NominalOnFile {
  return { ...NO_NOMINAL_FIGURES, ...(stored as Partial<NominalOnFile> | null) };
}

/**
 * The nominal figures of a form, to be kept as they were typed. Figures may be missing, since the ticket says which;
 * those that are there must go together. Refused: two flows or two paces of a sprayer, figures that no sprayer has, a
 * bag's setting for a granular product that is not on file.
 */
export async function nominalOfForm(work: Work, form: EquipmentForm, swathAmount: bigint | null): Promise<Outcome<Readonly<Record<string, string>>, UseCaseRefusal>> {
  if ("bagSettings" in form) return bagSettingsOfForm(work, form.bagSettings);
  invariant(isSprayer(form.kind), "gear without settings by the bags is a sprayer");
  const { tip, tipSize, tipFlow, tipFlowPsi, pressurePsi, nozzleSpacing, speedMph, minutesPerThousand, tipDroplets } = form;
  const typed = { tip, tipSize, tipFlow, tipFlowPsi, pressurePsi, nozzleSpacing, speedMph, minutesPerThousand };
  const swath = swathAmount === null ? null : fromAmount("length", swathAmount);
  const read = nominalSprayer({ kind: form.kind, typed, swath });
  return read.ok || read.refusal.kind === "missing-fact" ? accept({ ...typed, tipDroplets }) : badField(read.refusal.field, read.refusal.sentence);
}

async function bagSettingsOfForm(work: Work, bagSettings: string): Promise<Outcome<Readonly<Record<string, string>>, UseCaseRefusal>> {
  const read = readBagSettings("bagSettings", bagSettings);
  invariant(read.ok, "the schema has read the settings by the bags");
  const products = await work.tx.product.findMany({ where: { companyId: work.company.companyId, form: "granular" } });
  const foreign = read.value.find(({ product }) => !products.some(({ name }) => isSameName(name, product)));
  if (foreign !== undefined) return badField("bagSettings", `No granular product on file is called ${foreign.product}. Write it as it stands in the Shed.`);
  return accept({ bagSettings });
}
