/**
 * The design tokens: every color, type size and step of space that a screen may use, as typed data.
 * `tokens.css` is rendered from here (render-tokens.ts) and a test compares the two, so this file is the only
 * place where a value changes. Contrast targets are recomputed from here by tests/ui/contrast.test.ts.
 */

/** A color in the form #RRGGBB. */
export type HexColor = `#${string}`;

/** The colors that one theme gives. The names say what a color means, never what it looks like. */
export interface ThemeColors {
  /** The pale stone that sheets lie on. */
  readonly ground: HexColor;
  /** The white of a sheet. */
  readonly sheet: HexColor;
  /** A sunken area within a sheet: table heads, code. */
  readonly well: HexColor;
  /** Text, rules and drawn lines. */
  readonly ink: HexColor;
  /** Second text: sources, hints, axes. Never an amount, an order or a finding. */
  readonly inkSecond: HexColor;
  /** "Act here": a thing to press, now, this visit. */
  readonly act: HexColor;
  /** The wash below something chosen or pressed. */
  readonly actWash: HexColor;
  /** A hold: the one finding that stops a visit. */
  readonly hold: HexColor;
  /** The line of take-care. */
  readonly care: HexColor;
  /** The yellow of take-care; never carries text on paper, never stands without its outline. */
  readonly careFill: HexColor;
  /** Text and outline on the yellow. */
  readonly onCare: HexColor;
  /** Water, in drawings only. */
  readonly water: HexColor;
  /** Grass as a line, and "done". */
  readonly sward: HexColor;
  /** Grass as an area. Never a button. */
  readonly swardFill: HexColor;
  /** Text on an area filled with act or hold. */
  readonly onFill: HexColor;
  /** The bounds of a control or of a sheet. */
  readonly edge: HexColor;
  /** Rules between rows; never bounds a control. */
  readonly hair: HexColor;
}

/** The themes a person can be in. `sun` is the crew's phone by day, whatever the system says. */
export type ThemeName = "light" | "dark" | "sun";

/** Every theme's colors. */
export const themes: Readonly<Record<ThemeName, ThemeColors>> = {
  light: {
    ground: "#F3F4EF",
    sheet: "#FFFFFF",
    well: "#E6E9E0",
    ink: "#161B14",
    inkSecond: "#41483B",
    act: "#6A1F57",
    actWash: "#F5E8F1",
    hold: "#98121E",
    care: "#634200",
    careFill: "#FFC933",
    onCare: "#161B14",
    water: "#0B4A75",
    sward: "#1F5327",
    swardFill: "#C9DDBE",
    onFill: "#FFFFFF",
    edge: "#6F7667",
    hair: "#C6CBBC",
  },
  dark: {
    ground: "#12150F",
    sheet: "#1B1F17",
    well: "#272C22",
    ink: "#F2F4EB",
    inkSecond: "#C6CCB9",
    act: "#D9A8DC",
    actWash: "#33203A",
    hold: "#FFA19B",
    care: "#FFC933",
    careFill: "#FFC933",
    onCare: "#161B14",
    water: "#93CCF4",
    sward: "#98D6A3",
    swardFill: "#2F4A32",
    onFill: "#12150F",
    edge: "#8F9782",
    hair: "#3D4436",
  },
  sun: {
    ground: "#FFFFFF",
    sheet: "#FFFFFF",
    well: "#EDEFE8",
    ink: "#000000",
    inkSecond: "#2B3027",
    act: "#4F1340",
    actWash: "#F5E8F1",
    hold: "#7F0A16",
    care: "#523600",
    careFill: "#FFC933",
    onCare: "#161B14",
    water: "#063A5E",
    sward: "#17451F",
    swardFill: "#C9DDBE",
    onFill: "#FFFFFF",
    edge: "#161B14",
    hair: "#9AA08F",
  },
};

/** Paper: black on white, no ink-heavy grounds. Fills become the sheet; their frames and stripes stay. */
export const paperColors: ThemeColors = {
  ground: "#FFFFFF",
  sheet: "#FFFFFF",
  well: "#FFFFFF",
  ink: "#000000",
  inkSecond: "#000000",
  act: "#000000",
  actWash: "#FFFFFF",
  hold: "#000000",
  care: "#000000",
  careFill: "#FFFFFF",
  onCare: "#000000",
  water: "#000000",
  sward: "#000000",
  swardFill: "#FFFFFF",
  onFill: "#FFFFFF",
  edge: "#000000",
  hair: "#808080",
};

/** A size of type: letters and line in CSS pixels, once for the desk and once for the phone. */
export interface TypeSize {
  readonly deskPixels: number;
  readonly deskLinePixels: number;
  readonly phonePixels: number;
  readonly phoneLinePixels: number;
}

/** The names of the type scale. */
export type TypeName = "amount" | "title" | "code" | "head" | "read-back" | "body" | "small" | "axis";

/** The type scale. */
export const typeScale: Readonly<Record<TypeName, TypeSize>> = {
  amount: { deskPixels: 32, deskLinePixels: 38, phonePixels: 56, phoneLinePixels: 60 },
  title: { deskPixels: 32, deskLinePixels: 38, phonePixels: 28, phoneLinePixels: 34 },
  code: { deskPixels: 20, deskLinePixels: 26, phonePixels: 32, phoneLinePixels: 38 },
  head: { deskPixels: 20, deskLinePixels: 26, phonePixels: 22, phoneLinePixels: 28 },
  "read-back": { deskPixels: 18, deskLinePixels: 30, phonePixels: 21, phoneLinePixels: 36 },
  body: { deskPixels: 16, deskLinePixels: 24, phonePixels: 18, phoneLinePixels: 26 },
  small: { deskPixels: 14, deskLinePixels: 20, phonePixels: 16, phoneLinePixels: 22 },
  axis: { deskPixels: 13, deskLinePixels: 16, phonePixels: 16, phoneLinePixels: 22 },
};

/** The steps of space, in CSS pixels. Step 1 is the first. */
export const spaceStepsPixels = [4, 8, 12, 16, 24, 32, 48, 64] as const;

/** The least size of things to press, in CSS pixels: desk, and phone or any coarse pointer. */
export const touchSizes = {
  control: { deskPixels: 44, touchPixels: 56 },
  choice: { deskPixels: 44, touchPixels: 64 },
  row: { deskPixels: 44, touchPixels: 56 },
} as const;

/** Below this width of the window, in CSS pixels, the phone's type scale holds. */
export const phoneBelowPixels = 640;

/** Below this width of the window, in CSS pixels, the row of places becomes one link. */
export const placesBelowPixels = 1024;
