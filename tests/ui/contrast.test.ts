import { describe, expect, test } from "vitest";
import { type HexColor, type ThemeColors, type ThemeName, themes } from "../../app/ui/tokens";

/**
 * Contrast by WCAG 2.2, "relative luminance" and "contrast ratio", from the token file itself.
 * https://www.w3.org/TR/WCAG22/#dfn-relative-luminance
 */
function relativeLuminance(color: HexColor): number {
  const [red, green, blue] = [1, 3, 5].map((start) => {
    const channel = Number.parseInt(color.slice(start, start + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** The ratio of two luminances when `veil` more light (a share of the screen's white) is reflected by both. */
function contrast(one: HexColor, other: HexColor, veil = 0): number {
  const luminances = [relativeLuminance(one) + veil, relativeLuminance(other) + veil];
  return (Math.max(...luminances) + 0.05) / (Math.min(...luminances) + 0.05);
}

const grounds = ["ground", "sheet", "well"] as const;
const texts = ["ink", "inkSecond", "act", "hold", "care", "water", "sward"] as const;
const names = Object.keys(themes) as ThemeName[];

function pairs(colors: ThemeColors): [string, HexColor, HexColor][] {
  const onPaper = texts.flatMap((text) =>
    grounds.map((ground): [string, HexColor, HexColor] => [`${text} on ${ground}`, colors[text], colors[ground]]),
  );
  return [
    ...onPaper,
    ["act on act-wash", colors.act, colors.actWash],
    ["ink on act-wash", colors.ink, colors.actWash],
    ["ink on sward-fill", colors.ink, colors.swardFill],
    ["on-care on care-fill", colors.onCare, colors.careFill],
    ["on-fill on act", colors.onFill, colors.act],
    ["on-fill on hold", colors.onFill, colors.hold],
    ["sheet on ink (a chosen key)", colors.sheet, colors.ink],
  ];
}

describe("the measure itself", () => {
  test("black on white is 21, equal colors are 1, and a known gray is where the standard puts it", () => {
    expect(contrast("#000000", "#FFFFFF")).toBeCloseTo(21, 10);
    expect(contrast("#98121E", "#98121E")).toBe(1);
    expect(contrast("#767676", "#FFFFFF")).toBeCloseTo(4.54, 2);
  });

  test("a veil of a tenth takes 21:1 to 7.7:1 and a fifth to 5.0:1", () => {
    expect(contrast("#000000", "#FFFFFF", 0.1)).toBeCloseTo(7.67, 2);
    expect(contrast("#000000", "#FFFFFF", 0.2)).toBeCloseTo(5, 2);
  });
});

describe.each(names)("theme %s", (name) => {
  const colors = themes[name];

  test.each(pairs(colors))("%s reaches 7:1", (_pair, text, ground) => {
    expect(contrast(text, ground)).toBeGreaterThanOrEqual(7);
  });

  test.each(grounds)("the edge of a control reaches 3:1 on %s", (ground) => {
    expect(contrast(colors.edge, colors[ground])).toBeGreaterThanOrEqual(3);
  });

  test("the outline of the yellow mark reaches 3:1 against the yellow and against the paper, wherever it lies", () => {
    for (const ground of grounds) {
      const outline = name === "dark" ? colors.careFill : colors.ink;
      expect(contrast(outline, colors[ground])).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(colors.onCare, colors.careFill)).toBeGreaterThanOrEqual(3);
  });

  test("the focus ring reaches 3:1 against the gap inside it", () => {
    expect(contrast(colors.ink, colors.sheet)).toBeGreaterThanOrEqual(3);
  });
});

describe("sun, under a glare veil of a tenth of the screen's white", () => {
  test.each(pairs(themes.sun))("%s still reaches 4.5:1", (_pair, text, ground) => {
    expect(contrast(text, ground, 0.1)).toBeGreaterThanOrEqual(4.5);
  });
});
