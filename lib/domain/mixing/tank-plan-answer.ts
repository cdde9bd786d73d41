import { type Finding } from "#domain/foundation/finding";
import { type Quantity } from "#domain/quantities/quantity";
import { type LeftOfLast, type LineAtBegin } from "#domain/mixing/begin-of-run";
import { type SizedRun } from "#domain/mixing/sized-run";
import { type RestInTank } from "#domain/mixing/tank-plan-question";
import { type MixedFill, type PlannedFill } from "#domain/mixing/tank-fill";
import { type Rinse, type RinsateWay } from "#domain/mixing/tank-rinse";
import { type HeaviestLoad } from "#domain/mixing/truck-weight";
import { type ProductAmount } from "#domain/mixing/spray-mix";
import { type TicketSprayer } from "#domain/mixing/ticket-question";

/** Where a tank is filled. */
export type FillPlace =
  | { readonly at: "shop-before-leaving" }
  /** Back to the shop on the way to a stop, or in the middle of it. */
  | { readonly at: "shop"; readonly visitId: string; readonly isMidway: boolean }
  | { readonly at: "stop"; readonly visitId: string; readonly isMidway: boolean };

/** One filling of a tank on a truck's route. */
export interface FillOfRoute extends Omit<PlannedFill, "findings">, MixedFill {
  /** A, B, C in the order in which the tanks are filled; AA after Z. */
  readonly letter: string;
  readonly gear: TicketSprayer;
  readonly place: FillPlace;
  /** What each visit takes out of the tank from this fill on to the next, in the order of the route. */
  readonly parts: readonly { readonly visitId: string; readonly finished: Quantity<"volume"> }[];
  /** What of it fills pump and hose and goes on no lawn. */
  readonly toLine: Quantity<"volume">;
}

/** What of the last mix reaches a lawn out of pump and hose before the new one does. It counts as that mix on that lawn. */
export interface CarryOver {
  readonly visitId: string;
  readonly mix: Quantity<"volume">;
  readonly ground: Quantity<"area">;
  readonly products: readonly { readonly productId: string; readonly productName: string; readonly amount: ProductAmount }[];
}

/** What lies between the mix before and this one. */
export interface BeginOfMix {
  /** "fill 7", or null where the tank was clean or nobody knows what it held. */
  readonly lastName: string | null;
  readonly cleaning: "none" | "rinse" | "clean-out";
  readonly rinse: Rinse | null;
  /** A tank is rinsed where it is filled next: at the mix's first stop with the water there, or at the shop. */
  readonly rinsedAt: SizedRun["rinsedAt"];
  readonly isCleanOutOnFile: boolean;
  readonly line: LineAtBegin;
  /** What is run out of pump and hose, or goes on the lawn first. */
  readonly lineVolume: Quantity<"volume"> | "unknown";
  /** Clean water that has to follow the mix before it reaches the tip, because there is less of it than pump and hose hold: a part of what pushes it out. */
  readonly waterBehind: Quantity<"volume">;
  readonly carryOver: CarryOver | null;
  /** What the books have in the tank before it, by the names of its fills; null where that is nothing. */
  readonly restName: string | null;
  /** Of another mix that is in the tank: it has to go before the tank is filled. Unknown of any mix that is not recorded to its end. */
  readonly leftOfLast: LeftOfLast;
  /** Other mixes under what the tank holds of this one. */
  readonly under: readonly RestInTank[];
}

/** What is done and what is left when a mix ends. */
export interface EndOfMix {
  readonly visitId: string;
  /** Clean water that pushes the last of the mix out onto the last lawn; nothing where it stays in the line. */
  readonly pushOut: Quantity<"volume">;
  /** What of it rides along, because there is no water at that stop. */
  readonly waterAlong: Quantity<"volume">;
  readonly left: Quantity<"volume">;
  /** Whether a mark of the gauge or more of it has to be let out before water can push: then it rides in a container. */
  readonly isLetOutFirst: boolean;
  readonly inLine: Quantity<"volume"> | "unknown";
  readonly way: RinsateWay;
  /** Of its sites those with no water known of, by their visits: who rinses there takes the water along, which the plan does not load. */
  readonly sitesWithoutWater: readonly string[];
  /** What came out of the tank when it was rinsed at a stop, and is still on the truck. */
  readonly rinsateAboard: Quantity<"volume">;
}

/** The stops that follow one another with one mix out of one tank. */
export interface MixOfRoute {
  /** "fill A", "fills A and B", or the name of what was in the tank. */
  readonly name: string;
  readonly gear: TicketSprayer;
  readonly visitIds: readonly string[];
  /** What was in the tank of this very mix before its first fill. */
  readonly already: Quantity<"volume">;
  readonly begin: BeginOfMix;
  readonly end: EndOfMix;
}

/** What is aboard at a stop. */
export interface AboardAtStop {
  readonly visitId: string;
  /** Of the fullest tank, the part of it that is full, 0 to 1, a fill for this stop included; null where no tank holds anything. */
  readonly share: number | null;
  /** The fills that begin with this stop. */
  readonly letters: readonly string[];
  readonly tanks: readonly { readonly gearName: string; readonly arrives: Quantity<"volume">; readonly leaves: Quantity<"volume"> }[];
}

/** How the tanks of a truck are filled along its route. */
export interface TankPlan {
  readonly fills: readonly FillOfRoute[];
  /** Sprayer by sprayer, in the order of the route. */
  readonly mixes: readonly MixOfRoute[];
  readonly aboard: readonly AboardAtStop[];
  readonly heaviest: HeaviestLoad;
  /** Each with the visit that it was found at; null for the truck as a whole. */
  readonly found: readonly { readonly visitId: string | null; readonly finding: Finding }[];
}
