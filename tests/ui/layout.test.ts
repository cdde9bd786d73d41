import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { layOutAftercare } from "../../app/ui/drawings/aftercare-layout";
import {
  type HourSpan,
  layOutHourStrip,
  layOutNarrowHourStrip,
  narrowStrip,
  wideLeastPixels,
} from "../../app/ui/drawings/hour-strip-layout";
import { chooseScale, layOutPlan, planRooms } from "../../app/ui/drawings/lawn-plan-layout";
import { measureText } from "../../app/ui/drawings/measure-text";
import { axisTicks, layOutNutrientBar } from "../../app/ui/drawings/nutrient-bar-layout";
import { assignRows, labelStretch, spreadApart } from "../../app/ui/drawings/place-in-line";
import { boxesMeet, isInside, meetsOutline, outlineArea } from "../../app/ui/drawings/plane-geometry";
import { ordinaryAreas, ordinaryLawns, smallLawns } from "../../app/ui/gallery/sample-plans";

const frame = { startMinute: 300, endMinute: 1260 };

const reasons = fc.constantFrom(
  "rain",
  "80 °F and over",
  "wind 14 mph with gusts to 22 mph from the southwest",
  "Temperaturumkehrschichtverdacht",
);

/** A day cut into stretches of at least a quarter of an hour. */
const days = fc
  .tuple(
    fc.uniqueArray(fc.integer({ min: 21, max: 83 }), { maxLength: 12 }),
    fc.infiniteStream(fc.constantFrom<HourSpan["word"][]>("open", "closed", "take-care")),
    fc.infiniteStream(reasons),
  )
  .map(([quarters, words, texts]): HourSpan[] => {
    const cuts = [300, ...quarters.toSorted((one, other) => one - other).map((quarter) => quarter * 15), 1260];
    return cuts.slice(0, -1).map((fromMinute, index) => {
      const word = words.next().value as HourSpan["word"];
      const span = { fromMinute, toMinute: cuts[index + 1] ?? 1260, word };
      return word === "open" ? span : { ...span, reason: texts.next().value as string };
    });
  });

describe("hour strip", () => {
  test("no label leaves its stretch or meets the line of now, at the least width or above", () => {
    fc.assert(
      fc.property(days, fc.integer({ min: 300, max: 1260 }), fc.integer({ min: wideLeastPixels, max: 1600 }), (spans, now, width) => {
        const layout = layOutHourStrip(spans, frame, now);
        const nowPixels = (layout.now?.lineShare ?? 0) * width;
        for (const { label, fromShare, toShare, note } of layout.marks) {
          expect(label === undefined).toBe(note !== undefined);
          if (label === undefined) continue;
          const start = label.share * width + label.insetPixels;
          expect(start).toBeGreaterThan(fromShare * width);
          expect(start + label.widthPixels).toBeLessThan(toShare * width);
          expect(nowPixels > start - 4 && nowPixels < start + label.widthPixels + 4).toBe(false);
        }
      }),
      { seed: 7 },
    );
  });

  test("numbers of notes stand apart, in order, within the strip, one for each note", () => {
    fc.assert(
      fc.property(days, (spans) => {
        const layout = layOutHourStrip(spans, frame, 600);
        const middles = layout.marks.flatMap((mark) => (mark.note === undefined ? [] : [mark.note.share * wideLeastPixels]));
        expect(middles).toHaveLength(layout.notes.length);
        for (const [index, middle] of middles.entries()) {
          expect(middle).toBeGreaterThanOrEqual(10 - 1e-9);
          expect(middle).toBeLessThanOrEqual(wideLeastPixels - 10 + 1e-9);
          if (index > 0) expect(middle - (middles[index - 1] ?? 0)).toBeGreaterThanOrEqual(20 - 1e-6);
        }
      }),
      { seed: 7 },
    );
  });

  test("in the narrow form no line leaves its stretch or the drawing", () => {
    fc.assert(
      fc.property(days, (spans) => {
        const layout = layOutNarrowHourStrip(spans, frame);
        for (const mark of layout.marks) {
          expect(mark.lines.length === 0).toBe(mark.note !== undefined);
          expect(mark.lines.length * narrowStrip.linePixels).toBeLessThanOrEqual(mark.toPixels - mark.fromPixels);
          for (const line of mark.lines) {
            expect(layout.wordsStartPixels + measureText(line, narrowStrip.textPixels, 600)).toBeLessThanOrEqual(narrowStrip.widthPixels);
          }
        }
      }),
      { seed: 7 },
    );
  });
});

