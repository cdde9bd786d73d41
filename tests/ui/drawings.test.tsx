import { describe, expect, test } from "vitest";
import { type AftercareRow, AftercareTimeline } from "#ui/drawings/aftercare-timeline";
import { type HourSpan, HourStrip } from "#ui/drawings/hour-strip";
import { LawnPlan } from "#ui/drawings/lawn-plan";
import { NutrientBar, type NutrientPart } from "#ui/drawings/nutrient-bar";
import { NutrientMonths } from "#ui/drawings/nutrient-months";
import { layOutMonths } from "../../app/ui/drawings/nutrient-months-layout";
import { outlineArea } from "../../app/ui/drawings/plane-geometry";
import {
  crowdedYear,
  ordinaryAftercare,
  ordinaryGrowth,
  ordinaryHours,
  ordinaryMonths,
  ordinaryYear,
  restlessHours,
  shortAftercare,
} from "../../app/ui/gallery/sample-drawings";
import { ordinaryAreas, ordinaryLawns, smallLawns } from "../../app/ui/gallery/sample-plans";
import { type Tag, formOf, markupOf, tableRowsOf, tagsOf, textOf } from "./read-markup";

function marksIn(markup: string): Tag[] {
  return tagsOf(markup).filter((tag) => "data-mark" in tag.attributes);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** Minutes of a time as the table writes it. */
function minutesOf(clock: string): number {
  const [, hour, minute = "0", half] = /^(\d+)(?::(\d+))? (am|pm)$/.exec(clock) ?? [];
  expect(hour, clock).toBeDefined();
  return (Number(hour) % 12) * 60 + Number(minute) + (half === "pm" ? 720 : 0);
}

const forms = ["wide", "narrow"] as const;

describe.each([
  ["an ordinary day", ordinaryHours],
  ["a restless day", restlessHours],
])("hour strip, %s", (_name, spans: readonly HourSpan[]) => {
  const markup = markupOf(<HourStrip title="Hours" conclusion="Go early." spans={spans} nowMinute={9 * 60} />);
  const rows = tableRowsOf(markup);

  test.each(forms)("%s form: as many marks as rows, of the same lengths and words", (form) => {
    const marks = marksIn(formOf(markup, form));
    expect(marks).toHaveLength(rows.length);
    expect(marks.map((mark) => Number(mark.attributes["data-minutes"]))).toEqual(
      rows.map((row) => minutesOf(row[1] ?? "") - minutesOf(row[0] ?? "")),
    );
    expect(marks.map((mark) => mark.attributes["data-mark"]?.replace("-", " "))).toEqual(rows.map((row) => row[2]));
    expect(sum(marks.map((mark) => Number(mark.attributes["data-minutes"])))).toBe(16 * 60);
  });

  test.each(forms)("%s form: hatch means closed, dots mean take care, open is blank", (form) => {
    const fills = tagsOf(formOf(markup, form)).map((tag) => tag.attributes.fill ?? "");
    const count = (word: HourSpan["word"]) => spans.filter((span) => span.word === word).length;
    expect(fills.filter((fill) => fill.endsWith("-hatch)"))).toHaveLength(count("closed"));
    expect(fills.filter((fill) => fill.endsWith("-dots)"))).toHaveLength(count("take-care"));
  });

  test.each(forms)("%s form: every reason is written, in the drawing or in a note", (form) => {
    const text = textOf(formOf(markup, form)).replaceAll("-", "").replaceAll(" ", "");
    for (const span of spans) {
      if (span.reason !== undefined) expect(text).toContain(span.reason.replaceAll("-", "").replaceAll(" ", ""));
    }
  });
});

describe.each([
  ["an ordinary year", ordinaryYear, 4],
  ["a crowded year", crowdedYear, 4],
  ["nothing yet", [], 4],
])("nutrient bar, %s", (_name, parts: readonly NutrientPart[], limit) => {
  const markup = markupOf(
    <NutrientBar title="N" conclusion="Fine." unit="lb N" parts={parts} limit={{ amount: limit, source: "law" }} decimals={1} />,
  );
  const rows = tableRowsOf(markup);

  test.each(forms)("%s form: the marks of each application add up to its row, and all to the running total", (form) => {
    const marks = marksIn(formOf(markup, form));
    for (const [index, part] of parts.entries()) {
      const own = marks.filter((mark) => mark.attributes["data-part"] === part.id);
      const row = rows[index] ?? [];
      expect(sum(own.map((mark) => Number(mark.attributes["data-amount"])))).toBeCloseTo(Number(row[3]) + Number(row[4]), 6);
      expect(own.map((mark) => mark.attributes["data-mark"])).toEqual(
        part.standing === "put-down" ? ["quick", "slow"] : [part.standing],
      );
    }
    const total = sum(marks.map((mark) => Number(mark.attributes["data-amount"])));
    expect(total).toBeCloseTo(Number(rows.at(-1)?.[5] ?? 0), 6);
  });

  test.each(forms)("%s form: widths on the drawing are the amounts", (form) => {
    const rects = tagsOf(formOf(markup, form)).filter((tag) => tag.name === "rect" && tag.attributes["data-amount"] !== undefined);
    const perAmount = rects.map((tag) => Number.parseFloat(tag.attributes.width ?? "") / Number(tag.attributes["data-amount"]));
    for (const ratio of perAmount) expect(ratio).toBeCloseTo(perAmount[0] ?? 0, 1);
  });

  test.each(forms)("%s form: only slow release is striped, nothing is hatched, and past the limit stands an octagon", (form) => {
    const drawing = formOf(markup, form);
    const marks = marksIn(drawing);
    const bar = drawing.split("<ul")[0] ?? "";
    const fills = tagsOf(bar).map((tag) => tag.attributes.fill ?? "");
    expect(fills.filter((fill) => fill.endsWith("-stripes)"))).toHaveLength(
      marks.filter((mark) => mark.attributes["data-mark"] === "slow").length,
    );
    expect(fills.filter((fill) => fill.endsWith("-hatch)"))).toEqual([]);
    const total = sum(parts.map((part) => part.quick + part.slow));
    expect(bar.includes("holdMark")).toBe(total > limit);
  });
});

test("what has no end is said without an until", () => {
  const [row] = ordinaryAftercare.filter(({ spans }) => spans.some(({ kind }) => kind === "water"));
  if (row === undefined) throw new Error("the sample waters");
  const rows = [{ ...row, spans: row.spans.filter(({ kind }) => kind === "water").map((span) => ({ ...span, fromWords: "Friday, 4 pm", untilWords: "when it suits", hasNoEnd: true })) }];
  const markup = markupOf(<AftercareTimeline title="After" conclusion="Water." doneAt={{ weekday: 2, minute: 910 }} rows={rows} />);
  expect(markup).toContain("From Friday, 4 pm, when it suits.");
});

describe.each([
  ["an ordinary visit", ordinaryAftercare],
  ["a short one", shortAftercare],
])("aftercare timeline, %s", (_name, rows: readonly AftercareRow[]) => {
  const markup = markupOf(
    <AftercareTimeline title="After" conclusion="Keep off." now="Now: keep off." doneAt={{ weekday: 2, minute: 910 }} rows={rows} />,
  );
  const spans = rows.flatMap((row) => row.spans);
  const marks = marksIn(formOf(markup, "wide"));

  test("as many marks as rows of the table, and as many steps in the narrow form", () => {
    expect(tableRowsOf(markup)).toHaveLength(spans.length);
    expect(marks).toHaveLength(spans.length);
    expect(formOf(markup, "narrow").match(/<li/g)).toHaveLength(spans.length);
    expect(sum(marks.map((mark) => Number(mark.attributes["data-minutes"])))).toBe(
      sum(spans.map((span) => span.toMinutes - span.fromMinutes)),
    );
  });

  test("hatched means may not, and nothing else is hatched", () => {
    const fills = tagsOf(formOf(markup, "wide")).map((tag) => tag.attributes.fill ?? "");
    expect(fills.filter((fill) => fill.endsWith("-hatch)"))).toHaveLength(spans.filter((span) => span.kind === "may-not").length);
  });

  test("every word of the table is in both forms", () => {
    for (const span of spans) {
      expect(textOf(formOf(markup, "wide"))).toContain(span.words);
      expect(textOf(formOf(markup, "narrow"))).toContain(span.words);
    }
  });

  test("the steps go by time and are led by what holds now", () => {
    const narrow = textOf(formOf(markup, "narrow"));
    expect(narrow.startsWith("Now: keep off.")).toBe(true);
    const byTime = spans.toSorted((one, other) => one.fromMinutes - other.fromMinutes).map((span) => narrow.indexOf(span.words));
    expect(byTime).toEqual(byTime.toSorted((one, other) => one - other));
  });
});

describe.each([
  ["two lawns", ordinaryLawns, ordinaryAreas],
  ["five slips", smallLawns, []],
])("lawn plan, %s", (_name, lawns, areas) => {
  const markup = markupOf(<LawnPlan title="Plan" conclusion="All of it." lawns={lawns} areas={areas} />);
  const rows = tableRowsOf(markup);

  test.each(forms)("%s form: a polygon for each row, drawn to one scale with the sizes of the table", (form) => {
    const polygons = marksIn(formOf(markup, form)).filter((mark) => mark.attributes["data-mark"] === "lawn");
    expect(polygons).toHaveLength(rows.length);
    const feetPerInch = Number(/1 inch on paper is (\d+) ft/.exec(formOf(markup, form))?.[1]);
    for (const [index, polygon] of polygons.entries()) {
      const points = (polygon.attributes.points ?? "").split(" ").map((pair) => {
        const [x, y] = pair.split(",").map(Number);
        return { x: x ?? Number.NaN, y: y ?? Number.NaN };
      });
      const squareFeet = (outlineArea(points) * feetPerInch ** 2) / 96 ** 2;
      const written = Number(rows[index]?.[2]?.replaceAll(",", ""));
      expect(squareFeet / written).toBeCloseTo(1, 2);
    }
  });

  test("what is treated is the size without what is taken off and kept clear", () => {
    for (const row of rows) {
      const [size, off, clear, treated] = row.slice(2, 6).map((cell) => Number(cell.replaceAll(",", "")));
      expect(treated).toBe((size ?? 0) - (off ?? 0) - (clear ?? 0));
    }
  });

  test.each(forms)("%s form: beds and drives are hatched, and nothing else", (form) => {
    const fills = tagsOf(formOf(markup, form)).map((tag) => tag.attributes.fill ?? "");
    const closed = areas.filter((area) => area.kind === "bed" || area.kind === "drive");
    expect(fills.filter((fill) => fill.endsWith("-hatch)"))).toHaveLength(closed.length);
    expect(fills.filter((fill) => fill.endsWith("-water)"))).toHaveLength(areas.filter((area) => area.kind === "kept-clear").length);
  });
});

describe("nitrogen whose release no label states", () => {
  const parts: readonly NutrientPart[] = [
    { id: "a", when: "Mar 1", product: "P", standing: "put-down", quick: 0.4, slow: 0.4 },
    { id: "b", when: "Apr 1", product: "Q", standing: "put-down", quick: 0, slow: 0, notStated: 0.57 },
  ];
  const markup = markupOf(<NutrientBar title="N" conclusion="Fine." unit="lb N" parts={parts} decimals={2} />);
  const rows = tableRowsOf(markup);

  test.each(forms)("%s form: has a fill and a mark of its own, and the table a column, with the same sum", (form) => {
    const drawing = formOf(markup, form);
    const marks = marksIn(drawing);
    expect(marks.map((mark) => mark.attributes["data-mark"])).toEqual(["quick", "not-stated", "slow"]);
    expect(marks).toHaveLength(rows.flatMap((row) => row.slice(3, 6)).filter((figure) => Number(figure) > 0).length);
    expect(sum(marks.map((mark) => Number(mark.attributes["data-amount"])))).toBeCloseTo(Number(rows.at(-1)?.[6]), 6);
    const fills = tagsOf(drawing.split("<ul")[0] ?? "").map((tag) => tag.attributes.fill ?? "");
    expect(fills.filter((fill) => fill.endsWith("-levels)"))).toHaveLength(1);
    expect(rows.map((row) => row[5])).toEqual(["0.00", "0.57"]);
  });

  test("by month, without a curve of growth where nobody knows it", () => {
    const months = parts.map((part, index) => ({ ...part, month: 3 + index }));
    const byMonth = markupOf(<NutrientMonths title="N" conclusion="Fine." unit="lb N" parts={months} decimals={2} />);
    expect(byMonth).not.toContain("growth potential");
    const applied = tableRowsOf(byMonth).filter((row) => row[1] !== "");
    expect(applied.map((row) => row[4])).toEqual(["0.00", "0.57"]);
    for (const form of forms) expect(sum(marksIn(formOf(byMonth, form)).map((mark) => Number(mark.attributes["data-amount"])))).toBeCloseTo(Number(applied.at(-1)?.[5]), 6);
  });
});

test("a nutrient that knows no release is put down, in the drawing and in one column of the table", () => {
  const parts: readonly NutrientPart[] = [{ id: "a", when: "Mar 1", product: "P", standing: "put-down", quick: 0.013, slow: 0 }];
  const markup = markupOf(<NutrientBar title="Fe" conclusion="Fine." unit="lb Fe" parts={parts} decimals={3} hasRelease={false} />);
  for (const form of forms) expect(textOf(formOf(markup, form))).toMatch(/put down ?0.013/u);
  expect(textOf(markup)).not.toMatch(/quick|slow/iu);
  expect(tableRowsOf(markup)).toEqual([["Mar 1", "P", "put down", "0.013", "0.013", ""]]);
});

describe("nutrient by month", () => {
  const markup = markupOf(
    <NutrientMonths title="N" conclusion="Fine." unit="lb N" parts={ordinaryMonths} growth={ordinaryGrowth} decimals={1} />,
  );
  const rows = tableRowsOf(markup);

  test("the table names all twelve months with their growth, and a month without a figure by what it has", () => {
    expect(new Set(rows.map((row) => row[0])).size).toBe(12);
    expect(rows.map((row) => row.slice(5))).toEqual(ordinaryGrowth.map((month) => ("none" in month ? [month.none, "no figure"] : [month.mean, `${String(Math.round(month.share * 100))} %`])));
  });

  test.each(forms)("%s form: a step of the line for each month with a figure, none to or from a gap, and none at zero", (form) => {
    const line = formOf(markup, form).split('data-line="growth"')[1]?.split("</g>")[0] ?? "";
    const steps = tagsOf(line).filter(({ attributes }) => "x1" in attributes);
    const along = steps.filter(({ attributes: { x1, x2, y1, y2 } }) => (form === "wide" ? x1 !== x2 && y1 === y2 : x1 === x2 && y1 !== y2));
    const drawn = ordinaryGrowth.map((month, index) => [month, index] as const).filter(([month]) => "share" in month);
    expect(along.map(({ attributes }) => (form === "wide" ? attributes.x1 : attributes.y1))).toEqual(drawn.map(([, index]) => (form === "wide" ? `${((index / 12) * 100).toFixed(3)}%` : String(index * 30 + 1))));
    // From month to month where both have a figure: January to July, and September to November.
    expect(steps).toHaveLength(along.length + 6 + 2);
  });

  test.each(forms)("%s form: a mark for each amount of the table, with the same sum", (form) => {
    const marks = marksIn(formOf(markup, form));
    const applied = rows.filter((row) => row[1] !== "");
    expect(applied).toHaveLength(ordinaryMonths.length);
    expect(new Set(marks.map((mark) => mark.attributes["data-part"])).size).toBe(applied.length);
    expect(sum(marks.map((mark) => Number(mark.attributes["data-amount"])))).toBeCloseTo(Number(applied.at(-1)?.[4]), 6);
    expect(sum(applied.map((row) => Number(row[2]) + Number(row[3])))).toBeCloseTo(Number(applied.at(-1)?.[4]), 6);
  });

  test("the axis reaches 1.1 times the largest month and growth 1.1 times its best", () => {
    const layout = layOutMonths(ordinaryMonths, ordinaryGrowth);
    expect(layout.axisEnd).toBeCloseTo(0.88, 9);
    expect(Math.max(...layout.columns.map((column) => column.growthShare ?? 0))).toBeCloseTo(1 / 1.1, 9);
    expect(layout.columns.flatMap((column) => (column.growthShare === undefined ? [column.name] : []))).toEqual(["Aug", "Dec"]);
    expect(layOutMonths([], []).axisEnd).toBe(1);
  });
});
