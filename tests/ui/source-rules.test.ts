import { readFileSync, readdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

const folder = fileURLToPath(new URL("../../app/ui/", import.meta.url));
const all = readdirSync(folder, { recursive: true, encoding: "utf8" });
const scripts = all.filter((name) => /\.tsx?$/.test(name));
const sheets = all.filter((name) => name.endsWith(".css"));

function read(name: string): string {
  return readFileSync(folder + name, "utf8");
}

/** The selectors of a style sheet, each with its declarations, without comments. */
function rulesOf(css: string): { readonly selectors: string; readonly body: string }[] {
  return [...css.replace(/\/\*[\s\S]*?\*\//g, "").matchAll(/([^{};]+)\{([^{}]*)\}/g)].map((match) => ({
    selectors: (match[1] ?? "").trim(),
    body: (match[2] ?? "").trim(),
  }));
}

/** Rules that do on hover what they don't do on focus. */
function hoverOnly(css: string): string[] {
  return rulesOf(css)
    .map((rule) => rule.selectors)
    .filter((selectors) => selectors.includes(":hover") && !/:focus-visible|:focus-within|:focus\b/.test(selectors));
}

describe("sources of the design system", () => {
  test("were read", () => {
    expect(scripts.length).toBeGreaterThan(50);
    expect(sheets.length).toBeGreaterThan(25);
  });

  test.each(scripts)("%s has no style attribute", (name) => {
    expect(read(name)).not.toMatch(/\bstyle=|\bstyle:|dangerouslySetInnerHTML/);
  });

  test.each(scripts)("%s says use client if and only if its name does", (name) => {
    expect(/^\s*"use client";/m.test(read(name))).toBe(name.endsWith(".client.tsx"));
  });

  test.each(scripts)("%s gives nothing as a tooltip", (name) => {
    expect(read(name)).not.toMatch(/<(a|button|svg|span|div|td|th|li|input|Link)\b[^>]*\stitle=/);
    expect(read(name)).not.toMatch(/onMouseEnter|onMouseOver|onPointerEnter/);
  });

  test.each(sheets)("%s does nothing on hover alone", (name) => {
    expect(hoverOnly(read(name))).toEqual([]);
  });

  test("a rule for hover alone would be found", () => {
    expect(hoverOnly(".a:hover .b { display: block; }")).toHaveLength(1);
    expect(hoverOnly(".a:hover,\n.a:focus-visible { color: red; }")).toEqual([]);
  });

  test.each(sheets.filter((name) => name !== "tokens.css"))("%s takes every color from the tokens", (name) => {
    const bodies = rulesOf(read(name)).map((rule) => rule.body).join("\n");
    expect(bodies).not.toMatch(/#[0-9a-f]{3,8}\b|\brgba?\(|\bhsla?\(|: *(white|black|red|green|gray)\b/i);
  });

  test.each(sheets)("%s moves for at most 150 ms, or stands still", (name) => {
    for (const { body } of rulesOf(read(name))) {
      const timing = /(?:animation|transition)(?:-duration)?:[^;]*?([\d.]+)(ms|s)\b/.exec(body);
      if (timing === null) continue;
      const milliseconds = Number(timing[1]) * (timing[2] === "s" ? 1000 : 1);
      expect(milliseconds).toBeLessThanOrEqual(150);
    }
  });
});
