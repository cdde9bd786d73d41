import { type ThemeChoice } from "#ui/theme-switch";

export const THEME_COOKIE = "halfpass-theme";

/** The theme that a cookie's value stands for; whatever it does not know is the system's. */
export function themeOf(value: string | undefined): ThemeChoice {
  return value === "light" || value === "dark" ? value : "system";
}
