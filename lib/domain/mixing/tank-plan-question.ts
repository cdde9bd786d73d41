import { type HouseSettings } from "#domain/company/house-settings";
import { type LabelFacts } from "#domain/label/label-facts";
import { type Quantity } from "#domain/quantities/quantity";
import { type MixTicket } from "#domain/mixing/mix-ticket";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketLawn, type TicketTreatment } from "#domain/mixing/ticket-question";

/** What one stop of a route puts down. */
export interface TreatedStop {
  readonly visitId: string;
  /** What people call it: its street. */
  readonly name: string;
  readonly mixes: MixTicket["mixes"];
  /** As rounding, rests and rinse water may take them: see treatmentsForRounding. */
  readonly treatments: readonly TicketTreatment[];
  readonly lawns: readonly Pick<TicketLawn, "zoneId" | "grasses">[];
  /** Whether a tank can be filled there. */
  readonly water: "yes" | "no" | "unknown";
}

/** What a tank was filled with, as the books have it. */
export interface FilledMix {
  /** "fill 7", "the mix of 12 Elm St" */
  readonly name: string;
  /** Unknown of what was mixed for one visit alone: its record says what went down of each product, and not in how much spray. */
  readonly finished: Quantity<"volume"> | "unknown";
  readonly products: readonly {
    readonly productId: string;
    readonly productName: string;
    readonly label: LabelFacts | "unknown";
    /** In all of it. */
    readonly amount: ProductAmount;
  }[];
}

/**
 * The fills that a tank was filled on top of since its last clean-out, the latest first, of each product the latest that had
 * it; none where a clean-out came just before. Unknown stands last where neither fill nor clean-out is on file before them.
 */
export type FilledBefore = readonly (FilledMix | "unknown")[];

/** A mix of which something may still be in the tank. */
export interface RestInTank extends FilledMix {
  /** What is still in the tank of it by the books; unknown while visits that it was filled for are not recorded. */
  readonly left: Quantity<"volume"> | "unknown";
}

/** A mix that a tank was filled with before the fills that are planned. */
export interface HeldMix extends RestInTank {
  /** Whether it was drawn from and visits that it was filled for are still to be done: then pump and hose hold it too. */
  readonly isUnderWay: boolean;
  /** Whether it was filled for visits of the day that is planned: then a change of mix after it lies between two of its stops. */
  readonly isOfThatDay: boolean;
  /** What was in the tank since its last clean-out when it was filled. */
  readonly filledOnto: FilledBefore;
  /** Earlier fills of which the books still have something in the tank, the latest first; there only where there are any. */
  readonly under?: readonly RestInTank[];
  /** Fills that were made since on the day that is planned, for visits of it that are still to be done, in their order; there only where there are any. */
  readonly later?: readonly FilledLater[];
}

/** A fill that the crew made on the day that is planned before all visits of the one before it were recorded. */
export interface FilledLater extends HeldMix {
  /** The visits of that day that it was made for. */
  readonly visitIds: readonly string[];
}

/** What a tank held last: a mix, nothing since a clean-out, or nobody knows. */
export type LastHeld = HeldMix | "clean" | "unknown";

/** A truck as far as loading asks. */
export interface LoadedTruck {
  readonly name: string;
  /** The most that people and load may weigh; null: not on file. */
  readonly payload: Quantity<"mass"> | null;
  /** What rides along every day besides products and spray: people, tank, pump, reel. */
  readonly staysAboard: Quantity<"mass"> | "unknown";
}

/** A sprayer that rides on the truck, used on the route or not. */
export interface TankAboard {
  readonly equipmentId: string;
  readonly name: string;
}

/** What the house holds to when it fills; the line's end counts whatever pump and hose held before. */
export type TankPlanSettings = Pick<HouseSettings, "tankLoads" | "tankMark" | "lineAtTheEnd">;

/** Everything that the tank plan of a truck's route is computed from. */
export interface TankPlanQuestion {
  /** In the order of the route. */
  readonly stops: readonly TreatedStop[];
  readonly truck: LoadedTruck;
  /** What is in those that no stop uses rides along all day. */
  readonly tanksAboard: readonly TankAboard[];
  /** By equipment; a tank that is not named held nobody knows what. */
  readonly lastHeld: ReadonlyMap<string, LastHeld>;
  /** By equipment, the visits before which a clean-out is on file although the plan comes to them with another mix; unknown where none are kept. */
  readonly cleanOuts: "unknown" | ReadonlyMap<string, ReadonlySet<string>>;
  /** What everything that is loaded weighs, spray water aside, when the truck comes to each stop. */
  readonly dryWeights: readonly Quantity<"mass">[];
  readonly settings: TankPlanSettings;
}
