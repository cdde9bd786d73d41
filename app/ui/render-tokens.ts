import {
  type HexColor,
  type ThemeColors,
  paperColors,
  phoneBelowPixels,
  spaceStepsPixels,
  themes,
  touchSizes,
  typeScale,
} from "./tokens";

/** The browser's own size of 1 rem, in CSS pixels. Type is set in rem, so that a reader's larger letters hold. */
const remPixels = 16;

function rem(pixels: number): string {
  return `${pixels / remPixels}rem`;
}

function dashed(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

function colorLines(colors: ThemeColors): string[] {
  return Object.entries(colors).map(([name, color]: [string, HexColor]) => `--${dashed(name)}: ${color};`);
}

function rule(selector: string, lines: readonly string[]): string {
  return `${selector} {\n${lines.map((line) => `  ${line}\n`).join("")}}\n`;
}

function within(condition: string, rules: readonly string[]): string {
  const indented = rules.join("\n").replace(/^(?=.)/gm, "  ");
  return `${condition} {\n${indented}}\n`;
}

function typeLines(size: "desk" | "phone"): string[] {
  return Object.entries(typeScale).flatMap(([name, entry]) => [
    `--type-${name}: ${rem(size === "desk" ? entry.deskPixels : entry.phonePixels)};`,
    `--line-${name}: ${rem(size === "desk" ? entry.deskLinePixels : entry.phoneLinePixels)};`,
  ]);
}

function touchLines(size: "desk" | "touch"): string[] {
  return Object.entries(touchSizes).map(
    ([name, entry]) => `--${name}: ${rem(size === "desk" ? entry.deskPixels : entry.touchPixels)};`,
  );
}

/**
 * Renders tokens.css, whole: the colors of the three themes and of paper, type, space and touch sizes as custom
 * properties. The theme is the `data-theme` of the html element; without one the system chooses light or dark.
 */
export function renderTokensCss(): string {
  const light = ["color-scheme: light;", ...colorLines(themes.light)];
  const dark = ["color-scheme: dark;", ...colorLines(themes.dark)];
  const sun = ["color-scheme: light;", ...colorLines(themes.sun)];
  const space = spaceStepsPixels.map((pixels, index) => `--space-${index + 1}: ${rem(pixels)};`);
  // In em, so that a reader who doubles the letters gets the phone's arrangement on a narrow desk window.
  const phone = `(width < ${phoneBelowPixels / remPixels}em)`;
  return [
    "/* Rendered from tokens.ts by render-tokens.ts; a test compares. Change the values there. */\n",
    rule(":root", [...light, ...typeLines("desk"), ...space, ...touchLines("desk")]),
    within("@media (prefers-color-scheme: dark)", [rule(":root", dark)]),
    rule(':root[data-theme="light"]', light),
    rule(':root[data-theme="dark"]', dark),
    rule(':root[data-theme="sun"]', sun),
    within(`@media ${phone}`, [rule(":root", typeLines("phone"))]),
    within(`@media ${phone}, (pointer: coarse)`, [rule(":root", touchLines("touch"))]),
    within("@media print", [
      rule(':root,\n:root[data-theme]', ["color-scheme: light;", ...colorLines(paperColors), ...typeLines("desk")]),
    ]),
  ].join("\n");
}
