// Where signs stand on a sheet: as many as fit, edge to edge so that one cut serves two, with a strip of paper left
// outside the cut lines for what may not stand on a sign.
import { POINTS_AN_INCH } from "./sheet";

/** Printers leave the outermost fifth of an inch blank (common practice). */
const LEAST_MARGIN = 0.2 * POINTS_AN_INCH;
/** The strip for the check bar and the words about the sign. */
const LEAST_STRIP = 0.45 * POINTS_AN_INCH;

export interface SignSheet {
  readonly widthPoints: number;
  readonly heightPoints: number;
  readonly columns: number;
  readonly rows: number;
  readonly left: number;
  readonly top: number;
  /** Strips above and below the signs, or on their left and right where the words then stand turned. */
  readonly strips: "above-and-below" | "beside";
}

interface Size {
  readonly widthPoints: number;
  readonly heightPoints: number;
}

/** The sheet with the most signs, upright rather than lying; nothing when not even one fits. */
export function arrangeSigns(sign: Size, [width, height]: readonly [number, number]): SignSheet | undefined {
  const sheets = [{ widthPoints: width, heightPoints: height }, { widthPoints: height, heightPoints: width }];
  const arranged = sheets.flatMap((sheet) => arrangementsOn(sign, sheet));
  return arranged.sort((a, b) => b.columns * b.rows - a.columns * a.rows)[0];
}

/** The room that a single sign may take on a sheet with its margins and strips. */
export function roomForOneSign([width, height]: readonly [number, number]): Size {
  return { widthPoints: width - 2 * LEAST_MARGIN, heightPoints: height - 2 * LEAST_STRIP };
}

function arrangementsOn(sign: Size, sheet: Size): SignSheet[] {
  const found: SignSheet[] = [];
  for (let columns = 1; columns * sign.widthPoints <= sheet.widthPoints; columns += 1) {
    for (let rows = 1; rows * sign.heightPoints <= sheet.heightPoints; rows += 1) {
      const left = (sheet.widthPoints - columns * sign.widthPoints) / 2;
      const top = (sheet.heightPoints - rows * sign.heightPoints) / 2;
      if (left < LEAST_MARGIN || top < LEAST_MARGIN || Math.max(left, top) < LEAST_STRIP) continue;
      found.push({ ...sheet, columns, rows, left, top, strips: top >= LEAST_STRIP ? "above-and-below" : "beside" });
    }
  }
  return found;
}
