import { type Finding, FINDING_LEVELS } from "#domain/foundation/finding";
import { listWords } from "#domain/foundation/list-words";
import { groupedBy } from "#domain/foundation/grouping";

/** A finding and the thing that it was found at. */
export interface FindingAt {
  readonly at: string;
  readonly finding: Finding;
}

/** Findings of one cause: what is the matter, said once, and where. */
export interface FindingCause {
  readonly finding: Finding;
  /** The sentence for all of them; names that differ from one to the next are listed in it. */
  readonly what: string;
  /** The figure, where it is the same everywhere. */
  readonly figure: string | null;
  /** Each thing once, in the order in which they came. */
  readonly at: readonly string[];
}

/** How many names a sentence lists before it counts the rest. */
const MOST_NAMES = 3;
const GAP = "\u0000";

/**
 * Findings grouped by their cause, the gravest first: the same check at the same level that says the same but for the
 * names it is about. Within a level the cause that meets most things comes first; equals stay in their order.
 */
export function causesOf(findings: readonly FindingAt[]): readonly FindingCause[] {
  const groups = groupedBy(findings, ({ finding }) => JSON.stringify([finding.level, finding.rule, frameOf(finding), answererOf(finding)]));
  const causes = [...groups.values()].flatMap(causeOf).sort((one, other) => other.at.length - one.at.length);
  return FINDING_LEVELS.flatMap((level) => causes.filter(({ finding }) => finding.level === level));
}

function answererOf(finding: Finding): string {
  return finding.level === "hold" ? finding.answerableBy : "";
}

/** What a finding says with a gap at each name that it is about. */
function frameOf({ what, about }: Finding): string {
  return about.reduce((frame, name, index) => (name === "" ? frame : frame.replaceAll(name, `${GAP}${String(index)}${GAP}`)), what);
}

function causeOf(group: readonly FindingAt[]): readonly FindingCause[] {
  const [first] = group;
  if (first === undefined) return [];
  const { finding } = first;
  const what = finding.about.reduce(
    (sentence, _name, index) => sentence.replaceAll(`${GAP}${String(index)}${GAP}`, listed(group.map((one) => one.finding.about[index] ?? ""))),
    frameOf(finding),
  );
  const figure = group.every((one) => one.finding.figure === finding.figure) ? (finding.figure ?? null) : null;
  return [{ finding, what, figure, at: [...new Set(group.map(({ at }) => at))] }];
}

function listed(names: readonly string[]): string {
  const each = [...new Set(names)];
  const shown = each.slice(0, each.length > MOST_NAMES ? MOST_NAMES - 1 : MOST_NAMES);
  const rest = each.length - shown.length;
  const words = rest > 0 ? [...shown, `${String(rest)} more`] : shown;
  return listWords(words);
}
