import { type PaperField, type PaperFinding, type PaperFrame, type PaperValue } from "./paper";

/** How an amount is measured out: the tool and its marks, "½-oz cup, 9 marks". */
export interface MeasuredAmount {
  readonly product: string;
  /** "4.5", apart from its unit, because the unit is set smaller. */
  readonly amount: string;
  readonly unit: string;
  readonly tool: string;
}

/** One filling of the tank, or one load of the hopper. */
export interface TankLoad {
  /** "Tank 1 of 2". */
  readonly title: string;
  /** "100 gal of mix, 96.4 gal of it water". */
  readonly size: string;
  readonly amounts: readonly MeasuredAmount[];
}

/** One product of a ticket, in words. */
export interface TicketProduct {
  readonly name: string;
  /** The EPA registration number, or why there is none: "a fertilizer, not registered". */
  readonly registration: PaperValue;
  readonly lot: string;
  /** The rate as the ticket chose it: "1.1 fl oz per 1,000 sq ft". */
  readonly rate: string;
  /** For all lawns together. */
  readonly total: string;
}

/** What one lawn gets, with one amount for each product in the order of the products. */
export interface TicketLawn {
  readonly name: string;
  readonly treatedArea: string;
  readonly mix: string;
  readonly amounts: readonly string[];
}

/** One step of the work at the tank. */
export interface MixingStep {
  readonly words: string;
  /** Words of a label that the step rests on, quoted. */
  readonly labelWords?: string;
}

/** What one lawn gets of one nutrient, beside its limit. */
export interface NutrientLine {
  readonly lawn: string;
  readonly nutrient: string;
  /** With its unit: "0.75 lb per 1,000 sq ft". */
  readonly delivered: string;
  /** With this visit; a ticket that was issued without the year's sum says nothing of it. */
  readonly thisYear?: string;
  /** The limit with its source; "none on file" is an answer too. */
  readonly limit: string;
}

/** One thing to do or leave afterwards. */
export interface AftercareLine {
  readonly when: string;
  readonly what: string;
  readonly because: string;
}

/** How the lawn and the sky must be when a product goes down, with the label's words. */
export interface AtApplicationLine {
  readonly words: string;
  readonly labelWords: string;
}

/** What to mix and put down at one visit. */
export interface MixTicketPaper {
  readonly frame: PaperFrame;
  readonly address: string;
  readonly customer: string;
  /** Applicator, supervisor, license, truck, target pest: named facts of the visit. */
  readonly visit: readonly PaperField[];
  readonly products: readonly TicketProduct[];
  readonly lawns: readonly TicketLawn[];
  readonly loads: readonly TankLoad[];
  readonly mixing: readonly MixingStep[];
  readonly nutrients: readonly NutrientLine[];
  readonly findings: readonly PaperFinding[];
  /** Leaf and soil as products want them, and rain that would spoil; tickets that were printed before it was have none. */
  readonly atApplication?: readonly AtApplicationLine[];
  readonly aftercare: readonly AftercareLine[];
  /** Equipment, output, when and how it was measured. */
  readonly calibration: readonly PaperField[];
}

/** The names of lawns whose amounts are more or fewer than the products: such a ticket would print under wrong heads. */
export function lawnsWithoutEveryAmount(ticket: Pick<MixTicketPaper, "lawns" | "products">): readonly string[] {
  return ticket.lawns.filter(({ amounts }) => amounts.length !== ticket.products.length).map(({ name }) => name);
}
