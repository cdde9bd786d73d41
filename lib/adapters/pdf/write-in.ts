// Room to write by hand: rules, and boxes to tick.
import { type Block, STYLE, line } from "./block";
import { POINTS_A_MILLIMETER } from "./sheet";

/** A box to tick is 5 mm. */
export const BOX_POINTS = 5 * POINTS_A_MILLIMETER;
/** The height of a line to write on by hand, in a truck. */
const WRITING_POINTS = 22;

/** A rule to write on, as wide as its room, with its name under it, where no hand covers it. */
export function writingRule(label: string): Block {
  const name = line(label, STYLE.small);
  return {
    beginning: label,
    height: (sheet, width) => WRITING_POINTS + name.height(sheet, width) + 1,
    draw: (sheet, { x, y, width }, parent) => {
      sheet.rule([x, y + WRITING_POINTS], [x + width, y + WRITING_POINTS], 0.75);
      name.draw(sheet, { x, y: y + WRITING_POINTS + 1, width }, parent);
    },
  };
}

/** A frame to write a figure in, with its unit after it, for a cell of a table. */
export function writingCell(unit: string): Block {
  const height = BOX_POINTS + 4;
  return {
    beginning: unit,
    height: () => height,
    draw: (sheet, { x, y, width }, parent) => {
      const unitWidth = sheet.lettering.widthOf(unit, STYLE.text);
      sheet.artifact(() => sheet.document.rect(x, y, width - unitWidth - 4, height).lineWidth(0.75).strokeColor("black").stroke());
      sheet.tag(parent, "TD", () => sheet.lettering.draw(unit, STYLE.text, { x: x + width - unitWidth, baseline: y + height / 2 + 3.5 }));
    },
  };
}

/** A fact to write by hand: its name above, as for facts that are printed, and a rule below. */
export function writingField(label: string): Block {
  const name = line(label, STYLE.label);
  return {
    beginning: label,
    height: (sheet, width) => name.height(sheet, width) + WRITING_POINTS,
    draw: (sheet, { x, y, width }, parent) => {
      const foot = y + name.height(sheet, width) + WRITING_POINTS - 1;
      name.draw(sheet, { x, y, width }, parent);
      sheet.rule([x, foot], [x + width, foot], 0.75);
    },
  };
}

/** Boxes of 5 mm, each with its word beside it. */
export function tickBoxes(labels: readonly string[], type = "TD"): Block {
  const gapPoints = 8;
  return {
    beginning: labels.join(" "),
    height: () => BOX_POINTS + 2,
    draw: (sheet, { x, y }, parent) => {
      let left = x;
      const texts: { readonly label: string; readonly x: number }[] = [];
      for (const label of labels) {
        const boxLeft = left;
        sheet.artifact(() => sheet.document.rect(boxLeft, y + 0.5, BOX_POINTS, BOX_POINTS).lineWidth(1).strokeColor("black").stroke());
        texts.push({ label, x: left + BOX_POINTS + 3 });
        left += BOX_POINTS + 3 + sheet.lettering.widthOf(label, STYLE.small) + gapPoints;
      }
      sheet.tag(parent, type, () => {
        for (const each of texts) sheet.lettering.draw(`${each.label} `, STYLE.small, { x: each.x, baseline: y + BOX_POINTS / 2 + 3.5 });
      });
    },
  };
}

/** How wide a row of boxes is, for the column that holds it. */
export function tickBoxesWidth(widthOf: (text: string) => number, labels: readonly string[]): number {
  return labels.reduce((sum, label) => sum + BOX_POINTS + 3 + widthOf(label) + 8, 0);
}
