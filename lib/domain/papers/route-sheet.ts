import { type LoadingGroup } from "./loading-list";
import { type PaperFinding, type PaperFrame } from "./paper";

/** What goes down on one lawn from one mix, formatted: "18.4 gal", "2 bags and 14 lb". */
export interface RouteAmount {
  readonly lawn: string;
  readonly treatedArea: string;
  readonly amount: string;
}

/** One mix of a stop, lawn by lawn. */
export interface RouteMix {
  /** What the crew calls it, with its products: "Tank mix: Clovergone 3D, Greenline 20-0-0". */
  readonly name: string;
  readonly ticketNumber?: string;
  readonly amounts: readonly RouteAmount[];
  /** In what the crew writes down what was used: "gal", "bags", "lb". */
  readonly usedUnit: string;
}

/** One stop of a route sheet. */
export interface RouteStop {
  /** The place in the day: "3". */
  readonly order: string;
  readonly arrival: string;
  readonly timeWindow?: string;
  readonly address: string;
  readonly customer: string;
  readonly phone?: string;
  readonly accessNotes: readonly string[];
  readonly mixes: readonly RouteMix[];
  readonly findings: readonly PaperFinding[];
}

/** A truck's day on paper, with columns to write in: the record that holds when no phone does. */
export interface RouteSheet {
  readonly frame: PaperFrame;
  readonly truck: string;
  readonly people: readonly string[];
  readonly equipment: readonly string[];
  /** One sentence of figures: "9 stops, 41 miles, back at the shop about 3:40 pm". */
  readonly summary: string;
  readonly loading: readonly LoadingGroup[];
  readonly stops: readonly RouteStop[];
  readonly findings: readonly PaperFinding[];
}

// A word that announces a code, and three digits or more soon after it.
const CODE_IN_A_NOTE = /\b(codes?|keypad|passcode|password|combination|lock ?box|alarm)\b\D{0,24}\d([\s#*-]*\d){2,}/i;
// A pin is a tree too, so that its digits must follow at once.
const PIN_IN_A_NOTE = /\bpin\b\s*(is|number|no\.?|:|=)?\s*[#*]?\d{3,}/i;

/** Whether an access note seems to hold a gate or alarm code. A sheet of paper gets lost; a code on it opens a gate. */
export function seemsToHoldCode(note: string): boolean {
  return CODE_IN_A_NOTE.test(note) || PIN_IN_A_NOTE.test(note);
}

/** An access note as it may be printed: one that seems to hold a code is replaced by where to find it. */
export function accessNoteOnPaper(note: string): string {
  return seemsToHoldCode(note) ? "One access note holds a code and is kept off paper: see the phone." : note;
}