describe("labels in a line", () => {
  test("spread apart they keep their order and distance whenever they fit", () => {
    const middles = fc.array(fc.double({ min: 0, max: 600, noNaN: true }), { maxLength: 30 });
    fc.assert(
      fc.property(middles, (wanted) => {
        const sorted = wanted.toSorted((one, other) => one - other);
        const placed = spreadApart(sorted, 20, 600);
        for (const [index, middle] of placed.entries()) {
          expect(middle).toBeGreaterThanOrEqual(10 - 1e-6);
          expect(middle).toBeLessThanOrEqual(590 + 1e-6);
          if (index > 0) expect(middle - (placed[index - 1] ?? 0)).toBeGreaterThanOrEqual(20 - 1e-6);
        }
      }),
      { seed: 7 },
    );
  });

  test("more than fit stand evenly from end to end", () => {
    expect(spreadApart([5, 5, 5], 20, 40)).toEqual([10, 20, 30]);
  });

  test("no two labels of a row meet", () => {
    const labels = fc.array(
      fc.record({ widthPixels: fc.integer({ min: 10, max: 200 }), middlePixels: fc.integer({ min: 0, max: 640 }) }),
      { maxLength: 8 },
    );
    fc.assert(
      fc.property(labels, (wanted) => {
        const rows = assignRows(wanted, 640, 3, 12);
        for (const [index, row] of rows.entries()) {
          for (const [other, otherRow] of rows.slice(0, index).entries()) {
            const [one, two] = [wanted[index], wanted[other]];
            if (row === undefined || row !== otherRow || one === undefined || two === undefined) continue;
            const [from, to] = labelStretch(one, 640);
            const [start, end] = labelStretch(two, 640);
            expect(to + 12 <= start || from >= end + 12).toBe(true);
          }
        }
      }),
      { seed: 7 },
    );
  });
});

describe("nutrient bar", () => {
  test("the axis reaches 1.1 times the largest figure, and is never without an end", () => {
    const part = { id: "a", when: "Apr", product: "P", standing: "planned", quick: 2, slow: 1 } as const;
    expect(layOutNutrientBar({ parts: [part], decimals: 1 }).axisEnd).toBeCloseTo(3.3, 9);
    expect(layOutNutrientBar({ parts: [part], limit: { amount: 4, source: "law" }, decimals: 1 }).axisEnd).toBeCloseTo(4.4, 9);
    expect(layOutNutrientBar({ parts: [], decimals: 1 }).axisEnd).toBe(1);
  });

  test("ticks are round, from 0, at most eight, and within the axis", () => {
    expect(axisTicks(4.4)).toEqual([0, 1, 2, 3, 4]);
    expect(axisTicks(0.33)).toEqual([0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3]);
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 5000, noNaN: true }), (axisEnd) => {
        const ticks = axisTicks(axisEnd);
        expect(ticks.length).toBeGreaterThanOrEqual(3);
        expect(ticks.length).toBeLessThanOrEqual(8);
        expect(ticks.at(-1)).toBeLessThanOrEqual(axisEnd * (1 + 1e-5));
      }),
      { seed: 7 },
    );
  });
});

