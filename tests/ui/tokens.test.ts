import { describe, expect, test } from "vitest";
import { renderTokensCss } from "../../app/ui/render-tokens";
import { paperColors, themes } from "../../app/ui/tokens";

describe("tokens.css", () => {
  test("is what tokens.ts renders to (vitest --update writes it anew)", async () => {
    await expect(renderTokensCss()).toMatchFileSnapshot("../../app/ui/tokens.css");
  });

  test("every theme and the paper give the same set of colors, each written in full", () => {
    const names = Object.keys(themes.light).sort();
    for (const colors of [themes.dark, themes.sun, paperColors]) {
      expect(Object.keys(colors).sort()).toEqual(names);
      for (const color of Object.values(colors)) expect(color).toMatch(/^#[0-9A-F]{6}$/);
    }
  });
});
