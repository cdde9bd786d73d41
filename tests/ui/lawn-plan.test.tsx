import { describe, expect, test } from "vitest";
import { LawnPlan, type PlanArea, type PlanLawn } from "#ui/drawings/lawn-plan";
import { layOutPlan, planRooms } from "../../app/ui/drawings/lawn-plan-layout";
import { boxesMeet, outlineArea } from "../../app/ui/drawings/plane-geometry";
import { markupOf, tagsOf } from "./read-markup";

function box(x: number, y: number, width: number, height: number) {
  return [{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }];
}

const SIDES = [
  { from: { x: 0, y: 0 }, to: { x: 90, y: 0 }, words: "90 ft" },
  { from: { x: 90, y: 0 }, to: { x: 90, y: 60 }, words: "60 ft" },
  { from: { x: 0, y: 0 }, to: { x: 2, y: 0 }, words: "2 ft" },
];

const LAWN: PlanLawn = {
  id: "a", letter: "A", name: "front", outline: box(0, 0, 90, 60), morePieces: [box(0, 70, 30, 20)], sizeSquareFeet: 6000, takenOffSquareFeet: 0,
  keptClearSquareFeet: 300, treatedSquareFeet: 5700, measured: "tape", measuredLines: SIDES.map(({ from, to }) => [from, to]), sides: SIDES,
};
const POND: PlanArea = { id: "pond", kind: "water", name: "pond, 15 ft kept clear", outline: box(95, 10, 30, 30), keptClearFeet: 15 };

const marks = (name: string, lawns: readonly PlanLawn[], areas: readonly PlanArea[]) =>
  tagsOf(markupOf(<LawnPlan title="Plan" conclusion="All of it." lawns={lawns} areas={areas} />)).filter(({ attributes }) => attributes["data-mark"] === name);

describe("the lengths of measured lines", () => {
  test("are written at lines that have room for them, along the line and off the labels", () => {
    for (const room of [planRooms.wide, planRooms.medium]) {
      const { sides, labels } = layOutPlan({ lawns: [LAWN], areas: [POND] }, room);
      expect(sides.map(({ words }) => words)).toEqual(["90 ft", "60 ft"]);
      expect(sides.map(({ turnDegrees }) => Math.round(Math.abs(turnDegrees)))).toEqual([0, 90]);
      for (const { at } of sides) expect(labels.some((label) => boxesMeet(label.box, { x: at.x, y: at.y, width: 1, height: 1 }))).toBe(false);
    }
  });

  test("are not written where nobody gave any", () => {
    const { sides: _sides, ...plain } = LAWN;
    expect(layOutPlan({ lawns: [plain], areas: [] }, planRooms.wide).sides).toEqual([]);
    expect(marks("side", [plain], [])).toHaveLength(0);
  });
});

test("further pieces of a lawn are drawn to the same scale and count for the frame", () => {
  const layout = layOutPlan({ lawns: [LAWN], areas: [] }, planRooms.wide);
  const [piece] = layout.morePieces;
  expect(outlineArea(piece ?? []) / layout.pixelsPerFoot ** 2).toBeCloseTo(600, 6);
  expect(Math.min(...(piece ?? []).map(({ y }) => y))).toBeGreaterThanOrEqual(0);
  expect(marks("lawn-piece", [LAWN], [])).toHaveLength(Object.keys(planRooms).length);
});

describe("ground that is kept clear of water", () => {
  test("is a line round the water, twice as wide as the distance, cut to the lawns", () => {
    const markup = tagsOf(markupOf(<LawnPlan title="Plan" conclusion="All of it." lawns={[LAWN]} areas={[POND]} />));
    const { pixelsPerFoot } = layOutPlan({ lawns: [LAWN], areas: [POND] }, planRooms.wide);
    const widths = markup.filter(({ attributes }) => "stroke-width" in attributes).map(({ attributes }) => Number(attributes["stroke-width"]));
    expect(widths.slice(0, 2)).toEqual([30 * pixelsPerFoot, 30 * pixelsPerFoot]);
    const clips = markup.filter(({ name }) => name === "clipPath").map(({ attributes }) => `url(#${attributes["id"] ?? ""})`);
    expect(new Set(clips).size).toBe(Object.keys(planRooms).length);
    expect(markup.filter(({ attributes }) => "clip-path" in attributes).map(({ attributes }) => attributes["clip-path"])).toEqual(clips);
  });

  test("is not drawn where the distance is not known", () => {
    const { keptClearFeet: _feet, ...unknown } = POND;
    expect(marks("kept-clear-strip", [LAWN], [unknown])).toHaveLength(0);
  });
});