describe("aftercare timeline", () => {
  const span = {
    id: "a",
    kind: "may-not",
    fromMinutes: 0,
    words: "no mowing until it has been watered in",
    fromWords: "now",
    untilWords: "later",
    why: "So",
    product: "P",
  } as const;

  test("the first day takes two thirds as soon as there are days after it", () => {
    const long = layOutAftercare([{ id: "m", name: "Mowing", spans: [{ ...span, toMinutes: 3 * 1440 }] }], { weekday: 2, minute: 910 });
    expect(long.breakShare).toBeCloseTo(2 / 3, 9);
    expect(long.rows[0]?.marks[0]?.toShare).toBeCloseTo(1, 9);
    const short = layOutAftercare([{ id: "m", name: "Mowing", spans: [{ ...span, toMinutes: 720 }] }], { weekday: 2, minute: 910 });
    expect(short.breakShare).toBeUndefined();
    expect(short.rows[0]?.marks[0]?.toShare).toBeCloseTo(0.5, 9);
  });

  test("words go inside, else after, else into a note, and names of the axis never meet", () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 9000 }), fc.integer({ min: 0, max: 1439 }), (toMinutes, minute) => {
        const layout = layOutAftercare([{ id: "m", name: "Mowing", spans: [{ ...span, toMinutes }] }], { weekday: 5, minute });
        const mark = layout.rows[0]?.marks[0];
        expect(mark?.wordsPlace === "note").toBe(layout.notes.length === 1);
        const named = layout.ticks.filter((tick) => tick.words !== undefined);
        const stretches = named.map((tick, index) => {
          const width = measureText(tick.words ?? "", 13);
          const middle = index === 0 ? width / 2 : tick.wordsShare * 512;
          return [middle - width / 2, middle + width / 2] as const;
        });
        for (const [index, [from, to]] of stretches.entries()) {
          if (index > 0) expect(from).toBeGreaterThan(stretches[index - 1]?.[1] ?? 0);
          expect(to).toBeLessThanOrEqual(512 + 1e-9);
        }
      }),
      { seed: 7 },
    );
  });
});

describe("lawn plan", () => {
  test("takes the largest scale that fits", () => {
    expect(chooseScale({ x: 0, y: 0, width: 60, height: 50 }, planRooms.wide)).toBe(10);
    expect(chooseScale({ x: 0, y: 0, width: 130, height: 100 }, planRooms.wide)).toBe(20);
    expect(chooseScale({ x: 0, y: 0, width: 130, height: 100 }, planRooms.narrow)).toBe(60);
  });

  test.each([
    ["two lawns", { lawns: ordinaryLawns, areas: ordinaryAreas }],
    ["five slips", { lawns: smallLawns, areas: [] }],
    ["nothing", { lawns: [], areas: [] }],
  ])("%s: labels meet neither each other nor, beside, any shape, and stay on the drawing", (_name, ground) => {
    for (const room of Object.values(planRooms)) {
      const layout = layOutPlan(ground, room);
      expect(layout.labels).toHaveLength(ground.lawns.length + ground.areas.length);
      const outlines = [...layout.lawns, ...layout.areas].map((shape) => shape.outline);
      for (const [index, label] of layout.labels.entries()) {
        expect(label.box.x).toBeGreaterThanOrEqual(0);
        expect(label.box.x + label.box.width).toBeLessThanOrEqual(layout.widthPixels);
        expect(label.box.y + label.box.height).toBeLessThanOrEqual(layout.heightPixels);
        for (const other of layout.labels.slice(0, index)) expect(boxesMeet(label.box, other.box)).toBe(false);
        if (label.leader !== undefined) expect(outlines.filter((outline) => meetsOutline(label.box, outline))).toEqual([]);
      }
    }
  });

  test("north is up: what lies farther north is drawn higher", () => {
    const layout = layOutPlan({ lawns: ordinaryLawns, areas: [] }, planRooms.wide);
    const highest = (index: number) => Math.min(...(layout.lawns[index]?.outline.map((point) => point.y) ?? []));
    expect(highest(1)).toBeLessThan(highest(0));
  });

  test("areas and insides of simple outlines", () => {
    const square = [{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 4 }, { x: 0, y: 4 }];
    expect(outlineArea(square)).toBe(16);
    expect(outlineArea(square.toReversed())).toBe(16);
    expect(isInside({ x: 1, y: 1 }, square)).toBe(true);
    expect(isInside({ x: 5, y: 1 }, square)).toBe(false);
    expect(meetsOutline({ x: 3, y: 3, width: 5, height: 5 }, square)).toBe(true);
    expect(meetsOutline({ x: 1, y: 1, width: 1, height: 1 }, square)).toBe(true);
    expect(meetsOutline({ x: 5, y: 5, width: 1, height: 1 }, square)).toBe(false);
  });
});
